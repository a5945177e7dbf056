/** Reads an .xlsx file into a book, and says what a book cannot hold. */
import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx'
import { ValueType, Workbook, type Cell as FileCell, type Style, type Worksheet } from '@cj-tech-master/excelts'
import { addressOf, blockAddress, blockIn, positionOf, positionsIn } from '../../formula/address'
import type { Book, Cell, CellContent, DefinedName, Sheet, SheetTable } from '../../workbook/book'
import { serialOf } from '../../core/quantity/day'
import { allowedIn } from './allowed'
import { fromFileSpelling, readsWholeSpill } from './formulaSpelling'
import { partsForLibrary } from './libraryParts'
import { lookOf } from './looks'
import { whatIsLost, type Lost, type SeenInCells } from './lost'
import { definedNames, notesOf, sheetParts, type FileName, type SheetPart } from './parts'
import { withoutTableReferences, type FileTable } from './tableReferences'
import { unpack, type Parts } from './unpack'
import { XlsxProblem } from './xlsxProblem'

export interface ReadBook {
  readonly book: Book
  /** Each thing of the file that a book cannot hold. */
  readonly lost: readonly Lost[]
}

/** Throws an XlsxProblem, whose message is a sentence in English for the user, where the file cannot be read. */
export async function readXlsx(bytes: Uint8Array): Promise<ReadBook> {
  const parts = await unpack(bytes)
  try {
    return await readParts(parts)
  } catch (problem) {
    throw problem instanceof XlsxProblem ? problem : new XlsxProblem('damaged', { cause: problem })
  }
}

async function readParts(parts: Parts): Promise<ReadBook> {
  const workbook = new Workbook()
  await workbook.xlsx.loadFromFiles(partsForLibrary(parts))
  const seen: SeenInCells = {
    richText: false,
    ownStyles: false,
    fixedArrays: false,
    wholeSpills: false,
    otherRules: false,
    otherTables: false,
  }
  const tables = workbook.worksheets.flatMap(tablesOf)
  if (tables.some(({ isPlain }) => !isPlain)) seen.otherTables = true
  const sheets = sheetParts(parts)
  if (sheets.length === 0) throw new XlsxProblem('damaged')
  const { names, lost } = oneScope(definedNames(parts))
  return {
    book: {
      sheets: sheets.map((sheet) => {
        const worksheet = workbook.getWorksheet(sheet.name)
        if (worksheet === undefined) throw new XlsxProblem('damaged')
        return readSheet(worksheet, sheet, parts, tables, seen)
      }),
      names,
    },
    lost: whatIsLost(parts, sheets, lost, seen),
  }
}

function readSheet(
  worksheet: Worksheet,
  part: SheetPart,
  parts: Parts,
  tables: readonly ReadTable[],
  seen: SeenInCells,
): Sheet {
  const { rows = [], cols = [], views = [] } = worksheet.model
  const fileCells = new Map<string, FileCellModel>()
  for (const { cells = [] } of rows) for (const cell of cells) fileCells.set(cell.address, cell)
  const spilledOver = cellsBelowSpills(fileCells.values())

  const cells = new Map<string, Cell>()
  for (const [address, fileCell] of fileCells) {
    const formula = formulaOf(fileCell, fileCells)
    const plain = formula && withoutTableReferences(formula, { sheet: part.name, address }, tables)
    if (plain !== formula) seen.otherTables = true
    const content =
      plain === undefined
        ? !spilledOver.has(address) && contentOf(fileCell, seen)
        : { formula: plain, ...(spillsOf(fileCell, seen) && { spills: true }) }
    const cell: Cell = { ...content, ...appearanceOf(fileCell.style, seen, content) }
    if (formula !== undefined && readsWholeSpill(formula)) seen.wholeSpills = true
    if (Object.keys(cell).length > 0) cells.set(address, cell)
  }
  for (const [address, note] of notesOf(parts, part)) cells.set(address, { ...cells.get(address), note })
  const { byAddress, others } = allowedIn(worksheet)
  if (others) seen.otherRules = true
  for (const [address, allowed] of byAddress) cells.set(address, { ...cells.get(address), allowed })

  const [view] = views
  const kept = tables
    .filter(({ sheet, isPlain }) => isPlain && sheet === part.name)
    .map(({ name, ...block }): SheetTable => ({ name, range: blockAddress(block) }))
  const frozen = view?.state === 'frozen' ? view : undefined
  return {
    name: part.name,
    widths: widthsOf(cols),
    frozenRows: frozen?.ySplit ?? 0,
    frozenColumns: frozen?.xSplit ?? 0,
    rows: rowsOf(cells),
    ...(kept.length > 0 && { tables: kept }),
  }
}

type FileCellModel = FileCell['model']

/** A formula shared by a block of cells stands in one of them; the others say where. */
function formulaOf(cell: FileCellModel, cells: ReadonlyMap<string, FileCellModel>): string | undefined {
  if (cell.formula !== undefined) return fromFileSpelling(cell.formula)
  const shared = cell.sharedFormula === undefined ? undefined : cells.get(cell.sharedFormula)?.formula
  if (shared === undefined || cell.sharedFormula === undefined) return undefined
  const relative = translateFormulaToR1C1(fromFileSpelling(shared), cell.sharedFormula)
  return translateFormulaToA1(relative, cell.address)
}

/** Excel stores a formula of ours as an array also where it fills one cell; `spills` is for those that fill more. */
function spillsOf({ shareType, ref, address, isDynamicArray }: FileCellModel, seen: SeenInCells): boolean {
  if (shareType !== 'array') return false
  if (isDynamicArray !== true) seen.fixedArrays = true
  return ref !== undefined && ref !== address
}

/** The file repeats the values that a formula spills; kept as content they would be in its way. */
function cellsBelowSpills(cells: Iterable<FileCellModel>): ReadonlySet<string> {
  const below = new Set<string>()
  for (const { shareType, ref, address } of cells) {
    if (shareType !== 'array' || ref === undefined) continue
    for (const { row, column } of positionsIn(blockIn(ref)))
      if (addressOf(row, column) !== address) below.add(addressOf(row, column))
  }
  return below
}

function contentOf(cell: FileCellModel, seen: SeenInCells): Pick<Cell, 'value' | 'formula'> {
  if (cell.type === ValueType.Merge) return {}
  const content =
    cell.type === ValueType.Formula ? cell.result : cell.type === ValueType.Hyperlink ? cell.text : cell.value
  if (content === undefined || content === null) return {}
  if (content instanceof Date) return { value: serialOf(content) }
  if (typeof content !== 'object') return { value: content satisfies CellContent }
  // A book's values are no errors, but a formula may be one: =#N/A.
  if ('error' in content) return { formula: `=${content.error}` }
  if ('richText' in content && content.richText !== undefined) {
    seen.richText = true
    return { value: content.richText.map(({ text }) => text).join('') }
  }
  return {}
}

/** A text that is bold in a file of someone else's is taken for a heading, by which cells are called. */
function appearanceOf(
  style: Partial<Style> | undefined,
  seen: SeenInCells,
  content: Pick<Cell, 'value'> | false,
): Pick<Cell, 'format' | 'look'> {
  if (style === undefined) return {}
  const code = typeof style.numFmt === 'object' ? style.numFmt.formatCode : style.numFmt
  const own = lookOf(style)
  if (own === undefined && isStyled(style)) seen.ownStyles = true
  const isBoldText = content && typeof content.value === 'string' && style.font?.bold === true
  const look = own ?? (isBoldText ? 'heading' : undefined)
  return { ...(code !== undefined && code !== 'General' && { format: code }), ...(look && { look }) }
}

function isStyled({ font, fill, border, alignment }: Partial<Style>): boolean {
  const isFilled = fill !== undefined && !(fill.type === 'pattern' && fill.pattern === 'none')
  const isLettered =
    font?.bold === true || font?.italic === true || font?.underline !== undefined || font?.color?.argb !== undefined
  const isFramed = Object.values(border ?? {}).some((side) => side !== undefined && 'style' in side)
  return isFilled || isLettered || isFramed || Object.keys(alignment ?? {}).length > 0
}

/** What a column has where the file says nothing, in characters. */
const usualWidth = 9

function widthsOf(columns: NonNullable<Worksheet['model']['cols']>): number[] {
  const widths: number[] = []
  // A last entry often covers all the columns to the end of the sheet; those need no width of their own.
  for (const { min, max, width } of columns.filter((column) => column.width !== undefined && column.max < 16_384)) {
    for (let column = widths.length + 1; column < min; column += 1) widths.push(usualWidth)
    for (let column = min; column <= max; column += 1) widths.push(width ?? usualWidth)
  }
  return widths
}

function rowsOf(cells: ReadonlyMap<string, Cell>): Sheet['rows'] {
  const rows: (Cell | undefined)[][] = []
  for (const [address, cell] of cells) {
    const { row, column } = positionOf(address)
    const inRow = (rows[row] ??= [])
    inRow[column] = cell
  }
  return Array.from(rows, (row = []) => Array.from(row))
}

interface ReadTable extends FileTable {
  /** With headings and no more than a book can hold. */
  readonly isPlain: boolean
}

function tablesOf(worksheet: Worksheet): ReadTable[] {
  return worksheet.model.tables.map(({ name, displayName, tableRef, ref, headerRow, totalsRow, columns, style }) => ({
    ...blockIn(tableRef ?? ref),
    name: displayName ?? name,
    sheet: worksheet.name,
    hasHeader: headerRow !== false,
    hasTotals: totalsRow === true,
    columns: columns.map((column) => column.name),
    isPlain:
      headerRow !== false && totalsRow !== true && style?.theme === 'TableStyleLight1' && style.showRowStripes !== true,
  }))
}

/** A book's names hold everywhere. A name of one sheet becomes such a name where no other one is in its way. */
function oneScope(all: readonly FileName[]): { names: DefinedName[]; lost: FileName[] } {
  const names = new Map<string, DefinedName>()
  const lost: FileName[] = []
  const byScope = [...all].sort((a, b) => Number(a.onlyOnSheet !== undefined) - Number(b.onlyOnSheet !== undefined))
  for (const name of byScope) {
    const key = name.name.toLowerCase()
    if (names.has(key)) lost.push(name)
    else names.set(key, { name: name.name, refersTo: fromFileSpelling(name.refersTo).slice(1) })
  }
  return { names: [...names.values()], lost }
}
