import type { OpenBook } from '../openBook'

/** The currency that most units of a workbook name, as "EUR" or "EUR per liner" in a cell; undefined where none does. */
export function currencyOf({ sheets }: OpenBook): string | undefined {
  const known = new Set(Intl.supportedValuesOf('currency'))
  const counts = new Map<string, number>()
  for (const { cells } of sheets) {
    for (const { value } of cells.values()) {
      const code =
        typeof value === 'string' ? /^([A-Z]{3})(?:,? (?:a|an|each|per|first)\b.*)?$/.exec(value)?.[1] : undefined
      if (code !== undefined && known.has(code)) counts.set(code, (counts.get(code) ?? 0) + 1)
    }
  }
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0]
}
