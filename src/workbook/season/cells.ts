/** The kinds of cells a sheet of the season is written with, so that a sheet reads like its own table of contents. */
import type { Allowed, Cell, CellContent, DefinedName, Sheet } from '../book'
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

/** Every share of the season lies between none and all, and every day in this century; what else may be typed a cell says itself. */
function allowedBy(format: string | undefined): { readonly allowed?: Allowed } {
  if (format === formats.share) return { allowed: share }
  return format === formats.day ? { allowed: day } : {}
}

/** The only cells that are meant to be typed into. */
export function input(value: CellContent, format?: string, note?: string): Cell {
  return {
    value,
    look: 'input',
    ...(format === undefined ? {} : { format }),
    ...(note === undefined ? {} : { note }),
    ...allowedBy(format),
  }
}

/** A day to type over, given as year-month-day. */
export const dayInput = (written: string): Cell => input(serialOf(written), formats.day)

/** An input that a line leaves open on purpose. */
export const openInput = (format: string): Cell => ({ look: 'input', format, ...allowedBy(format) })

export const allowing = (cell: Cell, allowed: Allowed): Cell => ({ ...cell, allowed })

export function result(formula: string, format?: string): Cell {
  return { formula, look: 'result', ...(format === undefined ? {} : { format }) }
}

export const total = (formula: string, format?: string): Cell => ({ ...result(formula, format), look: 'total' })

export const spilling = (formula: string, format: string): Cell => ({ ...result(formula, format), spills: true })

/** A cell that the formula above spills over: it has no content of its own, but is shown like it. */
export const spilledOver = (format?: string): Cell => ({ look: 'result', ...(format === undefined ? {} : { format }) })

/**
 * A figure read from a spilled table. Where the function refuses, only the corner of its table shows the error; the
 * other cells stay empty and would count as 0.
 */
export const ofTable = (corner: string, figure: string): string => `=IF(ISERROR(${corner}),${corner},${figure})`

/** A price or wage that a formula reads by its name alone: left blank it would count as 0, and things as bought for nothing. */
export const priced = (reference: string): string => `IF(LEN(${reference})=0,NA(),${reference})`

export const headings = (...values: readonly string[]): Row => values.map(heading)

export const inventedMark = 'Invented nursery, invented prices: for demonstration only'

/** The head of every sheet: nobody shall take these prices for somebody's. */
export function headOf(
  name: string,
  about: string,
): { readonly title: () => Row; readonly invented: () => Row; readonly about: () => Row } {
  return {
    title: () => [title(name)],
    invented: () => [caution(inventedMark)],
    about: () => [text(about)],
  }
}
