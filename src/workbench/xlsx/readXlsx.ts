/** Reads an .xlsx file into a book, and says what a book cannot hold. */
import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx'
import { ValueType, Workbook, type Cell as FileCell, type Style, type Worksheet } from '@cj-tech-master/excelts'
import {
  addressesIn,
  addressOf,
  type Block,
  blockAddress,
  blockIn,
  blockOf,
  positionOf,
  positionsIn,
} from '../../formula/address'
import { quotedSheet } from '../../formula/reference'
import type { Book, Cell, CellContent, Sheet, SheetTable } from '../../workbook/book'
import type { ReadCell } from '../../workbook/openBook'
import { withoutTableReferences, type PlacedTable } from '../../formula/tableReferences'
import { serialOf } from '../../core/quantity/day'
import { largest } from '../../core/quantity/largest'
import { allowedIn } from './allowed'
import { FileFormulas, type FileFormula, type Why } from './fileFormulas'
import { FileNames, type Home } from './fileNames'
import { fromFileSpelling } from './formulaSpelling'
import { partsForLibrary } from './libraryParts'
import { layoutOf } from './layout'
import { lookOf } from './looks'
import { whatIsLost, type Lost, type SeenInCells } from './lost'
import {
  definedNames,
  frameOf,
  notesOf,
  sheetParts,
  shownSheet,
  textOfPart,
  workbookPath,
  type FileName,
  type SheetPart,
} from './parts'
import { propertiesOf } from './properties'
import { unpack, type Parts } from './unpack'
import { XlsxProblem } from './xlsxProblem'

export interface ReadBook {
  readonly book: Book
  /** Each thing of the file that a book cannot hold. */
  readonly lost: readonly Lost[]
  readonly formulas: StoredFormulas
}

/** Of the formulas as they stand in the file. */
export interface StoredFormulas {
  /** Those that cannot be calculated here: a book has their stored results in their place. */
  readonly kept: readonly KeptCell[]
  /** Where a formula is stored as an array, the cells that it fills; undefined elsewhere. */
  arrayRange(sheet: string, address: string): string | undefined
  /** What the file stores in a cell. */
  result(sheet: string, address: string): ReadCell
}

export interface KeptCell extends Home {
  readonly why: Why
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
    otherRules: false,
    otherTables: false,
  }
  const tables = workbook.worksheets.flatMap(tablesOf)
  if (tables.some(({ isPlain }) => !isPlain)) seen.otherTables = true
  const sheets = sheetParts(parts).map((part): FileSheet => {
    const worksheet = workbook.getWorksheet(part.name)
    if (worksheet === undefined) throw new XlsxProblem('damaged')
    const cells = new Map<string, FileCellModel>()
    for (const row of worksheet.model.rows ?? []) for (const cell of row.cells ?? []) cells.set(cell.address, cell)
    return { part, worksheet, cells, ...traitsOf(textOfPart(parts, part.path)) }
  })
  if (sheets.length === 0) throw new XlsxProblem('damaged')
  const withCells = ({ refersTo, ...name }: FileName): FileName => {
    const home = { sheet: name.onlyOnSheet ?? '', address: 'A1' }
    return { ...name, refersTo: withoutTableReferences(`=${refersTo}`, home, tables).slice(1) }
  }
  const names = new FileNames(definedNames(parts).map(withCells))
  const workbookXml = textOfPart(parts, workbookPath)
  const formulas = new FileFormulas({
    names,
    sheets: sheets.map(({ part, cells, hiddenRows }) => ({ name: part.name, hiddenRows, dayCells: dayCellsOf(cells) })),
    countsFrom1904: /\bdate1904="(1|true)"/.test(workbookXml),
    roundsToShown: /\bfullPrecision="(0|false)"/.test(workbookXml),
  })
  const kept: KeptCell[] = []
  const read = sheets.map((sheet) => readSheet(sheet, parts, tables, formulas, seen, kept))
  const bySheet = new Map(sheets.map(({ part, cells }) => [part.name, cells]))
  const shown = shownSheet(parts)
  const { carried } = propertiesOf(parts)
  return {
    book: {
      sheets: read,
      names: names.names(),
      ...(shown !== undefined && { shown }),
      ...(carried && { properties: carried }),
    },
    lost: whatIsLost(
      parts,
      sheets.map(({ part }) => part),
      [...names.lost(), ...keptByReason(kept)],
      seen,
    ),
    formulas: {
      kept,
      arrayRange: (sheet, address) => arrayRangeOf(bySheet.get(sheet)?.get(address)),
      result: (sheet, address) => resultOf(bySheet.get(sheet)?.get(address)),
    },
  }
}

interface FileSheet {
  readonly part: SheetPart
  readonly worksheet: Worksheet
  readonly cells: ReadonlyMap<string, FileCellModel>
  readonly hiddenRows: readonly number[]
  /** The cells that what-if tables fill. */
  readonly dataTables: readonly Block[]
}

function traitsOf(xml: string): Pick<FileSheet, 'hiddenRows' | 'dataTables'> {
  const rows = [...xml.matchAll(/<(?:\w+:)?row\s[^>]*>/g)].map(([tag]) => tag)
  const tables = [...xml.matchAll(/<(?:\w+:)?f\s[^>]*>/g)]
    .map(([tag]) => tag)
    .filter((tag) => tag.includes('"dataTable"'))
  return {
    hiddenRows: rows.flatMap((tag, index) =>
      /\bhidden="(1|true)"/.test(tag) ? [Number(/\br="(\d+)"/.exec(tag)?.[1] ?? index + 1) - 1] : [],
    ),
    dataTables: tables.flatMap((tag) => blockOf(/\bref="([^"]*)"/.exec(tag)?.[1] ?? '') ?? []),
  }
}

function dayCellsOf(cells: FileSheet['cells']): ReadonlySet<string> {
  const isDay = ({ value, result }: FileCellModel) => value instanceof Date || result instanceof Date
  return new Set([...cells].filter(([, cell]) => isDay(cell)).map(([address]) => address))
}

function keptByReason(kept: readonly KeptCell[]): Lost[] {
  const reasons = [...new Set(kept.map(({ why }) => why))]
  return reasons.map((reason) => {
    const places = kept
      .filter(({ why }) => why === reason)
      .map(({ sheet, address }) => `${quotedSheet(sheet)}!${address}`)
    return { what: 'keptResults', names: [reason, ...places] }
  })
}

function arrayRangeOf(cell: FileCellModel | undefined): string | undefined {
  return cell?.shareType === 'array' ? (cell.ref ?? cell.address) : undefined
}

function resultOf(cell: FileCellModel | undefined): ReadCell {
  const content = cell && (cell.type === ValueType.Formula ? cell.result : cell.value)
  if (content === undefined || content === null) return null
  if (content instanceof Date) return serialOf(content)
  if (typeof content !== 'object') return content
  return 'error' in content ? { kind: 'cellError', code: content.error } : null
}

function readSheet(
  { part, worksheet, cells: fileCells, dataTables }: FileSheet,
  parts: Parts,
  tables: readonly ReadTable[],
  formulas: FileFormulas,
  seen: SeenInCells,
  kept: KeptCell[],
): Sheet {
  const { cols = [], views = [] } = worksheet.model
  const read = new Map<string, FileFormula>()
  for (const [address, fileCell] of fileCells) {
    const formula = formulaOf(fileCell, fileCells)
    if (formula === undefined) continue
    const plain = withoutTableReferences(formula, { sheet: part.name, address }, tables)
    if (plain !== formula) seen.otherTables = true
    const isArray = arrayRangeOf(fileCell) !== undefined
    const one = formulas.read(plain, { sheet: part.name, address, isArray })
    read.set(address, one)
    if (one.why !== undefined) kept.push({ sheet: part.name, address, why: one.why })
  }
  for (const address of dataTables.flatMap(addressesIn)) kept.push({ sheet: part.name, address, why: 'dataTable' })
  const calculated = [...fileCells.values()].filter(({ address }) => read.get(address)?.why === undefined)
  const spilledOver = cellsBelowSpills(calculated)

  const cells = new Map<string, Cell>()
  for (const [address, fileCell] of fileCells) {
    const formula = read.get(address)
    const content =
      formula === undefined
        ? !spilledOver.has(address) && contentOf(fileCell, seen)
        : formula.why !== undefined
          ? keptContent(fileCell, formula, seen)
          : { formula: formula.formula, ...filledBy(fileCell) }
    const cell: Cell = { ...content, ...appearanceOf(fileCell.style, seen, content) }
    if (Object.keys(cell).length > 0) cells.set(address, cell)
  }
  for (const [address, note] of notesOf(parts, part)) cells.set(address, { ...cells.get(address), note })
  const { byAddress, others } = allowedIn(worksheet)
  if (others) seen.otherRules = true
  for (const [address, allowed] of byAddress) cells.set(address, { ...cells.get(address), allowed })

  const [view] = views
  const plainTables = tables
    .filter(({ sheet, isPlain }) => isPlain && sheet === part.name)
    .map(({ name, ...block }): SheetTable => ({ name, range: blockAddress(block) }))
  const rows = rowsOf(cells)
  const layout = layoutOf(frameOf(parts, part))
  const frozen = view?.state === 'frozen' ? view : undefined
  return {
    name: part.name,
    widths: widthsOf(cols, rows, worksheet.properties.defaultColWidth),
    frozenRows: frozen?.ySplit ?? 0,
    frozenColumns: frozen?.xSplit ?? 0,
    rows,
    ...(plainTables.length > 0 && { tables: plainTables }),
    ...(layout && { layout }),
  }
}

/** What the engine shows an error for anyway stays a formula where the file stores no result; else it is an error. */
function keptContent(
  cell: FileCellModel,
  { formula, why }: FileFormula,
  seen: SeenInCells,
): Pick<Cell, 'value' | 'formula'> {
  const stored = contentOf(cell, seen)
  if (Object.keys(stored).length > 0) return stored
  return { formula: why === 'unknownFunction' || why === 'otherWorkbook' || why === 'unknownName' ? formula : '=#N/A' }
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
function filledBy({ shareType, ref, address, isDynamicArray }: FileCellModel): Pick<Cell, 'spills' | 'fills'> {
  if (shareType !== 'array' || ref === undefined) return {}
  if (isDynamicArray === true) return ref === address ? {} : { spills: true }
  const { top, left, bottom, right } = blockIn(ref)
  return { fills: { rows: bottom - top + 1, columns: right - left + 1 } }
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

function widthsOf(
  columns: NonNullable<Worksheet['model']['cols']>,
  rows: Sheet['rows'],
  ofSheet: number | undefined,
): number[] {
  const widths: number[] = []
  const others = ofSheet ?? usualWidth
  // A last entry often covers all the columns to the end of the sheet; those need no width of their own.
  for (const { min, max, width } of columns.filter((column) => column.width !== undefined && column.max < 16_384)) {
    for (let column = widths.length + 1; column < min; column += 1) widths.push(others)
    for (let column = min; column <= max; column += 1) widths.push(width ?? others)
  }
  const filled =
    ofSheet === undefined
      ? 0
      : largest(
          rows.map((row) => row.length),
          0,
        )
  while (widths.length < filled) widths.push(others)
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

interface ReadTable extends PlacedTable {
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
