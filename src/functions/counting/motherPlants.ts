import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { number, share } from '../../core/definition/parameter'

export const motherPlants = defineBySteps({
  id: 'MOTHERPLANTS',
  subject: 'counting',
  parameters: {
    cuttings: number('cuttings', { text: 'cuttings to stick', example: 6000, atLeast: 0 }),
    perPlantAndFlush: number('cuttings', { text: 'cuttings that a plant gives in one flush', example: 2.5, above: 0 }),
    flushes: number('flushes', { text: 'flushes taken for these cuttings', example: 8, atLeast: 1, whole: true }),
    usableShare: share({
      text: 'share of the cuttings taken that is fit to stick',
      example: 0.9,
      default: 1,
      above: 0,
      atMost: 1,
    }),
    spareShare: share({ text: 'share of the plants that is kept in reserve', example: 0.1, default: 0, below: 1 }),
  },
  result: { name: 'plants', unit: 'plants' },
  steps: [
    [
      'perPlant',
      'perPlantAndFlush * flushes * usableShare',
      'cuttings per plant',
      'fit to stick, off one plant in all flushes',
    ],
    ['plants', 'ROUNDUP(cuttings / (perPlant * (1 - spareShare)), 0)', 'plants', 'whole plants with the reserve'],
  ],
})

export const motherPlantsText: TextsOf<typeof motherPlants> = {
  summary: 'Whole stock plants that give the cuttings of a season.',
  convention:
    'A flush is one taking of cuttings off a plant; count those that fall before the cuttings are stuck. usableShare is a share of the cuttings taken, and spareShare one of the plants: those kept in reserve for what dies or is rested. Both divide. Part of a plant counts as a plant.',
  result: 'stock plants to keep',
  examples: [
    {
      text: '6,000 cuttings in 8 weeks off geraniums that give 2.5 a week',
      given: [6000, 2.5, 8],
      gives: 300,
      source: 'faust-dole-lopez',
    },
    {
      text: 'The same with nine tenths of them fit to stick, and a tenth of the plants in reserve',
      given: [6000, 2.5, 8, 0.9, 0.1],
      gives: 371,
      source: 'definition',
    },
  ],
}
