/**
 * Takes a text that is a number for this number, where a function asks for single numbers. Of a text in a cell or in an
 * array, the grid's engine gave #VALUE! for ABS("12") and its like and for "12"^2, and an empty text was 0 to QUOTIENT,
 * MROUND, DELTA, GESTEP, ISEVEN and ISODD, where it is #VALUE!. Everywhere it read "0x10" as 16 and "Infinity" as a
 * number, as programs do; to Excel they are texts as any other. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  type ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  StringValueObject,
} from '@univerjs/engine-formula'
import { type Asked, cellByCell } from './cellByCell'
import { replaceFunctions, replaceShared } from './replaced'

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
        calculate(...given.map((one) => asNumbers(asked, one))),
  )
  replaceShared<'convertToNumberObjectValue', Read>(
    injector,
    StringValueObject.prototype,
    'convertToNumberObjectValue',
    readingDecimals,
  )
}

type Read = (this: StringValueObject) => BaseValueObject

const ofPrograms = /^\s*(0[box][\da-f]+|[-+]?Infinity)\s*$/i

function readingDecimals(read: Read): Read {
  return function readNumber() {
    return ofPrograms.test(this.getValue()) ? ErrorValueObject.create(ErrorType.VALUE) : read.call(this)
  }
}

/** As it was given, or with numbers for its texts; a text that is none is an error. */
export function asNumbers(asked: Asked, given: BaseValueObject): BaseValueObject {
  return holdsText(given) ? cellByCell(asked, [given], asNumber) : given
}

function holdsText(given: BaseValueObject): boolean {
  if (!given.isArray()) return given.isString()
  return (given as ArrayValueObject).getArrayValue().some((row) => row.some((cell) => cell?.isString()))
}

function asNumber(cell: BaseValueObject): BaseValueObject {
  return cell.isString() ? cell.convertToNumberObjectValue() : cell
}
