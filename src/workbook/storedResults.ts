/** Results that were worked out before, so that a book can be shown with them before it is calculated. */
import type { Book, CellContent } from './book'
import type { OpenBook } from './openBook'

/** Of each sheet in its order, by address. */
export type StoredResults = readonly StoredSheet[]

interface StoredSheet {
  /** What formulas give, and what they spill into other cells. */
  readonly values: Readonly<Record<string, CellContent>>
  /** The range that a formula fills, by its cell. */
  readonly spills: Readonly<Record<string, string>>
}

/** Of a book that has no errors: those are not stored, and their cells stay blank until they are calculated. */
export function storedResults({ sheets }: Book, calculated: OpenBook): StoredResults {
  return calculated.sheets.map(({ cells }, index) => {
    const { rows } = sheets[index]!
    const results = [...cells].filter(([, { row, column }]) => rows[row]?.[column]?.value === undefined)
    return {
      values: Object.fromEntries(
        results.flatMap(([address, { value }]) =>
          value === null || typeof value === 'object' ? [] : [[address, value]],
        ),
      ),
      spills: Object.fromEntries(
        results.flatMap(([address, { spill }]) => (spill === undefined ? [] : [[address, spill]])),
      ),
    }
  })
}
