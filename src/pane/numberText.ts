/** As many digits as a spreadsheet keeps, and no tail of a division. */
const exactDigits = 15

/** For a working, in which an auditor recalculates. */
export function exactText(value: number | string): string {
  if (typeof value === 'string') return value === '' ? '(blank)' : value
  return value.toLocaleString('en-US', { maximumSignificantDigits: exactDigits })
}
