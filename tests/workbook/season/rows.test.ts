import { beforeAll, describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { OpenBook, ReadCell } from '../../../src/workbook/openBook'
import { season, type SeasonData } from '../../../src/workbook/season/season'
import { overviewOf, valuesOf } from './figuresOf'
import { smallSeason } from './smallSeason'

const { orders, methods, containers, media, past } = smallSeason
const complete = 'Every sheet is complete.'
const calculated = (changed: Partial<SeasonData>): Promise<OpenBook> =>
  calculateBook(season({ ...smallSeason, ...changed }))

let before: OpenBook
beforeAll(async () => {
  before = await calculated({})
}, 120_000)

/** What the sheet Season shows as numbers that it did not show before. */
function changedFigures(after: OpenBook): readonly string[] {
  const [then, now] = [overviewOf(before), overviewOf(after)]
  return [...now].flatMap(([label, value]) => (typeof value === 'number' && value !== then.get(label) ? [label] : []))
}

/** The states of the rows that are not complete. */
function lacking(book: OpenBook, row: string): readonly ReadCell[] {
  return valuesOf(book, `${row}State`).filter((state) => state !== '' && state !== 'ready')
}

const total = (book: OpenBook, label: string) => Number(overviewOf(book).get(label))
const sumOf = (book: OpenBook, name: string) => valuesOf(book, name).reduce<number>((sum, one) => sum + Number(one), 0)
const costOfLine = (book: OpenBook, line: ReadCell) =>
  Number(valuesOf(book, 'OrderCost')[valuesOf(book, 'OrderLine').indexOf(line)])

describe('Rows of a season', () => {
  it('are complete to begin with, in a season whose totals are the sums of its rows', () => {
    expect(overviewOf(before).get('Complete')).toBe(complete)
    expect(total(before, 'Rooting cost of the season')).toBeCloseTo(sumOf(before, 'OrderCost'), 9)
    expect(total(before, 'Rooting cost of the season')).toBeGreaterThan(0)
  })

  it('may stand in any order, as after sorting the order book, the methods and the containers', async () => {
    const sorted = await calculated({
      orders: [...orders].reverse(),
      methods: [...methods].reverse(),
      containers: [...containers].reverse(),
      media: [...media].reverse(),
      past: [...past].reverse(),
    })
    expect(overviewOf(sorted).get('Complete')).toBe(complete)
    expect(changedFigures(sorted)).toEqual([])
  })

  it('may be taken out of the middle or emptied there, and the totals are those of the others', async () => {
    const [middle] = orders.filter(({ line }) => line === 112)
    const [first, ...others] = orders.filter((one) => one !== middle)
    const spent = total(before, 'Rooting cost of the season') - costOfLine(before, 112)
    for (const left of [
      [first!, ...others],
      [first!, {}, ...others],
    ]) {
      const after = await calculated({ orders: left, surplus: { ...smallSeason.surplus, line: 101 } })
      expect(overviewOf(after).get('Complete')).toBe(complete)
      expect(total(after, 'Order lines')).toBe(orders.length - 1)
      expect(total(after, 'Rooting cost of the season')).toBeCloseTo(spent, 9)
    }
  })

  it('may be added, and the totals count them', async () => {
    const more = Array.from({ length: 3 }, (_, index) => ({ ...orders[0]!, line: `new ${index}` }))
    const after = await calculated({ orders: [...orders, ...more] })
    expect(overviewOf(after).get('Complete')).toBe(complete)
    expect(total(after, 'Liners ordered')).toBe(total(before, 'Liners ordered') + 3 * Number(orders[0]!.liners))
    expect(total(after, 'Rooting cost of the season')).toBeCloseTo(
      total(before, 'Rooting cost of the season') + 3 * costOfLine(before, orders[0]!.line as ReadCell),
      9,
    )
  })
})

describe('A method that is renamed', () => {
  const [was, is] = ['Own mix, 104 cells', 'Our mix']
  const renamed = <Row extends object>(rows: readonly Row[]): readonly Row[] =>
    rows.map(
      (row) => Object.fromEntries(Object.entries(row).map(([key, value]) => [key, value === was ? is : value])) as Row,
    )

  it('on all sheets that name it changes no figure', async () => {
    const { reuse, risk, quote, timing } = smallSeason
    const [ofReuse, ofRisk, ofQuote, ofTiming] = renamed<object>([reuse, risk, quote, timing])
    const after = await calculated({
      methods: renamed(methods),
      orders: renamed(orders),
      reuse: ofReuse!,
      risk: ofRisk!,
      quote: ofQuote!,
      timing: ofTiming!,
    })
    expect(overviewOf(after).get('Complete')).toBe(complete)
    expect(changedFigures(after)).toEqual([])
  })

  it('on Methods alone stops its order lines, and no total is shown without them', async () => {
    const after = await calculated({ methods: renamed(methods) })
    const lines = orders.filter(({ method }) => method === was)
    expect(lines.length).toBeGreaterThan(0)
    expect(lacking(after, 'Order')).toEqual(lines.map(() => 'Method: not on Methods'))
    expect(overviewOf(after).get('Complete')).toBe(`Not complete: ${lines.length} on Orders`)
    expect(overviewOf(after).get('Rooting cost of the season')).toBe('not complete')
    expect(changedFigures(after)).toEqual([])
  })
})

describe('What cannot be taken as it was typed', () => {
  const first = <Row>(rows: readonly Row[], change: Partial<Row>): readonly Row[] => [
    { ...rows[0]!, ...change },
    ...rows.slice(1),
  ]
  const price = 'Price: type number'
  const padded = (heading: string) => `${heading}: a space or a line break too many`

  it.each<[what: string, row: string, sentence: string, changed: Partial<SeasonData>]>([
    ['a price with its currency', 'Medium', price, { media: first(media, { price: '7.45 EUR' }) }],
    ['a price below nothing', 'Medium', price, { media: first(media, { price: -7.45 }) }],
    ['a price with points and a comma', 'Container', price, { containers: first(containers, { price: '1.500,00' }) }],
    [
      'a space behind the name of a method',
      'Order',
      padded('Method'),
      { orders: first(orders, { method: `${orders[0]!.method} ` }) },
    ],
    [
      'a line break behind a species',
      'Order',
      padded('Species'),
      { orders: first(orders, { species: `${orders[0]!.species}\r` }) },
    ],
    [
      'a space behind a past species',
      'Past',
      padded('Species'),
      { past: first(past, { species: `${past[0]!.species} ` }) },
    ],
    [
      'the number of a line as a text, where Orders has a number',
      'Batch',
      'Line: a text here or on Orders, a number there',
      { batches: first(smallSeason.batches, { line: String(smallSeason.batches[0]!.line) }) },
    ],
    [
      'a space behind the name of a medium',
      'Medium',
      padded('Medium'),
      { media: first(media, { name: `${media[0]!.name} ` }) },
    ],
  ])('gets its sentence, and no total changes without a word: %s', async (_, row, sentence, changed) => {
    const after = await calculated(changed)
    expect(lacking(after, row)).toEqual([sentence])
    expect(overviewOf(after).get('Complete')).toMatch(/^Not complete: \d+ on /)
    expect(changedFigures(after)).toEqual([])
  })

  it.each<[what: string, row: string, changed: Partial<SeasonData>]>([
    ['containers', 'Container', { containers: [...containers, containers[0]!] }],
    ['media', 'Medium', { media: [...media, media[0]!] }],
    ['methods', 'Method', { methods: [...methods, methods[0]!] }],
    ['order lines', 'Order', { orders: [...orders, orders[0]!] }],
  ])('is told so where two %s have one name', async (_, row, changed) => {
    const after = await calculated(changed)
    expect(lacking(after, row)).toEqual(['Two rows have this name', 'Two rows have this name'])
    expect(overviewOf(after).get('Complete')).toMatch(/^Not complete: 2 on /)
    expect(changedFigures(after)).toEqual([])
  })
})
