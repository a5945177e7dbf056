/**
 * Goes on only from results that changed. The grid's engine calculates everything that leads back to an edited cell,
 * however long ago nothing changed on the way: a wage leads to the line that says whether Setup is complete, and this
 * to every row of the season, so that 1,240 of its 1,455 formulas were calculated although 120 gave another result.
 * Seen with univer 0.25.1.
 */
import type { ICellData, Injector, IUnitRange, Nullable } from '@univerjs/core'
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
  generate(isCalculateTreeModel?: boolean): Promise<Listed[]>
  _getUpdateTreeListAndMakeDependency(): Listed[]
}

interface Manager {
  searchDependency(search: readonly IUnitRange[]): ReadonlySet<number>
}

export function goOnFromChanges(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Omit<Generator, 'generate'> & {
    generate(isCalculateTreeModel?: boolean): Promise<List>
  }
  const manager = injector.get(IDependencyManagerService) as unknown as Manager
  const current = injector.get(IFormulaCurrentConfigService)
  const runtime = injector.get(IFormulaRuntimeService)

  const findFirst = generator._getUpdateTreeListAndMakeDependency.bind(generator)
  let first: readonly Listed[] = []
  generator._getUpdateTreeListAndMakeDependency = () => {
    const found = findFirst()
    // The engine takes its own list apart.
    first = [...found]
    return found
  }

  const generate = generator.generate.bind(generator) as Generator['generate']
  generator.generate = async (isCalculateTreeModel) => {
    const list = await generate(isCalculateTreeModel)
    if (current.isForceCalculate()) return list
    return new ListOfChanged(list, new Set(first.map(({ treeId }) => treeId)), resultOf, readersOf)
  }

  /** From this calculation, or from one before. */
  function resultOf({ unitId, subUnitId, row, column }: Listed): Result {
    const spilled = runtime.getUnitArrayFormula()[unitId]?.[subUnitId]?.[row]?.[column]
    if (spilled) return 'spilled'
    const now = runtime.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column)
    return now ?? current.getUnitData()[unitId]?.[subUnitId]?.cellData.getValue(row, column)
  }

  function readersOf(formula: Listed): ReadonlySet<number> {
    return manager.searchDependency(formula.toRTreeItem())
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
    private readonly resultOf: (formula: Listed) => Result,
    private readonly readersOf: (formula: Listed) => ReadonlySet<number>,
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
    for (const reader of this.readersOf(formula)) this.awaited.add(reader)
  }

  /** What is no formula of a cell, or finds only as it is calculated what it reads, is always calculated. */
  private isAwaited({ treeId, formulaId, featureId, addressFunctionNodes }: Listed): boolean {
    if (formulaId !== undefined || featureId !== undefined || addressFunctionNodes.length > 0) return true
    return this.awaited.has(treeId)
  }
}

function isSame(before: Result, now: Result): boolean {
  if (!before || !now || before === 'spilled' || now === 'spilled') return false
  const hasMore = Object.keys(now).some((key) => key !== 'v' && key !== 't')
  return !hasMore && before.v === now.v && before.t === now.t
}
