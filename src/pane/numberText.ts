/** As many digits as a spreadsheet keeps, and no tail of a division. */
const exactDigits = 15

/** For a working, in which an auditor recalculates. */
export function exactText(value: number | string): string {
  if (typeof value === 'string') return value === '' ? '(blank)' : value
  return value.toLocaleString('en-US', { maximumSignificantDigits: exactDigits })
}

/** Enough digits to compare with the cell. */
const shortDigits = 10

export function shortText(value: number | string): string {
  return typeof value === 'number' ? value.toLocaleString('en-US', { maximumSignificantDigits: shortDigits }) : value
}
