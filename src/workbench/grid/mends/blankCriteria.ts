/**
 * The criterion "<>" finds all cells that are not blank, and "=" those that are. The grid's engine left the empty texts
 * of formulas out of the first, and where numbers were asked for, all numbers: COUNTIF(A1:A9,"<>") counted fewer than
 * COUNTA; it took them into the second, which only the criterion "" does. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
} from '@univerjs/engine-formula'
import { replaceFunctions, replaceShared } from './replaced'

type Compare = (this: ArrayValueObject, ...given: Parameters<ArrayValueObject['compare']>) => BaseValueObject

export function findFilledCells(injector: Injector): void {
  replaceShared(injector, ArrayValueObject.prototype as { compare: Compare }, 'compare', findingFilledCells)
  replaceFunctions(
    injector,
    ['COUNTIF', 'SUMIF', 'AVERAGEIF'],
    askingForBlanks((place) => place === 1),
  )
  replaceFunctions(
    injector,
    ['COUNTIFS'],
    askingForBlanks((place) => place % 2 === 1),
  )
  const inPairs = ['SUMIFS', 'AVERAGEIFS', 'MAXIFS', 'MINIFS']
  replaceFunctions(
    injector,
    inPairs,
    askingForBlanks((place) => place > 0 && place % 2 === 0),
  )
}

/**
 * The engine takes the criteria "" and "=" for the same once it compares, and goes on so where it is asked for both.
 * Nothing else is calculated between the question and its comparisons.
 */
let asksForBlanks = false

function askingForBlanks(isCriterion: (place: number) => boolean): Parameters<typeof replaceFunctions>[2] {
  return (calculate) =>
    (...given) => {
      const criteria = given.filter((_one, place) => isCriterion(place))
      asksForBlanks = criteria.some((one) => isText(one, '=')) && !criteria.some((one) => isText(one, ''))
      try {
        return calculate(...given)
      } finally {
        asksForBlanks = false
      }
    }
}

function isText(given: BaseValueObject | BaseReferenceObject, text: string): boolean {
  return (
    !given.isReferenceObject() &&
    (given as BaseValueObject).isString() &&
    (given as BaseValueObject).getValue() === text
  )
}

/** Comparisons that stand in a formula are those of compareCells: only criteria come here. */
function findingFilledCells(compare: Compare): Compare {
  return function compareBlock(value, operator, isCaseSensitive) {
    const isOfBlanks = !value.isArray() && value.isString() && value.getValue() === ''
    if (isOfBlanks && operator === '<>') return this.mapValue((cell) => BooleanValueObject.create(!cell.isNull()))
    if (isOfBlanks && operator === '=' && asksForBlanks)
      return this.mapValue((cell) => BooleanValueObject.create(cell.isNull()))
    return compare.call(this, value, operator, isCaseSensitive)
  }
}
