const fewDigits = 4
const largeAmount = 100

/** Short enough for a label; the table beside a chart has all digits. */
export function amountText(value: number): string {
  return value.toLocaleString('en-US', Math.abs(value) >= largeAmount ? { maximumFractionDigits: 2 } : { maximumSignificantDigits: fewDigits })
}
