/** Reads the grid back into a book, for saving. */
import { largest } from '../../core/quantity/largest'
import {
  CellValueType,
  extractPureTextFromCell,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from '@univerjs/core'
import type { IDefinedNameMapItem } from '@univerjs/engine-formula'
import { rangesRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import type { Book, Cell, CellContent, DefinedName, Sheet, SheetTable } from '../../workbook/book'
import {
  isTableId,
  type KeptWithBook,
  type KeptWithCell,
  type KeptWithSheet,
  namesResource,
  notesResource,
  pixelsOfPadding,
  pixelsPerCharacter,
  usualColumnWidth,
} from './bookToGrid'

type Notes = Readonly<Record<string, Readonly<Record<number, Readonly<Record<number, { readonly note: string }>>>>>>

export function gridToBook(data: IWorkbookData): Book {
  const notes = resource<Notes>(data, notesResource)
  const named = Object.entries(resource<IDefinedNameMapItem>(data, namesResource)).map(([id, item]) => ({
    isTable: isTableId(id),
    name: toName(item),
  }))
  const tables = named.filter(({ isTable }) => isTable).flatMap(({ name }) => toTable(name))
  const { properties } = (data.custom ?? {}) as KeptWithBook
  return {
    sheets: data.sheetOrder.flatMap((id) => {
      const sheet = data.sheets[id]
      if (sheet === undefined) return []
      const ofSheet = tables
        .filter((table) => table.sheet === sheet.name)
        .map(({ name, range }): SheetTable => ({ name, range }))
      return [{ ...toSheet(sheet, data.styles, notes[id] ?? {}), ...(ofSheet.length > 0 && { tables: ofSheet }) }]
    }),
    names: named.filter(({ isTable }) => !isTable).map(({ name }) => name),
    ...(properties && { properties }),
  }
}

/** The name stands for the cells below the headings; nothing is left of a table whose rows were all deleted. */
function toTable({ name, refersTo }: DefinedName): readonly (SheetTable & { readonly sheet: string })[] {
  return rangesRead(`=${refersTo}`, '', new Map())
    .filter(({ top }) => top > 0)
    .map(({ sheet, top, left, bottom, right }) => ({
      name,
      sheet,
      range: `${addressOf(top - 1, left)}:${addressOf(bottom, right)}`,
    }))
}

function toName({ name, formulaOrRefString }: IDefinedNameMapItem[string]): DefinedName {
  return { name, refersTo: formulaOrRefString.replace(/^=/, '') }
}

function toSheet(sheet: Partial<IWorksheetData>, styles: IWorkbookData['styles'], notes: Notes[string]): Sheet {
  const cells = sheet.cellData ?? {}
  const kept = (sheet.custom ?? {}) as KeptWithSheet
  const rowsInUse = new Set([...Object.keys(cells), ...Object.keys(notes)].map(Number))
  return {
    name: sheet.name ?? '',
    widths: denseRow(sheet.columnData ?? {}).map((column) =>
      charactersOf(column?.w ?? sheet.defaultColumnWidth ?? usualColumnWidth),
    ),
    frozenRows: sheet.freeze?.ySplit ?? 0,
    frozenColumns: sheet.freeze?.xSplit || kept.frozenColumns || 0,
    rows: Array.from({ length: 1 + largest(rowsInUse, -1) }, (_, row) => {
      const written = denseRow(cells[row] ?? {})
      const noted = denseRow(notes[row] ?? {})
      const columns = Math.max(written.length, noted.length)
      return withoutTrailingHoles(
        Array.from({ length: columns }, (_, column) => toCell(written[column], styles, noted[column]?.note)),
      )
    }),
    ...(kept.layout && { layout: kept.layout }),
  }
}

function toCell(
  cell: ICellData | undefined,
  styles: IWorkbookData['styles'],
  note: string | undefined,
): Cell | undefined {
  const { look, spills, fills, allowed } = (cell?.custom ?? {}) as KeptWithCell
  const format = styleData(cell?.s, styles)?.n?.pattern
  const content = cell === undefined || cell.f ? undefined : toContent(cell)
  const read: Cell = {
    ...(cell?.f ? { formula: cell.f } : content !== undefined && { value: content }),
    ...(spills && { spills }),
    ...(fills && cell?.f && { fills }),
    ...(format !== undefined && { format }),
    ...(look && { look }),
    ...(note !== undefined && { note }),
    ...(allowed && { allowed }),
  }
  return Object.keys(read).length === 0 ? undefined : read
}

function toContent(cell: ICellData): CellContent | undefined {
  // Text of several lines is kept as a small document of its own.
  if (cell.p) return extractPureTextFromCell(cell)
  if (cell.v === undefined || cell.v === null || cell.v === '') return undefined
  if (cell.t === CellValueType.BOOLEAN) return Boolean(Number(cell.v))
  if (cell.t === CellValueType.STRING || cell.t === CellValueType.FORCE_STRING) return String(cell.v)
  return cell.v
}

function styleData(style: ICellData['s'], styles: IWorkbookData['styles']): IStyleData | undefined {
  return (typeof style === 'string' ? styles[style] : style) ?? undefined
}

function charactersOf(pixels: number): number {
  return Math.max(1, Math.round(((pixels - pixelsOfPadding) / pixelsPerCharacter) * 100) / 100)
}

/** The grid keeps rows as objects by column number, with holes. */
function denseRow<T>(byColumn: Readonly<Record<number, T>>): (T | undefined)[] {
  const columns = Object.keys(byColumn).map(Number)
  return Array.from({ length: 1 + largest(columns, -1) }, (_, column) => byColumn[column])
}

function withoutTrailingHoles<T>(row: readonly (T | undefined)[]): readonly (T | undefined)[] {
  return row.length > 0 && row.at(-1) === undefined ? withoutTrailingHoles(row.slice(0, -1)) : row
}

function resource<T extends object>(data: IWorkbookData, name: string): T {
  const text = data.resources?.find((one) => one.name === name)?.data
  return (text ? JSON.parse(text) : {}) as T
}
