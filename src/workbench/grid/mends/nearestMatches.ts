/**
 * Finds the nearest of what is in order. Where a text was not found, the grid's engine took the first text that is
 * smaller for the nearest: MATCH("c",{"a","b","d"},1) was 1, and XMATCH and XLOOKUP likewise. Of equal ones MATCH gave
 * the first, where Excel gives the last, and with -1 it looked through what does not fall. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
} from '@univerjs/engine-formula'
import { cellByCell, columnsOf, firstOf, rowsOf } from './cellByCell'
import { replaceFunctions, replaceShared } from './replaced'

type Search = ArrayValueObject['orderSearch']

/** As the engine calls them. */
const [nextSmaller, nextLarger] = [1, 2]

export function findNearest(injector: Injector): void {
  replaceShared<'orderSearch', Search>(injector, ArrayValueObject.prototype, 'orderSearch', findingTexts)
  replaceFunctions(injector, ['MATCH'], (match, asked) => (sought, cells, kind) => {
    const found = match(...([sought, cells, kind].filter((one) => one !== undefined) as BaseValueObject[]))
    const order = kind === undefined ? 1 : Number(firstOf(kind).getValue())
    const isFailed = found.isError() && found.getValue() !== ErrorType.NA
    const isLine = cells.isArray() && (rowsOf(cells) === 1 || columnsOf(cells) === 1)
    if (isFailed || !isLine || Math.trunc(order) === 0) return found
    const inOrder = valuesOf(cells as ArrayValueObject)
    return cellByCell(asked, [sought], (one) => (one.isError() ? one : placeOf(one, inOrder, order > 0)))
  })
}

function findingTexts(search: Search): Search {
  return function searchBlock(this: ArrayValueObject, sought, searchType, isDescending, isFuzzy) {
    // What is looked for exactly may have wildcards.
    if (!sought.isString() || isFuzzy || (searchType !== nextSmaller && searchType !== nextLarger))
      return search.call(this, sought, searchType, isDescending, isFuzzy)
    const isNearer = (cell: BaseValueObject, nearest: BaseValueObject) =>
      searchType === nextSmaller ? isBefore(nearest, cell) : isBefore(cell, nearest)
    let nearest: { readonly cell: BaseValueObject; readonly row: number; readonly column: number } | undefined
    let equal: { row: number; column: number } | undefined
    this[isDescending ? 'iteratorReverse' : 'iterator']((cell, row, column) => {
      if (!cell?.isString()) return
      const isSmaller = isBefore(cell, sought)
      if (!isSmaller && !isBefore(sought, cell)) {
        equal = { row, column }
        return false
      }
      if (isSmaller === (searchType === nextSmaller) && (nearest === undefined || isNearer(cell, nearest.cell)))
        nearest = { cell, row, column }
    })
    return equal ?? nearest
  }
}

function valuesOf(cells: ArrayValueObject): readonly BaseValueObject[] {
  return cells.getArrayValue().flatMap((row) => row.map((cell) => cell ?? NullValueObject.create()))
}

/** The last place whose cell is not beyond what is sought, found by halving, as Excel does; it passes other kinds by. */
function placeOf(sought: BaseValueObject, cells: readonly BaseValueObject[], isRising: boolean): BaseValueObject {
  const one = sought.isNull() ? NumberValueObject.create(0) : sought
  const places = cells.flatMap((cell, place) => (kindOf(cell) === kindOf(one) ? [place] : []))
  let [from, to] = [0, places.length]
  while (from < to) {
    const middle = Math.floor((from + to) / 2)
    const cell = cells[places[middle]!]!
    const isBeyond = isRising ? isBefore(one, cell) : isBefore(cell, one)
    if (isBeyond) to = middle
    else from = middle + 1
  }
  return from === 0 ? ErrorValueObject.create(ErrorType.NA) : NumberValueObject.create(places[from - 1]! + 1)
}

function kindOf(cell: BaseValueObject): string {
  return cell.isNull() || cell.isError() ? 'none' : typeof cell.getValue()
}

const texts = new Intl.Collator('en', { sensitivity: 'accent' })

/** Of two texts, numbers or truths. */
function isBefore(one: BaseValueObject, other: BaseValueObject): boolean {
  const [a, b] = [one.getValue(), other.getValue()]
  return typeof a === 'string' ? texts.compare(a, String(b)) < 0 : Number(a) < Number(b)
}
