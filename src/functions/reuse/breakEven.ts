import { defineByMethod, type TextsOf, type WorkingStep } from '../../core/definition/definition'
import { money, number, share } from '../../core/definition/parameter'
import { Decimal, one } from '../../core/quantity/decimal'
import { levelCosts, payback, type LevelCosts } from './levelCost'

export const breakEven = defineByMethod({
  id: 'BREAKEVEN',
  subject: 'reuse',
  parameters: {
    singleUseCost: money('money per unit and round', {
      text: 'what single use costs each round, for the same work',
      example: 200,
    }),
    firstCost: money('money per unit', { text: 'what one reusable unit costs new', example: 1000 }),
    washCost: money('money per unit and round', {
      text: 'washing and disinfecting before each later round',
      example: 50,
      default: 0,
    }),
    topUpShare: share({ text: 'share of firstCost that is topped up before each later round', default: 0, atMost: 1 }),
    lossShare: share({ text: 'share of the units that is lost in each round', example: 0.14, default: 0, below: 1 }),
    endValue: number('money per unit', {
      text: 'what a survivor is worth after the last round; negative for disposal',
      default: 0,
    }),
    yearlyInterest: share({ text: 'interest for a year', default: 0, atMost: 1 }),
    roundsPerYear: number('rounds per year', { text: 'rounds in a year', default: 1, above: 0, atMost: 366 }),
    mostRounds: number('rounds', {
      text: 'rounds that the reusable can last',
      default: 200,
      atLeast: 1,
      atMost: 1_000_000,
      whole: true,
    }),
    singleUseYield: share({
      text: 'share of the cuttings in single use that becomes a saleable liner',
      default: 1,
      above: 0,
      atMost: 1,
    }),
    reusableYield: share({
      text: 'share of the cuttings in the reusable that becomes a saleable liner',
      default: 1,
      above: 0,
      atMost: 1,
    }),
  },
  result: { name: 'rounds', unit: 'rounds' },
  method: (args) => {
    const { singleUseCost, mostRounds, singleUseYield, reusableYield } = args
    // Per liner the yields divide; both sides times reusableYield keeps an exact tie exact.
    const allowed = singleUseCost.mul(reusableYield).div(singleUseYield)
    const costs = levelCosts(args)
    const found = payback(costs, (level) => level, allowed, mostRounds)
    if (found instanceof Decimal) return { value: found, working: () => workingOf(costs, allowed, found) }
    const perRound = (amount: Decimal) => amount.toSignificantDigits(6).toString()
    if (found === 'tooLate') {
      return {
        problem: {
          kind: 'noAnswer',
          code: 'paysTooLate',
          mostRounds: mostRounds.toString(),
          level: perRound(costs.over(mostRounds)),
          singleUse: perRound(allowed),
        },
      }
    }
    const least = Decimal.min(costs.over(one), costs.limit)
    const raises = (['washCost', 'topUpShare', 'lossShare', 'yearlyInterest'] as const).filter(
      (name) => !args[name].isZero(),
    )
    return {
      problem: { kind: 'noAnswer', code: 'neverPays', least: perRound(least), singleUse: perRound(allowed), raises },
    }
  },
})

export const breakEvenText: TextsOf<typeof breakEven> = {
  summary: 'The round from which washing and using again costs no more than buying single-use each time.',
  convention:
    'Compares the average cost per round with interest of REUSECOST, over that many rounds, with single use, each divided by its yield of saleable liners. An exact tie counts as reached. Money flows at the start of a round and the first use is not washed.',
  result: 'the first number of rounds at which reuse costs no more',
  plain: () => ({
    // A share of 10^-12 is binary dust, as in isAtMost: a tie of small money and of large money is reached alike.
    formula:
      'LET(roundsTried, SEQUENCE(mostRounds), keptEach, (1 - lossShare) / (1 + yearlyInterest) ^ (1 / roundsPerYear), ' +
      'usesEach, IF((1 - keptEach) * 10 ^ 15 < 1, roundsTried, (1 - keptEach ^ roundsTried) / MAX(1 - keptEach, 10 ^ -15)), ' +
      'levelEach, (firstCost + (washCost + topUpShare * firstCost) * (usesEach - 1) - endValue * keptEach ^ roundsTried) / usesEach, ' +
      'MATCH(TRUE, levelEach / reusableYield <= singleUseCost / singleUseYield * (1 + 10 ^ -12), 0))',
  }),
  examples: [
    {
      text: 'First cost 1,000, washing 50, 5 % topped up, single use 200',
      given: [200, 1000, 50, 0.05],
      gives: 9,
      source: 'definition',
    },
    {
      text: 'First cost 2.40, washing 0.12, single use 0.45',
      given: [0.45, 2.4, 0.12],
      gives: 7,
      source: 'definition',
    },
    {
      text: 'The same, with 14 % of the units lost each round',
      given: [0.45, 2.4, 0.12, 0, 0.14],
      gives: 23,
      source: 'definition',
    },
  ],
}

function workingOf({ over }: LevelCosts, allowed: Decimal, rounds: Decimal): readonly WorkingStep[] {
  const unit = 'money per unit and round'
  const before: WorkingStep[] = rounds.eq(1)
    ? []
    : [
        {
          name: 'levelBefore',
          text: 'level cost of the reusable one round earlier',
          formula: 'REUSECOST over rounds - 1',
          value: over(rounds.sub(1)),
          unit,
        },
      ]
  return [
    {
      name: 'allowed',
      text: 'what a round of the reusable may cost, the yields allowed for',
      formula: 'singleUseCost * reusableYield / singleUseYield',
      value: allowed,
      unit,
    },
    ...before,
    {
      name: 'level',
      text: 'level cost of the reusable over that many rounds',
      formula: 'REUSECOST over rounds',
      value: over(rounds),
      unit,
    },
    {
      name: 'rounds',
      text: 'the first number of rounds at which it costs no more',
      formula: 'least rounds with level <= allowed',
      value: rounds,
      unit: 'rounds',
    },
  ]
}
