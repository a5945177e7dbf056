import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, numbers, share } from '../../core/definition/parameter'

export const blendCost = defineBySteps({
  id: 'BLENDCOST',
  subject: 'blend',
  parameters: {
    parts: numbers('parts', { text: 'parts by volume, one cell a component', notAllZero: true }),
    pricesPerLitre: numbers('money per loose L', { text: 'price of a loose litre of each component', example: 0.12 }),
    mixShrink: share({
      text: 'share of the summed volumes that vanishes in mixing',
      example: 0.1,
      default: 0,
      below: 1,
    }),
    addedCostPerM3: money('money per m3', {
      text: 'lime, wetting agent, starter feed and mixing labour for a cubic metre of finished mix',
      example: 12,
      default: 0,
    }),
  },
  result: { name: 'costPerLitre', unit: 'money per L' },
  steps: [
    ['componentCost', 'SUMPRODUCT(parts, pricesPerLitre)', 'money', 'what the parts cost, one litre to the part'],
    ['finished', 'SUM(parts) * (1 - mixShrink)', 'L', 'finished mix from those parts'],
    [
      'costPerLitre',
      'componentCost / finished + addedCostPerM3 / 1000',
      'money per L',
      'components and additions for a finished litre',
    ],
  ],
})

export const blendCostText: TextsOf<typeof blendCost> = {
  summary: 'Cost of a litre of finished mix from its parts and their prices.',
  convention:
    'Prices are per loose litre (see PACKPRICE). mixShrink is the share of the summed loose volumes that vanishes when they are mixed, since fine grains fill the pores of coarse ones; measure it on a test mix. Shrink divides.',
  result: 'cost of a litre of finished mix',
  examples: [
    {
      text: 'Equal parts at 0.12 and 0.18, a tenth lost in mixing',
      given: [[1, 1], [0.12, 0.18], 0.1],
      gives: 0.166666666666667,
      source: 'definition',
    },
    {
      text: 'Three, one and one that make about four: the sum shrinks by a fifth',
      given: [[3, 1, 1], [0.05, 0.1, 0.04], 0.2, 12],
      gives: 0.0845,
      source: 'rootmaker-faq',
    },
  ],
}
