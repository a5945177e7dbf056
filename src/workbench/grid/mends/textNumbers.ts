/**
 * Takes a text that is a number for this number, where a function asks for single numbers. Of a text in a cell or in an
 * array, the grid's engine gave #VALUE! for ABS("12") and its like and for "12"^2, and an empty text was 0 to QUOTIENT,
 * MROUND, DELTA, GESTEP, ISEVEN and ISODD, where it is #VALUE!. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type ArrayValueObject, type BaseValueObject } from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

const ofNumbers = [
  // The operator ^ too.
  'POWER',
  ...['ABS', 'SQRT', 'EXP', 'LN', 'LOG10', 'ROUND', 'ROUNDUP', 'ROUNDDOWN', 'MOD'],
  ...['SIN', 'COS', 'TAN', 'ASIN', 'ACOS', 'ATAN', 'ATAN2', 'SINH', 'COSH', 'TANH', 'ASINH', 'ACOSH', 'ATANH'],
  ...['QUOTIENT', 'MROUND', 'DELTA', 'GESTEP', 'ISEVEN', 'ISODD'],
]

export function takeTextNumbers(injector: Injector): void {
  replaceFunctions(
    injector,
    ofNumbers,
    (calculate, asked) =>
      (...given) =>
        calculate(...given.map((one) => (holdsText(one) ? cellByCell(asked, [one], asNumber) : one))),
  )
}

function holdsText(given: BaseValueObject): boolean {
  if (!given.isArray()) return given.isString()
  return (given as ArrayValueObject).getArrayValue().some((row) => row.some((cell) => cell?.isString()))
}

function asNumber(cell: BaseValueObject): BaseValueObject {
  return cell.isString() ? cell.convertToNumberObjectValue() : cell
}
