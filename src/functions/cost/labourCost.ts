import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, number, share } from '../../core/definition/parameter'

export const labourCost = defineBySteps({
  id: 'LABOURCOST',
  subject: 'cost',
  parameters: {
    unitsPerHour: number('units per hour', {
      text: 'cuttings stuck, trays filled or units moved by one person in an hour',
      example: 600,
      above: 0,
    }),
    wagePerHour: money('money per hour', { text: 'wage of one hour', example: 15 }),
    onCostShare: share({
      text: 'what the employer pays on top, as a share of the wage: contributions, holidays, sick pay',
      example: 0.3,
      default: 0,
      atMost: 1,
    }),
  },
  result: { name: 'labourCost', unit: 'money per unit' },
  steps: [
    ['hourCost', 'wagePerHour * (1 + onCostShare)', 'money per hour', 'what an hour costs the nursery'],
    ['labourCost', 'hourCost / unitsPerHour', 'money per unit', 'the hour shared by the units of the hour'],
  ],
})

export const labourCostText: TextsOf<typeof labourCost> = {
  summary: 'Labour cost per unit from a pace and a wage.',
  convention:
    'The pace is that of one person, breaks and walking included. For several days, crews or sites, take all units over all hours: an average of their paces or costs would give a small slow day the weight of a large one.',
  result: 'labour cost per unit',
  examples: [
    {
      text: '600 cuttings an hour at a wage of 15 and 30 % on top',
      given: [600, 15, 0.3],
      gives: 0.0325,
      source: 'definition',
    },
    {
      text: 'A tray from filling to bench: 2,109 hours and 26,392 of wages for 1,316,111 cuttings, the averages of 14 firms',
      given: [624.045045045045, 12.5139876718824],
      gives: 0.0200530198440709,
      source: 'hortscience-53-1133',
    },
  ],
}
