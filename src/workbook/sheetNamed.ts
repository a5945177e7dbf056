import type { OpenBook, OpenSheet } from './openBook'

/** The sheet that a formula means by a name: capitals do not count. */
export function sheetNamed({ sheets }: OpenBook, wanted: string): OpenSheet | undefined {
  return sheets.find(({ name }) => name.toLowerCase() === wanted.toLowerCase())
}
