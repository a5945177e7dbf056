/**
 * IFS, SWITCH and IFNA look only at what they take. The grid's engine gave the error of a branch that is not taken:
 * IFS(A1>0,1,TRUE,1/0) was #DIV/0!, and so was IFNA(1,1/0). A branch that is a blank cell was #N/A, as was a blank
 * default of SWITCH; and SWITCH took the text "1" for the number 1. IF took any text for true, and an empty one for
 * false, where Excel gives #VALUE!. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  type ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
} from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

export function takeBranches(injector: Injector): void {
  replaceFunctions(
    injector,
    ['IF'],
    (choose, asked) =>
      (test, ...branches) =>
        choose(hasText(test) ? cellByCell(asked, [test], truthValue) : test, ...branches),
  )
  replaceFunctions(
    injector,
    ['IFS'],
    (_ifs, asked) =>
      (...given) =>
        given.length % 2 === 0 ? cellByCell(asked, given, firstTrue) : notFound(),
  )
  replaceFunctions(
    injector,
    ['SWITCH'],
    (_switch, asked) =>
      (...given) =>
        given.length < 3 ? ErrorValueObject.create(ErrorType.VALUE) : cellByCell(asked, given, firstEqual),
  )
  replaceFunctions(
    injector,
    ['IFNA'],
    (_ifna, asked) =>
      (...given) =>
        cellByCell(asked, given, (value, instead) => (isNotFound(value) ? instead : value)),
  )
}

function firstTrue(...cells: readonly BaseValueObject[]): BaseValueObject {
  for (let place = 0; place + 1 < cells.length; place += 2) {
    const truth = truthOf(cells[place]!)
    if (typeof truth !== 'boolean') return truth
    if (truth) return cells[place + 1]!
  }
  return notFound()
}

function hasText(test: BaseValueObject): boolean {
  if (!test.isArray()) return test.isString()
  return (test as ArrayValueObject).getArrayValue().some((row) => row.some((cell) => cell?.isString()))
}

function truthValue(cell: BaseValueObject): BaseValueObject {
  const truth = truthOf(cell)
  return typeof truth === 'boolean' ? BooleanValueObject.create(truth) : truth
}

export function truthOf(cell: BaseValueObject): boolean | BaseValueObject {
  if (cell.isError()) return cell
  if (!cell.isString()) return Boolean(cell.getValue())
  const text = String(cell.getValue()).toUpperCase()
  return text === 'TRUE' || text === 'FALSE' ? text === 'TRUE' : ErrorValueObject.create(ErrorType.VALUE)
}

function firstEqual(expression: BaseValueObject, ...cells: readonly BaseValueObject[]): BaseValueObject {
  if (expression.isError()) return expression
  for (let place = 0; place + 1 < cells.length; place += 2) {
    const value = cells[place]!
    if (value.isError()) return value
    if (isSame(expression, value)) return cells[place + 1]!
  }
  // What is left over is the default.
  return cells.length % 2 === 1 ? cells.at(-1)! : notFound()
}

/** A blank is 0, an empty text or FALSE, as the other is; capitals do not matter. */
function isSame(one: BaseValueObject, other: BaseValueObject): boolean {
  if (one.isNull() || other.isNull()) return !one.getValue() && !other.getValue()
  if (one.isString() && other.isString())
    return String(one.getValue()).toLowerCase() === String(other.getValue()).toLowerCase()
  return one.getValue() === other.getValue()
}

function isNotFound(cell: BaseValueObject): boolean {
  return cell.isError() && (cell as ErrorValueObject).getErrorType() === ErrorType.NA
}

function notFound(): BaseValueObject {
  return ErrorValueObject.create(ErrorType.NA)
}
