/**
 * Binomial and Poisson chances of large numbers. The grid's engine multiplies factorials, which end at 170! and for
 * binomials at 1,029 trials: BINOM.DIST(515,1030,0.5,TRUE) was blank, BINOM.INV(2000,0.85,0.1) was 2000 in place of
 * 1679, and POISSON.DIST(200,200,TRUE) blank. Here each chance is found from its neighbour, beginning at the most
 * likely number, and their sum is 1. Nothing of our own functions is used, whose check formulas ask these. Seen with
 * univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, ErrorType, ErrorValueObject, NumberValueObject } from '@univerjs/engine-formula'
import { numbersByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

export function countChances(injector: Injector): void {
  const count = (names: readonly string[], chance: (...numbers: readonly number[]) => number | undefined): void => {
    const found = (...numbers: readonly number[]): BaseValueObject => {
      const value = chance(...numbers)
      return value === undefined ? ErrorValueObject.create(ErrorType.NUM) : NumberValueObject.create(value)
    }
    replaceFunctions(
      injector,
      names,
      (_engine, asked) =>
        (...given) =>
          numbersByCell(asked, given, found),
    )
  }

  count(['BINOM.DIST', 'BINOMDIST'], (counted, trials, chance, cumulative) => {
    const [x, n] = [Math.trunc(counted!), Math.trunc(trials!)]
    if (x < 0 || x > n || !isChance(chance!) || n > largest) return undefined
    const { just, upTo } = binomial(n, chance!)
    return cumulative ? upTo(x) : just(x)
  })
  count(['BINOM.DIST.RANGE'], (trials, chance, from, to = from) => {
    const [n, first, last] = [trials, from, to].map((number) => Math.trunc(number!)) as [number, number, number]
    if (!isChance(chance!) || first < 0 || last < first || last > n || n > largest) return undefined
    return binomial(n, chance!).between(first, last)
  })
  count(['BINOM.INV', 'CRITBINOM'], (trials, chance, share) => {
    const n = Math.trunc(trials!)
    if (n < 0 || n > largest || chance! <= 0 || chance! >= 1 || share! <= 0 || share! >= 1) return undefined
    return binomial(n, chance!).first(share!)
  })
  count(['POISSON.DIST', 'POISSON'], (counted, mean, cumulative) => {
    const x = Math.trunc(counted!)
    if (x < 0 || mean! < 0 || mean! > largest) return undefined
    const { just, upTo } = distribution(Math.floor(mean!), Infinity, (k) => mean! / (k + 1))
    return cumulative ? upTo(x) : just(x)
  })
}

/** So many trials take about a tenth of a second; of more, and of a larger mean, nobody would wait for the end. */
const largest = 1e9

const isChance = (chance: number): boolean => chance >= 0 && chance <= 1

interface Distribution {
  just(count: number): number
  between(first: number, last: number): number
  upTo(count: number): number
  /** The smallest count that is not exceeded with at least this chance. */
  first(share: number): number
}

function binomial(trials: number, chance: number): Distribution {
  const odds = chance / (1 - chance)
  const mostLikely = Math.min(trials, Math.floor((trials + 1) * chance))
  return distribution(mostLikely, trials, (count) => (odds * (trials - count)) / (count + 1))
}

/** As a part of the largest chance. Smaller numbers lose digits, and the smallest of all would never become 0. */
const nothing = 1e-300

/** Of counts from 0 to `last`; `next` is the chance of one more than a count, as a part of the chance of that count. */
function distribution(mostLikely: number, last: number, next: (count: number) => number): Distribution {
  const [above, below] = [[1], [] as number[]]
  for (let count = mostLikely; count < last && above.at(-1)! > nothing; count++) above.push(above.at(-1)! * next(count))
  for (let count = mostLikely - 1; count >= 0 && (below.at(-1) ?? 1) > nothing; count--)
    below.push((below.at(-1) ?? 1) / next(count))
  const least = mostLikely - below.length
  const weights = [...below.reverse(), ...above]
  // The small ones first, so that none is lost.
  const total = sum(below) + sum([...above].reverse())
  const part = (first: number, end: number) => weights.slice(Math.max(0, first - least), Math.max(0, end + 1 - least))
  const between = (first: number, end: number) =>
    (first > mostLikely ? sum(part(first, end).reverse()) : sum(part(first, end))) / total
  return {
    just: (count) => (weights[count - least] ?? 0) / total,
    between,
    upTo: (count) => (count < mostLikely ? between(0, count) : 1 - between(count + 1, Infinity)),
    first(share) {
      let reached = 0
      const place = weights.findIndex((weight) => (reached += weight) >= share * total)
      return least + (place < 0 ? weights.length - 1 : place)
    },
  }
}

function sum(numbers: readonly number[]): number {
  let all = 0
  for (const number of numbers) all += number
  return all
}
