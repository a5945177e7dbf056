import { beforeAll, describe, expect, test } from 'vitest'
import { plainCell } from '../../../src/derived/plainCell'
import { workingOf } from '../../../src/derived/working'
import { waitedFor } from '../../../src/formula/waiting'
import { catalogue } from '../../../src/functions/catalogue'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { Book } from '../../../src/workbook/book'
import type { OpenBook } from '../../../src/workbook/openBook'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { cellsRead, filledCells } from '../../../src/workbook/working/cellsRead'
import { workingBook } from '../../../src/workbook/working/workingBook'

const season = demoSeason()
let open: OpenBook
beforeAll(async () => {
  open = await calculateBook(season)
}, 180_000)

function workingOfCell(sheet: string, address: string, book = open): Book {
  const { formula, value, spill, calls = [] } = book.sheets.find(({ name }) => name === sheet)!.cells.get(address)!
  return workingBook('Working', {
    sheet,
    address,
    formula,
    value,
    ...(spill && { spill }),
    calls: calls.map(({ id, args }) => {
      const definition = catalogue.find((one) => one.id === id)!
      return { definition, args, working: workingOf(definition, args) }
    }),
    read: filledCells(cellsRead(formula, sheet, book.names), book, 50),
    plain: plainCell(formula, catalogue),
  })
}

/** What stands beside each text of the first column, once the season with the new sheet is calculated. */
async function calculated(added: Book): Promise<ReadonlyMap<string, unknown>> {
  const { sheets } = await calculateBook({ names: season.names, sheets: [...season.sheets, ...added.sheets] })
  const { cells } = sheets.at(-1)!
  return new Map(
    added.sheets[0]!.rows.flatMap(([label], row) =>
      typeof label?.value === 'string' ? [[label.value, cells.get(`B${row + 1}`)?.value]] : [],
    ),
  )
}

const ours = (sheet: string, id: string) =>
  [...open.sheets.find(({ name }) => name === sheet)!.cells].find(([, { formula }]) =>
    waitedFor(formula).startsWith(`=STICK.${id}(`),
  )![0]

describe('the working on a sheet', () => {
  test('holds the formula, each argument as given and as read, the steps, the convention and the cells read with their labels', async () => {
    const book = await calculateBook({
      names: [{ name: 'BagVolume', refersTo: 'Plan!$B$2' }],
      sheets: [
        {
          name: 'Plan',
          widths: [],
          frozenRows: 0,
          frozenColumns: 0,
          rows: [
            [{ value: 'Needed' }, { value: '0.3 m3' }],
            [{ value: 'Bag' }, { value: 60 }],
            [undefined, { formula: '=STICK.BAGS(B1,BagVolume)' }],
          ],
        },
      ],
    })
    const [sheet] = workingOfCell('Plan', 'B3', book).sheets
    const lines = sheet!.rows.map((row) => row.map((cell) => cell?.value ?? cell?.formula ?? ''))
    expect(lines[0]).toEqual(['Calculation of B3 on Plan'])
    expect(lines[1]).toEqual(['Formula', '=STICK.BAGS(B1,BagVolume)'])
    expect(lines[2]).toEqual(['Result when this was written', 5])
    expect(lines).toContainEqual(['neededL', 300, 'L', '0.3 m3', 'loose litres that are needed'])
    expect(lines).toContainEqual(['onHandL', 0, 'L', 'left out, so this is assumed', expect.any(String)])
    expect(lines).toContainEqual(['perBag', 60, 'L loose per bag', 'bagVolumeL * expansion', expect.any(String)])
    expect(lines).toContainEqual(['How it is counted', expect.stringContaining('Whole bags')])
    expect(lines).toContainEqual(['Needed', '0.3 m3', '', 'Plan!B1', ''])
    expect(lines).toContainEqual(['Bag', 60, '', 'Plan!B2', 'BagVolume'])
  })

  test('recalculates a number of the season live, beside what the cell shows, with no difference', async () => {
    const [address] = [...open.sheets.find(({ name }) => name === 'Media')!.cells].find(
      ([, { formula }]) => 'formula' in plainCell(formula, catalogue) && formula.includes('STICK.PACKPRICE('),
    )!
    const lines = await calculated(workingOfCell('Media', address))
    expect(lines.get('The cell shows')).toBe(
      open.sheets.find(({ name }) => name === 'Media')!.cells.get(address)!.value,
    )
    expect(lines.get('The plain formula gives')).toBeCloseTo(Number(lines.get('The cell shows')), 9)
    expect(lines.get('Difference')).toBe(0)
  })

  test('gives every value of a list a cell of its own', () => {
    const book = workingOfCell('Quote', ours('Quote', 'LINERCOST'))
    const lines = book.sheets[0]!.rows.map((row) => row.map((cell) => cell?.value ?? ''))
    const top = lines.findIndex(([name]) => name === 'stageRates')
    expect(lines.slice(top, top + 4).map(([, readAs]) => readAs)).toEqual([
      0.92,
      0.97,
      0.98,
      expect.closeTo(0.96 / 0.98, 12),
    ])
    const borne = lines.findIndex(([name]) => name === 'borne')
    const sum = lines.slice(borne, borne + 4).reduce((total, [, value]) => total + Number(value), 0)
    expect(lines.find(([name]) => name === 'costPerLiner')![1]).toBeCloseTo(sum, 12)
  })

  test.each([
    ['Compare', 'COMPARE'],
    ['Quote', 'QUOTE'],
    ['Reuse', 'REUSELEDGER'],
  ])('recalculates a table live, on %s, and counts no cell that differs', async (sheet, id) => {
    expect((await calculated(workingOfCell(sheet, ours(sheet, id)))).get('Cells that differ')).toBe(0)
  })

  test('counts the cells of a table that differ', async () => {
    const book = workingOfCell('Quote', ours('Quote', 'QUOTE'))
    const [sheet] = book.sheets
    const rows = sheet!.rows.map((row) =>
      row.map((cell) =>
        cell?.formula?.startsWith('=SUMPRODUCT(--IF')
          ? { ...cell, formula: cell.formula.replace('0.000000001', '-1') }
          : cell,
      ),
    )
    const differing = (await calculated({ ...book, sheets: [{ ...sheet!, rows }] })).get('Cells that differ')
    expect(differing).toBeGreaterThan(10)
  })

  test.each([
    ['Cheapest', 'BUYPLAN'],
    ['Timing', 'STOCKPLAN'],
  ])('checks an answer live where there is no plain formula for it, on %s', async (sheet, id) => {
    const lines = await calculated(workingOfCell(sheet, ours(sheet, id)))
    expect(lines.get(`${id} has no plain formula`)).not.toBe('')
    expect(lines.get('The answer passes the check')).toBe(true)
  })
})

describe('the cells that a formula reads', () => {
  test('come with their name, their sheet and the label that the season gives them, each once', () => {
    const [address, { formula }] = [...open.sheets.find(({ name }) => name === 'Compare')!.cells].find(([, cell]) =>
      waitedFor(cell.formula).startsWith('=STICK.COMPARE('),
    )!
    expect(address).toMatch(/^A\d+$/)
    const read = filledCells(cellsRead(formula, 'Compare', open.names), open, 3)
    expect(read.find(({ name }) => name === 'MethodName')).toMatchObject({
      sheet: 'Methods',
      count: vellimoor.methods.length + vellimoor.open.methods,
    })
    expect(read.find(({ name }) => name === 'SetupYearlyInterest')?.label).toMatch(/interest/i)
    expect(new Set(read.map(({ sheet, address: at }) => `${sheet}!${at}`)).size).toBe(read.length)
  })

  test('of a whole column are no endless list', () => {
    const [column] = filledCells(cellsRead('=SUM(B:B)', 'Orders', []), open, 4)
    expect(column).toMatchObject({ address: 'B:B', count: Infinity })
    expect(column!.values).toHaveLength(4)
  })
})
