/** What a grower takes for granted of weeks, containers and days. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { table, value } from '../golden/golden'

interface Start {
  readonly day: number
  readonly held: number
  readonly amount: number
}

const start: fc.Arbitrary<Start> = fc.record({
  day: fc.integer({ min: 46_000, max: 46_700 }),
  held: fc.integer({ min: 0, max: 300 }).map((tenths) => tenths / 10),
  amount: fc.integer({ min: 0, max: 500 }),
})
const starts = fc.array(start, { minLength: 1, maxLength: 12 })
const turnround = fc.integer({ min: 0, max: 40 }).map((tenths) => tenths / 10)

const rangesOf = (all: readonly Start[]) => [
  all.map(({ day }) => day),
  all.map(({ held }) => held),
  all.map(({ amount }) => amount),
]
const peakOf = (all: readonly Start[], weeks = 0) => value('PEAK', ...rangesOf(all), weeks)
const standingOf = (all: readonly Start[], weeks = 0, ...window: readonly number[]) =>
  table('STANDING', ...rangesOf(all), weeks, ...window) as readonly (readonly [monday: number, standing: number])[]
const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0)

describe('PEAK', () => {
  test('is never above the sum, never below the largest that stands, and the largest of STANDING', () => {
    fc.assert(
      fc.property(starts, turnround, (all, weeks) => {
        const peak = peakOf(all, weeks)
        expect(peak).toBeLessThanOrEqual(sum(all.map(({ amount }) => amount)))
        expect(peak).toBeGreaterThanOrEqual(
          Math.max(0, ...all.filter(({ held }) => held > 0).map(({ amount }) => amount)),
        )
        expect(peak).toBe(Math.max(...standingOf(all, weeks).map(([, standing]) => standing)))
      }),
      { numRuns: 400 },
    )
  })

  test('is not lowered by a longer turn-round, nor by a start more or one that is held for longer', () => {
    fc.assert(
      fc.property(starts, start, turnround, turnround, (all, other, weeks, longer) => {
        const peak = peakOf(all, weeks)
        expect(peakOf(all, weeks + longer)).toBeGreaterThanOrEqual(peak)
        expect(peakOf([...all, other], weeks)).toBeGreaterThanOrEqual(peak)
        const [first, ...rest] = all as [Start, ...Start[]]
        expect(peakOf([{ ...first, held: first.held + longer }, ...rest], weeks)).toBeGreaterThanOrEqual(peak)
      }),
      { numRuns: 400 },
    )
  })
})

describe('STANDING', () => {
  test('has every week from the first to the last in order, each a Monday, and stands still between no two of them', () => {
    fc.assert(
      fc.property(starts, turnround, (all, weeks) => {
        const rows = standingOf(all, weeks)
        rows.forEach(([monday], row) => expect(monday).toBe(rows[0]![0] + 7 * row))
        expect(new Date((rows[0]![0] - 25_569) * 86_400_000).getUTCDay()).toBe(1)
        if (peakOf(all, weeks) > 0) {
          expect(rows[0]![1]).toBeGreaterThan(0)
          expect(rows.at(-1)![1]).toBeGreaterThan(0)
        } else expect(rows).toHaveLength(1)
      }),
      { numRuns: 400 },
    )
  })

  test('is the same for a line stuck at once and in batches that add up to it, in any order of the rows', () => {
    fc.assert(
      fc.property(starts, turnround, fc.integer({ min: 0, max: 100 }), (all, weeks, percent) => {
        const batches = all.flatMap((one) => {
          const part = Math.floor((one.amount * percent) / 100)
          return [
            { ...one, amount: part },
            { ...one, amount: one.amount - part },
          ]
        })
        expect(standingOf(batches.reverse(), weeks)).toEqual(standingOf(all, weeks))
      }),
      { numRuns: 400 },
    )
  })

  test('in a window is that part of the whole, and 0 outside of it', () => {
    fc.assert(
      fc.property(
        starts,
        fc.integer({ min: 45_900, max: 47_000 }),
        fc.integer({ min: 1, max: 60 }),
        (all, firstDay, weeks) => {
          const whole = new Map(standingOf(all))
          const shown = standingOf(all, 0, firstDay, weeks)
          expect(shown).toHaveLength(weeks)
          expect(shown[0]![0]).toBeLessThanOrEqual(firstDay)
          expect(shown[0]![0]).toBeGreaterThan(firstDay - 7)
          for (const [monday, standing] of shown) expect(standing).toBe(whole.get(monday) ?? 0)
        },
      ),
      { numRuns: 400 },
    )
  })
})

describe('STICKDAY', () => {
  const day = fc.integer({ min: 40_000, max: 60_000 })
  const wholeWeeks = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 5 })

  test('leads from the delivery over the stages one by one to the same day, on the same weekday', () => {
    fc.assert(
      fc.property(day, wholeWeeks, (delivery, stages) => {
        const stick = value('STICKDAY', delivery, stages)
        expect(stages.reduceRight((later, weeks) => value('STICKDAY', later, [weeks]), delivery)).toBe(stick)
        expect((delivery - stick) % 7).toBe(0)
      }),
      { numRuns: 300 },
    )
  })

  test('leaves at least the weeks that the stages take, and less than a day more', () => {
    fc.assert(
      fc.property(
        day,
        fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 1, maxLength: 5 }),
        (delivery, hundredths) => {
          const between =
            delivery -
            value(
              'STICKDAY',
              delivery,
              hundredths.map((one) => one / 100),
            )
          const needed = 7 * sum(hundredths)
          expect(100 * between).toBeGreaterThanOrEqual(needed)
          expect(100 * between).toBeLessThan(needed + 100)
        },
      ),
      { numRuns: 300 },
    )
  })
})
