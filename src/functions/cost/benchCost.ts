import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, number, share } from '../../core/definition/parameter'

export const benchCost = defineBySteps({
  id: 'BENCHCOST',
  subject: 'cost',
  parameters: {
    weeks: number('weeks', { text: 'weeks that the cuttings stand on the bench', example: 6, atLeast: 0 }),
    cuttingsPerM2: number('cuttings per m2', { text: 'cuttings on a m2 of bench in use', example: 400, above: 0 }),
    ratePerM2Week: money('money per m2 and week', {
      text: 'what a m2 of bench costs a week: heat, light, rent, upkeep',
      example: 0.9,
    }),
    benchUseShare: share({
      text: 'share of the bench paid for that is in use, over the weeks',
      example: 0.75,
      default: 1,
      above: 0,
      atMost: 1,
    }),
  },
  result: { name: 'benchCost', unit: 'money per cutting' },
  steps: [
    [
      'rateInUse',
      'ratePerM2Week / benchUseShare',
      'money per m2 and week',
      'what a m2 in use costs a week, the empty part included',
    ],
    [
      'benchCost',
      'weeks * rateInUse / cuttingsPerM2',
      'money per cutting',
      'all weeks, shared by the cuttings on the m2',
    ],
  ],
})

export const benchCostText: TextsOf<typeof benchCost> = {
  summary: 'What the bench space of one cutting costs.',
  convention:
    'The rate is for each m2 of bench that is paid for, in use or empty, so the plants that stand there bear the empty part too. Where the rate is already one for m2 in use, leave benchUseShare out. Every cutting stuck bears its space, those that are lost later among them: see PERLINER.',
  result: 'bench cost per cutting',
  examples: [
    {
      text: '6 weeks at 0.90 a m2, 400 cuttings on it, three quarters of the bench in use',
      given: [6, 400, 0.9, 0.75],
      gives: 0.018,
      source: 'definition',
    },
    // A million over 40,000 x 52 is the rate of a square foot paid for; the source divides by the 75 % in use: 0.64.
    {
      text: 'A million a year over 40,000 square feet of which 75 % are in use, one plant a square foot',
      given: [1, 1, 0.480769230769231, 0.75],
      gives: 0.641025641025641,
      source: 'greenhouse-grower-five-keys',
    },
  ],
}
