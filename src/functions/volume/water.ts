import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { number, quantity } from '../../core/definition/parameter'

export const water = defineBySteps({
  id: 'WATER',
  subject: 'volume',
  parameters: {
    vesselLitres: quantity('L', { text: 'water in one vessel', example: 8, above: 0 }),
    vessels: number('vessels', { text: 'vessels in use', example: 12, atLeast: 0 }),
    changeEveryDays: number('days', { text: 'days between two changes of the water', example: 5, above: 0 }),
    days: number('days', { text: 'days until the cuttings are rooted', example: 21, above: 0 }),
  },
  result: { name: 'litres', unit: 'L' },
  steps: [
    ['fillings', 'ROUNDUP(days / changeEveryDays, 0)', 'fillings', 'the first one and the changes'],
    ['litres', 'vesselLitres * vessels * fillings', 'L', 'water over the whole time'],
  ],
})

export const waterText: TextsOf<typeof water> = {
  summary: 'Litres of water for rooting in water, with its changes.',
  convention:
    'The first filling counts, and a part of an interval counts as a whole one: 21 days with a change every 5 days are 5 fillings.',
  result: 'water over the whole time',
  examples: [
    {
      text: '12 vessels of 8 L for 21 days, changed every 5 days',
      given: [8, 12, 5, 21],
      gives: 480,
      source: 'definition',
    },
  ],
}
