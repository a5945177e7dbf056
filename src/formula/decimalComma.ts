/**
 * Numbers and formulas as they are typed by whoever writes 1.234,5 for what a formula holds as 1234.5. The comma then
 * marks the decimals, a point before groups of three digits parts thousands, and the arguments of a function are parted by
 * semicolons, as Excel has it in such a language. A point that cannot part thousands, as in 0.15, is read as it stands.
 */
import { tokenize, tokenTypes } from '@borgar/fx'

const commaNumber = /^([+-]?)([1-9]\d{0,2}(?:\.\d{3})+|\d+(?=,|$|[^.\d])|(?=,\d))(?:,(\d*))?(?![.,\d])(.*)$/s

/** "1.234,5 L" as "1234.5 L"; what is no such number stays as it is. */
export function pointNumber(typed: string): string {
  const [all, sign = '', whole = '', decimals, rest = ''] = commaNumber.exec(typed.trim()) ?? []
  if (all === undefined) return typed
  return `${sign}${whole.replaceAll('.', '') || '0'}${decimals === undefined || decimals === '' ? '' : `.${decimals}`}${rest}`
}

/** The reverse, for a number that leads a text: "1234.5 L" as "1234,5 L". */
export function commaNumberOf(text: string): string {
  return text.replace(/^([+-]?\d*)\.(?=\d)/, '$1,')
}

const outsideBraces = { ',': '.', ';': ',' } as const
/** A row of constants is parted by points there, and its rows by semicolons. */
const insideBraces = { ',': '.', '.': ',', ';': ';' } as const

/** A formula in en-US form for one that was typed with commas: =MAX(A1;B1)*1,5 as =MAX(A1,B1)*1.5. */
export function pointFormula(typed: string): string {
  let braces = 0
  return typed.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|[{},.;]/g, (part) => {
    if (part === '{') braces += 1
    if (part === '}') braces -= 1
    const signs: Readonly<Record<string, string>> = braces > 0 ? insideBraces : outsideBraces
    return signs[part] ?? part
  })
}

/** The reverse. */
export function commaFormula(formula: string): string {
  let braces = 0
  return tokenize(formula)
    .map(({ type, value }) => {
      if (type === tokenTypes.NUMBER) return value.replace('.', ',')
      if (type !== tokenTypes.OPERATOR) return value
      if (value === '{') braces += 1
      if (value === '}') braces -= 1
      if (value !== ',') return value
      return braces > 0 ? '.' : ';'
    })
    .join('')
}
