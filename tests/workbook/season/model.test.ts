/** The workbook against the accountant, who shares no formula with it: cell by cell, in three seasons. */
import { beforeAll, describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { OpenBook, ReadCell } from '../../../src/workbook/openBook'
import { thornmere } from '../../../src/workbook/season/data/thornmere'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
import { season } from '../../../src/workbook/season/season'
import { weeksShown } from '../../../src/workbook/season/sheets/calendarSheet'
import * as answers from '../../../src/workbook/season/tables/answers'
import { batches } from '../../../src/workbook/season/tables/batches'
import { blends } from '../../../src/workbook/season/tables/blends'
import { calendar } from '../../../src/workbook/season/tables/calendar'
import { components } from '../../../src/workbook/season/tables/components'
import { containers } from '../../../src/workbook/season/tables/containers'
import { doubts } from '../../../src/workbook/season/tables/doubts'
import { media } from '../../../src/workbook/season/tables/media'
import { methods } from '../../../src/workbook/season/tables/methods'
import { orders } from '../../../src/workbook/season/tables/orders'
import { periods } from '../../../src/workbook/season/tables/periods'
import { review } from '../../../src/workbook/season/tables/review'
import { setup } from '../../../src/workbook/season/tables/setup'
import { stockPlants } from '../../../src/workbook/season/tables/stockPlants'
import type { Figures } from '../../../src/workbook/season/table/figures'
import type { Table, Unit } from '../../../src/workbook/season/table/table'
import { columnOf, figureIn, tableIn, valuesOf } from './figuresOf'
import { Fraction } from './fraction'
import { modelOf, type Model } from './model'
import { oddSeason } from './model/oddSeason'
import type { Shown } from './model/typed'

/** Doubles that went through a dozen operations still agree in eleven digits. */
const dust = 1e-11

/** Whether a cell shows what is expected: a cent, a count and a day exactly; a blank cell is as good as an empty text. */
function shows(cell: ReadCell, expected: Shown): boolean {
  if (typeof expected === 'string') return (cell ?? '') === expected
  if (typeof cell !== 'number') return cell === null && expected instanceof Fraction && expected.equals(0)
  const number = typeof expected === 'number' ? expected : expected.toNumber()
  return cell === number || Math.abs(cell - number) <= dust * Math.max(Math.abs(number), 1e-3)
}

/** Expected cells and what stands there instead; a text of the kind "row 3: 5, not 6" for each that differs. */
function differences(expected: readonly Shown[], cells: readonly ReadCell[]): readonly string[] {
  const lengths = cells.slice(expected.length).some((cell) => cell !== null && cell !== '') ? ['more rows'] : []
  return [
    ...expected.flatMap((shown, row) =>
      shows(cells[row] ?? null, shown)
        ? []
        : [`row ${row + 1}: ${shown instanceof Fraction ? shown.toNumber() : shown}, not ${String(cells[row])}`],
    ),
    ...lengths,
  ]
}

/** A whole number, or whole cents: these are held exactly, which dust would hide. */
const isExact = (shown: Shown): boolean => shown instanceof Fraction && 100n % shown.below === 0n

const tables: Readonly<Record<keyof Model['tables'], Table>> = {
  containers,
  media,
  blends,
  components,
  methods,
  orders,
  batches,
  stock: stockPlants,
  review,
}

/** Columns that the sheet itself rounds to the cent, and those of counts and days. */
const exact: readonly (readonly [keyof Model['tables'], string])[] = [
  ['containers', 'filled'],
  ['containers', 'peak'],
  ['containers', 'needed'],
  ['containers', 'toBuy'],
  ['containers', 'cost'],
  ['media', 'toBuy'],
  ['media', 'cost'],
  ['orders', 'stickDay'],
  ['orders', 'cuttings'],
  ['orders', 'batched'],
  ['orders', 'planned'],
  ['orders', 'pieces'],
  ['orders', 'short'],
  ['orders', 'again'],
  ['orders', 'cost'],
  ['orders', 'from'],
  ['orders', 'until'],
  ['batches', 'alive'],
  ['batches', 'pieces'],
  ['batches', 'from'],
  ['batches', 'until'],
  ['stock', 'plants'],
  ['stock', 'toAdd'],
]

const nurseries = [
  ['Vellimoor', vellimoor, true],
  ['Thornmere', thornmere, false],
  ['the odd season', oddSeason, true],
] as const

describe.each(nurseries)('the workbook of %s', (_name, data, isAsked) => {
  let book: OpenBook
  let model: Model

  beforeAll(async () => {
    model = modelOf(data, weeksShown)
    book = await calculateBook(season(data))
  }, 120_000)

  const unitText = (unit: Unit) => (typeof unit === 'string' ? unit : `${String(data.setup.currency)}${unit.money}`)

  const columnIn = (table: Table, key: string) => {
    const { heading, unit } = table.results[key]!
    return columnOf(book, table.sheet, heading, unitText(unit))
  }

  /** Each expected figure against the one beside its label. */
  function differing(figures: Figures, expected: Readonly<Record<string, Shown>>): readonly string[] {
    return Object.entries(expected).flatMap(([key, shown]) => {
      const { heading, unit } = figures.results[key]!
      return differences([shown], [figureIn(book, figures.sheet, heading, unitText(unit))]).map(
        (difference) => `${heading}, ${difference}`,
      )
    })
  }

  describe.each(Object.entries(tables))('on the sheet of %s', (called, table) => {
    const rows = () => model.tables[called as keyof Model['tables']] as readonly Readonly<Record<string, Shown>>[]

    it.each(Object.entries(table.results).map(([key, { heading }]) => [heading, key]))(
      'shows in the column %s (%s) what the accountant finds in every row, and nothing below',
      (_heading, key) => {
        expect(
          differences(
            rows().map((row) => row[key]!),
            columnIn(table, key),
          ),
        ).toEqual([])
      },
    )
  })

  it.each(exact)('is exact to the cent, the piece and the day in %s, %s', (called, key) => {
    const expected = (model.tables[called] as readonly Readonly<Record<string, Shown>>[]).map((row) => row[key]!)
    const cells = columnIn(tables[called], key)
    expect(expected.map((shown) => (isExact(shown) ? (shown as Fraction).toNumber() : ''))).toEqual(
      expected.map((_, row) => cells[row] ?? 0),
    )
  })

  it.each(Object.keys(calendar.columns).filter((key) => key !== 'note'))(
    'shows in each week of the calendar what the accountant counts as %s',
    (key) => {
      expect(
        differences(
          model.calendar.map((week) => (week as Readonly<Record<string, Shown>>)[key]!),
          valuesOf(book, `Calendar${key.charAt(0).toUpperCase()}${key.slice(1)}`),
        ),
      ).toEqual([])
    },
  )

  it('builds the bench rate and the cost of an hour on Setup as the accountant does', () => {
    expect(differing(setup, { ...model.setup })).toEqual([])
  })

  it('totals on Season what the accountant totals, and names the first week that does not fit', () => {
    expect(differing(answers.overview, model.season)).toEqual([])
    expect(model.firstFull).toBe(
      String(figureIn(book, 'Season', answers.overview.results.firstFull.heading, '')).split(':')[0],
    )
  })

  it('finds on Compare the winner that the accountant finds, and ranks all methods alike', () => {
    expect(differing(answers.compareMethods, model.compare)).toEqual([])
    const shown = tableIn(book, 'Compare', 'name')
    expect(model.compared.flatMap((row, index) => differences(Object.values(row), shown[index] ?? []))).toEqual([])
  })

  // Thornmere asks no questions.
  if (!isAsked) return

  describe('where its questions are asked', () => {
    it('finds on Reuse the round from which on it pays, and every figure before it', () => {
      expect(differing(answers.reuse, model.reuse())).toEqual([])
    })

    it('mixes as many loads, litres and kilograms on Mixing as the accountant', () => {
      const { figures, litres, kilograms } = model.mixing()
      expect(differing(answers.mixing, figures)).toEqual([])
      const together = new Map(tableIn(book, 'Mixing', 'item').map((row) => [row[0], row.at(-1) ?? null]))
      expect(litres.flatMap((part) => differences([part.litres], [together.get(part.medium) ?? null]))).toEqual([])
      const called: Readonly<Record<string, string>> = { lime: 'Lime', wetting: 'Wetting agent', feed: 'Starter feed' }
      expect(
        kilograms.flatMap((part) => differences([part.kilograms], [together.get(called[part.additive]!) ?? null])),
      ).toEqual([])
    })

    it('shows on Doubts how far each figure may be off, and on Risk the widest of them', () => {
      const rows: readonly Readonly<Record<string, Shown>>[] = model.doubts()
      expect(
        Object.keys(doubts.results).flatMap((key) =>
          differences(
            rows.map((row) => row[key]!),
            columnIn(doubts, key),
          ),
        ),
      ).toEqual([])
      expect(model.widest()).toBe(figureIn(book, 'Risk', answers.risk.results.widest.heading, ''))
    })

    it('quotes on Quote each stage, the floor, the price and the answer that the accountant gives', () => {
      expect(differing(answers.quoting, model.quote())).toEqual([])
      const shown = tableIn(book, 'Quote', 'quantity')
      expect(
        model.quoted().flatMap((row, index) => differences(Object.values(row), (shown[index] ?? []).slice(0, 4))),
      ).toEqual([])
    })

    it('finds on Surplus the number of cuttings that earns most of all that were tried', () => {
      expect(differing(answers.surplus, model.surplus())).toEqual([])
    })

    it('finds on Cheapest the order that costs least of all that were tried', () => {
      expect(differing(answers.cheapest, model.cheapest())).toEqual([])
    })

    it('counts on Periods and Timing the packs that the accountant counts, for the least that any plan costs', () => {
      const { rows, figures, plan } = model.timing()
      expect(differing(answers.timing, figures)).toEqual([])
      expect(
        Object.keys(periods.results).flatMap((key) =>
          differences(
            rows.map((row) => (row as Readonly<Record<string, Shown>>)[key]!),
            columnIn(periods, key),
          ),
        ),
      ).toEqual([])
      expect(differences([plan], [tableIn(book, 'Timing', 'period').at(-1)?.at(-1) ?? null])).toEqual([])
    })
  })
})
