import { defineByMethod, type TextsOf, type WorkingStep } from '../../core/definition/definition'
import { numbers } from '../../core/definition/parameter'
import { Decimal, one, zero } from '../../core/quantity/decimal'
import { isAtMost } from '../../core/quantity/rounding'

/** Batches that took or failed as a whole correlate fully, and no distribution of rates between 0 and 1 does. */
const mostCorrelation = new Decimal('0.9999')

export const batchSpread = defineByMethod({
  id: 'BATCHSPREAD',
  subject: 'counting',
  parameters: {
    stuck: numbers('cuttings', {
      text: 'cuttings that were stuck, one cell a batch',
      example: 100,
      above: 0,
      whole: true,
    }),
    taken: numbers('liners', {
      text: 'those of them that became liners, one cell a batch',
      example: 90,
      atLeast: 0,
      whole: true,
    }),
  },
  result: { name: 'batchSpread', unit: 'share' },
  method: ({ stuck, taken }) => {
    if (stuck.length < 2) return { problem: { code: 'tooFewRows', parameter: 'stuck', got: stuck.length, least: 2 } }
    const above = taken.findIndex((count, batch) => count.gt(stuck[batch]!))
    if (above >= 0) {
      return {
        problem: {
          code: 'aboveOther',
          parameter: 'taken',
          row: above + 1,
          value: taken[above]!.toString(),
          other: 'stuck',
          otherValue: stuck[above]!.toString(),
        },
      }
    }
    if (stuck.every((size) => size.eq(1))) return { problem: { code: 'batchesOfOne', parameter: 'stuck' } }
    const spread = spreadOf(stuck, taken)
    return { value: spread.batchSpread, working: () => workingOf(spread) }
  },
})

export const batchSpreadText: TextsOf<typeof batchSpread> = {
  summary: 'How much the true rate differs from batch to batch, from past batches, for CUTTINGS and OVERSTICK.',
  convention:
    'The standard deviation of the rates behind the batches: in some two batches of three the rate lies no farther than that from the average. What chance alone adds is taken off, by comparing how batches differ with how cuttings within a batch do (an analysis of variance), and 0 is left where the batches differ no more than chance. A correlation above 0.9999 counts as 0.9999.',
  result: 'how far the rate differs from batch to batch (its standard deviation)',
  plain: () => ({
    // A blank row has 0 in both ranges, and the empty batch is left out of what divides by it.
    formula:
      'LET(batches, COUNT(stuck), allStuck, SUM(stuck), rate, SUM(taken) / allStuck, ' +
      'ofBatches, SUM(IF(stuck > 0, taken ^ 2 / IF(stuck > 0, stuck, 1), 0)), ' +
      'between, (ofBatches - SUM(taken) * rate) / (batches - 1), within, (SUM(taken) - ofBatches) / (allStuck - batches), ' +
      'batchSize, (allStuck - SUMSQ(stuck) / allStuck) / (batches - 1), ' +
      'correlation, IF(between - within <= 10 ^ -12 * between, 0, (between - within) / (between + (batchSize - 1) * within)), ' +
      'SQRT(MIN(correlation, 0.9999) * rate * (1 - rate)))',
  }),
  examples: [
    {
      text: 'Three batches of 100, of which 90, 80 and 70 took',
      given: [
        [100, 100, 100],
        [90, 80, 70],
      ],
      gives: 0.09098739155269023,
      source: 'definition',
    },
    {
      text: 'Batches that differ no more than chance',
      given: [
        [100, 100, 100],
        [81, 80, 79],
      ],
      gives: 0,
      source: 'definition',
    },
  ],
}

/** An analysis of variance of the batches, and the spread that follows from it. */
interface Spread {
  readonly rate: Decimal
  readonly between: Decimal
  readonly within: Decimal
  readonly batchSize: Decimal
  readonly correlation: Decimal
  readonly batchSpread: Decimal
}

function spreadOf(stuck: readonly Decimal[], taken: readonly Decimal[]): Spread {
  const allStuck = sum(stuck)
  // Each cutting is 1 or 0, so its square is itself, and sums of squares are sums of counts.
  const allTaken = sum(taken)
  const rate = allTaken.div(allStuck)
  const ofBatches = sum(taken.map((count, batch) => count.mul(count).div(stuck[batch]!)))
  const between = Decimal.max(ofBatches.sub(allTaken.mul(rate)), 0).div(stuck.length - 1)
  const within = sum(taken.map((count, batch) => count.mul(one.sub(count.div(stuck[batch]!))))).div(
    allStuck.sub(stuck.length),
  )
  const batchSize = allStuck.sub(sum(stuck.map((size) => size.mul(size))).div(allStuck)).div(stuck.length - 1)
  // Where all were taken, or none, nothing differs within the batches or between them.
  const correlation = isAtMost(between, within)
    ? zero
    : between.sub(within).div(between.add(batchSize.sub(1).mul(within)))
  const batchSpread = Decimal.min(correlation, mostCorrelation).mul(rate).mul(one.sub(rate)).sqrt()
  return { rate, between, within, batchSize, correlation, batchSpread }
}

function workingOf({ rate, between, within, batchSize, correlation, batchSpread }: Spread): readonly WorkingStep[] {
  return [
    {
      name: 'rate',
      text: 'share of all cuttings that was taken',
      formula: 'SUM(taken) / SUM(stuck)',
      value: rate,
      unit: 'share',
    },
    {
      name: 'between',
      text: 'mean square between the batches',
      formula: '(sum of taken^2 / stuck - SUM(taken)^2 / SUM(stuck)) / (batches - 1)',
      value: between,
      unit: 'mean square',
    },
    {
      name: 'within',
      text: 'mean square within the batches',
      formula: 'sum of taken * (1 - taken / stuck) / (SUM(stuck) - batches)',
      value: within,
      unit: 'mean square',
    },
    {
      name: 'batchSize',
      text: 'mean size of a batch, less where the sizes differ',
      formula: '(SUM(stuck) - sum of stuck^2 / SUM(stuck)) / (batches - 1)',
      value: batchSize,
      unit: 'cuttings per batch',
    },
    {
      name: 'correlation',
      text: 'correlation within a batch, 0 where the batches differ no more than chance',
      formula: '(between - within) / (between + (batchSize - 1) * within)',
      value: correlation,
      unit: 'share',
    },
    {
      name: 'batchSpread',
      text: 'how far the rate differs from batch to batch (its standard deviation)',
      formula: 'SQRT(MIN(correlation, 0.9999) * rate * (1 - rate))',
      value: batchSpread,
      unit: 'share',
    },
  ]
}

function sum(values: readonly Decimal[]): Decimal {
  return values.reduce((total, value) => total.add(value), zero)
}
