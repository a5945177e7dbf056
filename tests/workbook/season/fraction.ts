const digits = 60n

/** Exact fractions, so that no expected figure of a test carries the dust of doubles. */
export class Fraction {
  readonly above: bigint
  readonly below: bigint

  constructor(above: bigint, below = 1n) {
    if (below === 0n) throw new Error('A fraction has nothing below its line.')
    const common = commonFactor(above, below) * (below < 0n ? -1n : 1n)
    this.above = above / common
    this.below = below / common
  }

  /** A number is taken as the decimal that it is written as. */
  static of(value: Fraction | number): Fraction {
    if (value instanceof Fraction) return value
    const [, digits = '', decimals = '', exponent = '0'] = /^(-?\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value))!
    const shift = Number(exponent) - decimals.length
    const whole = BigInt(digits + decimals)
    return shift < 0 ? new Fraction(whole, 10n ** BigInt(-shift)) : new Fraction(whole * 10n ** BigInt(shift))
  }

  plus(other: Fraction | number): Fraction {
    const { above, below } = Fraction.of(other)
    return new Fraction(this.above * below + above * this.below, this.below * below)
  }

  minus(other: Fraction | number): Fraction {
    return this.plus(Fraction.of(other).times(-1))
  }

  times(other: Fraction | number): Fraction {
    const { above, below } = Fraction.of(other)
    return new Fraction(this.above * above, this.below * below)
  }

  over(other: Fraction | number): Fraction {
    const { above, below } = Fraction.of(other)
    return new Fraction(this.above * below, this.below * above)
  }

  power(exponent: number): Fraction {
    return new Fraction(this.above ** BigInt(exponent), this.below ** BigInt(exponent))
  }

  isBelow(other: Fraction | number): boolean {
    return this.minus(other).above < 0n
  }

  equals(other: Fraction | number): boolean {
    return this.minus(other).above === 0n
  }

  atLeast(other: Fraction | number): Fraction {
    return this.isBelow(other) ? Fraction.of(other) : this
  }

  down(): Fraction {
    const rest = ((this.above % this.below) + this.below) % this.below
    return new Fraction((this.above - rest) / this.below)
  }

  up(): Fraction {
    return this.times(-1).down().times(-1)
  }

  /** Up to a multiple of a step. */
  upTo(step: Fraction | number): Fraction {
    return this.over(step).up().times(step)
  }

  /** To the cent; half a cent goes away from 0, as on an invoice. */
  toCent(): Fraction {
    const rounded = (positive: Fraction) => positive.times(100).plus(0.5).down().over(100)
    return this.isBelow(0) ? rounded(this.times(-1)).times(-1) : rounded(this)
  }

  /** To 60 decimals, so that a long row of products does not grow without end. */
  cut(): Fraction {
    return this.times(new Fraction(10n ** digits))
      .down()
      .over(new Fraction(10n ** digits))
  }

  toNumber(): number {
    const size = (value: bigint) => String(value).length
    const scale = Math.max(0, 30 - size(this.above) + size(this.below))
    return Number(`${(this.above * 10n ** BigInt(scale)) / this.below}e-${scale}`)
  }
}

export const fraction = (value: Fraction | number): Fraction => Fraction.of(value)
export const sum = (values: readonly Fraction[]): Fraction =>
  values.reduce((total, value) => total.plus(value), fraction(0))
export const product = (values: readonly Fraction[]): Fraction =>
  values.reduce((total, value) => total.times(value), fraction(1))
export const greatest = (values: readonly Fraction[]): Fraction =>
  values.reduce((most, value) => most.atLeast(value), fraction(0))

/** The root of a fraction that is not negative, to 60 decimals. */
export function root(value: Fraction, degree: bigint): Fraction {
  const power = (value.above * 10n ** (digits * degree)) / value.below
  if (power === 0n) return fraction(0)
  let guess = 10n ** BigInt(Math.ceil(String(power).length / Number(degree)))
  for (;;) {
    const next = ((degree - 1n) * guess + power / guess ** (degree - 1n)) / degree
    if (next >= guess) return new Fraction(guess, 10n ** digits)
    guess = next
  }
}

/** value to the power of an exponent that need not be whole. */
export function raised(value: Fraction, exponent: Fraction): Fraction {
  return root(value.power(Number(exponent.above)), exponent.below)
}

/** To 60 decimals, by Machin's formula: 16 arctan(1/5) - 4 arctan(1/239). */
export const pi: Fraction = (() => {
  const one = 10n ** (digits + 10n)
  const arctan = (inverse: bigint) => {
    let total = 0n
    for (let term = one / inverse, odd = 1n, sign = 1n; term > 0n; term /= inverse * inverse, odd += 2n, sign = -sign)
      total += (sign * term) / odd
    return total
  }
  return new Fraction(16n * arctan(5n) - 4n * arctan(239n), one)
})()

function commonFactor(one: bigint, other: bigint): bigint {
  let [a, b] = [one < 0n ? -one : one, other < 0n ? -other : other]
  while (b > 0n) [a, b] = [b, a % b]
  return a === 0n ? 1n : a
}
