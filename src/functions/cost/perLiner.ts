import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { money, shares } from '../../core/definition/parameter'

export const perLiner = defineBySteps({
  id: 'PERLINER',
  subject: 'cost',
  parameters: {
    costPerCutting: money('money per cutting', { text: 'cost of one cutting stuck', example: 0.5 }),
    stageRates: shares({
      text: 'the share that survives each stage (strike, potting on, grade-out), one cell a stage',
      example: 0.9,
      above: 0,
      atMost: 1,
    }),
  },
  result: { name: 'costPerLiner', unit: 'money per saleable liner' },
  steps: [
    ['rate', 'PRODUCT(stageRates)', 'share', 'share of the cuttings that becomes a saleable liner'],
    ['costPerLiner', 'costPerCutting / rate', 'money per saleable liner', 'the survivors bear the cost of all'],
  ],
})

export const perLinerText: TextsOf<typeof perLiner> = {
  summary: 'Cost per saleable liner from a cost per cutting.',
  convention: 'Losses divide: a cost of 0.50 with 10 % lost is 0.5556 for each that is left, not 0.55.',
  result: 'cost per saleable liner',
  examples: [
    {
      text: '0.50 with a tenth lost is 0.5556',
      given: [0.5, [0.9]],
      gives: 0.555555555555556,
      source: 'growertalks-shrinkage',
    },
    {
      text: 'Three stages of 85, 95 and 97 %',
      given: [0.08, [0.85, 0.95, 0.97]],
      gives: 0.102135265392104,
      source: 'definition',
    },
  ],
}
