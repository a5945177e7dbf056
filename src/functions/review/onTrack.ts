import { lastOf } from '../../core/definition/columns'
import { defineTable, type Cell, type RefusalWithoutKind, type TextsOf } from '../../core/definition/definition'
import { number, numbers, share, shares } from '../../core/definition/parameter'
import { chancesOfSum, leastFurther, tailOf, type Chances } from '../../core/method/sumOfBatches'
import { Decimal, one, zero } from '../../core/quantity/decimal'
import { roundUpToWhole } from '../../core/quantity/rounding'
import { distributionName, rateOf } from '../counting/survival'

/** Beyond these a cell of a sheet would wait for the answer. */
const mostBatches = 1000
const mostGrowing = 1_000_000
const mostFurther = 1_000_000

const columns = {
  expected: { heading: 'expected liners' },
  chance: { heading: 'chance of having enough' },
  further: { heading: 'further cuttings' },
}

export const onTrack = defineTable({
  id: 'ONTRACK',
  subject: 'review',
  parameters: {
    liners: number('liners', { text: 'liners that were promised', example: 51, atLeast: 0, atMost: 10_000_000 }),
    growing: numbers('cuttings', { text: 'what lives of each batch now, one cell a batch', example: 60, whole: true }),
    ratesLeft: shares({
      text: 'the share of these that will still become liners, one for all batches or one for each',
      example: 0.9,
      atMost: 1,
      oneForAll: true,
    }),
    batchSpread: share({
      text: 'how far those rates differ from batch to batch (their standard deviation, from BATCHSPREAD)',
      example: 0,
      default: 0,
      below: 1,
    }),
    newRates: shares({
      text: 'the share of further cuttings that survives each stage, one cell a stage',
      example: 0.5,
      optional: true,
      above: 0,
      atMost: 1,
      list: 'new',
    }),
    confidence: share({
      text: 'the chance of having at least that many liners; left out, the average decides',
      above: 0,
      below: 1,
      optional: true,
    }),
  },
  result: { name: 'outlook', unit: 'table', columns },
  method: ({ liners, growing, ratesLeft, batchSpread, newRates, confidence }) => {
    const stages = newRates.filter((rate) => rate !== undefined)
    const newRate = stages.length === 0 ? undefined : rateOf(stages)
    const problem = problemOf(growing, ratesLeft, newRate, batchSpread)
    if (problem !== undefined) return { problem }

    const need = roundUpToWhole(liners).toNumber()
    const survivalOf = (rate: Decimal) => ({ mean: rate.toNumber(), batchSpread: batchSpread.toNumber() })
    const expected = growing.reduce((sum, count, batch) => sum.add(count.mul(ratesLeft[batch]!)), zero)
    const chances = chancesOfSum(
      growing.map((size, batch) => ({ size: size.toNumber(), survival: survivalOf(ratesLeft[batch]!) })),
    )
    const chance = new Decimal(tailOf(chances)(need))
    const further =
      confidence === undefined
        ? onAverage(liners.sub(expected), newRate)
        : withConfidence(need, confidence, chances, newRate && survivalOf(newRate))
    return {
      table: [{ expected, chance, further }],
      working: () => [
        {
          name: 'expected',
          text: 'liners that come of all batches on average',
          formula: 'SUMPRODUCT(growing, ratesLeft)',
          value: expected,
          unit: 'liners',
        },
        {
          name: 'chance',
          text: 'the chance of at least the liners promised',
          formula: `Pr(X >= liners), X the sum of ${distributionName(batchSpread)}(growing, ratesLeft)`,
          value: chance,
          unit: 'share',
        },
        ...(newRate === undefined
          ? []
          : [
              {
                name: 'newRate',
                text: 'share of the further cuttings that becomes a saleable liner',
                formula: 'PRODUCT(newRates)',
                value: newRate,
                unit: 'share',
              },
            ]),
        {
          name: 'further',
          text: 'cuttings to stick again',
          formula:
            confidence === undefined
              ? 'ROUNDUP(MAX(liners - expected, 0) / newRate, 0)'
              : `least n with Pr(X + Y >= liners) >= confidence, Y ${distributionName(batchSpread)}(n, newRate)`,
          value: further,
          unit: 'cuttings',
        },
      ],
    }
  },
})

export const onTrackText: TextsOf<typeof onTrack> = {
  summary: 'Whether the batches that grow will give the liners promised, and how many cuttings to stick again if not.',
  convention:
    'Each batch survives by itself: the number of liners is the sum of binomial numbers, one a batch, with the rate that is left to it, or of beta-binomial ones with batchSpread; for one batch that is the chance of CUTTINGS. Count what lives now, not what was stuck; a rate of 1 is for liners that are ready. The further cuttings are one batch more, with all its stages before it. Without a confidence they are enough on average only; with one, they are the least with which the chance of all together reaches it. Whether there is time for them, STICKDAY tells.',
  result: 'one row: where the batches lead, and what is lacking',
  columns: {
    expected: { text: 'liners that come of all batches on average', unit: 'liners' },
    chance: { text: 'the chance of at least the liners promised', unit: 'share' },
    further: {
      text: 'cuttings to stick again, not known without newRates; 0 where what grows is enough',
      unit: 'cuttings',
    },
  },
  plain: (columns) => ({
    reason:
      'Excel has no formula for the sum of batches with rates of their own, nor for the number of trials. The check is for the liners expected and, where there is one batch without batchSpread, for its chance.',
    check:
      `LET(expectedOne, SUM(TOCOL(growing, 1) * TOCOL(ratesLeft, 1)), chanceOne, ${lastOf(columns, 'chance', 'outlook')}, ` +
      `AND(ABS(${lastOf(columns, 'expected', 'outlook')} - expectedOne) <= expectedOne / 10 ^ 12, ` +
      'IF(COUNT(growing) + (batchSpread > 0) + (liners <= 0) > 1, TRUE, ' +
      'ABS(1 - BINOM.DIST(ROUNDUP(liners, 0) - 1, SUM(growing), MIN(ratesLeft), TRUE) - chanceOne) < 10 ^ -9)))',
  }),
  examples: [
    {
      text: '60 cuttings that live at 90 % are 54 liners on average, and 51 come of them with a chance of 93 %',
      given: [51, [60], [0.9]],
      gives: [[54, 0.926934489916301, 0]],
      source: 'definition',
    },
    {
      text: 'Two batches of 2 and 1 at one half, for 3 liners: an eighth, and 3 further cuttings on average',
      given: [3, [2, 1], [0.5], 0, [0.5]],
      gives: [[1.5, 0.125, 3]],
      source: 'definition',
    },
  ],
}

function onAverage(missing: Decimal, newRate: Decimal | undefined): Cell {
  if (missing.lte(0)) return zero
  return newRate === undefined ? { fact: 'notKnown' } : roundUpToWhole(missing.div(newRate))
}

function withConfidence(
  need: number,
  confidence: Decimal,
  growing: Chances,
  survival: { readonly mean: number; readonly batchSpread: number } | undefined,
): Cell {
  // Without a rate for them, further cuttings are not counted, but whether none is needed is known.
  const most = survival === undefined ? 0 : mostFurther
  const further = leastFurther(need, confidence.toNumber(), growing, survival ?? { mean: 0, batchSpread: 0 }, most)
  if (further !== undefined) return new Decimal(further)
  return survival === undefined ? { fact: 'notKnown' } : { fact: 'moreThan', most: new Decimal(most) }
}

/** Too many to count, or batches that differ by more than their rates leave room for. */
function problemOf(
  growing: readonly Decimal[],
  ratesLeft: readonly Decimal[],
  newRate: Decimal | undefined,
  batchSpread: Decimal,
): RefusalWithoutKind | undefined {
  if (growing.length > mostBatches)
    return { code: 'tooManyRows', parameter: 'growing', got: growing.length, most: mostBatches }
  const all = growing.reduce((sum, count) => sum.add(count))
  if (all.gt(mostGrowing))
    return {
      code: 'outOfRange',
      parameter: 'growing',
      value: all.toString(),
      limit: { is: 'atMost', value: mostGrowing },
    }
  const rates = [...ratesLeft.map((rate) => ['ratesLeft', rate] as const), ['newRates', newRate ?? one] as const]
  for (const [other, rate] of rates) {
    const widest = rate.mul(one.sub(rate)).sqrt()
    // At 0 and at 1 nothing is left to chance, and so nothing to differ.
    if (batchSpread.isZero() || widest.isZero() || batchSpread.lt(widest)) continue
    return {
      code: 'sharesExclude',
      parameter: 'batchSpread',
      other,
      value: batchSpread.toString(),
      limit: widest.toSignificantDigits(4).toString(),
    }
  }
  return undefined
}
