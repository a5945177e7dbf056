/**
 * Columns of tables into which formulas are put. Excel fills all of a column with a formula that a program puts into
 * some of its cells, as with one that is typed, and only the user can switch that off (office-js issues 2093, 5909 and
 * 6745). So such a column is emptied first and written as a whole, and what Excel has made of it is read again.
 */
import { addressOf, blockAddress, type Position } from '../formula/address'
import { relativeFormula } from '../formula/relativeFormula'
import { asText } from './asText'
import { isFormula } from './readCell'
import type { Tables } from './tables'

export type Content = string | number | boolean

/** The data of a column: where it begins, and what stood in it before, as Excel writes it. */
export interface TableColumn extends Position {
  readonly stood: readonly Content[]
}

/** The columns of the sheet's tables that hold any of these cells. */
export async function columnsOf(
  worksheet: Excel.Worksheet,
  sheet: string,
  cells: readonly Position[],
  tables: Tables,
): Promise<readonly TableColumn[]> {
  if (cells.length === 0) return []
  const found = (await tables())
    .filter((table) => table.sheet === sheet)
    .flatMap(({ top, bottom, left, right, hasHeader, hasTotals }) => {
      const [first, last] = [top + (hasHeader ? 1 : 0), bottom - (hasTotals ? 1 : 0)]
      const within = cells.filter(({ row, column }) => row >= first && row <= last && column >= left && column <= right)
      return [...new Set(within.map(({ column }) => column))].map((column) => {
        return { row: first, column, range: loaded(worksheet, first, column, last - first + 1) }
      })
    })
  if (found.length > 0) await worksheet.context.sync()
  return found.map(({ row, column, range }) => ({ row, column, stood: contentsOf(range) }))
}

function loaded(worksheet: Excel.Worksheet, row: number, column: number, rows: number): Excel.Range {
  const range = worksheet.getRangeByIndexes(row, column, rows, 1)
  range.load(['formulas'])
  return range
}

function contentsOf({ formulas }: Excel.Range): readonly Content[] {
  return formulas.map(([content]) => content as Content)
}

export async function standAsBefore(worksheet: Excel.Worksheet, columns: readonly TableColumn[]): Promise<boolean> {
  const now = columns.map(({ row, column, stood }) => ({ stood, range: loaded(worksheet, row, column, stood.length) }))
  await worksheet.context.sync()
  return now.every(({ stood, range }) => contentsOf(range).every((content, index) => content === stood[index]))
}

export function holds({ row, column, stood }: TableColumn, cell: Position): boolean {
  return cell.column === column && cell.row >= row && cell.row < row + stood.length
}

/**
 * Writes columns anew, with other contents where there are such. Gives the address of one that Excel has filled over
 * all the same.
 */
export async function writeColumns(
  worksheet: Excel.Worksheet,
  columns: readonly TableColumn[],
  contentFor: (cell: Position) => Content | undefined,
): Promise<string | undefined> {
  if (columns.length === 0) return undefined
  const written = columns.map((column) => {
    const contents = column.stood.map((stood, index) => ({
      stood,
      now: contentFor({ row: column.row + index, column: column.column }),
    }))
    const cells = worksheet.getRangeByIndexes(column.row, column.column, contents.length, 1)
    cells.formulas = contents.map(() => [''])
    cells.formulas = contents.map(({ stood, now }) => [now ?? again(stood)])
    return { column, contents, range: loaded(worksheet, column.row, column.column, contents.length) }
  })
  await worksheet.context.sync()
  const other = written.find(({ column, contents, range }) => {
    const read = contentsOf(range)
    const isKept = contents.every(({ stood, now }, index) => now !== undefined || read[index] === stood)
    const wanted = contents.map(({ stood, now }) => now ?? stood)
    return !isKept || areAlike(read, column) !== areAlike(wanted, column)
  })
  return other && addressOfColumn(other.column)
}

/** What stood in a cell, so that Excel makes the same of it again. An error value that was typed is no text. */
function again(content: Content): Content {
  const isText = typeof content === 'string' && !/^[=#]/.test(content)
  return isText ? (asText(content) ?? '') : content
}

/** Whether one formula fills the column. Excel may spell formulas in its own way, but all of them alike. */
function areAlike(contents: readonly Content[], { row, column }: Position): boolean {
  const [first, ...others] = contents.map((content, index) =>
    isFormula(content) ? relativeFormula(content, addressOf(row + index, column)) : undefined,
  )
  return first !== undefined && others.every((other) => other === first)
}

function addressOfColumn({ row, column, stood }: TableColumn): string {
  return blockAddress({ top: row, bottom: row + stood.length - 1, left: column, right: column })
}
