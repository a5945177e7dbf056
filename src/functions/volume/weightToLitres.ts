import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { quantity, share } from '../../core/definition/parameter'

export const weightToLitres = defineBySteps({
  id: 'WEIGHTTOLITRES',
  subject: 'volume',
  parameters: {
    weightKg: quantity('kg', { text: 'weight as it is sold', example: 1000, atLeast: 0 }),
    bulkDensityKgM3: quantity('kg/m3', { text: 'loose bulk density of the dry medium', example: 1600, above: 0 }),
    moistureShare: share({ text: 'water as a share of the moist weight', default: 0, below: 1 }),
  },
  result: { name: 'litres', unit: 'L loose' },
  steps: [
    ['dryKg', 'weightKg * (1 - moistureShare)', 'kg', 'weight without the water'],
    ['litres', '1000 * dryKg / bulkDensityKgM3', 'L loose', 'loose medium'],
  ],
})

export const weightToLitresText: TextsOf<typeof weightToLitres> = {
  summary: 'Litres of a medium that is sold by weight, such as sand.',
  convention: 'The density is that of the dry medium, and moistureShare is water as a share of the moist weight.',
  result: 'loose medium',
  examples: [
    { text: 'One tonne of dry sand of 1,600 kg/m3', given: [1000, 1600], gives: 625, source: 'definition' },
    { text: 'The same with 5 % of water', given: ['1 t', 1600, 0.05], gives: 593.75, source: 'definition' },
  ],
}
