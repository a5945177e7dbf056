import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, number, share } from '../../core/definition/parameter'
import { levelCostSteps } from '../reuse/reuseCost'

export const rootingCost = defineBySteps({
  id: 'ROOTINGCOST',
  subject: 'cost',
  parameters: {
    firstCost: money('money', { text: 'what the vessels, bed or medium cost new', example: 90 }),
    rounds: number('rounds', {
      text: 'rounds they are used, the first one included',
      example: 9,
      atLeast: 1,
      atMost: 1_000_000,
      whole: true,
    }),
    cuttingsPerRound: number('cuttings per round', {
      text: 'cuttings that what firstCost buys takes in one round',
      example: 1000,
      above: 0,
    }),
    yield: share({ text: 'share of the cuttings that becomes a saleable liner', example: 0.85, above: 0, atMost: 1 }),
    washCost: money('money per round', {
      text: 'washing and disinfecting before each later round',
      example: 4.5,
      default: 0,
    }),
    topUpShare: share({ text: 'share of firstCost that is topped up before each later round', default: 0, atMost: 1 }),
    lossShare: share({
      text: 'share of the vessels or medium that is lost in each round',
      example: 0,
      default: 0,
      below: 1,
    }),
    otherCostPerCutting: money('money per cutting', {
      text: 'the cutting, hormone, labour and bench',
      example: 0.072,
      default: 0,
    }),
    endValue: number('money', {
      text: 'what they are worth after the last round, were none lost; negative for disposal',
      example: -6,
      default: 0,
    }),
    yearlyInterest: share({ text: 'interest for a year', default: 0, atMost: 1 }),
    roundsPerYear: number('rounds per year', { text: 'rounds in a year', default: 1, above: 0, atMost: 366 }),
  },
  result: { name: 'costPerLiner', unit: 'money per saleable liner' },
  steps: [
    ...levelCostSteps,
    [
      'costPerCutting',
      'levelCost / cuttingsPerRound + otherCostPerCutting',
      'money per cutting',
      'its part of the round, and all else that is spent on a cutting',
    ],
    ['costPerLiner', 'costPerCutting / yield', 'money per saleable liner', 'the survivors bear the cost of all'],
  ],
})

export const rootingCostText: TextsOf<typeof rootingCost> = {
  summary: 'Whole cost per saleable liner of one rooting method: trays, sand bed, water, premix, rockwool.',
  convention:
    'Vessels, bed or medium cost their average per round with interest, as REUSECOST has it: money flows at the start of a round, the first use is not washed, what is lost is not replaced. All cuttings of a round share it; yield divides last, because the liners sold bear all cuttings stuck. cuttingsPerRound is for what firstCost buys, none of it lost yet.',
  result: 'cost per saleable liner',
  examples: [
    {
      text: 'Trays for 1,000 cuttings: 90, used 9 times, washing 4.50, 5 % topped up, 0.072 else, 85 % saleable',
      given: [90, 9, 1000, 0.85, 4.5, 0.05, 0, 0.072],
      gives: 0.105882352941176,
      source: 'definition',
    },
    {
      text: 'Rockwool for 1,000 cuttings, used once, 6 for its disposal',
      given: [40, 1, 1000, 0.92, 0, 0, 0, 0.072, -6],
      gives: 0.128260869565217,
      source: 'definition',
    },
  ],
}
