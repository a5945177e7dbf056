import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { quantity } from '../../core/definition/parameter'

export const cellVolume = defineBySteps({
  id: 'CELLVOLUME',
  subject: 'volume',
  parameters: {
    topLengthMm: quantity('mm', { text: 'inside length at the top', example: 40, above: 0 }),
    topWidthMm: quantity('mm', { text: 'inside width at the top', example: 40, above: 0 }),
    depthMm: quantity('mm', { text: 'inside depth', example: 50, above: 0 }),
    bottomLengthMm: quantity('mm', {
      text: 'inside length at the bottom',
      example: 28,
      default: { sameAs: 'topLengthMm' },
      above: 0,
    }),
    bottomWidthMm: quantity('mm', {
      text: 'inside width at the bottom',
      example: 28,
      default: { sameAs: 'topWidthMm' },
      above: 0,
    }),
  },
  result: { name: 'volume', unit: 'mL' },
  steps: [
    ['topArea', 'topLengthMm * topWidthMm', 'mm2', 'area at the top'],
    [
      'middleArea',
      '(topLengthMm + bottomLengthMm) / 2 * (topWidthMm + bottomWidthMm) / 2',
      'mm2',
      'area half way down',
    ],
    ['bottomArea', 'bottomLengthMm * bottomWidthMm', 'mm2', 'area at the bottom'],
    [
      'volume',
      'depthMm / 6 * (topArea + 4 * middleArea + bottomArea) / 1000',
      'mL',
      'prismatoid rule, 1000 mm3 to the mL',
    ],
  ],
})

export const cellVolumeText: TextsOf<typeof cellVolume> = {
  summary: 'Volume of a tapered rectangular cell from its inside measures.',
  convention:
    'Prismatoid rule: the middle section has the mean of the upper and the lower sides. Brimful; the settling of the mix is given in FILL.',
  result: 'volume of one cell',
  examples: [
    { text: 'A straight cell of 40 by 40 by 50 mm', given: [40, 40, 50], gives: 80, source: 'definition' },
    { text: 'The same, tapering to 28 by 28 mm', given: [40, 40, 50, 28, 28], gives: 58.4, source: 'definition' },
  ],
}
