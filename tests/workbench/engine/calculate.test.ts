import { describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { Book, Cell, DefinedName } from '../../../src/workbook/book'
import { refusalsIn } from '../../../src/workbook/check/refusalsIn'
import type { OpenSheet } from '../../../src/workbook/openBook'
import { errorOf } from '../../workbook/errorOf'

function bookOf(rows: readonly (readonly (Cell | undefined)[])[], names: readonly DefinedName[] = []): Book {
  return { sheets: [{ name: 'Plan', widths: [], frozenRows: 0, frozenColumns: 0, rows }], names }
}

const typed = (value: string | number | boolean): Cell => ({ value })
const formula = (text: string): Cell => ({ formula: text })

async function cellsOf(book: Book): Promise<OpenSheet['cells']> {
  const { sheets } = await calculateBook(book)
  return sheets[0]!.cells
}

describe('calculating a book without a screen', () => {
  it('buys five bags of 60 L for a tenth and two tenths of a cubic metre', async () => {
    const cells = await cellsOf(bookOf([[typed(0.1), typed(0.2)], [formula('=STICK.BAGS((A1+B1)*1000,60)')]]))
    expect(cells.get('A2')).toMatchObject({ value: 5 })
  })

  // The last row is that of the file format, Office Open XML, and of the grid.
  it('reads the cells of the last row of a sheet, and whole columns', async () => {
    const rows: Cell[][] = []
    rows[0] = [{}, formula('=SUM(A:A)'), formula('=COUNT(A:A)')]
    rows[1_048_575] = [typed(5), formula('=A1048576*2')]
    const cells = await cellsOf(bookOf(Array.from(rows, (row) => row ?? [])))
    expect(['B1', 'C1', 'B1048576'].map((address) => cells.get(address)?.value)).toEqual([5, 1, 10])
  })

  it('tells from time to time which of its formulas it calculates', async () => {
    const told: (readonly [number, number])[] = []
    const rows = Array.from({ length: 1200 }, () => [formula('=1+1')])
    await calculateBook(bookOf(rows), (formula, formulas) => told.push([formula, formulas]))
    const places = told.map(([formula]) => formula)
    expect(places).toEqual([...places].sort((a, b) => a - b))
    expect(new Set(places).size).toBeGreaterThan(1)
    expect(new Set(told.map(([, formulas]) => formulas))).toEqual(new Set([1200]))
  })

  it('lets no comparison hide an error, however often and on whichever side its cell is compared', async () => {
    const compared = [
      'A1<1',
      '1>A1',
      'A1=1',
      '1=A1',
      'A1<>1',
      'A1>=B1',
      '(A1<1)*1',
      'IF(A1<1,"less","not less")',
      'IF(1<=A1,"less","not less")',
      'SUM((A1:A2<1)*1)',
    ]
    const rows = [
      [formula('=NA()'), typed(2)],
      [formula('=1/0')],
      ...compared.map((text) => [formula(`=${text}`)]),
      ...compared.map((text) => [formula(`=${text.replaceAll('A1', 'A2').replace('A2:A2', 'A1:A2')}`)]),
    ]
    const cells = await cellsOf(bookOf(rows))
    for (let row = 1; row <= rows.length; row++)
      expect(errorOf(cells.get(`A${row}`)), String(rows[row - 1]![0]!.formula)).toBeDefined()
  })

  it('compares a range cell by cell, and a row with a column as a table', async () => {
    const cells = await cellsOf(
      bookOf([
        [typed(1), typed(2), typed(3), formula('=SUM((A1:C1>=2)*1)')],
        [typed(3), undefined, undefined, formula('=SUM((A1:C1=A1:A3)*1)')],
        [typed(''), undefined, undefined, formula('=SUMPRODUCT((A1:C1<=A2:C2)*A1:C1)')],
        [typed('peat'), typed('Peat'), undefined, formula('=A4=B4')],
        [undefined, undefined, undefined, formula('=A5=0')],
      ]),
    )
    expect(['D1', 'D2', 'D3', 'D4', 'D5'].map((address) => cells.get(address)?.value)).toEqual([2, 2, 1, true, true])
  })

  it('gives typed numbers, text and logical values back as they are', async () => {
    const cells = await cellsOf(bookOf([[typed(1.5), typed('60'), typed(true), typed('15%')]]))
    expect([...cells.values()].map(({ value }) => value)).toEqual([1.5, '60', true, '15%'])
  })

  it('answers for a book without any formula and for one without any sheet row', async () => {
    expect((await cellsOf(bookOf([[typed('only text')]]))).get('A1')).toMatchObject({ value: 'only text' })
    expect((await cellsOf(bookOf([]))).size).toBe(0)
  })

  it('says the address, the code and the sentence of every cell that refuses', async () => {
    const book = await calculateBook(
      bookOf([[typed(100), typed(15)], [formula('=STICK.FILL(A1,B1,B1)')], [formula('=A2+1')]]),
    )
    const refusals = refusalsIn(book)
    expect(refusals).toHaveLength(1)
    expect(refusals[0]).toMatchObject({ sheet: 'Plan', address: 'A2', code: '#VALUE!' })
    expect(refusals[0]!.sentence).toMatch(/15/)
    expect(book.sheets[0]!.cells.get('A2')).toMatchObject({
      value: { code: '#VALUE!' },
      sentence: refusals[0]!.sentence,
    })
    expect(errorOf(book.sheets[0]!.cells.get('A3'))).toBe('#VALUE!')
    expect(book.sheets[0]!.cells.get('A3')).not.toHaveProperty('sentence')
  })

  it('does not report a refusal that the formula itself catches', async () => {
    const book = await calculateBook(bookOf([[formula('=IFERROR(STICK.BAGS("much",60),"ask")')]]))
    const refusals = refusalsIn(book)
    expect(book.sheets[0]!.cells.get('A1')).toMatchObject({ value: 'ask' })
    expect(refusals).toEqual([])
  })

  it('does not report a refusal in the branch of an IF that was not taken', async () => {
    const book = await calculateBook(bookOf([[formula('=IF(1>2,STICK.BAGS("much",60),"none")')]]))
    const refusals = refusalsIn(book)
    expect(refusals).toEqual([])
  })

  it('lets the error value of an input cell through', async () => {
    const cells = await cellsOf(bookOf([[formula('=1/0')], [formula('=STICK.BAGS(A1,60)')]]))
    expect(errorOf(cells.get('A2'))).toBe('#DIV/0!')
  })

  it('refuses too few arguments with a sentence instead of the bare error of the engine', async () => {
    const book = await calculateBook(bookOf([[formula('=STICK.BAGS(5)')]]))
    const refusals = refusalsIn(book)
    expect(refusals[0]?.sentence).toMatch(/^bagVolumeL is blank; it takes volume that one bag declares\. /)
  })

  it('keeps a blank cell apart from zero', async () => {
    const book = await calculateBook(bookOf([[undefined, typed(60)], [formula('=STICK.BAGS(A1,B1)')]]))
    const refusals = refusalsIn(book)
    expect(refusals.map(({ address }) => address)).toEqual(['A2'])
  })

  it('gives every cell a formula spills over, and the range at its first cell', async () => {
    const cells = await cellsOf(
      bookOf([
        [typed(1), typed(3)],
        [{ formula: '=STICK.BLENDPARTS(100,A1:B1,0)', spills: true }],
        [formula('=SUM(A2:B2)')],
      ]),
    )
    expect(cells.get('A2')).toMatchObject({ value: 25, spill: 'A2:B2' })
    expect(cells.get('B2')).toMatchObject({ value: 75 })
    expect(cells.get('B2')).not.toHaveProperty('spill')
    expect(cells.get('A3')).toMatchObject({ value: 100 })
  })

  it('follows formulas that spill into one another, in whatever order they stand', async () => {
    const spilling = (text: string): Cell => ({ formula: text, spills: true })
    const cells = await cellsOf(
      bookOf([[formula('=B2'), spilling('=SEQUENCE(2)*C1'), formula('=D2'), spilling('=SEQUENCE(3)*E1'), typed(5)]]),
    )
    // The second cell of a SEQUENCE is twice its first.
    expect(cells.get('A1')).toMatchObject({ value: 20 })
  })

  it('follows names to the place that each book gives them, one book after another and side by side', async () => {
    const withPriceIn = (refersTo: string): Book =>
      bookOf([[typed(7), typed(9)], [formula('=Price*2')]], [{ name: 'Price', refersTo }])
    const [first, second, third] = await Promise.all([
      cellsOf(withPriceIn('Plan!$A$1')),
      cellsOf(withPriceIn('Plan!$B$1')),
      cellsOf(withPriceIn('Plan!$A$1')),
    ])
    expect([first, second, third].map((cells) => cells!.get('A2')!.value)).toEqual([14, 18, 14])
  })

  it('calculates across sheets whose names need quotes', async () => {
    const book: Book = {
      names: [],
      sheets: [
        { name: 'Price list', widths: [], frozenRows: 0, frozenColumns: 0, rows: [[typed(3)]] },
        { name: 'Plan', widths: [], frozenRows: 0, frozenColumns: 0, rows: [[formula("='Price list'!A1*2")]] },
      ],
    }
    expect((await calculateBook(book)).sheets[1]!.cells.get('A1')).toMatchObject({ value: 6 })
  })
})
