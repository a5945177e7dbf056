import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { number, quantity } from '../../core/definition/parameter'

export const bags = defineBySteps({
  id: 'BAGS',
  subject: 'buying',
  parameters: {
    neededL: quantity('L', { text: 'loose litres that are needed', example: 0.3, atLeast: 0 }),
    bagVolumeL: quantity('L', { text: 'volume that one bag declares', example: 60, above: 0 }),
    expansion: number('loose L per declared L', {
      text: 'loose litres from one declared litre; 1 for loose bags',
      example: 1.9,
      default: 1,
      above: 0,
    }),
    onHandL: quantity('L', { text: 'loose litres in stock', example: 150, default: 0, atLeast: 0 }),
    orderMultiple: number('bags', {
      text: 'bags that are sold together: a layer, a pallet',
      example: 4,
      default: 1,
      above: 0,
      whole: true,
    }),
    minimumBags: number('bags', {
      text: 'least order, where anything is bought',
      example: 0,
      default: 0,
      atLeast: 0,
      whole: true,
    }),
  },
  result: { name: 'bags', unit: 'bags' },
  steps: [
    ['short', 'MAX(neededL - onHandL, 0)', 'L loose', 'what the stock does not cover'],
    ['perBag', 'bagVolumeL * expansion', 'L loose per bag', 'loose litres from one bag'],
    ['opened', 'ROUNDUP(short / perBag, 0)', 'bags', 'bags that cover the shortfall'],
    ['ordered', 'IF(opened = 0, 0, MAX(opened, minimumBags))', 'bags', 'at least the least order'],
    ['bags', 'ROUNDUP(ordered / orderMultiple, 0) * orderMultiple', 'bags', 'up to a whole order unit'],
  ],
})

export const bagsText: TextsOf<typeof bags> = {
  summary: 'Bags, bales or bricks to buy for the litres that are needed.',
  convention:
    'The need and the stock are loose litres, the bag is its declared volume. Whole bags, in whole multiples of the order unit; 0 where the stock covers the need, else at least minimumBags.',
  result: 'bags to buy',
  examples: [
    { text: '0.3 m3 are 5 bags of 60 L', given: ['0.3 m3', 60], gives: 5, source: 'definition' },
    {
      text: 'Nine bags of 3 cubic feet for 100 square feet at 3 inches',
      given: ['25 ft3', '3 ft3'],
      gives: 9,
      source: 'garden-club-measurements',
    },
    {
      text: '2,000 L from bales of 107 L that open to 1.9 times, in layers of 4',
      given: [2000, 107, 1.9, 150, 4, 0],
      gives: 12,
      source: 'definition',
    },
  ],
}
