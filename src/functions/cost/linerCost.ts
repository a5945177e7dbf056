import { defineByMethod, type TextsOf } from '../../core/definition/definition'
import { numbers, shares } from '../../core/definition/parameter'
import { zero } from '../../core/quantity/decimal'

export const linerCost = defineByMethod({
  id: 'LINERCOST',
  subject: 'cost',
  parameters: {
    stageCosts: numbers('money per unit entering', {
      text: 'what each stage costs for every cutting or plant that enters it',
      example: 0.2,
    }),
    stageRates: shares({
      text: 'the share that survives each stage (strike, potting on, grade-out), one cell a stage',
      example: 0.8,
      above: 0,
      atMost: 1,
    }),
  },
  result: { name: 'costPerLiner', unit: 'money per saleable liner' },
  method: ({ stageCosts, stageRates }) => {
    const ratesFromHere = stageRates.slice()
    for (let stage = stageRates.length - 2; stage >= 0; stage--)
      ratesFromHere[stage] = stageRates[stage]!.mul(ratesFromHere[stage + 1]!)
    const borne = stageCosts.map((cost, stage) => cost.div(ratesFromHere[stage]!))
    const costPerLiner = borne.reduce((sum, cost) => sum.add(cost), zero)
    return {
      value: costPerLiner,
      working: () => [
        {
          name: 'ratesFromHere',
          text: 'share of what enters each stage that becomes a saleable liner',
          formula: 'product of stageRates from this stage on',
          value: ratesFromHere,
          unit: 'share',
        },
        {
          name: 'borne',
          text: 'what each stage costs a saleable liner',
          formula: 'stageCosts / ratesFromHere',
          value: borne,
          unit: 'money per saleable liner',
        },
        {
          name: 'costPerLiner',
          text: 'all stages together',
          formula: 'SUM(borne)',
          value: costPerLiner,
          unit: 'money per saleable liner',
        },
      ],
    }
  },
})

export const linerCostText: TextsOf<typeof linerCost> = {
  summary: 'Cost per saleable liner where each stage has its own cost and its own losses.',
  convention:
    'The cost of a stage is for each cutting or plant that enters it, and its rate is the share of those that leaves it alive. What is spent early is borne by the few that come through all later stages, so a late loss is the dearest. With one stage it is PERLINER.',
  result: 'cost per saleable liner',
  plain: () => ({
    // What was borne up to a stage enters it beside the stage's own cost, and the survivors bear both.
    formula:
      'LET(costEach, TOCOL(stageCosts, 1), rateEach, TOCOL(stageRates, 1), ' +
      'REDUCE(0, SEQUENCE(ROWS(rateEach)), LAMBDA(borne, stage, (borne + INDEX(costEach, stage)) / INDEX(rateEach, stage))))',
  }),
  examples: [
    {
      text: 'Sticking 0.20 with 80 % striking, potting on 0.30 with 95 % living',
      given: [
        [0.2, 0.3],
        [0.8, 0.95],
      ],
      gives: 0.578947368421053,
      source: 'definition',
    },
    {
      text: 'One stage: 0.50 with a tenth lost',
      given: [[0.5], [0.9]],
      gives: 0.555555555555556,
      source: 'growertalks-shrinkage',
    },
  ],
}
