/** The sign before the decimals, as people write and read it. Formulas and files always have the point. */
export type DecimalMark = '.' | ','

/** A number that is written with a point, "1234.5", with the mark that people expect. */
export function withMark(digits: string, mark: DecimalMark): string {
  return digits.replace('.', mark)
}
