/** The kinds of cells a sheet of the season is written with, so that a sheet reads like its own table of contents. */
import type { Allowed, Cell, DefinedName, Sheet } from '../book'
import { serialOf } from '../../core/quantity/day'

export type Row = readonly (Cell | undefined)[]

/** A sheet, and the names by which the other sheets call its cells. */
export interface NamedSheet {
  readonly sheet: Sheet
  readonly names: readonly DefinedName[]
}

/** Each ends with the room of a bracket, so that a figure does not touch the text of the next column. */
export const formats = {
  count: '#,##0_)',
  countOrDash: '#,##0_);-#,##0_);"–"_)',
  measure: '#,##0.0##_)',
  litres: '#,##0.0_)',
  weight: '#,##0.00_)',
  share: '0.0%_)',
  each: '0.0000_)',
  price: '#,##0.00_)',
  years: '0.0_)',
  /** Year first, which no country reads otherwise. */
  day: 'yyyy-mm-dd_)',
  /** For a column whose figures are of several kinds. */
  mixed: '#,##0.0###_)',
} as const

/** The rows above a table stay in sight, but for those that would fill more than a third of a small window. */
export const frozen = (above: number): number => (above > 8 ? 0 : above)

export const title = (value: string): Cell => ({ value, look: 'title' })
export const text = (value: string): Cell => ({ value, look: 'text' })
export const heading = (value: string): Cell => ({ value, look: 'heading' })
export const caution = (value: string): Cell => ({ value, look: 'caution' })

const share: Allowed = {
  from: 0,
  to: 1,
  sentence: 'Type a share from 0 to 1, or a percentage from 0% to 100%: 0.95 or 95%.',
}

const day: Allowed = {
  from: serialOf('2000-01-01'),
  to: serialOf('2099-12-31'),
  day: true,
  sentence: 'Type a day as year-month-day, such as 2026-02-09.',
}

/** Every share lies between none and all, and every day in this century; what else may be typed a cell says itself. */
export function allowedBy(format: string | undefined): Allowed | undefined {
  if (format === formats.share) return share
  return format === formats.day ? day : undefined
}

/** A cell to type into: the only look that is. */
export function openInput(format: string): Cell {
  const allowed = allowedBy(format)
  return { look: 'input', format, ...(allowed === undefined ? {} : { allowed }) }
}

export function result(formula: string, format?: string): Cell {
  return { formula, look: 'result', ...(format === undefined ? {} : { format }) }
}

export const total = (formula: string, format?: string): Cell => ({ ...result(formula, format), look: 'total' })

/** A cell that the formula above spills over: it has no content of its own, but is shown like it. */
export const spilledOver = (format?: string): Cell => ({ look: 'result', ...(format === undefined ? {} : { format }) })

export const headings = (...values: readonly string[]): Row => values.map(heading)
