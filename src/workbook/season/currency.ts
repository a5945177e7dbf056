import type { Book, Cell } from '../book'
import type { OpenBook } from '../openBook'

/** In what the figures of the demo are. */
export const demoCurrency = 'EUR'

/** The currency that most units of a workbook name, as "EUR" or "EUR a liner" in a cell; undefined where none does. */
export function currencyOf({ sheets }: OpenBook): string | undefined {
  const known = new Set(Intl.supportedValuesOf('currency'))
  const counts = new Map<string, number>()
  for (const { cells } of sheets) {
    for (const { value, formula } of cells.values()) {
      const code =
        formula === '' && typeof value === 'string'
          ? /^([A-Z]{3})(?:,? (?:a|an|each|per|first)\b.*)?$/.exec(value)?.[1]
          : undefined
      if (code !== undefined && known.has(code)) counts.set(code, (counts.get(code) ?? 0) + 1)
    }
  }
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0]
}

/** A season whose units, notes and sentences name another currency than that of the demo. */
export function inCurrency({ sheets, names }: Book, currency: string): Book {
  const named = new RegExp(`\\b${demoCurrency}\\b`, 'g')
  const text = (words: string) => words.replace(named, () => currency)
  const cell = (one: Cell): Cell => ({
    ...one,
    ...(typeof one.value === 'string' && { value: text(one.value) }),
    ...(one.formula !== undefined && { formula: text(one.formula) }),
    ...(one.note !== undefined && { note: text(one.note) }),
    ...(one.allowed !== undefined && { allowed: { ...one.allowed, sentence: text(one.allowed.sentence) } }),
  })
  return {
    names,
    sheets: sheets.map((sheet) => ({ ...sheet, rows: sheet.rows.map((row) => row.map((one) => one && cell(one))) })),
  }
}
