import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { numbers, quantity, share } from '../../core/definition/parameter'

export const blendParts = defineBySteps({
  id: 'BLENDPARTS',
  subject: 'blend',
  parameters: {
    finishedLitres: quantity('L', { text: 'finished mix that is needed', example: 27, atLeast: 0 }),
    parts: numbers('parts', { text: 'parts by volume, one cell a component', notAllZero: true }),
    mixShrink: share({
      text: 'share of the summed volumes that vanishes in mixing',
      example: 0.15625,
      default: 0,
      below: 1,
    }),
  },
  result: { name: 'litres', unit: 'L loose', like: 'parts' },
  steps: [
    ['loose', 'finishedLitres / (1 - mixShrink)', 'L loose', 'all components together, before mixing'],
    ['litres', 'loose * parts / SUM(parts)', 'L loose', 'each component by its parts'],
  ],
})

export const blendPartsText: TextsOf<typeof blendParts> = {
  summary: 'Loose litres of each component for an amount of finished mix.',
  convention:
    'Spills in the shape of parts; a blank part takes 0 litres. With mixShrink the components add up to more than the finished mix.',
  result: 'loose litres of each component',
  examples: [
    {
      text: '27 cubic feet of mix from 32 of ingredients, half and half',
      given: ['27 ft3', [1, 1], 0.15625],
      gives: [[453.069545472], [453.069545472]],
      source: 'definition',
    },
  ],
}
