import { defineByMethod, type TextsOf, type WorkingStep } from '../../core/definition/definition'
import { number, share, shares } from '../../core/definition/parameter'
import { leastToStick, chanceOfAtLeast } from '../../core/method/binomialTail'
import { Decimal } from '../../core/quantity/decimal'
import { roundUpToWhole } from '../../core/quantity/rounding'
import { distributionName, mostCuttings, rateOf, rateStepOf, survivalOf } from './survival'

export const cuttings = defineByMethod({
  id: 'CUTTINGS',
  subject: 'counting',
  parameters: {
    liners: number('liners', { text: 'liners that must be saleable', example: 1000, atLeast: 0 }),
    stageRates: shares({
      text: 'the share that survives each stage (strike, potting on, grade-out), one cell a stage',
      example: 0.85,
      above: 0,
      atMost: 1,
    }),
    confidence: share({
      text: 'the chance of having at least that many liners; left out, the average decides',
      example: 0.95,
      above: 0,
      below: 1,
      optional: true,
    }),
    batchSpread: share({
      text: 'how far the overall rate differs from batch to batch (its standard deviation, from BATCHSPREAD)',
      example: 0.0504975247,
      default: 0,
      below: 1,
    }),
  },
  result: { name: 'cuttings', unit: 'cuttings' },
  method: ({ liners, stageRates, confidence, batchSpread }) => {
    const rate = rateOf(stageRates)
    const rateStep = rateStepOf(rate)
    const average = roundUpToWhole(liners.div(rate))
    const averageStep: WorkingStep = {
      name: 'onAverage',
      text: 'cuttings that are enough on average',
      formula: 'ROUNDUP(liners / rate, 0)',
      value: average,
      unit: 'cuttings',
    }
    if (confidence === undefined) return { value: average, working: () => [rateStep, averageStep] }

    const read = survivalOf(liners, rate, batchSpread)
    if ('problem' in read) return read
    const { need, survival } = read
    // A rate of 1 loses nothing, and nothing can be short.
    const stuck =
      need === 0 || survival.mean === 1 ? need : leastToStick(need, confidence.toNumber(), survival, mostCuttings)
    if (stuck === undefined)
      return { problem: { kind: 'noAnswer', code: 'needsTooMany', most: mostCuttings.toLocaleString('en-US') } }
    return {
      value: new Decimal(stuck),
      working: () => [
        rateStep,
        averageStep,
        {
          name: 'cuttings',
          text: 'least number with the confidence asked for',
          formula: `least n with Pr(X >= liners) >= confidence, X ${distributionName(batchSpread)}(n, rate)`,
          value: new Decimal(stuck),
          unit: 'cuttings',
        },
        {
          name: 'chance',
          text: 'chance of having enough with that number',
          formula: 'Pr(X >= liners)',
          value: new Decimal(survival.mean === 1 ? 1 : chanceOfAtLeast(need, stuck, survival)),
          unit: 'share',
        },
      ],
    }
  },
})

export const cuttingsText: TextsOf<typeof cuttings> = {
  summary: 'Cuttings to stick for the liners that were promised, on average or with a chance of having enough.',
  convention:
    'The rates multiply, and the loss divides: 10 % lost of 100 needs 112 cuttings, not 110. Without a confidence the number is right on average only, so it falls short about every second time; batchSpread counts only with a confidence.',
  result: 'cuttings to stick',
  plain: () => ({
    reason:
      'Excel has no formula for the number of trials. Without a confidence it is ROUNDUP(liners/PRODUCT(stageRates),0).',
    check: '1-BINOM.DIST(liners-1,cuttings,PRODUCT(stageRates),TRUE)>=confidence',
  }),
  examples: [
    {
      text: '1,000 liners at 85 % take 1,177 cuttings on average',
      given: [1000, [0.85]],
      gives: 1177,
      source: 'definition',
    },
    {
      text: 'More than 50 survivors (51) at 90 %, with a chance of 95 %',
      given: [51, [0.9], 0.95],
      gives: 61,
      source: 'boost-negative-binomial',
    },
    {
      text: 'Batches that differ with an intra-batch correlation of 0.02',
      given: [1000, [0.85], 0.95, 0.0504975247],
      gives: 1320,
      source: 'definition',
    },
  ],
}
