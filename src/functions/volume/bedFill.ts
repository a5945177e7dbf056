import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { quantity, share } from '../../core/definition/parameter'

export const bedFill = defineBySteps({
  id: 'BEDFILL',
  subject: 'volume',
  parameters: {
    lengthM: quantity('m', { text: 'inside length of the bed', example: 20, above: 0 }),
    widthM: quantity('m', { text: 'inside width of the bed', example: 4, above: 0 }),
    depthM: quantity('m', { text: 'depth of the medium once it has settled', example: 4, above: 0 }),
    settle: share({
      text: 'share of its height that loose mix drops when it is firmed and watered',
      example: 0.08,
      default: 0,
      below: 1,
    }),
    spill: share({ text: 'share of the loose mix that is lost while filling', default: 0, below: 1 }),
  },
  result: { name: 'litres', unit: 'L loose' },
  steps: [
    ['full', 'lengthM * widthM * depthM * 1000', 'L', 'volume of the bed, settled'],
    ['stays', '(1 - settle) * (1 - spill)', 'share', 'what remains in the bed of a loose litre'],
    ['litres', 'full / stays', 'L loose', 'loose medium to have at hand'],
  ],
})

export const bedFillText: TextsOf<typeof bedFill> = {
  summary: 'Litres of loose medium that fill a propagation bed.',
  convention:
    'Settling and spilling divide, as in FILL. The litres are loose ones. A bed of wet sand is heavy: see BLENDWEIGHT.',
  result: 'loose medium',
  examples: [
    {
      text: 'A bed of 4 ft by 20 ft, 4 in deep',
      given: ['20 ft', '4 ft', '4 in'],
      gives: 755.11590912,
      source: 'nist-sp-811',
    },
    {
      text: 'A bed of 6 m by 1.2 m, 10 cm deep, settling by 8 %',
      given: [6, 1.2, 0.1, 0.08],
      gives: 782.608695652174,
      source: 'definition',
    },
  ],
}
