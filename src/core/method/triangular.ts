/** An amount that is known by its least, its likeliest and its largest value. */
export interface Triangular {
  readonly low: number
  readonly likely: number
  readonly high: number
}

/**
 * The value below which the share of all values lies that is given: the inverse of the distribution function of the
 * triangular distribution. The square root is exact by IEEE 754, so it is the same on every machine.
 */
export function quantileOf({ low, likely, high }: Triangular, share: number): number {
  const width = high - low
  if (width === 0) return likely
  const rising = likely - low
  // The width stands outside the root, since the product of two large widths would be larger than any number.
  const value =
    share * width < rising
      ? low + width * Math.sqrt(share * (rising / width))
      : high - width * Math.sqrt((1 - share) * ((high - likely) / width))
  // The last digit may round beyond an end, which may be a limit that nothing is accepted beyond.
  return Math.min(Math.max(value, low), high)
}
