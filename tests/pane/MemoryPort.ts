import type { Book, DefinedName } from '../../src/workbook/book'
import type { SheetChart } from '../../src/workbook/sheetChart'
import type { CallInCell, OpenBook, OpenSheet, ReadCell } from '../../src/workbook/openBook'
import { sheetNamed } from '../../src/workbook/sheetNamed'
import type { CellPlace } from '../../src/workbook/cellPlace'
import type { CellChange, PortProblem, SelectedCell, WorkbookPort } from '../../src/workbook/port'

/** A workbook of one selected cell, to drive the pane without a host. */
export class MemoryPort implements WorkbookPort {
  readonly host = 'workbench'
  private cell: SelectedCell = { sheet: 'Order book', address: 'B4', formula: '', value: null }
  private readonly listeners = new Set<() => void>()
  calls: readonly CallInCell[] | undefined = []
  callsAfterCalculation: readonly CallInCell[] = []
  book: OpenBook = { sheets: [], names: [] }
  range: CellPlace = { sheet: 'Order book', address: 'B4' }
  /** By reference, as it is typed. */
  values: Readonly<Record<string, readonly (readonly ReadCell[])[]>> = {}
  readonly added: Book[] = []
  readonly removed: string[] = []
  readonly changed: CellChange[] = []
  bookAfterChange: OpenBook = { sheets: [], names: [] }
  readonly insertedRows: { readonly place: CellPlace; readonly count: number }[] = []
  /** Set for a host whose sheets hold charts. */
  addChart?: (chart: SheetChart) => Promise<void>
  /** Set for a host that has a second engine. */
  witness?: NonNullable<WorkbookPort['witness']>
  /** Adding takes until then. */
  whenAdding: Promise<void> = Promise.resolve()
  empty = false
  private refusal: PortProblem | undefined

  selectedCell(): Promise<SelectedCell> {
    return Promise.resolve(this.cell)
  }

  selectedRange(): Promise<CellPlace> {
    return Promise.resolve(this.range)
  }

  async add(book: Book): Promise<void> {
    if (this.refusal !== undefined) throw this.refusal
    this.added.push(book)
    await this.whenAdding
  }

  removeSheet(sheet: string): Promise<void> {
    this.removed.push(sheet)
    return Promise.resolve()
  }

  describeHost(): readonly string[] {
    return ['Browser: none']
  }

  insertRows(place: CellPlace, count: number): Promise<void> {
    if (this.refusal !== undefined) return Promise.reject(this.refusal)
    this.insertedRows.push({ place, count })
    return Promise.resolve()
  }

  isEmpty(): Promise<boolean> {
    return Promise.resolve(this.empty)
  }

  read(): Promise<OpenBook> {
    return Promise.resolve(this.book)
  }

  readRows(sheet: string, first: number, last: number): Promise<OpenSheet | undefined> {
    const found = sheetNamed(this.book, sheet)
    const cells = [...(found?.cells ?? [])].filter(([, { row }]) => row >= first && row <= last)
    return Promise.resolve(found && { name: found.name, cells: new Map(cells) })
  }

  select(change: Partial<SelectedCell>): Promise<void> {
    this.cell = { ...this.cell, ...change }
    for (const listener of this.listeners) listener()
    return Promise.resolve()
  }

  valuesOf(reference: string): Promise<readonly (readonly ReadCell[])[] | undefined> {
    return Promise.resolve(this.values[reference])
  }

  putFormula(formula: string, place?: CellPlace): Promise<void> {
    if (this.refusal !== undefined) return Promise.reject(this.refusal)
    return this.select({ ...place, formula, value: 1 })
  }

  names(): Promise<readonly DefinedName[]> {
    return Promise.resolve(this.book.names)
  }

  putCells(changes: readonly CellChange[]): Promise<void> {
    if (this.refusal !== undefined) return Promise.reject(this.refusal)
    this.changed.push(...changes)
    this.book = this.bookAfterChange
    return Promise.resolve()
  }

  callsOfSelectedCell(): Promise<readonly CallInCell[] | undefined> {
    return Promise.resolve(this.calls)
  }

  calculate(): Promise<void> {
    if (this.refusal !== undefined) return Promise.reject(this.refusal)
    this.calls = this.callsAfterCalculation
    return this.select({})
  }

  onSelectionChange(listener: () => void): () => void {
    this.listeners.add(listener)
    return () => this.listeners.delete(listener)
  }

  /** From now on every write fails so; undefined lets them through again. */
  refuse(problem: PortProblem | undefined): void {
    this.refusal = problem
  }

  get formula(): string {
    return this.cell.formula
  }

  get listenerCount(): number {
    return this.listeners.size
  }
}
