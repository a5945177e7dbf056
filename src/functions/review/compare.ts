import { headingRow, inOrder } from '../../core/definition/columns'
import {
  defineTable,
  type Arguments,
  type TableRow,
  type TextsOf,
  type WorkingStep,
} from '../../core/definition/definition'
import type { Fact } from '../../core/definition/fact'
import { number, numbers, share, shares, signedNumbers, texts } from '../../core/definition/parameter'
import { Decimal, one } from '../../core/quantity/decimal'
import { levelCosts, payback, type LevelCosts } from '../reuse/levelCost'

/** Each way searches for its round of payback, and a cell may not take many seconds. */
const mostWays = 1000

const parameters = {
  names: texts({ text: 'the rooting methods', example: 'Plug' }),
  firstCosts: numbers('money per unit', {
    text: 'what one unit costs new: the medium, tray or bed of one round',
    example: 8,
  }),
  rounds: numbers('rounds', {
    text: 'rounds it is used, the first one included; 1 for single use',
    atLeast: 1,
    atMost: 1_000_000,
    whole: true,
  }),
  cuttingsPerRound: numbers('cuttings per unit', {
    text: 'cuttings that one unit takes in a round',
    example: 100,
    above: 0,
  }),
  yields: shares({ text: 'share of the cuttings that becomes a saleable liner', example: 0.8, above: 0, atMost: 1 }),
  washCosts: numbers('money per unit and round', {
    text: 'washing and disinfecting before each later round',
    example: 1.5,
    default: 0,
  }),
  topUpShares: shares({
    text: 'share of the first cost that is topped up before each later round',
    example: 0.1,
    default: 0,
    atMost: 1,
  }),
  lossShares: shares({ text: 'share of the units that is lost in each round', example: 0, default: 0, below: 1 }),
  otherCostsPerCutting: numbers('money per cutting', {
    text: 'all else in every round: cutting, hormone, labour, bench',
    example: 0.04,
    default: 0,
  }),
  endValues: signedNumbers('money per unit', {
    text: 'what a survivor is worth after the last round; negative for disposal',
    example: 30,
    default: 0,
  }),
  yearlyInterest: share({ text: 'interest for a year', example: 0, default: 0, atMost: 1 }),
  roundsPerYear: number('rounds per year', {
    text: 'rounds in a year',
    example: 4,
    default: 1,
    above: 0,
    atMost: 366,
  }),
}

type Given = Arguments<typeof parameters>

const columns = {
  name: { heading: 'name' },
  levelCost: { heading: 'level cost per round' },
  perCutting: { heading: 'per cutting' },
  perLiner: { heading: 'per saleable liner' },
  cashBefore: { heading: 'cash before the first sale' },
  beatsFrom: { heading: 'rounds until it beats single use' },
}

interface Way {
  readonly name: string
  readonly rounds: Decimal
  readonly costs: LevelCosts
  readonly levelCost: Decimal
  readonly perCutting: Decimal
  readonly perLiner: Decimal
  readonly cashBefore: Decimal
  /** What a saleable liner costs at some other level cost. */
  readonly perLinerAt: (level: Decimal) => Decimal
}

interface Compared extends Way {
  readonly beatsFrom: Decimal | Fact
}

interface Comparison {
  /** In the given order. */
  readonly ways: readonly Compared[]
  /** The cheapest first. */
  readonly sorted: readonly Compared[]
  /** The cheapest single use per saleable liner. */
  readonly singleUse: Decimal | undefined
}

export const compare = defineTable({
  id: 'COMPARE',
  subject: 'review',
  parameters,
  result: { name: 'comparison', unit: 'table', columns },
  method: (given) => {
    const { names } = given
    if (names.length > mostWays)
      return { problem: { code: 'tooManyRows', parameter: 'names', got: names.length, most: mostWays } }
    const comparison = comparisonOf(names.map((name, row) => wayOf(name, row, given)))
    return { table: comparison.sorted.map(rowOf), working: () => workingOf(comparison) }
  },
})

export const compareText: TextsOf<typeof compare> = {
  summary: 'Rooting methods side by side per saleable liner, the cheapest first.',
  convention:
    'The level cost is the average cost per round with interest, as in REUSECOST, per unit in use; cuttingsPerRound are the cuttings in one such unit, so a unit lost takes its cuttings along. Per cutting adds the other costs, and per saleable liner divides by the yield, as ROOTINGCOST does. Equal costs keep the given order. Cash before the first sale is the whole first round of one unit: firstCost and the other costs of its cuttings; to compare it, and the level costs, let a unit of each method take equally many cuttings. A method with 1 round is single use; a reusable one beats it from the least number of its rounds at which its cost per saleable liner is no higher than that of the cheapest single use, an exact tie counting.',
  result: 'a row for each method, the cheapest per saleable liner first',
  columns: {
    name: { text: 'the rooting method', unit: 'text' },
    levelCost: {
      text: 'first cost, washing, topping up, loss and end value over the rounds',
      unit: 'money per unit and round',
    },
    perCutting: { text: 'that and all other costs, per cutting', unit: 'money per cutting' },
    perLiner: { text: 'the same, borne by the cuttings that become saleable', unit: 'money per liner' },
    cashBefore: { text: 'first cost and other costs of the first round', unit: 'money per unit' },
    beatsFrom: {
      text: 'the round from which it costs no more than the cheapest single use, or why there is none',
      unit: 'rounds',
    },
  },
  plain: (columns) => ({
    // All ways lie side by side in a row, and the rounds that are tried run downwards, so that MMULT counts those too dear.
    // The grid's engine compares only a range that was computed, so later rounds are counted and compared with 0.
    // A blank row between the ways is taken along as the dearest way, and left out at the end.
    formula:
      'LET(isWay, TOROW(rounds) - 1 >= 0, firstEach, TOROW(firstCosts), laterRounds, IF(isWay, TOROW(rounds) - 1, 1), roundsEach, laterRounds + 1, ' +
      'cuttingsEach, IF(isWay, TOROW(cuttingsPerRound), 1), yieldEach, IF(isWay, TOROW(yields), 1), otherEach, TOROW(otherCostsPerCutting), endEach, TOROW(endValues), upkeepEach, TOROW(washCosts) + TOROW(topUpShares) * firstEach, ' +
      'keptEach, (1 - TOROW(lossShares)) / (1 + yearlyInterest) ^ (1 / roundsPerYear), ' +
      'allKept, (1 - keptEach) * 10 ^ 15 < 1, lostEach, IF(allKept, 1, 1 - keptEach), ' +
      'usesEach, IF(allKept, roundsEach, (1 - keptEach ^ roundsEach) / lostEach), ' +
      'levelEach, (firstEach + upkeepEach * (usesEach - 1) - endEach * keptEach ^ roundsEach) / usesEach, ' +
      'perCutting, levelEach / cuttingsEach + otherEach, perLiner, perCutting / yieldEach, ' +
      'singleUse, MIN(IF(laterRounds = 0, perLiner, MAX(perLiner))), ' +
      'roundsTried, SEQUENCE(MAX(roundsEach)), usesTried, IF(allKept, roundsTried, (1 - keptEach ^ roundsTried) / lostEach), ' +
      'linerTried, ((firstEach + upkeepEach * (usesTried - 1) - endEach * keptEach ^ roundsTried) / usesTried / cuttingsEach + otherEach) / yieldEach, ' +
      'tooDear, IF(linerTried > singleUse + ABS(singleUse) / 10 ^ 12, 1, 0), ' +
      // Where reuse grows dearer with the rounds, it pays from the first one or not at all.
      'beatsFrom, IF(INDEX(tooDear, 1, 0) = 0, 1, 1 + MMULT(TRANSPOSE(SEQUENCE(MAX(roundsEach), 1, 1, 0)), tooDear)), ' +
      'says, IF(laterRounds = 0, "single use", IF(SUM(IF(laterRounds = 0, 1, 0)) = 0, "no single use to beat", IF(beatsFrom > roundsEach, "not in " & roundsEach & " rounds", beatsFrom))), ' +
      `ways, TRANSPOSE(VSTACK(${inOrder(columns, {
        name: 'TOROW(names)',
        levelCost: 'levelEach',
        perCutting: 'perCutting',
        perLiner: 'perLiner',
        cashBefore: 'firstEach + otherEach * cuttingsEach',
        beatsFrom: 'says',
      })})), VSTACK(${headingRow(columns)}, ` +
      'TAKE(SORTBY(ways, TRANSPOSE(IF(isWay, perLiner, MAX(perLiner) + 1))), SUM(IF(isWay, 1, 0)))))',
  }),
  examples: [
    {
      text: 'A plug used once beside a tray of 50 that is washed and used six times: in round 5 the tray costs exactly as much, and then less',
      given: [
        ['Plug', 'Tray'],
        [8, 15],
        [1, 6],
        [100, 50],
        [0.8, 0.75],
        ['', 1.5],
        ['', ''],
        ['', ''],
        [0.04, 0.0285],
      ],
      gives: [
        ['Tray', 3.75, 0.1035, 0.138, 16.425, 5],
        ['Plug', 8, 0.12, 0.15, 12, 'single use'],
      ],
      source: 'definition',
    },
    {
      text: 'A bed of 300, topped up by a tenth and sold for 30 after three rounds, beside two that are used once',
      given: [
        ['Bed', 'Block', 'Plug'],
        [90, 10, 8],
        [3, 1, 1],
        [300, 100, 100],
        [0.5, 0.8, 0.8],
        [6, '', ''],
        [0.1, '', ''],
        [0, '', ''],
        [0.02, 0.06, 0.04],
        [30, '', ''],
        0,
        4,
      ],
      gives: [
        ['Plug', 8, 0.12, 0.15, 12, 'single use'],
        ['Block', 10, 0.16, 0.2, 16, 'single use'],
        ['Bed', 30, 0.12, 0.24, 96, 'not in 3 rounds'],
      ],
      source: 'definition',
    },
  ],
}

function wayOf(name: string, row: number, given: Given): Way {
  const [firstCost, rounds, cuttings, yielded, other] = [
    given.firstCosts[row]!,
    given.rounds[row]!,
    given.cuttingsPerRound[row]!,
    given.yields[row]!,
    given.otherCostsPerCutting[row]!,
  ]
  const costs = levelCosts({
    firstCost,
    washCost: given.washCosts[row]!,
    topUpShare: given.topUpShares[row]!,
    lossShare: given.lossShares[row]!,
    endValue: given.endValues[row]!,
    yearlyInterest: given.yearlyInterest,
    roundsPerYear: given.roundsPerYear,
  })
  const perCuttingAt = (level: Decimal) => level.div(cuttings).add(other)
  const perLinerAt = (level: Decimal) => perCuttingAt(level).div(yielded)
  const levelCost = costs.over(rounds)
  return {
    name,
    rounds,
    costs,
    levelCost,
    perCutting: perCuttingAt(levelCost),
    perLiner: perLinerAt(levelCost),
    cashBefore: firstCost.add(other.mul(cuttings)),
    perLinerAt,
  }
}

function comparisonOf(given: readonly Way[]): Comparison {
  const singleUses = given.filter(({ rounds }) => rounds.eq(one)).map(({ perLiner }) => perLiner)
  const singleUse = singleUses.length === 0 ? undefined : Decimal.min(...singleUses)
  const ways = given.map((way) => ({ ...way, beatsFrom: beatsFrom(way, singleUse) }))
  // Costs that show the same digits are equal to whoever reads the table: a tie keeps the given order.
  const sorted = [...ways].sort((a, b) => shown(a.perLiner).cmp(shown(b.perLiner)))
  return { ways, sorted, singleUse }
}

function rowOf({ name, levelCost, perCutting, perLiner, cashBefore, beatsFrom }: Compared): TableRow<typeof columns> {
  return { name, levelCost, perCutting, perLiner, cashBefore, beatsFrom }
}

function workingOf({ ways, sorted, singleUse }: Comparison): readonly WorkingStep[] {
  return [
    {
      name: 'levelCost',
      text: 'level cost per round, in the given order',
      formula: 'REUSECOST over rounds',
      value: ways.map(({ levelCost }) => levelCost),
      unit: 'money per unit and round',
    },
    {
      name: 'perCutting',
      text: 'cost per cutting',
      formula: 'levelCost / cuttingsPerRound + otherCostsPerCutting',
      value: ways.map(({ perCutting }) => perCutting),
      unit: 'money per cutting',
    },
    {
      name: 'perLiner',
      text: 'cost per saleable liner',
      formula: 'perCutting / yields',
      value: ways.map(({ perLiner }) => perLiner),
      unit: 'money per liner',
    },
    {
      name: 'singleUse',
      text: 'the cheapest single use per saleable liner',
      formula: 'least perLiner where rounds = 1',
      value: singleUse ?? { fact: 'noWayOfOneRound' },
      unit: 'money per liner',
    },
    {
      name: 'cashBefore',
      text: 'cash before the first sale, in the given order',
      formula: 'firstCosts + otherCostsPerCutting * cuttingsPerRound',
      value: ways.map(({ cashBefore }) => cashBefore),
      unit: 'money per unit',
    },
    {
      name: 'beatsFrom',
      text: 'rounds until it beats single use, in the given order',
      formula: 'least number of its rounds over which perLiner <= singleUse',
      value: ways.map(({ beatsFrom }) => beatsFrom),
      unit: 'rounds',
    },
    {
      name: 'order',
      text: 'the methods, cheapest per saleable liner first',
      formula: 'by perLiner, equal ones in the given order',
      value: sorted.map(({ name }) => name),
      unit: 'text',
    },
  ]
}

function shown(cost: Decimal): Decimal {
  return cost.toSignificantDigits(15)
}

function beatsFrom({ rounds, costs, perLinerAt }: Way, singleUse: Decimal | undefined): Decimal | Fact {
  if (rounds.eq(one)) return { fact: 'singleUse' }
  if (singleUse === undefined) return { fact: 'noSingleUse' }
  const found = payback(costs, perLinerAt, singleUse, rounds)
  return found instanceof Decimal ? found : { fact: 'notInRounds', rounds }
}
