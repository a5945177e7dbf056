import { defineBySteps, type StepDraft, type TextsOf } from '../../core/definition/definition'
import { money, number, share } from '../../core/definition/parameter'

/** A(n) of the convention below. ROOTINGCOST begins with the very same steps, on what its vessels and medium cost. */
export const levelCostSteps = [
  [
    'growth',
    '(1 + yearlyInterest) ^ (1 / roundsPerYear)',
    'per round',
    'what 1 grows to with interest until the next round',
  ],
  ['kept', '(1 - lossShare) / growth', 'per round', 'what the next round counts today, for a unit in use now'],
  // Below 10^-15 the quotient would be dust over dust, and the plain count is right to 15 digits. Not written as
  // 1E-15: the workbench's grid reads a number with an exponent as a text, and compares it as one.
  [
    'uses',
    'IF((1 - kept) * 10 ^ 15 < 1, rounds, (1 - kept ^ rounds) / (1 - kept))',
    'uses',
    'uses of one unit bought, later ones counting less by the interest',
  ],
  [
    'later',
    '(washCost + topUpShare * firstCost) * (uses - 1)',
    'money',
    'washing and topping up of all later rounds, today',
  ],
  ['back', 'endValue * kept ^ rounds', 'money', 'end value of the survivors, today'],
  ['levelCost', '(firstCost + later - back) / uses', 'money per unit and round', 'all of it over the uses'],
] as const satisfies readonly StepDraft[]

/** REUSELEDGER takes the same. */
export const reuseParameters = {
  firstCost: money('money per unit', { text: 'what one unit costs new', example: 1000 }),
  rounds: number('rounds', {
    text: 'rounds it is used, the first one included',
    example: 9,
    atLeast: 1,
    atMost: 1_000_000,
    whole: true,
  }),
  washCost: money('money per unit and round', {
    text: 'washing and disinfecting before each later round',
    example: 50,
    default: 0,
  }),
  topUpShare: share({ text: 'share of firstCost that is topped up before each later round', default: 0, atMost: 1 }),
  lossShare: share({ text: 'share of the units that is lost in each round', example: 0, default: 0, below: 1 }),
  endValue: number('money per unit', {
    text: 'what a survivor is worth after the last round; negative for disposal',
    example: -100,
    default: 0,
  }),
  yearlyInterest: share({ text: 'interest for a year', default: 0, atMost: 1 }),
  roundsPerYear: number('rounds per year', { text: 'rounds in a year', default: 1, above: 0, atMost: 366 }),
}

export const reuseCost = defineBySteps({
  id: 'REUSECOST',
  subject: 'reuse',
  parameters: reuseParameters,
  result: { name: 'levelCost', unit: 'money per unit and round' },
  steps: levelCostSteps,
})

export const reuseCostText: TextsOf<typeof reuseCost> = {
  summary: 'Average cost per round, with interest, of something that is washed and used again.',
  convention:
    'All money flows at the start of a round. The first use is not washed; each later round pays washing and topping up; broken units are not replaced; the end value comes back after the last round. The level cost is the average cost per round with interest, which accountants call the equivalent cost: the same amount at the start of every round, for every unit then in use, that is worth as much today as all that is paid.',
  result: 'average cost per round and unit in use, with interest',
  examples: [
    {
      text: 'First cost 1,000, washing 50, 5 % topped up: 200 a round over 9 rounds',
      given: [1000, 9, 50, 0.05],
      gives: 200,
      source: 'definition',
    },
    {
      text: 'A loan of 1,000 over 12 rounds at 5 % a round, with 100 left to pay',
      given: [1000, 12, 0, 0, 0, -100, 0.05, 1],
      gives: 113.4361438313,
      source: 'openformula',
    },
  ],
}
