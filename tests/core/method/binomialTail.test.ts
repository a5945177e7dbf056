import cdf from '@stdlib/stats-base-dists-binomial-cdf'
import { describe, expect, test } from 'vitest'
import {
  besideASurvivor,
  chanceOfAtLeast,
  expectedShortAndSurplus,
  leastToStick,
} from '../../../src/core/method/binomialTail'
import { chancesOf, onAverage, survivalOf, type Urn } from './urn'

/** Batches alike, nearly alike, uneven, and lost or alive as a whole; few, half and most of them living. */
const urns: readonly Urn[] = [
  { alive: 1, dead: 1, added: 0 },
  { alive: 17, dead: 3, added: 0 },
  { alive: 1, dead: 19, added: 0 },
  { alive: 17, dead: 3, added: 1 },
  { alive: 1, dead: 1, added: 1 },
  { alive: 1, dead: 1, added: 2 },
  { alive: 3, dead: 2, added: 10 },
  { alive: 1, dead: 9, added: 30 },
  { alive: 850, dead: 150, added: 1 },
  { alive: 999, dead: 1, added: 10 },
]
const named = urns.map((urn) => [`${urn.alive} of ${urn.alive + urn.dead} with ${urn.added} added`, urn] as const)

/** How far the chance lies off, as a share of it. */
function errorOf(expected: number, need: number, stuck: number, urn: Urn): number {
  return Math.abs(chanceOfAtLeast(need, stuck, survivalOf(urn)) / expected - 1)
}

test('chances that can be worked out by hand are exact to the last digits', () => {
  const half = { mean: 0.5, batchSpread: 0 }
  // 1 of 2: 3/4. 2 of 3: 4/8. All of 4: 1/16. 9 of 10: 11/1024.
  for (const [expected, need, stuck] of [
    [0.75, 1, 2],
    [0.5, 2, 3],
    [1 / 16, 4, 4],
    [11 / 1024, 9, 10],
  ] as const)
    expect(chanceOfAtLeast(need, stuck, half)).toBeCloseTo(expected, 15)
  // An urn of one ball each that adds one makes all numbers equally likely.
  for (const need of [1, 2, 3, 4])
    expect(errorOf((5 - need) / 5, need, 4, { alive: 1, dead: 1, added: 1 })).toBeLessThan(1e-14)
  // More than are stuck never live; none or fewer always do.
  expect([chanceOfAtLeast(5, 4, half), chanceOfAtLeast(0, 4, half), chanceOfAtLeast(-1, 4, half)]).toEqual([0, 1, 1])
})

test.each(named)(
  'drawing %s, every chance of up to 24 cuttings, and what is short and over, is that of whole numbers',
  (_, urn) => {
    for (const stuck of [1, 2, 3, 7, 12, 24]) {
      const chances = chancesOf(urn, stuck)
      for (let need = 1; need <= stuck; need++) {
        expect(
          errorOf(
            onAverage(chances, (living) => (living >= need ? 1 : 0)),
            need,
            stuck,
            urn,
          ),
        ).toBeLessThan(2e-13)
        const { short, surplus } = expectedShortAndSurplus(need, stuck, survivalOf(urn))
        expect(Math.abs(short - onAverage(chances, (living) => Math.max(0, need - living)))).toBeLessThan(1e-13)
        expect(Math.abs(surplus - onAverage(chances, (living) => Math.max(0, living - need)))).toBeLessThan(1e-13)
      }
    }
  },
)

test.each(named)('drawing %s, the chances of 4,000 cuttings are those of whole numbers', (_, urn) => {
  const stuck = 4000
  const chances = chancesOf(urn, stuck)
  for (const need of [1, 2, 30, 100, 180, 220, 1200, 1990, 2010, 2100, 3300, 3390, 3410, 3600, 3900, 3996, 4000]) {
    const expected = onAverage(chances, (living) => (living >= need ? 1 : 0))
    if (expected > 1e-150) expect(errorOf(expected, need, stuck, urn), `${need}`).toBeLessThan(5e-12)
  }
})

test('what is short and over is never below 0, and is the mean less the need where nothing else can be', () => {
  const half = { mean: 0.5, batchSpread: 0 }
  expect(expectedShortAndSurplus(5, 4, half)).toEqual({ short: 3, surplus: 0 })
  for (const need of [1, 400, 2000, 3600, 4000]) {
    const { short, surplus } = expectedShortAndSurplus(need, 4000, half)
    expect(short).toBeGreaterThanOrEqual(0)
    expect(surplus).toBeGreaterThanOrEqual(0)
    expect(surplus - short).toBeCloseTo(2000 - need, 9)
  }
})

describe('for ten million cuttings', () => {
  const stuck = 10_000_000

  test('with batches of every rate alike all numbers are equally likely', () => {
    for (const need of [1, 2, 300, 5000, 4_000_000, 6_000_000, 9_000_000, 9_999_000, 10_000_000]) {
      expect(
        errorOf((stuck + 1 - need) / (stuck + 1), need, stuck, { alive: 1, dead: 1, added: 1 }),
        `${need}`,
      ).toBeLessThan(1e-9)
    }
  })

  test('the chances of an urn with one living ball are quotients of products, and so are those of one with one dead ball', () => {
    // Of 1 living and D dead, adding 1: at least `need` live with C(stuck - need + D, D) / C(stuck + D, D); by induction.
    const quotient = (need: number, others: number) =>
      Array.from({ length: others }, (_, j) => (stuck - need + 1 + j) / (stuck + 1 + j)).reduce(
        (product, one) => product * one,
        1,
      )
    for (const others of [2, 9, 99]) {
      for (const need of [2_000_000, 5_000_000, 8_000_000]) {
        expect(
          errorOf(quotient(need, others), need, stuck, { alive: 1, dead: others, added: 1 }),
          `${others} dead`,
        ).toBeLessThan(5e-9)
        const fewer = 1 - chanceOfAtLeast(stuck + 1 - need, stuck, survivalOf({ alive: others, dead: 1, added: 1 }))
        expect(Math.abs(fewer - quotient(need, others)), `${others} living`).toBeLessThan(1e-9)
      }
    }
  })

  test('what comes as whole batches as likely lost as alive is at least half alive in half of all cases', () => {
    for (const added of [0, 1, 2, 30])
      expect(errorOf(0.5, 5_000_000, 9_999_999, { alive: 1, dead: 1, added }), `${added} added`).toBeLessThan(
        added === 0 ? 1e-12 : 1e-9,
      )
  })

  test('where hardly any is lost, the few lost are counted with all their digits', () => {
    // With rates of 17 and 3e-8, few living is as good as impossible; with all of them alike, none is lost with (1 - 1e-10)^n.
    expect(
      chanceOfAtLeast(1_712_574_836, 5_302_212_803, { mean: 0.999999998420763, batchSpread: 0.000009477163171404554 }),
    ).toBeCloseTo(1, 9)
    // Of a million living and one dead ball, adding one: all of n live with 1,000,000 / (1,000,000 + n), and so the other way round.
    const all = 1e6 / (1e6 + 1e9)
    expect(errorOf(all, 1e9, 1e9, { alive: 1e6, dead: 1, added: 1 })).toBeLessThan(5e-9)
    expect(
      Math.abs((1 - chanceOfAtLeast(1, 1e9, survivalOf({ alive: 1, dead: 1e6, added: 1 }))) / all - 1),
    ).toBeLessThan(5e-9)
    expect(chanceOfAtLeast(stuck, stuck, { mean: 1 - 1e-10, batchSpread: 0 })).toBeCloseTo(Math.exp(-0.001), 9)
    expect(1 - chanceOfAtLeast(1, stuck, { mean: 1e-10, batchSpread: 0 })).toBeCloseTo(Math.exp(-0.001), 9)
  })

  test('with batches alike the chance is that of the stdlib binomial distribution', () => {
    for (const need of [8_495_000, 8_499_000, 8_500_000, 8_501_000, 8_505_000]) {
      expect(
        Math.abs(1 - chanceOfAtLeast(need, stuck, { mean: 0.85, batchSpread: 0 }) - cdf(need - 1, stuck, 0.85)),
      ).toBeLessThan(1e-9)
    }
  })
})

test('batches that differ by less than a double can show count as alike, and the change is smooth', () => {
  const alike = chanceOfAtLeast(3400, 4000, { mean: 0.85, batchSpread: 0 })
  expect(chanceOfAtLeast(3400, 4000, { mean: 0.85, batchSpread: 1e-9 })).toBe(alike)
  expect(expectedShortAndSurplus(3400, 4000, { mean: 0.85, batchSpread: 1e-9 })).toEqual(
    expectedShortAndSurplus(3400, 4000, { mean: 0.85, batchSpread: 0 }),
  )
  expect(chanceOfAtLeast(3400, 4000, { mean: 0.85, batchSpread: 2e-7 })).not.toBe(alike)
  expect(chanceOfAtLeast(3400, 4000, { mean: 0.85, batchSpread: 2e-7 })).toBeCloseTo(alike, 6)
})

test('beside a survivor the urn holds what its draw has added', () => {
  for (const urn of urns) {
    const { mean, batchSpread } = besideASurvivor(survivalOf(urn))
    const expected = survivalOf({ ...urn, alive: urn.alive + urn.added })
    expect(mean).toBeCloseTo(expected.mean, 13)
    expect(batchSpread).toBeCloseTo(expected.batchSpread, 13)
  }
})

describe('the least number to stick', () => {
  const manyTimes = 4000

  test.each(named)('drawing %s is the first of all numbers that meets the confidence', (_, urn) => {
    const survival = survivalOf(urn)
    for (const need of [1, 2, 5, 9]) {
      const met = new Map<number, number>()
      const confidences = [0.05, 0.3, 0.5, 0.8, 0.95]
      for (let stuck = need; stuck <= 200 && met.size < confidences.length; stuck++) {
        const chance = onAverage(chancesOf(urn, stuck), (living) => (living >= need ? 1 : 0))
        for (const confidence of confidences)
          if (chance > confidence - 1e-13 && !met.has(confidence)) met.set(confidence, stuck)
      }
      for (const confidence of confidences) {
        const first = met.get(confidence)
        if (first === undefined) continue
        expect(leastToStick(need, confidence, survival, manyTimes), `${need} at ${confidence}`).toBe(first)
        expect(leastToStick(need, confidence, survival, first), `no more than ${first}`).toBe(first)
        expect(leastToStick(need, confidence, survival, first - 1), `fewer than ${first}`).toBeUndefined()
      }
    }
  })

  test('a confidence that is met exactly is met', () => {
    const half = { mean: 0.5, batchSpread: 0 }
    // 1 of 1: 1/2. 1 of 2: 3/4. 2 of 3: 1/2. 1 of 10: 1023/1024.
    expect(
      [
        [1, 0.5],
        [1, 0.75],
        [2, 0.5],
        [1, 1023 / 1024],
      ].map(([need, confidence]) => leastToStick(need!, confidence!, half, 100)),
    ).toEqual([1, 2, 3, 10])
    expect(leastToStick(1, 0.5 + 1e-9, half, 100)).toBe(2)
  })

  test('what cannot survive is not found, however little confidence is asked for', () => {
    expect(leastToStick(5, 1e-13, { mean: 0.5, batchSpread: 0 }, 4)).toBeUndefined()
  })

  test('of batches of every rate alike it is the need over the doubt', () => {
    // (stuck + 1 - need) / (stuck + 1) is at least the confidence from need / (1 - confidence) - 1 on.
    const alike = survivalOf({ alive: 1, dead: 1, added: 1 })
    expect(leastToStick(3, 0.75, alike, 1e9)).toBe(11)
    // One cutting more adds 6e-8.
    expect(leastToStick(1_000_000, 0.75 - 3e-8, alike, 1e9)).toBe(3_999_999)
    expect(Math.abs(leastToStick(1_000_000, 0.9921875, alike, 1e9)! / 127_999_999 - 1)).toBeLessThan(1e-6)
  })

  test.each([
    // As measured when this was written. Halving alone would take 40 sums, and each sum reads the spread up to three times.
    [1, 0, 3],
    [10, 0, 4],
    [1000, 0, 6],
    [1_000_000, 0, 7],
    [1, 0.05, 6],
    [10, 0.05, 8],
    [1000, 0.05, 14],
    [1_000_000, 0.05, 16],
    [1, 0.32, 18],
    [1000, 0.32, 24],
    [1_000_000, 0.32, 30],
  ])('for %i with batches that differ by %d is found in a few sums', (need, batchSpread, mostReads) => {
    let reads = 0
    const survival = {
      mean: 0.85,
      get batchSpread() {
        reads++
        return batchSpread
      },
    }
    expect(leastToStick(need, 0.95, survival, 1e12)).toBeGreaterThan(need)
    expect(reads).toBeLessThanOrEqual(mostReads)
  })

  test('of a million it is where the stdlib distribution crosses the confidence', () => {
    for (const confidence of [0.01, 0.5, 0.95, 0.999]) {
      const stuck = leastToStick(1_000_000, confidence, { mean: 0.85, batchSpread: 0 }, 2_000_000)!
      expect(1 - cdf(999_999, stuck, 0.85)).toBeGreaterThanOrEqual(confidence - 1e-8)
      expect(1 - cdf(999_999, stuck - 1, 0.85)).toBeLessThan(confidence + 1e-8)
    }
  })
})
