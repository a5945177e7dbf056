import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { quantity } from '../../core/definition/parameter'

export const roundCell = defineBySteps({
  id: 'ROUNDCELL',
  subject: 'volume',
  parameters: {
    topDiameterMm: quantity('mm', { text: 'inside diameter at the top', example: 40, above: 0 }),
    depthMm: quantity('mm', { text: 'inside depth', example: 50, above: 0 }),
    bottomDiameterMm: quantity('mm', {
      text: 'inside diameter at the bottom',
      example: 28,
      default: { sameAs: 'topDiameterMm' },
      above: 0,
    }),
  },
  result: { name: 'volume', unit: 'mL' },
  steps: [
    [
      'squares',
      'topDiameterMm ^ 2 + topDiameterMm * bottomDiameterMm + bottomDiameterMm ^ 2',
      'mm2',
      'the two diameters squared, and their product',
    ],
    ['volume', 'PI() * depthMm / 12 * squares / 1000', 'mL', 'frustum of a cone, 1000 mm3 to the mL'],
  ],
})

export const roundCellText: TextsOf<typeof roundCell> = {
  summary: 'Volume of a round, tapered cell, plug or pot from its inside measures.',
  convention: 'Frustum of a cone. Brimful; the settling of the mix is given in FILL.',
  result: 'volume of one cell',
  examples: [
    {
      text: 'A straight cell of 40 mm across and 50 mm deep',
      given: [40, 50],
      gives: 62.8318530717959,
      source: 'definition',
    },
    { text: 'The same, tapering to 28 mm', given: [40, 50, 28], gives: 45.867252742411, source: 'definition' },
  ],
}
