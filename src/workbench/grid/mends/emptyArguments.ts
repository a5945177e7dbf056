/**
 * Counts an argument that is left empty between commas as 0, as Excel does: COUNT(1,) is 2, AVERAGE(1,2,) is 1 and
 * MAX(-1,) is 0. The grid's engine took it for a blank cell and left it out. A blank cell is left out still. Seen with
 * univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, NumberValueObject } from '@univerjs/engine-formula'
import { replaceFunctions } from './replaced'

/** Those with which a 0 more makes a difference, and which the engine gave another result. */
const concerned = [
  ...['AVERAGE', 'AVERAGEA', 'COUNT', 'COUNTA', 'MAX', 'MAXA', 'MIN', 'MINA', 'PRODUCT'],
  ...['MEDIAN', 'MODE', 'MODE.SNGL', 'MODE.MULT', 'GEOMEAN', 'HARMEAN', 'AVEDEV', 'DEVSQ', 'SKEW', 'SKEW.P', 'KURT'],
]

export function countEmptyArguments(injector: Injector): void {
  replaceFunctions(
    injector,
    concerned,
    (calculate) =>
      (...given) =>
        calculate(...given.map(zeroForEmpty)),
  )
}

/** A cell comes as an array of one. */
function zeroForEmpty(given: BaseValueObject): BaseValueObject {
  return !given.isReferenceObject() && given.isNull() ? NumberValueObject.create(0) : given
}
