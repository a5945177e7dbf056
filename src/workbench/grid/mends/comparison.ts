/**
 * The comparisons = <> < > <= >= of the grid's engine, cell by cell. Its own look cells up in an index that holds no
 * errors: once a cell had been compared, a next formula took its error for a value that is not equal and not less, and
 * =IF(A1<B1,"no","yes") said "yes" of an error. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { BaseFunction, type BaseValueObject, IFunctionService } from '@univerjs/engine-formula'
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
    return right.isError() ? right : left.compare(right, this.comparison!)
  }
}

export function compareCells(injector: Injector): void {
  // The name by which the engine finds its own comparisons.
  injector.get(IFunctionService).registerExecutors(new CompareCells('COMPARE'))
}
