/**
 * Goes on only from results that changed. The grid's engine calculates everything that leads back to an edited cell,
 * however long ago nothing changed on the way: a wage leads to the line that says whether Setup is complete, and this
 * to every row of the season, so that 1,240 of its 1,455 formulas were calculated where 230 are enough.
 * Functions such as OFFSET find what they read by calculating ahead, which leaves no result of before to compare with;
 * a workbook that has one is calculated as the library does it. It relies on calculateInTurn: of a calculation that another
 * crosses, some results would be kept without those that follow from them. Seen with univer 0.25.1.
 */
import { type ICellData, type Injector, type IUnitRange, type Nullable } from '@univerjs/core'
import {
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

export function goOnFromChanges(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator
  const manager = injector.get(IDependencyManagerService) as unknown as Manager
  const current = injector.get(IFormulaCurrentConfigService)
  const runtime = injector.get(IFormulaRuntimeService)

  let awaited: Set<number>
  let readers: ReadonlyMap<number, ReadonlySet<number>>
  let calculatesAhead = false
  const calculateAhead = generator._calculateListByFunctionRefNode.bind(generator)
  generator._calculateListByFunctionRefNode = (all) => {
    calculatesAhead = all.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0)
    return calculateAhead(all)
  }

  const order = generator._calculateRunList.bind(generator)
  generator._calculateRunList = (first) => {
    awaited = new Set(first.map(({ treeId }) => treeId))
    const ordered = order(first)
    // Only as long as the list is made the engine knows who reads a cell.
    readers = new Map(ordered.map((formula) => [formula.treeId, manager.searchDependency(formula.toRTreeItem())]))
    return ordered
  }

  const generate = generator.generate.bind(generator)
  generator.generate = async (isCalculateTreeModel) => {
    const list = (await generate(isCalculateTreeModel)) as Listed[]
    return current.isForceCalculate() || calculatesAhead ? list : new ListOfChanged(list, awaited, readers, resultOf)
  }

  /** From this calculation, or from one before. */
  function resultOf({ unitId, subUnitId, row, column }: Listed): Result {
    const spilled = runtime.getUnitArrayFormula()[unitId]?.[subUnitId]?.[row]?.[column]
    if (spilled) return 'spilled'
    const now = runtime.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column)
    return now ?? current.getUnitData()[unitId]?.[subUnitId]?.cellData.getValue(row, column)
  }
}

type Result = Nullable<ICellData> | 'spilled'

class ListOfChanged implements List {
  private calculated: Listed | undefined
  private before: Result

  constructor(
    /** The last one is calculated first. */
    private readonly formulas: Listed[],
    private readonly awaited: Set<number>,
    private readonly readers: ReadonlyMap<number, ReadonlySet<number>>,
    private readonly resultOf: (formula: Listed) => Result,
  ) {}

  get length(): number {
    this.noteChange()
    while (this.formulas.length > 0 && !this.isAwaited(this.formulas.at(-1)!)) this.formulas.pop()
    return this.formulas.length
  }

  pop(): Listed | undefined {
    const next = this.formulas.pop()
    this.calculated = next
    this.before = next && this.resultOf(next)
    return next
  }

  private noteChange(): void {
    const formula = this.calculated
    if (formula === undefined) return
    this.calculated = undefined
    if (isSame(this.before, this.resultOf(formula))) return
    for (const reader of this.readers.get(formula.treeId)!) this.awaited.add(reader)
  }

  /** What is no formula of a cell is always calculated. */
  private isAwaited({ treeId, formulaId, featureId }: Listed): boolean {
    return formulaId !== undefined || featureId !== undefined || this.awaited.has(treeId)
  }
}

function isSame(before: Result, now: Result): boolean {
  if (!before || !now || before === 'spilled' || now === 'spilled') return false
  const hasMore = Object.keys(now).some((key) => key !== 'v' && key !== 't')
  return !hasMore && before.v === now.v && before.t === now.t
}
