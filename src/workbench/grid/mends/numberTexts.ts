/**
 * Texts of numbers, as Excel makes them. The grid's engine put up to 17 digits of a number into a text that is joined,
 * or 12 into one that is cut or measured: 1/3&"" had 16 digits and LEN(1/3) was 14, where Excel has 15 digits and LEN
 * 17; of a date LEN counted what its format shows. And TEXT, FIXED and DOLLAR rounded what the processor holds of a
 * number, so that TEXT(1.005,"0.00") was 1.00, a cent too low. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, NumberValueObject, StringValueObject } from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

/** Which of their arguments are texts, counted from 0. */
const texts: Readonly<Record<string, (place: number) => boolean>> = {
  // The operator & too.
  CONCATENATE: () => true,
  CONCAT: () => true,
  TEXTJOIN: (place) => place !== 1,
  LEN: () => true,
  LEFT: (place) => place === 0,
  RIGHT: (place) => place === 0,
  MID: (place) => place === 0,
  EXACT: () => true,
  TRIM: () => true,
  PROPER: () => true,
  ASC: () => true,
  SUBSTITUTE: (place) => place < 3,
  REPLACE: (place) => place === 0 || place === 3,
  FIND: (place) => place < 2,
  SEARCH: (place) => place < 2,
  REPT: (place) => place === 0,
}

export function spellNumbers(injector: Injector): void {
  replaceFunctions(injector, Object.keys(texts), (calculate, asked) => {
    const spelled = (cell: BaseValueObject) =>
      cell.isNumber() ? StringValueObject.create(textOf(Number(cell.getValue()))) : cell
    return (...given) =>
      calculate(
        ...given.map((one, place) => {
          if (!texts[asked.name]!(place)) return one
          return one.isArray() ? cellByCell(asked, [one], spelled) : spelled(one)
        }),
      )
  })
  replaceFunctions(injector, ['TEXT', 'FIXED', 'DOLLAR'], (calculate, asked) => (number, ...rest) => {
    const rounded = (cell: BaseValueObject) =>
      cell.isNumber() ? NumberValueObject.create(roundingUp(Number(cell.getValue())), cell.getPattern()) : cell
    return calculate(number.isArray() ? cellByCell(asked, [number], rounded) : rounded(number), ...rest)
  })
}

const digits = 15

function textOf(number: number): string {
  const [written = '', power] = String(Number(number.toPrecision(digits))).split('e')
  if (power === undefined) return written
  return `${written}E${power.slice(0, 1)}${power.slice(1).padStart(2, '0')}`
}

/** What a number that ends in 5 is short of by its binary fraction, it gets, so that a half is rounded up. */
function roundingUp(number: number): number {
  const isHalf = /\.\d*5$/.test(textOf(number))
  return isHalf ? number * (1 + Number.EPSILON) : number
}
