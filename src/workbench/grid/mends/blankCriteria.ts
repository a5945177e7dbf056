/**
 * The criterion "<>" finds all cells that are not blank. The grid's engine left out the empty texts of formulas, and
 * where numbers were asked for, all numbers: COUNTIF(A1:A9,"<>") counted fewer than COUNTA. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { ArrayValueObject, type BaseValueObject, BooleanValueObject } from '@univerjs/engine-formula'
import { replaceShared } from './replaced'

type Compare = (this: ArrayValueObject, ...given: Parameters<ArrayValueObject['compare']>) => BaseValueObject

export function findFilledCells(injector: Injector): void {
  replaceShared(injector, ArrayValueObject.prototype as { compare: Compare }, 'compare', findingFilledCells)
}

/** Comparisons that stand in a formula are those of compareCells: only criteria come here. */
function findingFilledCells(compare: Compare): Compare {
  return function compareBlock(value, operator, isCaseSensitive) {
    if (operator !== '<>' || value.isArray() || !value.isString() || value.getValue() !== '')
      return compare.call(this, value, operator, isCaseSensitive)
    return this.mapValue((cell) => BooleanValueObject.create(!cell.isNull()))
  }
}
