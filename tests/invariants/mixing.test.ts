/** What a grower takes for granted of mixer loads and stock plants. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { column, table, value } from '../golden/golden'

type Row = readonly [item: string, unit: string, full: number, loads: number, last: number, together: number]

const hundredths = (most: number) => fc.integer({ min: 1, max: most * 100 }).map((one) => one / 100)
const shareBelow = (percent: number) => fc.integer({ min: 0, max: percent }).map((one) => one / 100)

const isNear = (one: number, other: number) =>
  expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)))

describe('MIXLOADS', () => {
  const call = fc.tuple(
    fc.integer({ min: 0, max: 50_000 }),
    fc.array(hundredths(10), { minLength: 1, maxLength: 5 }),
    fc.integer({ min: 50, max: 5000 }),
    shareBelow(40),
    fc.array(hundredths(5), { minLength: 1, maxLength: 4 }),
  )

  test('in each row the full loads and the last one are the whole, and the last is smaller than a full one', () => {
    fc.assert(
      fc.property(call, (args) => {
        for (const [, , full, loads, last, together] of table('MIXLOADS', ...args) as readonly Row[]) {
          isNear(full * loads + last, together)
          expect(Number.isInteger(loads)).toBe(true)
          expect(last).toBeLessThan(full)
        }
      }),
      { numRuns: 400 },
    )
  })

  test('the components fill the mixer and lose the shrink, and the additives are those of the finished mix', () => {
    fc.assert(
      fc.property(call, (args) => {
        const [finished, parts, mixer, shrink, additives] = args
        const rows = table('MIXLOADS', ...args) as readonly Row[]
        const components = rows.slice(0, parts.length)
        const loose = components.reduce((sum, [, , , , , together]) => sum + together, 0)
        isNear(
          components.reduce((sum, [, , full]) => sum + full, 0),
          mixer,
        )
        isNear(loose * (1 - shrink), finished)
        isNear(rows.at(-1)![5], finished)
        additives.forEach((kgM3, index) => isNear(rows[parts.length + index]![5], (kgM3 * finished) / 1000))
      }),
      { numRuns: 400 },
    )
  })

  test('the components are those of BLENDPARTS', () => {
    fc.assert(
      fc.property(call, ([finished, parts, mixer, shrink]) => {
        const rows = table('MIXLOADS', finished, parts, mixer, shrink) as readonly Row[]
        column('BLENDPARTS', finished, parts, shrink).forEach((litres, index) => isNear(rows[index]![5], litres))
      }),
      { numRuns: 200 },
    )
  })
})

describe('MOTHERPLANTS', () => {
  test('gives enough plants for the cuttings, and one fewer would not do', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 0, max: 60 }),
        (cuttings, tenths, flushes, usable, spare) => {
          const plants = value('MOTHERPLANTS', cuttings, tenths / 10, flushes, usable / 100, spare / 100)
          // In tenths of cuttings and per cent of both shares everything is whole, so this check is exact.
          const isEnough = (count: number) => count * tenths * flushes * usable * (100 - spare) >= cuttings * 100_000
          expect(isEnough(plants)).toBe(true)
          expect(isEnough(plants - 1)).toBe(false)
        },
      ),
      { numRuns: 400 },
    )
  })
})
