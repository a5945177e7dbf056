import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, share } from '../../core/definition/parameter'

export const linerPrice = defineBySteps({
  id: 'LINERPRICE',
  subject: 'cost',
  parameters: {
    costPerLiner: money('money per saleable liner', { text: 'cost of one saleable liner', example: 2, above: 0 }),
    margin: share({ text: 'margin wanted, as a share of the selling price', example: 0.35, below: 1 }),
    priceStep: money('money', {
      text: 'what prices are whole multiples of, such as 0.05; 0 for no rounding',
      example: 0.01,
      default: 0,
    }),
  },
  result: { name: 'price', unit: 'money per liner' },
  steps: [
    ['markup', 'margin / (1 - margin)', 'share of the cost', 'the same margin, said as a markup on the cost'],
    ['exactPrice', 'costPerLiner / (1 - margin)', 'money per liner', 'price that keeps just this margin'],
    [
      'price',
      'IF(0 < priceStep, MAX(1, ROUNDUP(exactPrice / priceStep, 0)) * priceStep, exactPrice)',
      'money per liner',
      'rounded up to whole price steps, where there is a step',
    ],
  ],
})

export const linerPriceText: TextsOf<typeof linerPrice> = {
  summary: 'Selling price of a liner from its cost and the margin wanted.',
  convention:
    'The margin is a share of the selling price, a markup one of the cost: 35 % margin on 2.00 is 3.08, 50 % markup is 3.00. With priceStep the price is rounded up to whole steps, so it never keeps less than the margin; the least price is one step. Without tax.',
  result: 'selling price of one liner',
  examples: [
    {
      text: 'A cost of 2.00 at a margin of 35 %, to the cent',
      given: [2, 0.35, 0.01],
      gives: 3.08,
      source: 'definition',
    },
    { text: 'The same without rounding', given: [2, 0.35], gives: 3.07692307692308, source: 'definition' },
    {
      text: 'A cost of 0.418 at a margin of 30 %, in steps of 0.05',
      given: [0.418, 0.3, 0.05],
      gives: 0.6,
      source: 'definition',
    },
  ],
}
