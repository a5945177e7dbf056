import { beforeAll, describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { addressOf } from '../../../src/formula/address'
import type { Book, Cell } from '../../../src/workbook/book'
import type { OpenBook } from '../../../src/workbook/openBook'
import { errorOf } from '../errorOf'
import { blankSeason } from '../../../src/workbook/season/blankSeason'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { mapCells } from '../../../src/workbook/season/waitingFormulas'

const blank = blankSeason()
const demo = demoSeason()

function cellOf(book: Book, sheet: string, row: number, column: number): Cell | undefined {
  return book.sheets.find(({ name }) => name === sheet)?.rows[row]?.[column]
}

/** The blank season with what the demo has in its boxes, or in some of them. */
function filled(isFilled: (sheet: string, row: number) => boolean): Book {
  // Where the demo reads the spread of a species from its past batches, a user of the blank season would refer to it too.
  const spreads: Readonly<Record<string, string>> = {
    '=PelargoniumSpread': '=FirstSpread',
    '=LavandulaSpread': '=SecondSpread',
  }
  return {
    names: blank.names,
    sheets: mapCells(blank.sheets, (cell, { sheet, row, column }) => {
      const { value, formula } = cellOf(demo, sheet, row, column) ?? {}
      if (cell.look !== 'input' || !isFilled(sheet, row)) return cell
      if (formula !== undefined) return { ...cell, formula: spreads[formula]! }
      return value === undefined ? cell : { ...cell, value }
    }),
  }
}

function errorsOf({ sheets }: OpenBook): string[] {
  return sheets.flatMap(({ name, cells }) =>
    [...cells].flatMap(([address, cell]) =>
      errorOf(cell) === undefined ? [] : [`${name}!${address} ${errorOf(cell)} ${cell.sentence ?? ''}`],
    ),
  )
}

const isOrderLine = (sheet: string, row: number) => sheet === 'Orders' && cellOf(demo, sheet, row, 0)?.look === 'input'

describe('the blank season', () => {
  it('has the sheets, the formats and as many names as the demo, and no figure of it but how old a price may be', () => {
    expect(blank.sheets.map(({ name, widths }) => [name, widths])).toEqual(
      demo.sheets.map(({ name, widths }) => [name, widths]),
    )
    expect(blank.names.map(({ refersTo }) => refersTo)).toEqual(demo.names.map(({ refersTo }) => refersTo))
    const inBoxes: unknown[] = []
    mapCells(blank.sheets, (cell, { sheet, row, column }) => {
      expect(cell.format).toBe(cellOf(demo, sheet, row, column)?.format)
      if (cell.look === 'input' && typeof cell.value === 'number') inBoxes.push(cell.value)
      return cell
    })
    // How old a price may be is a convention, no figure of the nursery.
    expect(new Set(inBoxes)).toEqual(new Set([0, 180]))
  })

  it("calls nothing invented and names neither the demo's nursery nor its species and suppliers", () => {
    const words = JSON.stringify(blank)
    for (const word of [
      'nvented',
      'Vellimoor',
      'Lavandula',
      'Pelargonium',
      'Fuchsia',
      'Hillside',
      'Quayside',
      'Fenbridge',
      'Gravelhope',
      'Stonewick',
      'Tipworth',
      'Town water',
    ])
      expect(words).not.toContain(word)
  })

  it('shows no error while nothing is typed', async () => {
    expect(errorsOf(await calculateBook(blank))).toEqual([])
  })

  describe('filled with the figures of the demo', () => {
    let results: OpenBook
    beforeAll(async () => {
      results = await calculateBook(filled(() => true))
    }, 60_000)

    it('gives the results of the demo, cell by cell', async () => {
      const expected = await calculateBook(demo)
      expect(errorsOf(results)).toEqual([])
      let compared = 0
      for (const [index, { name, cells }] of expected.sheets.entries()) {
        for (const [address, { value }] of cells) {
          if (typeof value !== 'number') continue
          compared += 1
          expect(results.sheets[index]?.cells.get(address)?.value, `${name}!${address}`).toBe(value)
        }
      }
      expect(compared).toBeGreaterThan(1000)
    })
  })

  it('takes order lines that are left blank for none', async () => {
    const lines = demo.sheets
      .find(({ name }) => name === 'Orders')!
      .rows.flatMap((_row, row) => (isOrderLine('Orders', row) ? [row] : []))
    const left = new Set(lines.slice(-5))
    const results = await calculateBook(filled((sheet, row) => !(sheet === 'Orders' && left.has(row))))
    expect(errorsOf(results)).toEqual([])
    const orders = results.sheets.find(({ name }) => name === 'Orders')!.cells
    expect(orders.get(addressOf(lines[0]!, 4))?.value).toBeGreaterThan(0)
    expect(orders.get(addressOf(lines.at(-1)!, 4))?.value ?? '').toBe('')
    expect([...orders.values()].map(({ value }) => value)).toContain('Every way of rooting is one of the six on Ways.')
    const season = results.sheets.find(({ name }) => name === 'Season')!.cells
    const figure = (label: string) =>
      season.get([...season].find(([, { value }]) => value === label)![0].replace('A', 'B'))?.value
    expect(figure('Order lines')).toBe(12)
    expect(figure('Cuttings that no way counts')).toBe(0)
    expect(figure('Rates left blank')).toBe(0)
    expect(figure('Trays outside the periods')).toBe(0)
  })
})
