import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { numbers, quantities, share } from '../../core/definition/parameter'

export const blendWeight = defineBySteps({
  id: 'BLENDWEIGHT',
  subject: 'blend',
  parameters: {
    parts: numbers('parts', { text: 'parts by volume, one cell a component', notAllZero: true }),
    bulkDensitiesKgM3: quantities('kg/m3', {
      text: 'loose bulk density of each dry component',
      example: 1600,
      atLeast: 0,
    }),
    mixShrink: share({ text: 'share of the summed volumes that vanishes in mixing', example: 0, default: 0, below: 1 }),
    waterHeldShare: share({
      text: 'water held after watering, as a share of the finished volume',
      example: 0.33,
      default: 0,
      atMost: 1,
    }),
  },
  result: { name: 'weight', unit: 'kg per L' },
  steps: [
    [
      'componentWeight',
      'SUMPRODUCT(parts, bulkDensitiesKgM3) / 1000',
      'kg',
      'what the parts weigh, one litre to the part',
    ],
    ['finished', 'SUM(parts) * (1 - mixShrink)', 'L', 'finished mix from those parts'],
    [
      'weight',
      'componentWeight / finished + waterHeldShare',
      'kg per L',
      'dry weight and the water of a finished litre',
    ],
  ],
})

export const blendWeightText: TextsOf<typeof blendWeight> = {
  summary: 'Weight of a litre of finished mix, dry or watered.',
  convention:
    'Weight adds up from the parts; air space, water capacity and pH do not, and are not computed. waterHeldShare is water as a share of the finished volume, at 1 kg to the litre.',
  result: 'weight of a litre of finished mix',
  examples: [
    {
      text: 'Dry sand of 1,600 kg/m3 that holds a third of its volume in water',
      given: [[1], [1600], 0, 0.33],
      gives: 1.93,
      source: 'definition',
    },
    {
      text: 'Equal parts of 100 and 110 kg/m3, a tenth lost in mixing',
      given: [[1, 1], [100, 110], 0.1],
      gives: 0.116666666666667,
      source: 'definition',
    },
  ],
}
