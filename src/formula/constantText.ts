/** A number or a text as it stands in a formula. A spreadsheet writes an exponent with a capital E. */
export function constantText(value: number | string): string {
  return typeof value === 'number' ? String(value).toUpperCase() : `"${value.replaceAll('"', '""')}"`
}
