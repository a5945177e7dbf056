/** The sign before the decimals, as people write and read it. Formulas and files always have the point. */
export type DecimalMark = '.' | ','

/** A number in en-US form, "1,234.5", with the mark that people expect, and thousands parted by the other one. */
export function withMark(digits: string, mark: DecimalMark): string {
  return mark === '.' ? digits : digits.replace(/[.,]/g, (sign) => (sign === '.' ? ',' : '.'))
}
