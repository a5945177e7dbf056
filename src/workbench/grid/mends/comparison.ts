/**
 * The comparisons = <> < > <= >= of the grid's engine, cell by cell. Its own look cells up in an index that holds no
 * errors: once a cell had been compared, a next formula took its error for a value that is not equal and not less, and
 * =IF(A1<B1,"no","yes") said "yes" of an error. Of two texts it took * and ? in the second for any signs, so that
 * ="abc"="a*" was TRUE, and an empty text was not equal to a blank cell that stands behind it. =FALSE<>0 and =TRUE<>"x"
 * were FALSE. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  IFunctionService,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'

type Comparison = Parameters<BaseValueObject['compare']>[1]

class CompareCells extends BaseFunction {
  private comparison: Comparison | undefined

  /** The engine says so before each calculation. */
  setCompareType(comparison: Comparison): void {
    this.comparison = comparison
  }

  override calculate(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    return cellByCell(this, [left, right], (one, other) => this.compared(one, other))
  }

  private compared(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    if (left.isError()) return left
    if (right.isError()) return right
    const one = left.isNull() ? blankBeside(right) : left
    const other = right.isNull() ? blankBeside(left) : right
    const kinds = [kindOf(one), kindOf(other)] as const
    if (kinds[0] !== kinds[1]) return this.answer(...kinds)
    return one.isString() ? this.answer(textOf(one), textOf(other)) : one.compare(other, this.comparison!)
  }

  private answer<Compared extends number | string>(left: Compared, right: Compared): BaseValueObject {
    return BooleanValueObject.create(isSo[this.comparison!](left, right))
  }
}

/** Numbers come before texts, and texts before FALSE and TRUE. */
function kindOf(cell: BaseValueObject): number {
  if (cell.isBoolean()) return 2
  return cell.isString() ? 1 : 0
}

function blankBeside(other: BaseValueObject): BaseValueObject {
  if (other.isString()) return StringValueObject.create('')
  return other.isBoolean() ? BooleanValueObject.create(false) : NumberValueObject.create(0)
}

function textOf(cell: BaseValueObject): string {
  return String(cell.getValue()).toLowerCase()
}

const isSo: Readonly<Record<Comparison, (left: number | string, right: number | string) => boolean>> = {
  '=': (left, right) => left === right,
  '<>': (left, right) => left !== right,
  '<': (left, right) => left < right,
  '<=': (left, right) => left <= right,
  '>': (left, right) => left > right,
  '>=': (left, right) => left >= right,
}

export function compareCells(injector: Injector): void {
  // The name by which the engine finds its own comparisons.
  injector.get(IFunctionService).registerExecutors(new CompareCells('COMPARE'))
}
