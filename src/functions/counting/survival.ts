/** What CUTTINGS and OVERSTICK have in common: how many of the cuttings survive, and how much that varies. */
import type { RefusalWithoutKind, WorkingStep } from '../../core/definition/definition'
import type { Survival } from '../../core/method/binomialTail'
import { one, type Decimal } from '../../core/quantity/decimal'
import { roundUpToWhole } from '../../core/quantity/rounding'

/** Beyond this a cell of a sheet would wait for the answer. */
const mostLiners = 10_000_000
/** Cuttings beyond which no search goes. */
export const mostCuttings = 1e12

/** The share that survives all stages. */
export function rateOf(stageRates: readonly Decimal[]): Decimal {
  return stageRates.reduce((product, stage) => product.mul(stage), one)
}

export function rateStepOf(rate: Decimal): WorkingStep {
  return {
    name: 'rate',
    text: 'share of the cuttings that becomes a saleable liner',
    formula: 'PRODUCT(stageRates)',
    value: rate,
    unit: 'share',
  }
}

/** Whole liners and the survival in doubles; part of a liner counts as one. */
export function survivalOf(
  liners: Decimal,
  rate: Decimal,
  batchSpread: Decimal,
): { readonly need: number; readonly survival: Survival } | { readonly problem: RefusalWithoutKind } {
  const problem = batchSpread.gt(0) ? spreadProblem(rate, batchSpread) : undefined
  if (problem !== undefined) return { problem }
  if (liners.gt(mostLiners)) {
    return {
      problem: {
        code: 'outOfRange',
        parameter: 'liners',
        value: liners.toString(),
        limit: { is: 'atMost', value: mostLiners },
      },
    }
  }
  return {
    need: roundUpToWhole(liners).toNumber(),
    survival: { mean: rate.toNumber(), batchSpread: batchSpread.toNumber() },
  }
}

/** Where no rates of batches between 0 and 1 have that average and spread. */
function spreadProblem(rate: Decimal, batchSpread: Decimal): RefusalWithoutKind | undefined {
  const widest = rate.mul(one.sub(rate)).sqrt()
  const refused = { parameter: 'batchSpread', other: 'stageRates', value: batchSpread.toString() }
  if (widest.isZero()) return { code: 'noSpreadAtOne', ...refused }
  if (batchSpread.lt(widest)) return undefined
  return { code: 'sharesExclude', ...refused, limit: widest.toSignificantDigits(4).toString() }
}

export function distributionName(batchSpread: Decimal): string {
  return batchSpread.isZero() ? 'binomial' : 'beta-binomial'
}
