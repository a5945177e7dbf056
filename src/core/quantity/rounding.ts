import { Decimal } from './decimal'

/**
 * Digits that a quotient is trusted to. Divisions keep 34 digits, so 2/3 x 3 may miss 2 by one part in
 * 10^34; inputs have 15 digits at most, so nothing that a user typed differs first in the 29th.
 */
const trustedDigits = 28

/** Drops the dust that divisions left, and nothing that an input could have meant. */
export function withoutDust(value: Decimal): Decimal {
  return value.precision() > trustedDigits ? value.toSignificantDigits(trustedDigits) : value
}

/** The least whole number that is not below the value: 5.000 is 5, 5.0000000001 is 6. */
export function roundUpToWhole(value: Decimal): Decimal {
  return withoutDust(value).ceil()
}
