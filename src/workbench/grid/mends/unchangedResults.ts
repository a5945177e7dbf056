/**
 * Goes on only from results that changed. The grid's engine calculates everything that leads back to an edited cell,
 * however long ago nothing changed on the way: a wage leads to the line that says whether Setup is complete, and this
 * to every row of the season, so that 1,240 of its 1,455 formulas were calculated where 230 are enough. And where a
 * formula spills, it calculates a second time: everything where it was to calculate everything, and else nothing that
 * settleSpills does not calculate afterwards. Functions such as OFFSET find what they read by calculating ahead, which
 * leaves no result of before to compare with; a workbook that has one is calculated as the library does it. It relies
 * on calculateInTurn: of a calculation that another crosses, some results would be kept without those that follow from
 * them. Seen with univer 0.25.1.
 */
import type { ICellData, Injector, IRange, IUnitRange, Nullable, ObjectMatrix } from '@univerjs/core'
import {
  ICalculateFormulaService,
  IDependencyManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
} from '@univerjs/engine-formula'

/** A formula that is to be calculated, as the engine lists it. */
interface Listed {
  readonly treeId: number
  readonly unitId: string
  readonly subUnitId: string
  readonly row: number
  readonly column: number
  readonly formulaId?: string
  readonly featureId?: string
  readonly addressFunctionNodes: readonly unknown[]
  toRTreeItem(): readonly IUnitRange[]
}

/** All that the engine asks of its list: how many are left, and the next one. */
type List = Pick<Listed[], 'length' | 'pop'>

interface Generator {
  generate(isCalculateTreeModel?: boolean): Promise<List>
  /** Takes its own list apart. The one that it gives ends with what is calculated first. */
  _calculateRunList(first: Listed[]): Listed[]
  /** Calculates what functions such as OFFSET need to know what they read. */
  _calculateListByFunctionRefNode(all: readonly Listed[]): Promise<void>
}

interface Manager {
  searchDependency(search: readonly IUnitRange[]): ReadonlySet<number>
}

interface Service {
  /** The cells that formulas have spilled into, whose readers are calculated after all others. */
  _getArrayFormulaDirtyRangeAndExcludedRange(...given: readonly unknown[]): { readonly dirtyRanges: IUnitRange[] }
}

export function goOnFromChanges(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator
  const manager = injector.get(IDependencyManagerService) as unknown as Manager
  const current = injector.get(IFormulaCurrentConfigService)

  let awaited: Set<number>
  let readers: ReadonlyMap<number, ReadonlySet<number>>
  let calculatesAhead = false
  const calculateAhead = generator._calculateListByFunctionRefNode.bind(generator)
  generator._calculateListByFunctionRefNode = (all) => {
    calculatesAhead = all.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0)
    // Where there is none, it would list the places of all formulas for nothing.
    return calculatesAhead ? calculateAhead(all) : Promise.resolve()
  }

  const order = generator._calculateRunList.bind(generator)
  generator._calculateRunList = (first) => {
    awaited = new Set(first.map(({ treeId }) => treeId))
    const ordered = order(first)
    // Only as long as the list is made the engine knows who reads a cell.
    readers = new Map(ordered.map((formula) => [formula.treeId, manager.searchDependency(formula.toRTreeItem())]))
    return ordered
  }

  const results = new Results(injector)
  const generate = generator.generate.bind(generator)
  generator.generate = async (isCalculateTreeModel) => {
    const list = (await generate(isCalculateTreeModel)) as Listed[]
    return current.isForceCalculate() || calculatesAhead ? list : new ListOfChanged(list, awaited, readers, results)
  }

  const service = injector.get(ICalculateFormulaService) as unknown as Service
  const findSpills = service._getArrayFormulaDirtyRangeAndExcludedRange.bind(service)
  service._getArrayFormulaDirtyRangeAndExcludedRange = (...given) => {
    const spills = findSpills(...given)
    return calculatesAhead ? spills : { ...spills, dirtyRanges: [] }
  }
}

/** The cell of a formula, or all that it spills into, row by row. Undefined where they are not known. */
type Result = { readonly columns: number; readonly cells: readonly Nullable<ICellData>[] } | undefined

class Results {
  private readonly current: IFormulaCurrentConfigService
  private readonly runtime: IFormulaRuntimeService

  constructor(injector: Injector) {
    this.current = injector.get(IFormulaCurrentConfigService)
    this.runtime = injector.get(IFormulaRuntimeService)
  }

  /** From this calculation, or from one before. */
  before({ unitId, subUnitId, row, column }: Listed): Result {
    // What a calculation spilled stays there, also if the formula comes to spill less in it.
    if (this.spilledInto(unitId, subUnitId, row, column)) return undefined
    const now = this.runtime.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column)
    if (now) return { columns: 1, cells: [now] }
    const range = this.current.getArrayFormulaRange()[unitId]?.[subUnitId]?.[row]?.[column]
    if (range) return cellsOf(range, this.current.getArrayFormulaCellData()[unitId]?.[subUnitId])
    return { columns: 1, cells: [this.current.getUnitData()[unitId]?.[subUnitId]?.cellData.getValue(row, column)] }
  }

  /** Once the formula is calculated. */
  now({ unitId, subUnitId, row, column }: Listed): Result {
    const range = this.spilledInto(unitId, subUnitId, row, column)
    if (range) return cellsOf(range, this.runtime.getRuntimeArrayFormulaCellData()[unitId]?.[subUnitId])
    return { columns: 1, cells: [this.runtime.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column)] }
  }

  private spilledInto(unitId: string, sheetId: string, row: number, column: number): Nullable<IRange> {
    return this.runtime.getUnitArrayFormula()[unitId]?.[sheetId]?.[row]?.[column]
  }
}

function cellsOf(range: IRange, from: Nullable<ObjectMatrix<Nullable<ICellData>>>): Result {
  const cells: Nullable<ICellData>[] = []
  for (let row = range.startRow; row <= range.endRow; row++)
    for (let column = range.startColumn; column <= range.endColumn; column++) cells.push(from?.getValue(row, column))
  return { columns: range.endColumn - range.startColumn + 1, cells }
}

class ListOfChanged implements List {
  private calculated: Listed | undefined
  private before: Result

  constructor(
    /** The last one is calculated first. */
    private readonly formulas: Listed[],
    private readonly awaited: Set<number>,
    private readonly readers: ReadonlyMap<number, ReadonlySet<number>>,
    private readonly results: Results,
  ) {}

  get length(): number {
    this.noteChange()
    while (this.formulas.length > 0 && !this.isAwaited(this.formulas.at(-1)!)) this.formulas.pop()
    return this.formulas.length
  }

  pop(): Listed | undefined {
    const next = this.formulas.pop()
    this.calculated = next
    this.before = next && this.results.before(next)
    return next
  }

  private noteChange(): void {
    const formula = this.calculated
    if (formula === undefined) return
    this.calculated = undefined
    if (isSame(this.before, this.results.now(formula))) return
    for (const reader of this.readers.get(formula.treeId)!) this.awaited.add(reader)
  }

  /** What is no formula of a cell is always calculated. */
  private isAwaited({ treeId, formulaId, featureId }: Listed): boolean {
    return formulaId !== undefined || featureId !== undefined || this.awaited.has(treeId)
  }
}

function isSame(before: Result, now: Result): boolean {
  if (before === undefined || now === undefined) return false
  if (before.columns !== now.columns || before.cells.length !== now.cells.length) return false
  return before.cells.every((cell, place) => isSameCell(cell, now.cells[place]))
}

function isSameCell(before: Nullable<ICellData>, now: Nullable<ICellData>): boolean {
  if (!before || !now) return false
  const hasMore = Object.keys(now).some((key) => key !== 'v' && key !== 't')
  return !hasMore && before.v === now.v && before.t === now.t
}
