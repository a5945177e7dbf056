/**
 * Texts and truths among the numbers of statistics. Microsoft's documentation of MEDIAN: texts, logical values and
 * empty cells of an array or a reference are ignored, and those that are given themselves are counted; of RANK.EQ:
 * nonnumeric values are ignored; of NPV and CORREL as of MEDIAN; of AVERAGEA: text evaluates as 0, and TRUE as 1. In all
 * of these the grid's engine counted a text in a cell that looks like a number; it left a given TRUE out of MEDIAN and
 * its like, and a given "x" out of DEVSQ. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  type BaseReferenceObject,
  type BaseValueObject,
  NullValueObject,
  NumberValueObject,
} from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

const ofAllGiven = [
  ...['MEDIAN', 'GEOMEAN', 'HARMEAN', 'DEVSQ', 'AVEDEV', 'SKEW', 'SKEW.P', 'KURT', 'MODE', 'MODE.SNGL', 'MODE.MULT'],
  ...['NPV', 'IRR', 'MIRR'],
]

const ofFirstGiven = ['TRIMMEAN', 'PERCENTRANK', 'PERCENTRANK.INC', 'PERCENTRANK.EXC']

/** Of two columns; a pair with a text in it is left out. */
const ofPairs = [
  ...['CORREL', 'PEARSON', 'RSQ', 'SLOPE', 'INTERCEPT', 'STEYX'],
  ...['COVAR', 'COVARIANCE.P', 'COVARIANCE.S', 'FORECAST', 'FORECAST.LINEAR'],
]

const withTexts = ['AVERAGEA', 'STDEVA', 'STDEVPA', 'VARA', 'VARPA']

export function countNoTexts(injector: Injector): void {
  replaceFunctions(
    injector,
    ofAllGiven,
    (calculate, asked) =>
      (...given) =>
        calculate(...given.map((one) => (one.isArray() ? cellByCell(asked, [one], numberOrBlank) : asNumber(one)))),
  )
  replaceFunctions(
    injector,
    ofFirstGiven,
    (calculate, asked) =>
      (cells, ...rest) =>
        calculate(cells.isArray() ? cellByCell(asked, [cells], numberOrBlank) : cells, ...rest),
  )
  replaceFunctions(
    injector,
    ofPairs,
    (calculate, asked) =>
      (...given) =>
        calculate(...given.map((one) => (one.isArray() ? cellByCell(asked, [one], numberOrBlank) : one))),
  )
  replaceFunctions(
    injector,
    withTexts,
    (calculate, asked) =>
      (...given) =>
        calculate(...given.map((one) => (one.isArray() ? cellByCell(asked, [one], numberOrZero) : one))),
  )
  replaceFunctions(injector, ['RANK', 'RANK.EQ', 'RANK.AVG'], (rank, asked) => (number, cells, ...order) => {
    // They ask for references.
    const among = cells as BaseValueObject | BaseReferenceObject
    if (!among.isReferenceObject()) return rank(number, cells, ...order)
    const numbers = cellByCell(asked, [(among as BaseReferenceObject).toArrayValueObject()], numberOrBlank)
    return rank(
      number,
      Object.assign(Object.create(cells) as BaseValueObject, { toArrayValueObject: () => numbers }),
      ...order,
    )
  })
}

function numberOrBlank(cell: BaseValueObject): BaseValueObject {
  return cell.isNumber() || cell.isError() ? cell : NullValueObject.create()
}

function numberOrZero(cell: BaseValueObject): BaseValueObject {
  if (cell.isString()) return NumberValueObject.create(0)
  return cell.isBoolean() ? asNumber(cell) : cell
}

function asNumber(given: BaseValueObject): BaseValueObject {
  return given.isString() || given.isBoolean() ? given.convertToNumberObjectValue() : given
}
