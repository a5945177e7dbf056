/**
 * Finds the texts that a criterion with * or ? describes. The grid's engine passed by texts that look like numbers, once
 * they had been looked through before, and by the empty texts of formulas: COUNTIF(A1:A9,"46*") left out the text 46053,
 * and "*" texts that Excel counts; and it ended at the first line of a text with several. SEARCH knew no * and ?. Numbers
 * have no letters, as in Excel. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { type Calculate, replaceFunctions, replaceShared } from './replaced'

type Compare = (this: ArrayValueObject, ...given: Parameters<ArrayValueObject['compare']>) => BaseValueObject

const withCriteria = ['COUNTIF', 'SUMIF', 'AVERAGEIF', 'COUNTIFS', 'SUMIFS', 'AVERAGEIFS', 'MAXIFS', 'MINIFS']

/** Whether one of these compares. Nothing else is calculated between its beginning and its end. */
let isOfCriterion = false

export function findByWildcards(injector: Injector): void {
  replaceShared(injector, ArrayValueObject.prototype as { compare: Compare }, 'compare', findingTexts)
  replaceFunctions(injector, ['SEARCH'], searchingByWildcards)
  replaceFunctions(injector, withCriteria, (calculate) => (...given) => {
    isOfCriterion = true
    try {
      return calculate(...given)
    } finally {
      isOfCriterion = false
    }
  })
}

/** The engine says what is wrong with the text and the start. */
function searchingByWildcards(search: Calculate, asked: BaseFunction): Calculate {
  return (...given) =>
    cellByCell(asked, given, (sought, text, start) => {
      const beside = [text!, start].filter((one) => one !== undefined)
      if (!sought!.isString() || !/[*?~]/.test(String(sought!.getValue()))) return search(sought!, ...beside)
      const first = search(StringValueObject.create(''), ...beside)
      if (first.isError()) return first
      const from = Number(first.getValue())
      const found = new RegExp(sourceOf(String(sought!.getValue())), 'is').exec(
        String(text!.getValue()).slice(from - 1),
      )
      return found ? NumberValueObject.create(found.index + from) : ErrorValueObject.create(ErrorType.VALUE)
    })
}

/** Comparisons that stand in a formula are those of compareCells: only criteria and what is looked up come here. */
function findingTexts(compare: Compare): Compare {
  return function compareBlock(value, operator, isCaseSensitive) {
    const criterion = !value.isArray() && value.isString() ? String(value.getValue()) : ''
    if (!/[*?]/.test(criterion) || (operator !== '=' && operator !== '<>'))
      return compare.call(this, value, operator, isCaseSensitive)
    const described = new RegExp(`^${sourceOf(criterion)}$`, 'is')
    const isDescribed = (cell: BaseValueObject) => cell.isString() && described.test(String(cell.getValue()))
    const found = this.mapValue((cell) =>
      BooleanValueObject.create(isDescribed(cell) === (operator === '=')),
    ) as ArrayValueObject
    return isOfCriterion ? withoutSecondLook(found) : found
  }
}

/** The functions with criteria go through the cells once more, and find that an empty text is no text. */
function withoutSecondLook(found: ArrayValueObject): ArrayValueObject {
  const mapValue = found.mapValue.bind(found)
  found.mapValue = () => {
    found.mapValue = mapValue
    return found
  }
  return found
}

/** A ~ takes its meaning from the sign behind it. */
function sourceOf(criterion: string): string {
  return criterion.replaceAll(/~[*?~]|[*?]|[\\^$.|+()[\]{}]/g, (sign) => {
    if (sign === '*') return '.*'
    if (sign === '?') return '.'
    return `\\${sign.at(-1)}`
  })
}
