import type { ReadCell } from '../workbook/openBook'

export function isFormula(content: unknown): content is string {
  return typeof content === 'string' && content.startsWith('=')
}

export function readCell(value: unknown, type: unknown): ReadCell {
  return type === 'Error' ? { kind: 'cellError', code: String(value) } : blankAsNull(value)
}

export function blankAsNull(value: unknown): string | number | boolean | null {
  return value === '' || value === undefined ? null : (value as string | number | boolean)
}
