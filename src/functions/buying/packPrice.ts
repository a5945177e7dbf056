import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, number, quantity, share } from '../../core/definition/parameter'

export const packPrice = defineBySteps({
  id: 'PACKPRICE',
  subject: 'buying',
  parameters: {
    packPrice: money('money per pack', { text: 'price of one pack', example: 24 }),
    packVolumeL: quantity('L', { text: 'volume that the pack declares', example: 107, above: 0 }),
    expansion: number('loose L per declared L', {
      text: 'loose litres from one declared litre; 1 for loose bags',
      example: 1.9,
      default: 1,
      above: 0,
    }),
    deliveryPerPack: money('money per pack', { text: 'delivery for one pack', example: 0.6, default: 0 }),
    wasteShare: share({
      text: 'share of the loose medium that is lost in store and handling',
      example: 0.04,
      default: 0,
      below: 1,
    }),
  },
  result: { name: 'pricePerLitre', unit: 'money per loose L' },
  steps: [
    ['paid', 'packPrice + deliveryPerPack', 'money per pack', 'pack and delivery'],
    ['usable', 'packVolumeL * expansion * (1 - wasteShare)', 'L loose per pack', 'loose litres that reach the bench'],
    ['pricePerLitre', 'paid / usable', 'money per loose L', 'price of a usable loose litre'],
  ],
})

export const packPriceText: TextsOf<typeof packPrice> = {
  summary: 'Price of a loose litre out of a bag, bale, brick or bulk load.',
  convention:
    'The declared volume of a compressed pack is not loose litres: expansion tells how many loose litres one declared litre gives. Take it from the label or from your own test. Waste divides.',
  result: 'price of a usable loose litre',
  examples: [
    {
      text: 'A bale of 107 L at 24.00 that opens to 1.9 times its volume',
      given: [24, 107, 1.9],
      gives: 0.118052139695032,
      source: 'definition',
    },
    {
      text: 'A bag of 50 L at 9.00, 0.60 delivery, 4 % wasted',
      given: [9, 50, 1, 0.6, 0.04],
      gives: 0.2,
      source: 'definition',
    },
  ],
}
