/** A book as the grid's own data. `gridToBook` reads it back. */
import { largest } from '../../core/quantity/largest'
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from '@univerjs/core'
import type { IDefinedNameMapItem } from '@univerjs/engine-formula'
import type {
  Allowed,
  Book,
  Cell,
  CellContent,
  DefinedName,
  FileProperties,
  Look,
  Sheet,
  SheetLayout,
} from '../../workbook/book'
import { type RealTable, realTables } from '../../workbook/realTables'
import { absoluteAddress, addressOf } from '../../formula/address'
import { quotedSheet } from '../../formula/reference'
import { formulaForGrid } from './formulaForGrid'
import { lookStyles } from './looks'
import { roomBelow } from './mends/roomBelow'

/** What the grid has no place of its own for; it stays with the cell. */
export interface KeptWithCell {
  readonly look?: Look
  readonly spills?: true
  readonly fills?: Cell['fills']
  /** The grid does not hold a user to it; a file that is saved does. */
  readonly allowed?: Allowed
}

/** The same for a sheet. */
export interface KeptWithSheet {
  readonly frozenColumns?: number
  readonly layout?: SheetLayout
}

/** The same for a workbook. */
export interface KeptWithBook {
  readonly properties?: FileProperties
}

/** The grid measures columns in pixels: the width of a digit, and the room at both edges. */
export const pixelsPerCharacter = 7
export const pixelsOfPadding = 12

/** In pixels, where a sheet says nothing. */
export const usualColumnWidth = 88
const usualRowHeight = 24
const titleHeight = 34

/** How many empty columns follow what is filled. */
const roomBeside = 10

/** The grid's marks for a name of the whole workbook, and for the data of its plugins. */
const wholeWorkbook = 'AllDefaultWorkbook'
export const namesResource = 'SHEET_DEFINED_NAME_PLUGIN'
export const notesResource = 'SHEET_NOTE_PLUGIN'

export interface GridRoom {
  /** A narrow window that showed frozen columns would have no room left to scroll the others. */
  readonly isNarrow: boolean
}

/** A book in the grid's words; a workbook is made of them, or they are added to one. */
export interface GridParts {
  readonly sheets: readonly (Partial<IWorksheetData> & { readonly id: string })[]
  readonly styles: Readonly<Record<string, IStyleData>>
  readonly names: IDefinedNameMapItem
  /** By the id of their sheet, then by row and column. */
  readonly notes: Readonly<Record<string, GridNotes>>
}

export type GridNotes = Readonly<Record<number, Readonly<Record<number, GridNote>>>>

export interface GridNote {
  readonly id: string
  readonly row: number
  readonly col: number
  readonly width: number
  readonly height: number
  readonly note: string
}

export function bookToGrid(book: Book, id: string, room: GridRoom = { isNarrow: false }): IWorkbookData {
  const { sheets, styles, names, notes } = gridParts(book, '', room)
  const kept: KeptWithBook = { ...(book.properties && { properties: book.properties }) }
  return {
    id,
    name: 'Sticksheet',
    appVersion: '0.25.1',
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: [
      { name: namesResource, data: JSON.stringify(names) },
      { name: notesResource, data: JSON.stringify(notes) },
    ],
    ...(Object.keys(kept).length > 0 && { custom: kept }),
  }
}

/** The prefix tells the ids of this book from those of what the workbook holds already. */
export function gridParts(book: Book, prefix: string, room: GridRoom): GridParts {
  const styles = new Map<string, IStyleData>()
  const sheetId = (index: number) => `${prefix}sheet${index + 1}`
  const sheets = book.sheets.map((sheet, index) => toGridSheet(sheet, sheetId(index), styles, room))
  return {
    sheets,
    styles: Object.fromEntries(styles),
    names: gridNames(book, prefix),
    notes: Object.fromEntries(book.sheets.map((sheet, index) => [sheetId(index), gridNotes(sheet)])),
  }
}

export function gridNames(book: Book, prefix = ''): IDefinedNameMapItem {
  const named =
    (kind: string) =>
    ({ name, refersTo }: DefinedName, index: number) => {
      const id = `${prefix}${kind}${index + 1}`
      return [id, { id, name, formulaOrRefString: formulaForGrid(refersTo), localSheetId: wholeWorkbook }] as const
    }
  const tables = book.sheets.flatMap((sheet) => realTables(sheet).map((table) => dataOfTable(sheet.name, table)))
  return Object.fromEntries([...book.names.map(named('name')), ...tables.map(named(tableId))])
}

/**
 * The grid has no tables, so a table is kept as a name of the cells below its headings, which is what its name stands
 * for in Excel too; as a name it moves and grows with its rows. The id of the name tells it from the others.
 */
const tableId = 'table'
export const isTableId = (id: string): boolean => new RegExp(`${tableId}\\d+$`).test(id)

function dataOfTable(sheet: string, { name, top, left, bottom, right }: RealTable): DefinedName {
  return { name, refersTo: `${quotedSheet(sheet)}!${absoluteAddress({ top: top + 1, left, bottom, right })}` }
}

function toGridSheet(
  sheet: Sheet,
  id: string,
  styles: Map<string, IStyleData>,
  { isNarrow }: GridRoom,
): Partial<IWorksheetData> & { readonly id: string } {
  const frozenColumns = isNarrow ? 0 : sheet.frozenColumns
  const { layout } = sheet
  const kept: KeptWithSheet = {
    ...(frozenColumns !== sheet.frozenColumns && { frozenColumns: sheet.frozenColumns }),
    ...(layout && { layout }),
  }
  const widths = sheet.rows.map((row) => row.length)
  const widest = largest(widths, sheet.widths.length)
  const cellData: Record<number, Record<number, ICellData>> = {}
  sheet.rows.forEach((row, rowIndex) => {
    const gridRow: Record<number, ICellData> = {}
    row.forEach((cell, column) => {
      if (cell !== undefined) gridRow[column] = toGridCell(cell, styles)
    })
    if (Object.keys(gridRow).length > 0) cellData[rowIndex] = gridRow
  })
  return {
    id,
    name: sheet.name,
    rowCount: sheet.rows.length + roomBelow,
    columnCount: widest + roomBeside,
    defaultColumnWidth: usualColumnWidth,
    defaultRowHeight: usualRowHeight,
    rowData: Object.fromEntries(
      sheet.rows.flatMap((row, index) =>
        row.some((cell) => cell?.look === 'title') ? [[index, { h: titleHeight }]] : [],
      ),
    ),
    columnData: Object.fromEntries(
      sheet.widths.map((width, column) => [column, { w: width * pixelsPerCharacter + pixelsOfPadding }]),
    ),
    // The grid's own way to say that nothing is frozen is -1.
    freeze: {
      xSplit: frozenColumns,
      ySplit: sheet.frozenRows,
      startRow: sheet.frozenRows > 0 ? sheet.frozenRows : -1,
      startColumn: frozenColumns > 0 ? frozenColumns : -1,
    },
    cellData,
    ...(layout?.hidesGridlines && { showGridlines: BooleanNumber.FALSE }),
    ...(layout?.tabColour !== undefined && { tabColor: `#${layout.tabColour.slice(-6)}` }),
    ...(Object.keys(kept).length > 0 && { custom: kept }),
  }
}

function toGridCell(cell: Cell, styles: Map<string, IStyleData>): ICellData {
  const kept: KeptWithCell = {
    ...(cell.look && { look: cell.look }),
    ...(cell.spills && { spills: true }),
    ...(cell.fills && { fills: cell.fills }),
    ...(cell.allowed && { allowed: cell.allowed }),
  }
  return {
    ...(cell.formula === undefined
      ? cell.value === undefined
        ? {}
        : gridContent(cell.value)
      : { f: formulaForGrid(cell.formula) }),
    ...styleOf(cell, styles),
    ...(Object.keys(kept).length > 0 && { custom: kept }),
  }
}

/** The type is always said: else the grid takes the text "60" for a number. */
export function gridContent(content: CellContent): ICellData {
  if (typeof content === 'number') return { v: content, t: CellValueType.NUMBER }
  if (typeof content === 'boolean') return { v: content ? 1 : 0, t: CellValueType.BOOLEAN }
  return { v: content, t: CellValueType.STRING }
}

function styleOf({ look, format }: Cell, styles: Map<string, IStyleData>): Pick<ICellData, 's'> {
  if (look === undefined && format === undefined) return {}
  const id = `${look ?? 'plain'} ${format ?? ''}`.trim()
  if (!styles.has(id))
    styles.set(id, { ...(look && lookStyles[look]), ...(format !== undefined && { n: { pattern: format } }) })
  return { s: id }
}

function gridNotes(sheet: Sheet): GridNotes {
  const notes: Record<number, Record<number, GridNote>> = {}
  sheet.rows.forEach((row, rowIndex) =>
    row.forEach((cell, column) => {
      if (cell?.note === undefined) return
      const inRow = (notes[rowIndex] ??= {})
      inRow[column] = {
        id: addressOf(rowIndex, column),
        row: rowIndex,
        col: column,
        width: 220,
        height: 100,
        note: cell.note,
      }
    }),
  )
  return notes
}
