/** Criteria of SUMIF, COUNTIFS and their like, as far as the second engine (IronCalc 0.8.4) reads them as Excel does. */
import type { ReadCell } from '../../workbook/openBook'

const first = (count: number) => (count > 1 ? [1] : [])
const inPairs = (from: number) => (count: number) =>
  Array.from({ length: count }, (_argument, place) => place).filter((place) => place > from && (place - from) % 2 === 1)

const placesBy: ReadonlyMap<string, (count: number) => readonly number[]> = new Map([
  ...['COUNTIF', 'SUMIF', 'AVERAGEIF'].map((name) => [name, first] as const),
  ['COUNTIFS', inPairs(0)],
  ...['SUMIFS', 'AVERAGEIFS', 'MINIFS', 'MAXIFS'].map((name) => [name, inPairs(1)] as const),
])

/** Which arguments of a call are criteria, from 0. */
export function placesOfCriteria(name: string, count: number): readonly number[] {
  return placesBy.get(name)?.(count) ?? []
}

/** `written` is the argument in the formula, `value` what its cell holds where it is one. */
export function isCriterionTaken(written: string, value: ReadCell | undefined): boolean {
  const text = typeof value === 'string' ? value : written.replace(/^"|"$/g, '')
  // Of what differs from a text it counts nothing.
  return !text.startsWith('<>') || /^<>([-\d.]*|"&[^"]*)$/.test(text)
}
