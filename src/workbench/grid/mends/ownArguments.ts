/**
 * Keeps functions from changing what other formulas read. The grid's engine reads a block of cells once and gives it to
 * all its readers: SORT reordered it for them, so that SUMPRODUCT(A1:A3,B1:B3) was another number once =SORT(A1:A3)
 * stood anywhere. A reference is shared too: =SUMIF(C1:C3,"x",A1), whose sum range is shorter than its criteria range,
 * made every A1 that was read after it three cells long, and did not follow when one of the others changed. As in
 * Excel, the sum range goes from its first cell as far as the criteria range. Seen with univer 0.25.1.
 */
import type { Injector, IRange, IUnitRange } from '@univerjs/core'
import {
  ArrayValueObject,
  type BaseAstNode,
  type BaseReferenceObject,
  type BaseValueObject,
  IFormulaDependencyGenerator,
  Interpreter,
} from '@univerjs/engine-formula'
import { replaceFunctions } from './replaced'

type Given = BaseValueObject | BaseReferenceObject

const withSumRange = ['SUMIF', 'AVERAGEIF']

export function giveOwnArguments(injector: Injector): void {
  replaceFunctions(
    injector,
    ['SORT'],
    (sort) =>
      (block, ...order) =>
        sort(ownRows(block), ...order),
  )
  replaceFunctions(injector, withSumRange, (calculate) => (range, criterion, ...sumRanges) => {
    // They ask for references, and get values where none was given.
    const long = sumRanges.map((one: Given) => (isReference(one) && isReference(range) ? asLong(one, range) : one))
    return calculate(range, criterion, ...(long as BaseValueObject[]))
  })
  followSumRanges(injector)
}

function ownRows(block: BaseValueObject): BaseValueObject {
  if (!block.isArray()) return block
  const array = block as ArrayValueObject
  return ArrayValueObject.create({
    calculateValueList: [...array.getArrayValue()],
    rowCount: array.getRowCount(),
    columnCount: array.getColumnCount(),
    unitId: array.getUnitId(),
    sheetId: array.getSheetId(),
    row: array.getCurrentRow(),
    column: array.getCurrentColumn(),
  })
}

function asLong(short: BaseReferenceObject, range: BaseReferenceObject): BaseReferenceObject {
  const own = Object.assign(Object.create(Object.getPrototypeOf(short) as object), short) as BaseReferenceObject
  own.setRangeData(asLongAs(range.getRangePosition(), short.getRangePosition()))
  // The position has the offset of a shared formula in it.
  own.setRefOffset(0, 0)
  return own
}

function asLongAs(range: IRange, from: IRange): IRange {
  const { startRow, startColumn } = from
  return {
    startRow,
    startColumn,
    endRow: startRow + range.endRow - range.startRow,
    endColumn: startColumn + range.endColumn - range.startColumn,
  }
}

function isReference(given: Given): given is BaseReferenceObject {
  return given.isReferenceObject()
}

interface Located {
  readonly node: BaseAstNode | null
  readonly refOffsetX: number
  readonly refOffsetY: number
}

/** The private parts of the engine that are repaired here. */
interface Generator {
  _getRangeListByNode(located: Located): Promise<readonly IUnitRange[]>
}

/** Such a formula reads all of its sum range. */
function followSumRanges(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator
  const interpreter = injector.get(Interpreter)
  const find = generator._getRangeListByNode.bind(generator)
  generator._getRangeListByNode = async (located) => {
    const ranges = await find(located)
    const more = sumRangesIn(located.node).map((nodes): IUnitRange | undefined => {
      const [range, sumRange] = nodes.map((node) => {
        const value = interpreter.execute({ ...located, node }) as Given
        const found = isReference(value) ? value.toUnitRange() : undefined
        node.setValue(null)
        return found
      })
      return range && sumRange && { ...sumRange, range: asLongAs(range.range, sumRange.range) }
    })
    return [...ranges, ...more.filter((range) => range !== undefined)]
  }
}

function sumRangesIn(node: BaseAstNode | null): readonly (readonly [BaseAstNode, BaseAstNode])[] {
  if (node === null) return []
  const within = node.getChildren().flatMap(sumRangesIn)
  const [range, , sumRange] = node.getChildren()
  if (!withSumRange.includes(node.getToken()) || !range || !sumRange) return within
  return isWritten(range) && isWritten(sumRange) ? [...within, [range, sumRange]] : within
}

/** A reference, or a block from one to another, by the engine's numbers for them; not what a function finds. */
function isWritten({ nodeType }: BaseAstNode): boolean {
  return nodeType === 1 || nodeType === 10
}
