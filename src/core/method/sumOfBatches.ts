/**
 * Chances of a number of survivors among several batches, each with a rate of its own, in doubles. The chances of one
 * batch follow from one another by a factor; those of two batches together are folded (convolved) by the fast Fourier
 * transform, which is off by some 1e-15 of a chance and takes no longer for batches that differ than for others.
 */
import { priorOf, tieTolerance, type Survival } from './binomialTail'

export interface Batch {
  readonly size: number
  /** The mean may be 0 or 1, and then all is certain. */
  readonly survival: Survival
}

/** The chances of the whole numbers from `from` on; those of all others are too small to count. */
export interface Chances {
  readonly from: number
  readonly of: Float64Array
}

export function chancesOfSum(batches: readonly Batch[]): Chances {
  const parts = batches.map(chancesOfBatch)
  // In pairs, and those in pairs again: all folds but the last few are short.
  while (parts.length > 1) parts.push(folded(parts.shift()!, parts.shift()!))
  return parts[0]!
}

/** Of a share of that which it is at the start, chances end. */
const tooSmall = 1e-20

function chancesOfBatch({ size, survival }: Batch): Chances {
  const { mean } = survival
  if (size === 0 || mean === 0 || mean === 1) return { from: size * mean, of: Float64Array.of(1) }
  const prior = priorOf(survival)
  /** How many times likelier one more than k is. */
  const factor = (k: number) =>
    ((size - k) / (k + 1)) * (prior === undefined ? mean / (1 - mean) : (prior.alive + k) / (prior.dead + size - k - 1))
  const start = Math.floor(size * mean)
  const below: number[] = []
  for (let [k, chance] = [start, 1]; k > 0 && chance > tooSmall; k--) below.push((chance /= factor(k - 1)))
  const above: number[] = []
  for (let [k, chance] = [start, 1]; k < size && chance > tooSmall; k++) above.push((chance *= factor(k)))
  const of = Float64Array.from([...below.reverse(), 1, ...above])
  const sum = of.reduce((total, one) => total + one)
  return { from: start - below.length, of: of.map((one) => one / sum) }
}

/** The chances of two counts together: those of each sum of the one and the other. */
function folded(a: Chances, b: Chances): Chances {
  const length = a.of.length + b.of.length - 1
  const size = 2 ** Math.ceil(Math.log2(length))
  const [real, imaginary] = [new Float64Array(size), new Float64Array(size)]
  real.set(a.of)
  imaginary.set(b.of)
  transform(real, imaginary)
  // The square of a + ib is aa - bb + 2iab, so that one transform does for both.
  for (let at = 0; at < size; at++) {
    const [x, y] = [real[at]!, imaginary[at]!]
    real[at] = x * x - y * y
    imaginary[at] = 2 * x * y
  }
  // With the two parts exchanged, the same transform goes back.
  transform(imaginary, real)
  return { from: a.from + b.from, of: imaginary.subarray(0, length).map((one) => Math.max(0, one / (2 * size))) }
}

/** The fast Fourier transform of Cooley and Tukey in place, for lengths that are powers of 2. */
function transform(real: Float64Array, imaginary: Float64Array): void {
  const size = real.length
  for (let at = 1, mirrored = 0; at < size; at++) {
    let bit = size >> 1
    for (; mirrored & bit; bit >>= 1) mirrored ^= bit
    mirrored ^= bit
    if (at < mirrored) for (const part of [real, imaginary]) [part[at], part[mirrored]] = [part[mirrored]!, part[at]!]
  }
  for (let span = 1; span < size; span *= 2)
    for (let turn = 0; turn < span; turn++) {
      const [cosine, sine] = [Math.cos((Math.PI * turn) / span), -Math.sin((Math.PI * turn) / span)]
      for (let low = turn; low < size; low += 2 * span) {
        const high = low + span
        const x = real[high]! * cosine - imaginary[high]! * sine
        const y = real[high]! * sine + imaginary[high]! * cosine
        real[high] = real[low]! - x
        imaginary[high] = imaginary[low]! - y
        real[low]! += x
        imaginary[low]! += y
      }
    }
}

/** The chance of at least so many, for any whole number. */
export function tailOf({ from, of }: Chances): (least: number) => number {
  const tail = of.slice()
  for (let at = tail.length - 2; at >= 0; at--) tail[at]! += tail[at + 1]!
  return (least) => (least <= from ? 1 : Math.min(1, tail[least - from] ?? 0))
}

/**
 * The least number of further cuttings, a batch of their own, with which at least `need` survive with the given
 * confidence, or undefined where `most` are not enough. The chance grows with the number.
 */
export function leastFurther(
  need: number,
  confidence: number,
  growing: Chances,
  survival: Survival,
  most: number,
): number | undefined {
  const tail = tailOf(growing)
  const isMet = (size: number) => {
    const { from, of } = chancesOfBatch({ size, survival })
    return of.reduce((sum, chance, place) => sum + chance * tail(need - from - place), 0) >= confidence - tieTolerance
  }
  if (isMet(0)) return 0
  let [tooFew, enough] = [0, Math.min(1, most)]
  while (enough < most && !isMet(enough)) [tooFew, enough] = [enough, Math.min(2 * enough, most)]
  if (enough === most && !isMet(most)) return undefined
  while (enough > tooFew + 1) {
    const middle = Math.floor((tooFew + enough) / 2)
    if (isMet(middle)) enough = middle
    else tooFew = middle
  }
  return enough
}
