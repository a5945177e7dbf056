/**
 * Finds out once what a formula reads, and who reads a cell. The grid's engine asks every formula of the workbook anew
 * at each calculation, three or four times an edit, and adds the blocks that it reads to its index every time without
 * taking the old ones out: an edit of the season took 0.3 s for this alone, and each next one took longer than the one
 * before. What a formula reads stays the same as long as its text and the places of names do; cacheGuard has both
 * parsed anew where they may not, and what was found out hangs on the parsed formula. Where the engine takes anything
 * out of the index, as it does for a whole sheet when a row is hidden, it relies on adding everything anew: so all is
 * forgotten then. Seen with univer 0.25.1.
 */
import type { Injector, IUnitRange } from '@univerjs/core'
import {
  type BaseAstNode,
  IDependencyManagerService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
} from '@univerjs/engine-formula'

interface Located {
  readonly node: BaseAstNode | null
  readonly refOffsetX: number
  readonly refOffsetY: number
}

interface Reader {
  readonly treeId: number
  readonly rangeList: readonly IUnitRange[]
}

/** The private parts of the engine that are repaired here. */
interface Generator {
  _getRangeListByNode(located: Located): Promise<readonly IUnitRange[]>
  _getAddressFunctionNodeList(node: BaseAstNode | null): readonly BaseAstNode[]
  _detectForcedRecalculationNode(tree: object, node: BaseAstNode | null): boolean
}

/** Where the formula stands that is being looked at. */
interface Runtime {
  readonly currentSubUnitId: string
  readonly currentRowCount: number
  readonly currentColumnCount: number
}

interface Manager {
  searchDependency(search: readonly IUnitRange[], exceptIds?: ReadonlySet<number>): Set<number>
  addDependencyRTreeCache(reader: Reader): void
  readonly _dependencyRTreeCache: Record<'insert' | 'removeById' | 'remove' | 'clear', (...given: unknown[]) => void>
}

export function keepDependencies(injector: Injector): void {
  keepWhatFormulasRead(injector)
  keepWhoReads(injector.get(IDependencyManagerService) as unknown as Manager)
}

function keepWhatFormulasRead(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator
  const runtime = injector.get(IFormulaRuntimeService) as unknown as Runtime

  const find = generator._getRangeListByNode.bind(generator)
  const found = new WeakMap<BaseAstNode, Map<string, readonly IUnitRange[]>>()
  generator._getRangeListByNode = async (located) => {
    const { node, refOffsetX, refOffsetY } = located
    if (node === null || !readsTheSameAlways(node)) return find(located)
    const { currentSubUnitId, currentRowCount, currentColumnCount } = runtime
    const from = [currentSubUnitId, currentRowCount, currentColumnCount, refOffsetX, refOffsetY].join('\n')
    const ofNode = kept(found, node, () => new Map<string, readonly IUnitRange[]>())
    const ranges = ofNode.get(from) ?? (await find(located))
    ofNode.set(from, ranges)
    return ranges
  }

  const findAddressFunctions = generator._getAddressFunctionNodeList.bind(generator)
  const addressFunctions = new WeakMap<BaseAstNode, readonly BaseAstNode[]>()
  generator._getAddressFunctionNodeList = (node) =>
    node === null ? [] : kept(addressFunctions, node, () => findAddressFunctions(node))

  const findVolatile = generator._detectForcedRecalculationNode.bind(generator)
  const volatile = new WeakMap<BaseAstNode, boolean>()
  generator._detectForcedRecalculationNode = (tree, node) =>
    node !== null && kept(volatile, node, () => findVolatile(tree, node))

  const sameAlways = new WeakMap<BaseAstNode, boolean>()
  function readsTheSameAlways(node: BaseAstNode): boolean {
    return kept(sameAlways, node, () => findAddressFunctions(node).length === 0 && !readsByPlace(node))
  }
}

/** What `@` and `#` read depends on where the formula stands, and on what has spilled. */
function readsByPlace(node: BaseAstNode): boolean {
  return node.getToken() === '@' || node.getToken() === '#' || node.getChildren().some(readsByPlace)
}

/** A reader is known by its id, and the engine gives a new id to a formula that was changed. */
function keepWhoReads(manager: Manager): void {
  const added = new Map<number, readonly IUnitRange[]>()
  const readers = new Map<string, ReadonlySet<number>>()

  const index = manager._dependencyRTreeCache
  const [insert, clear] = [index.insert.bind(index), index.clear.bind(index)]
  index.insert = (...given) => {
    readers.clear()
    insert(...given)
  }
  for (const removal of ['removeById', 'remove', 'clear'] as const)
    index[removal] = () => {
      readers.clear()
      added.clear()
      clear()
    }

  const add = manager.addDependencyRTreeCache.bind(manager)
  manager.addDependencyRTreeCache = (reader) => {
    const { treeId, rangeList } = reader
    if (isSame(added.get(treeId) ?? [], rangeList)) return
    // The engine empties the list once it knows which formulas are to be calculated.
    added.set(treeId, [...rangeList])
    add(reader)
  }

  const search = manager.searchDependency.bind(manager)
  manager.searchDependency = (ranges, exceptIds) => {
    const [only] = ranges
    if (only === undefined || ranges.length > 1) return search(ranges, exceptIds)
    const { startRow, startColumn, endRow, endColumn } = only.range
    const place = [only.unitId, only.sheetId, startRow, startColumn, endRow, endColumn].join('\n')
    const all = readers.get(place) ?? search(ranges)
    readers.set(place, all)
    return new Set(exceptIds ? [...all].filter((id) => !exceptIds.has(id)) : all)
  }
}

function isSame(one: readonly IUnitRange[], other: readonly IUnitRange[]): boolean {
  return one.length === other.length && one.every((range, place) => isSameRange(range, other[place]!))
}

function isSameRange(one: IUnitRange, other: IUnitRange): boolean {
  if (one === other) return true
  if (one.unitId !== other.unitId || one.sheetId !== other.sheetId) return false
  // A whole column has no first row, which is NaN.
  const sides = ['startRow', 'startColumn', 'endRow', 'endColumn'] as const
  return sides.every((side) => Object.is(one.range[side], other.range[side]))
}

function kept<Key extends object, Value>(known: WeakMap<Key, Value>, key: Key, find: () => Value): Value {
  const before = known.get(key)
  if (before !== undefined) return before
  const value = find()
  known.set(key, value)
  return value
}
