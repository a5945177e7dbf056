/**
 * Shows #CYCLE! in formulas that read their own result, and in all that follows from them. The grid's engine went once
 * through them and gave whatever came out: =C2+1 in C1 and =C1+1 in C2 were 2 and 1, and what read C1 was calculated
 * before it; a spill that read itself was calculated again and again; all without a word. Excel says so and gives 0, or
 * goes through them as often as the workbook asks, from what they gave before. Seen with univer 0.25.1.
 */
import { ICommandService, type Injector } from '@univerjs/core'
import {
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  IDependencyManagerService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  type IFormulaDependencyTree,
  SetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula'
import { goesOn } from './settleSpills'

/** The private parts of the engine that are repaired here. */
interface Generator {
  _checkIsCycleDependency(trees: readonly IFormulaDependencyTree[]): boolean
}

export function showCircles(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator
  const manager = injector.get(IDependencyManagerService)
  const model = injector.get(FormulaDataModel)
  const runtime = injector.get(IFormulaRuntimeService)
  let circular: ReadonlySet<string> = new Set()
  let isGoingOn = false

  // What a formula spills is known once it was calculated; settleSpills then goes on, and what was a circle stays one.
  injector.get(ICommandService).beforeCommandExecuted(({ id }, options) => {
    if (id !== SetFormulaCalculationStartMutation.id) return
    isGoingOn = options?.[goesOn] === true
    if (!isGoingOn) circular = new Set()
  })
  const spillOf = ({ unitId, subUnitId, row, column }: IFormulaDependencyTree) => {
    // Before, they are those of the last calculation.
    if (!isGoingOn) return undefined
    const isBlocked = model.getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[column]?.v === ErrorType.SPILL
    return isBlocked ? undefined : model.getArrayFormulaRange()[unitId]?.[subUnitId]?.[row]?.[column]
  }
  const readersOf = (tree: IFormulaDependencyTree) => {
    const range = spillOf(tree)
    const own = manager.searchDependency(tree.toRTreeItem())
    if (!range) return own
    return new Set([...own, ...manager.searchDependency([{ unitId: tree.unitId, sheetId: tree.subUnitId, range }])])
  }

  const isCircular = generator._checkIsCycleDependency.bind(generator)
  generator._checkIsCycleDependency = (trees) => {
    const is = isCircular(trees)
    if (is || trees.some(spillOf)) circular = new Set([...circular, ...placesInCircles(trees, readersOf)])
    return is
  }

  const setResult = runtime.setRuntimeData.bind(runtime)
  runtime.setRuntimeData = (result) => {
    const { currentUnitId, currentSubUnitId, currentRow, currentColumn } = runtime
    const isOne = circular.size > 0 && circular.has(placeOf(currentUnitId, currentSubUnitId, currentRow, currentColumn))
    setResult(isOne ? ErrorValueObject.create(ErrorType.CYCLE) : result)
  }
}

/** What is left once all is taken away, one after the other, that reads nothing of what is left. */
function placesInCircles(
  trees: readonly IFormulaDependencyTree[],
  readersOf: (tree: IFormulaDependencyTree) => ReadonlySet<number>,
): ReadonlySet<string> {
  const left = new Map(trees.map((tree) => [tree.treeId, tree]))
  const readers = new Map(trees.map((tree) => [tree.treeId, [...readersOf(tree)].filter((id) => left.has(id))]))
  const readCount = new Map(trees.map(({ treeId }) => [treeId, 0]))
  for (const ids of readers.values()) for (const id of ids) readCount.set(id, readCount.get(id)! + 1)
  const free = trees.map(({ treeId }) => treeId).filter((id) => readCount.get(id) === 0)
  for (let id = free.pop(); id !== undefined; id = free.pop()) {
    left.delete(id)
    for (const reader of readers.get(id) ?? []) {
      readCount.set(reader, readCount.get(reader)! - 1)
      if (readCount.get(reader) === 0) free.push(reader)
    }
  }
  return new Set(
    [...left.values()].map(({ unitId, subUnitId, row, column }) => placeOf(unitId, subUnitId, row, column)),
  )
}

function placeOf(unitId: string, sheetId: string, row: number, column: number): string {
  return [unitId, sheetId, row, column].join('\n')
}
