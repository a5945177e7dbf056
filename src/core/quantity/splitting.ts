import { Decimal, zero } from './decimal'

/**
 * Splits an amount of money by weights so that the parts add up to it exactly: every part is rounded down to the cent,
 * and the cents that are left go to the largest remainders, the earlier part first where they tie (the method of
 * Hamilton, or of the largest remainder). An amount with finer decimals is split in its own last decimal.
 * @param amount Not negative.
 * @param weights Not negative, and not all 0.
 */
export function splitByWeights(amount: Decimal, weights: readonly Decimal[]): readonly Decimal[] {
  const decimals = Math.max(2, amount.decimalPlaces())
  const sum = weights.reduce((total, weight) => total.add(weight), zero)
  const exact = weights.map((weight) => amount.mul(weight).div(sum))
  const parts = exact.map((part) => part.toDecimalPlaces(decimals, Decimal.ROUND_DOWN))
  const unit = new Decimal(10).pow(-decimals)
  const unitsLeft = amount
    .sub(parts.reduce((total, part) => total.add(part), zero))
    .div(unit)
    .toNumber()
  const remainders = exact.map((part, place) => ({ place, remainder: part.sub(parts[place]!) }))
  // Sorting keeps equal remainders in their order.
  const first = remainders.sort((a, b) => b.remainder.cmp(a.remainder)).slice(0, unitsLeft)
  for (const { place } of first) parts[place] = parts[place]!.add(unit)
  return parts
}
