import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, number, quantity, share } from '../../core/definition/parameter'

export const mediumCost = defineBySteps({
  id: 'MEDIUMCOST',
  subject: 'cost',
  parameters: {
    cuttingVolumeMl: quantity('mL', { text: 'volume of medium for one cutting, settled', example: 65, atLeast: 0 }),
    costPerLitre: money('money per loose L', { text: 'cost of a loose litre of the medium', example: 0.15 }),
    settle: share({
      text: 'share of its height that loose mix drops when it is firmed and watered',
      example: 0.1,
      default: 0,
      below: 1,
    }),
    spill: share({ text: 'share of the loose mix that is lost at the filling line', example: 0, default: 0, below: 1 }),
    rounds: number('rounds', {
      text: 'rounds the medium is used, the first one included',
      example: 6,
      default: 1,
      atLeast: 1,
      atMost: 1_000_000,
      whole: true,
    }),
    washCostPerCutting: money('money per cutting and round', {
      text: 'washing or steaming before each later round',
      example: 0.004,
      default: 0,
    }),
    topUpShare: share({ text: 'share of the medium that is topped up before each later round', default: 0, atMost: 1 }),
    lossShare: share({ text: 'share of the places that is lost in each round', default: 0, below: 1 }),
  },
  result: { name: 'mediumCost', unit: 'money per cutting' },
  steps: [
    [
      'litres',
      'cuttingVolumeMl / 1000 / ((1 - settle) * (1 - spill))',
      'L loose per cutting',
      'loose medium for one cutting',
    ],
    ['firstCost', 'litres * costPerLitre', 'money per cutting', 'medium for the first round'],
    [
      'uses',
      'IF(lossShare * 10 ^ 15 < 1, rounds, (1 - (1 - lossShare) ^ rounds) / lossShare)',
      'uses',
      'average number of rounds a place lasts',
    ],
    [
      'later',
      '(washCostPerCutting + topUpShare * firstCost) * (uses - 1)',
      'money per cutting',
      'washing and topping up of all later rounds',
    ],
    ['mediumCost', '(firstCost + later) / uses', 'money per cutting', 'all of it over the uses'],
  ],
})

export const mediumCostText: TextsOf<typeof mediumCost> = {
  summary: 'Medium cost per cutting stuck, for single use or spread over the rounds it is reused.',
  convention:
    'Settling and spilling divide. With more than one round: the first use is not washed, each later round pays washing and topping up, lost medium is not replaced, no interest (REUSECOST has it). Per cutting stuck, not per liner sold: see PERLINER.',
  result: 'medium cost per cutting stuck',
  examples: [
    {
      text: '65 mL of a mix at 0.15 a litre, settling by a tenth',
      given: [65, 0.15, 0.1],
      gives: 0.0108333333333333,
      source: 'definition',
    },
    {
      text: 'Sand used for 6 rounds, 0.004 for washing, 5 % topped up',
      given: [120, 0.09, 0.08, 0, 6, 0.004, 0.05],
      gives: 0.00577898550724638,
      source: 'definition',
    },
  ],
}
