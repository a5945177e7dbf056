import { readFile } from 'node:fs/promises'
import { beforeAll, describe, expect, it } from 'vitest'
import { blockIn, positionOf } from '../../src/formula/address'
import { catalogue } from '../../src/functions/catalogue'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { readXlsx } from '../../src/workbench/xlsx/readXlsx'
import { resultsOf } from '../../src/workbench/xlsx/results'
import type { Book, Cell } from '../../src/workbook/book'
import { checkBook } from '../../src/workbook/check/checkBook'
import { headingsOfTerm } from '../../src/workbook/compare/headingsOfTerm'
import { labelsOf } from '../../src/workbook/labels'
import { mostRows, rowsBelowTotals } from '../../src/workbook/sheetHeadings'
import type { OpenBook, OpenCell, OpenSheet } from '../../src/workbook/openBook'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { cellsRead, filledCells } from '../../src/workbook/working/cellsRead'
import { english } from '../../src/wording/en/words'

/** Its tables are of many kinds: down, across, side by side, with totals below. */
const ofBefore = (await readXlsx(await readFile(new URL('season/demoOfBefore.xlsx', import.meta.url)))).book

const sheetIn = (open: OpenBook, name: string): OpenSheet => open.sheets.find((sheet) => sheet.name === name)!
const labelIn = (open: OpenBook, sheet: string, address: string) =>
  labelsOf(sheetIn(open, sheet).cells).textOf(blockIn(address))

// What stands on the sheets themselves: the first text of the row, the heading of the column, the unit.
const expectedLabels = {
  'workbook of before': [
    ['Season', 'B17', 'Buying list, everything, EUR'],
    ['Season', 'B22', 'Cheapest way of rooting'],
    ['Season', 'B27', 'Which way wins, EUR a saleable liner'],
    ['Season', 'B67', 'Rates left blank, cells'],
    ['Orders', 'K9', 'Pelargonium, Strike, share rooted'],
    ['Orders', 'L9', 'Pelargonium, Potting on, share'],
    ['Orders', 'M9', 'Pelargonium, Grade-out, share saleable'],
    ['Orders', 'K9:M9', 'Pelargonium'],
    ['Orders', 'K8:K24', 'Strike, share rooted'],
    ['Orders', 'D9', 'Pelargonium, The way suits'],
    ['Orders', 'P9', 'Pelargonium, Overall rate, share'],
    ['Orders', 'E25', 'All lines, To stick, cuttings'],
    ['Batches', 'C15', 'Rate of all batches, Pelargonium, saleable'],
    ['Batches', 'B27', 'A missing liner loses, EUR'],
    ['Ways', 'G8', 'Medium, as on Prices, Premix'],
    ['Ways', 'D57', 'Medium, Peat, coir and perlite, EUR a cutting'],
    ['Ways', 'H75', 'Rooting cost, Rockwool, EUR a saleable liner'],
    ['Ways', 'C69:H69', 'Rooting cost, EUR a cutting'],
    ['Compare', 'B12', 'Ahead of the next by, EUR a liner'],
    ['Compare', 'D18', 'Cheapest first, EUR a liner'],
    ['Blends', 'B8', 'Coir, Price, EUR a loose L'],
    ['Blends', 'E14', 'Goes into, Coir and perlite, way of rooting'],
    ['Blends', 'G9', 'Perlite, Peat and perlite, L loose to use'],
    ['Blends', 'F24', 'Cost of a finished litre, Sand for beds, EUR a L'],
    ['Reuse', 'E31', 'Pays from round, Bed, rounds'],
    ['Reuse', 'A41', 'Ledger of a washed tray'],
    ['Prices', 'C8', 'Peat, A litre, EUR a loose L'],
    ['Prices', 'O8', 'Peat, Measured'],
    ['Prices', 'D19', 'Rockwool blocks, price of a sheet, EUR a sheet'],
    ['Buying', 'E14', 'All media, Cost, EUR'],
    ['Buying', 'E25', 'Everything'],
    ['Buying', 'N18', 'Rockwool blocks, sheets, That gives, pieces'],
    ['Offers', 'B16', 'The order below, EUR'],
    ['Timing', 'D19', 'Period 3, Packs so far, packs'],
    ['Quote', 'G20', 'Growing on, Bench, EUR each'],
    ['Quote', 'B56', 'The quote: liners, EUR a liner'],
    ['Risk', 'F16', 'yield, Low'],
    ['Risk', 'J27', 'All together, EUR a liner'],
    ['Review', 'D9', 'Cuttings, Price, EUR'],
    ['Review', 'B17', 'Largest difference'],
    ['Review', 'G20', 'Cuttings'],
  ],
  'demo season': [
    ['Season', 'B7', 'Complete'],
    ['Season', 'B20', 'Buying, everything, EUR'],
    ['Season', 'B22', 'Rooting cost for each liner ordered, EUR per liner'],
    ['Season', 'B25', 'Weeks that do not fit, weeks'],
    ['Setup', 'B28', 'Bench rate that is used, EUR per m2 and week'],
    ['Containers', 'Y12', 'Washed tray, 104, Cell, mL'],
    ['Containers', 'AD8', 'All rows, Cost, EUR'],
    ['Containers', 'AA12', 'Washed tray, 104, Most at once, pieces'],
    ['Media', 'R16', 'Peat, Declared, L per pack'],
    ['Media', 'W12', 'All rows, Cost, EUR'],
    ['Media', 'W16', 'Peat, Cost, EUR'],
    ['Methods', 'L22', 'Water, The cutting itself, EUR per cutting'],
    ['Methods', 'AI22', 'Water, Labour, EUR per cutting'],
    ['Methods', 'AL22', 'Water, Rooting cost, EUR per cutting'],
    ['Methods', 'AN22', 'Water, Rooting cost per liner, EUR per saleable liner'],
    ['Methods', 'AL22:AL30', 'Rooting cost, EUR per cutting'],
    ['Orders', 'S9', 'Fuchsia, Overall rate, share saleable'],
    ['Orders', 'V9', 'Fuchsia, To stick, cuttings'],
    ['Orders', 'AE9', 'Fuchsia, Rooting a cutting, EUR per cutting'],
    ['Stock', 'K10', 'Pelargonium, Plants, needed'],
    ['Mixing', 'B17', 'Mixed, L finished'],
    ['Compare', 'B19', 'More expensive by, EUR per saleable liner'],
    ['Compare', 'D23', 'Cheapest first, EUR per saleable liner'],
    ['Risk', 'B11', 'It costs no more than, EUR per saleable liner'],
    ['Quote', 'B44', 'Floor: cost of a saleable liner, EUR per liner'],
    ['Quote', 'B47', 'That is a markup of, share of the cost'],
    ['Surplus', 'B13', 'Difference: stick more (+) or fewer (-), cuttings'],
    ['Cheapest', 'B14', 'Needed, L loose'],
    ['Timing', 'B14', 'Containers outside the periods, containers'],
    ['Calendar', 'N7', 'Monday, To deliver, liners'],
  ],
} as const

describe.each([
  ['workbook of before', ofBefore, 820],
  ['demo season', demoSeason(), 1508],
] as const)('the cells of the %s', (which, season, count) => {
  let open: OpenBook
  beforeAll(async () => {
    open = await calculateBook(season)
  }, 120_000)
  const labelAt = (sheet: string, address: string) => labelIn(open, sheet, address)

  it.each(expectedLabels[which].map((one) => [...one]))(
    'on %s are called what an accountant would call them: %s is “%s”',
    (sheet, address, label) => {
      expect(labelAt(sheet!, address!)).toBe(label)
    },
  )

  const formulas = () =>
    open.sheets.flatMap((sheet) =>
      [...sheet.cells].filter(([, cell]) => cell.formula !== '').map(([address, cell]) => ({ sheet, address, cell })),
    )

  it('are called the same by Working, recalc, Compare and Check, all formulas', async () => {
    const recalc = new Map(
      resultsOf(season, await calculateBook(season)).flatMap(({ name, results }) =>
        results.map(({ address, label }) => [`${name}!${address}`, label] as [string, string]),
      ),
    )
    expect(formulas()).toHaveLength(count)
    for (const { sheet, address, cell } of formulas()) {
      const place = `${sheet.name}!${address}`
      const [working] = filledCells(cellsRead(`=${place}`, sheet.name, open.names), open, 1)
      const { row, column, unit } = labelsOf(sheet.cells).of(cell)
      expect(recalc.get(place), place).toBe(working!.label)
      expect(headingsOfTerm(sheet, cell, 'in a column'), place).toEqual(row === undefined ? [] : [row])
      expect(headingsOfTerm(sheet, cell, 'in a row'), place).toEqual(
        [column, unit].filter((text) => text !== undefined),
      )
      const words = [row, column, unit].filter((text) => text !== undefined)
      expect(
        words.every((text) => working!.label.toLowerCase().includes(text.toLowerCase())),
        `${place}: ${words.join(' | ')}`,
      ).toBe(true)
    }
  }, 60_000)

  it('are called the same where only the rows down to them were read, as the pane reads them', () => {
    for (const sheet of open.sheets) {
      const ofSheet = formulas().filter((one) => one.sheet === sheet)
      for (const last of new Set(ofSheet.map(({ cell }) => cell.row))) {
        const above = new Map([...sheet.cells].filter(([, { row }]) => row <= last + rowsBelowTotals))
        for (const { address } of ofSheet.filter(({ cell }) => cell.row === last)) {
          expect(labelsOf(above).textOf(blockIn(address)), `${sheet.name}!${address}`).toBe(
            labelAt(sheet.name, address),
          )
        }
      }
    }
  })

  it('are called by no text that only the result of a formula shows, but a heading with the currency', () => {
    const typedOn = new Map(
      season.sheets.map(({ name, rows }) => {
        const ofCurrency = [...sheetIn(open, name).cells.values()].filter(({ formula }) =>
          /^=SetupCurrency(&"[^"]*")?$/.test(formula),
        )
        return [name, new Set([...rows.flat().map((one) => one?.value), ...ofCurrency.map(({ value }) => value)])]
      }),
    )
    for (const { sheet, address, cell } of formulas()) {
      const typed = typedOn.get(sheet.name)!
      for (const text of Object.values(labelsOf(sheet.cells).of(cell)).filter((one) => one !== undefined)) {
        expect(typed.has(text), `${sheet.name}!${address}: ${text}`).toBe(true)
      }
    }
  })

  it('have a name, every one', () => {
    const nameless = formulas().filter(({ sheet, address }) => labelAt(sheet.name, address) === '')
    expect(nameless.map(({ sheet, address }) => `${sheet.name}!${address}`)).toEqual([])
  })
})

const heading = (value: string): Cell => ({ value, look: 'heading' })
const typed = (value: string | number): Cell => ({ value })
const formula = (written: string): Cell => ({ formula: written })

async function labelsIn(...rows: readonly (readonly (Cell | undefined)[])[]): Promise<(address: string) => string> {
  const book: Book = { names: [], sheets: [{ name: 'Mine', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
  const { cells } = (await calculateBook(book)).sheets[0]!
  return (address) => labelsOf(cells).textOf(blockIn(address))
}

describe('a cell of any workbook', () => {
  it('is called by no neighbour’s result, neither beside it nor above it', async () => {
    const label = await labelsIn(
      [heading('Medium'), heading('Suits'), heading('Price')],
      [typed('Peat'), formula('="Most "&"plants"'), typed(21.8)],
      [formula('="Coir"'), formula('="Few plants"'), typed(7)],
    )
    expect([label('C2'), label('C3'), label('B3')]).toEqual(['Peat, Price', 'Medium, Price', 'Medium, Suits'])
  })

  it('is called by the typed text above a figure where no heading is marked, down an unbroken column', async () => {
    const label = await labelsIn(
      [typed('Medium'), typed('Price'), typed('Litres')],
      [typed('Peat'), typed(21.8)],
      [typed('Coir'), typed(7), typed(60)],
    )
    expect([label('B3'), label('C3'), label('B2:B3')]).toEqual(['Coir, Price', 'Coir', 'Price'])
  })

  it('is called by a figure neither in its row nor above, but by a pot that begins with one', async () => {
    const label = await labelsIn(
      [typed('65 mL'), typed(2)],
      [typed('6-inch pot'), typed(3)],
      [typed('12 weeks'), typed(4)],
      [typed('3.8 cu ft'), typed(5)],
    )
    expect(['B1', 'B2', 'B3', 'B4'].map(label)).toEqual(['', '6-inch pot', '', ''])
  })

  it('is not called by a heading of another table: behind an empty row, or where its own table has none', async () => {
    const label = await labelsIn(
      [heading('Medium'), heading('Price'), heading('Packs')],
      [typed('Peat'), typed(21.8), typed(4)],
      [heading('Wages'), heading('An hour')],
      [typed('Sticking'), typed(16), typed(171)],
      [],
      [typed('Interest'), typed(0.06)],
    )
    expect([label('B2'), label('B4'), label('C4'), label('B6')]).toEqual([
      'Peat, Price',
      'Sticking, An hour',
      'Sticking',
      'Interest',
    ])
  })

  it('is called by its headings across the heading of a section and of a total, and below an empty row', async () => {
    const label = await labelsIn(
      [heading('Medium'), heading('Price'), heading('Unit')],
      [],
      [heading('Bought')],
      [typed('Peat'), typed(21.8), typed('EUR')],
      [heading('Both'), formula('=SUM(B4:B4)'), heading('EUR')],
      [typed('Coir'), typed(7), typed('EUR')],
    )
    expect([label('B4'), label('B5'), label('B6')]).toEqual([
      'Peat, Price, EUR',
      'Both, Price, EUR',
      'Coir, Price, EUR',
    ])
  })

  it('is called by the text of its own table where two stand side by side', async () => {
    const label = await labelsIn(
      [typed('Peat'), typed(21.8), undefined, typed('Wage'), typed(16)],
      [typed('Coir'), typed(7), undefined, undefined, typed(20)],
    )
    expect([label('B1'), label('E1'), label('E2')]).toEqual(['Peat', 'Wage', ''])
  })

  it('has its unit from above its heading, else from the column of units beside it', async () => {
    const label = await labelsIn(
      [heading('name'), heading('EUR')],
      [heading('Medium'), heading('Price'), heading('Unit')],
      [typed('Peat'), typed(21.8), typed('L')],
      [],
      [heading('Work'), heading('Cost'), heading('Unit')],
      [typed('Sticking'), typed(16), typed('EUR an hour')],
    )
    expect([label('B3'), label('B6')]).toEqual(['Peat, Price, EUR', 'Sticking, Cost, EUR an hour'])
  })

  it('has headings no further up than is looked for', () => {
    const cells = new Map<string, OpenCell>()
    const put = (address: string, value: string | number, isHeading?: true) =>
      cells.set(address, { ...positionOf(address), formula: '', value, calls: [], ...(isHeading && { isHeading }) })
    put('A1', 'Medium', true)
    put('B1', 'Price', true)
    for (let row = 2; row <= mostRows + 2; row += 1) put(`B${row}`, row)
    expect(labelsOf(cells).textOf(blockIn(`B${mostRows + 1}`))).toBe('Medium, Price')
    expect(labelsOf(cells).textOf(blockIn(`B${mostRows + 2}`))).toBe('')
  })
})

it('A check reads what a row says, looked up or typed: a compressed bale is found by either.', async () => {
  const row = (kind: Cell) => [kind, typed('Peat'), formula('=STICK.BAGS(2000,107)')]
  const book: Book = {
    names: [],
    sheets: [
      {
        name: 'Mine',
        widths: [],
        frozenRows: 0,
        frozenColumns: 0,
        rows: [row(typed('compressed bale')), row(formula('="compressed "&"bale"'))],
      },
    ],
  }
  const found = checkBook(await calculateBook(book), catalogue, english.found)
  expect(found.map(({ address }) => address)).toEqual(['C1', 'C2'])
})
