/**
 * What a cutting costs beside what is bought, taken apart. COMPARE and ROOTINGCOST take it as one number; where the
 * cell that holds it adds up other cells, those say what it is made of.
 */
import { placeOf } from '../../core/definition/definition'
import { addedReferences } from '../../formula/addedReferences'
import { onlyCall } from '../../formula/onlyCall'
import { waitedFor } from '../../formula/waiting'
import { holds, namedRanges, rangesRead, type NamedRanges, type RangeRead } from '../../formula/rangesRead'
import { addressOf } from '../../formula/address'
import { Decimal, zero } from '../../core/quantity/decimal'
import { rootingCost } from '../../functions/cost/rootingCost'
import { compare } from '../../functions/review/compare'
import { cellAt } from '../cellAt'
import type { OpenBook, OpenCell } from '../openBook'
import { sheetNamed } from '../sheetNamed'
import type { ChartedCell } from './chartedCells'
import { costClass, type CostClass } from './costClass'
import { headingsOfTerm } from './headingsOfTerm'

export type OtherCosts = Readonly<Record<CostClass, OtherPart>>

export interface OtherPart {
  readonly amount: Decimal
  readonly cells: readonly AddedCell[]
}

export interface AddedCell {
  readonly sheet: string
  readonly address: string
  /** What its row or column is called; its address where it is called nothing. */
  readonly heading: string
}

interface Found extends AddedCell {
  readonly cell: OpenCell
  readonly costClass: CostClass
}

/**
 * Of one way after the other, so many as a call compares. Undefined where the cells do not say what a number is made
 * of, and where they do not add up to it.
 */
export function otherCosts(
  cell: ChartedCell,
  given: readonly Decimal[],
  book: OpenBook,
): readonly (OtherCosts | undefined)[] {
  const names = namedRanges(book.names)
  const terms = termsOfWays(cell, book, names)
  return given.map((other, way) => takenApart(terms[way] ?? [], other))
}

/** The cells that make up the argument of each way, as far as they can be followed. */
function termsOfWays(cell: ChartedCell, book: OpenBook, names: NamedRanges): readonly (readonly Found[])[] {
  const index =
    cell.id === compare.id ? placeOf(compare, 'otherCostsPerCutting') : placeOf(rootingCost, 'otherCostPerCutting')
  const { formula = '' } = cellAt(book, cell.sheet, cell.row, cell.column) ?? {}
  const given = onlyCall(formula, cell.id)?.[index] ?? ''
  const written = waitedFor(`=${given}`).slice(1)
  const [reference, ...more] = rangesRead(`=${written}`, cell.sheet, names)
  if (cell.id !== compare.id) {
    const added = addedIn(written, cell.sheet, book, names)
    return [foundIn(added, book, names, added.length === 1 ? 0 : 1)]
  }
  if (reference === undefined || more.length > 0 || addedReferences(`=${written}`)?.length !== 1) return []
  const all = placesIn(reference)
  // What a filter leaves out is no way either.
  const isFiltered = /^FILTER\(/i.test(given)
  const places = isFiltered
    ? all.filter(({ sheet, row, column }) => typeof cellAt(book, sheet, row, column)?.value === 'number')
    : all
  return waysGiven(cell).map((place) => foundIn(places.slice(place, place + 1), book, names))
}

/** The places of the ways in their ranges. One without a name is no way: COMPARE leaves it out. */
export function waysGiven({ args }: ChartedCell): readonly number[] {
  return [args[placeOf(compare, 'names')]]
    .flat(2)
    .flatMap((name, place) => (name === null || name === undefined || name === '' ? [] : [place]))
}

interface Place {
  readonly sheet: string
  readonly row: number
  readonly column: number
}

const deepest = 8

/** The cell that was given is taken apart; of its cells one whose function or heading says what it is stands for itself. */
function foundIn(places: readonly Place[], book: OpenBook, names: NamedRanges, depth = 0): readonly Found[] {
  const standing = new Set(places.map(({ column }) => column)).size > 1 ? 'in a row' : 'in a column'
  return places.flatMap(({ sheet, row, column }): readonly Found[] => {
    const cell = cellAt(book, sheet, row, column)
    if (typeof cell?.value !== 'number') return []
    const headings = headingsOfTerm(sheetNamed(book, sheet)!, cell, standing)
    const own: Found = {
      sheet,
      address: addressOf(row, column),
      heading: headings[0] ?? addressOf(row, column),
      cell,
      costClass: depth === 0 ? 'other' : costClass(cell.formula, headings),
    }
    if (own.costClass !== 'other' || depth === deepest) return [own]
    const below = addedIn(cell.formula.replace(/^=/, ''), sheet, book, names)
    return below.length === 0 ? [own] : foundIn(below, book, names, depth + 1)
  })
}

function addedIn(expression: string, sheet: string, book: OpenBook, names: NamedRanges): readonly Place[] {
  const references = addedReferences(`=${expression}`) ?? []
  return references
    .flatMap((text) => rangesRead(`=${text}`, sheet, names))
    .flatMap((range) =>
      Number.isFinite(range.bottom) && Number.isFinite(range.right) ? placesIn(range) : placesHeld(range, book),
    )
}

/** Row by row, as a function reads a range. */
function placesIn({ sheet, top, left, bottom, right }: RangeRead): readonly Place[] {
  const mostPlaces = 10_000
  const width = right - left + 1
  const count = Math.min(width * (bottom - top + 1), mostPlaces)
  return Array.from({ length: count }, (_, place) => ({
    sheet,
    row: top + Math.floor(place / width),
    column: left + (place % width),
  }))
}

/** Of a whole row or column only what is there. */
function placesHeld(range: RangeRead, book: OpenBook): readonly Place[] {
  const { sheet } = range
  const cells = [...(sheetNamed(book, sheet)?.cells.values() ?? [])]
  return cells
    .filter(({ row, column }) => holds(range, sheet, row, column))
    .map(({ row, column }) => ({ sheet, row, column }))
}

/** What doubles lose in adding up. */
const dust = 1e-12

function takenApart(found: readonly Found[], other: Decimal): OtherCosts | undefined {
  const part = (wanted: CostClass) => {
    const cells = found.filter((one) => one.costClass === wanted)
    return {
      amount: Decimal.sum(zero, ...cells.map(({ cell }) => new Decimal(cell.value as number))),
      cells: cells.map(({ sheet, address, heading }) => ({ sheet, address, heading })),
    }
  }
  const parts = { medium: part('medium'), bench: part('bench'), labour: part('labour'), other: part('other') }
  const amounts = Object.values(parts).map(({ amount }) => amount)
  const missing = other.sub(Decimal.sum(...amounts))
  const isWhole = missing.abs().lte(other.abs().mul(dust))
  const saysSomething = found.some((one) => one.costClass !== 'other')
  if (!isWhole || !saysSomething) return undefined
  // The largest part takes what the doubles lost, so that the parts add up to the number that was given.
  const [largest] = (Object.keys(parts) as CostClass[]).sort((a, b) => parts[b].amount.cmp(parts[a].amount))
  return { ...parts, [largest!]: { ...parts[largest!], amount: parts[largest!].amount.add(missing) } }
}
