import { headingRow, inOrder } from '../../core/definition/columns'
import { defineTable, type TextsOf, type WorkingStep } from '../../core/definition/definition'
import { number, withExamples } from '../../core/definition/parameter'
import { one, type Decimal } from '../../core/quantity/decimal'
import { levelCosts, type LevelCosts, type Reuse } from './levelCost'
import { reuseParameters } from './reuseCost'

const columns = {
  round: { heading: 'round' },
  unitsInUse: { heading: 'units in use' },
  outlay: { heading: 'outlay' },
  presentValue: { heading: 'present value' },
  runningPresentValue: { heading: 'running present value' },
  levelCost: { heading: 'level cost if stopped here' },
}

export const reuseLedger = defineTable({
  id: 'REUSELEDGER',
  subject: 'reuse',
  parameters: {
    ...withExamples(reuseParameters, {
      firstCost: 2.4,
      washCost: 0.12,
      lossShare: 0.25,
      endValue: -0.4,
      yearlyInterest: 0.25,
    }),
    rounds: number('rounds', {
      text: 'rounds it is used, the first one included; each is a row of the table',
      example: 3,
      atLeast: 1,
      atMost: 1000,
      whole: true,
    }),
  },
  result: { name: 'ledger', unit: 'table', columns },
  method: (args) => {
    const costs = levelCosts(args)
    const rows = roundsOf(args, costs)
    return { table: rows, working: () => workingOf(costs, rows.at(-1)!) }
  },
})

export const reuseLedgerText: TextsOf<typeof reuseLedger> = {
  summary: 'The money that flows, round by round, for something that is washed and used again.',
  convention:
    'Every amount is for one unit bought. The outlay is paid at the start of the round for the units then in use, with no interest taken off: the first cost in round 1, washing and topping up in each later round, never a replacement of lost units. A present value is what a later payment is worth at the start of round 1, with the interest taken off. The end value is in no outlay and in no present value: it counts in the level cost alone, which takes it as coming back one round after the round of its row. The last level cost is that of REUSECOST.',
  result: 'a row for each round, per unit bought',
  columns: {
    round: { text: 'the round, from 1', unit: 'rounds' },
    unitsInUse: { text: 'share of the units bought that is still in use in that round', unit: 'units per unit bought' },
    outlay: { text: 'paid at the start of the round for the units then in use', unit: 'money per unit bought' },
    presentValue: {
      text: 'what that outlay is worth at the start of round 1, with the interest taken off',
      unit: 'money per unit bought',
    },
    runningPresentValue: { text: 'the present values so far', unit: 'money per unit bought' },
    levelCost: { text: 'REUSECOST over the rounds so far, with the end value', unit: 'money per unit and round' },
  },
  plain: (columns) => ({
    formula:
      'LET(inRound, SEQUENCE(rounds), keptEach, (1 - lossShare) / (1 + yearlyInterest) ^ (1 / roundsPerYear), ' +
      'upkeepEach, washCost + topUpShare * firstCost, unitsInUse, IF(inRound = 1, 1, (1 - lossShare) ^ (inRound - 1)), ' +
      // Below 10^-15 the quotient would be dust over dust, as in REUSECOST.
      'usesSoFar, IF((1 - keptEach) * 10 ^ 15 < 1, inRound, (1 - keptEach ^ inRound) / MAX(1 - keptEach, 10 ^ -15)), ' +
      'runningValue, firstCost + upkeepEach * (usesSoFar - 1), ' +
      `VSTACK(${headingRow(columns)}, HSTACK(${inOrder(columns, {
        round: 'inRound',
        unitsInUse: 'unitsInUse',
        outlay: 'IF(inRound = 1, firstCost, upkeepEach * unitsInUse)',
        presentValue: 'IF(inRound = 1, firstCost, upkeepEach * keptEach ^ (inRound - 1))',
        runningPresentValue: 'runningValue',
        levelCost: '(runningValue - endValue * keptEach ^ inRound) / usesSoFar',
      })})))`,
  }),
  examples: [
    {
      text: 'First cost 2.40, washing 0.12, used three times',
      given: [2.4, 3, 0.12],
      gives: [
        [1, 1, 2.4, 2.4, 2.4, 2.4],
        [2, 1, 0.12, 0.12, 2.52, 1.26],
        [3, 1, 0.12, 0.12, 2.64, 0.88],
      ],
      source: 'definition',
    },
    {
      text: 'The same with a quarter of the units lost each round and disposal at 0.40, at 25 % interest a round: the next round counts 0.6',
      given: [2.4, 2, 0.12, 0.05, 0.25, -0.4, 0.25, 1],
      gives: [
        [1, 1, 2.4, 2.4, 2.4, 2.64],
        [2, 0.75, 0.18, 0.144, 2.544, 1.68],
      ],
      source: 'definition',
    },
  ],
}

type Round = { readonly [K in keyof typeof columns]: Decimal }

function roundsOf(
  { firstCost, rounds, lossShare }: Reuse & { readonly rounds: Decimal },
  { over, upkeep, kept }: LevelCosts,
): readonly Round[] {
  const survive = one.sub(lossShare)
  const table = [
    {
      round: one,
      unitsInUse: one,
      outlay: firstCost,
      presentValue: firstCost,
      runningPresentValue: firstCost,
      levelCost: over(one),
    },
  ]
  let keptSoFar = one
  for (let round = one.add(1); round.lte(rounds); round = round.add(1)) {
    const before = table.at(-1)!
    keptSoFar = keptSoFar.mul(kept)
    const unitsInUse = before.unitsInUse.mul(survive)
    const presentValue = upkeep.mul(keptSoFar)
    table.push({
      round,
      unitsInUse,
      outlay: upkeep.mul(unitsInUse),
      presentValue,
      runningPresentValue: before.runningPresentValue.add(presentValue),
      levelCost: over(round),
    })
  }
  return table
}

function workingOf({ kept, upkeep }: LevelCosts, last: Round): readonly WorkingStep[] {
  const bought = 'money per unit bought'
  return [
    {
      name: 'kept',
      text: 'what the next round counts today, for a unit in use now',
      formula: '(1 - lossShare) / (1 + yearlyInterest) ^ (1 / roundsPerYear)',
      value: kept,
      unit: 'per round',
    },
    {
      name: 'upkeep',
      text: 'washing and topping up of a unit before a later round',
      formula: 'washCost + topUpShare * firstCost',
      value: upkeep,
      unit: 'money per unit and round',
    },
    {
      name: 'unitsInUse',
      text: 'share of the units bought that is in use in the last round',
      formula: '(1 - lossShare) ^ (round - 1)',
      value: last.unitsInUse,
      unit: 'units per unit bought',
    },
    {
      name: 'outlay',
      text: 'outlay of the last round',
      formula: 'firstCost in round 1, later upkeep * unitsInUse',
      value: last.outlay,
      unit: bought,
    },
    {
      name: 'presentValue',
      text: 'present value of that outlay',
      formula: 'firstCost in round 1, later upkeep * kept ^ (round - 1)',
      value: last.presentValue,
      unit: bought,
    },
    {
      name: 'runningPresentValue',
      text: 'present values of all rounds',
      formula: 'present value of the round + those before',
      value: last.runningPresentValue,
      unit: bought,
    },
    {
      name: 'levelCost',
      text: 'level cost over all rounds',
      formula: '(runningPresentValue - endValue * kept ^ rounds) / sum of kept ^ (round - 1)',
      value: last.levelCost,
      unit: 'money per unit and round',
    },
  ]
}
