import type { DecimalMark } from '../../core/quantity/decimalMark'
import { languages, type Language } from '../../wording/languages'

/** How the pane speaks and shows numbers. Cells are not touched by any of it. */
export interface Settings {
  readonly language: Language
  readonly decimalMark: DecimalMark
  /** With 'us', the US equivalent stands beside a metric measure. */
  readonly units: 'metric' | 'us'
  /** A code or a sign, such as EUR or $; empty where amounts are just called money. */
  readonly currency: string
  readonly currencyPlace: 'before' | 'after'
  /** Of an amount of money; what one thing costs may show more. */
  readonly decimals: number
}

/** What a user chose; the rest follows from the language and the browser. */
export type Chosen = Partial<Settings>

export const mostDecimals = 4

export function settingsFrom(chosen: Chosen, locale: string): Settings {
  const language = chosen.language ?? spokenIn(locale)
  const decimalMark =
    chosen.decimalMark ?? (languages[language].decimalMark === ',' || marksWithComma(locale) ? ',' : '.')
  return {
    language,
    decimalMark,
    units: 'metric',
    currency: '',
    currencyPlace: decimalMark === ',' ? 'after' : 'before',
    decimals: 2,
    ...chosen,
  }
}

/** Of something kept, what can be used; it may be years old, or typed by hand. */
export function usableChoice(kept: unknown): Chosen {
  if (typeof kept !== 'object' || kept === null) return {}
  const { language, decimalMark, units, currency, currencyPlace, decimals } = kept as Record<string, unknown>
  return {
    ...(typeof language === 'string' && Object.hasOwn(languages, language) && { language: language as Language }),
    ...((decimalMark === '.' || decimalMark === ',') && { decimalMark }),
    ...((units === 'metric' || units === 'us') && { units }),
    ...(typeof currency === 'string' && { currency: currency.slice(0, longestCurrency) }),
    ...((currencyPlace === 'before' || currencyPlace === 'after') && { currencyPlace }),
    ...(typeof decimals === 'number' &&
      Number.isInteger(decimals) &&
      decimals >= 0 &&
      decimals <= mostDecimals && { decimals }),
  }
}

/** Room for a code, and for the longest signs. */
export const longestCurrency = 5

/** "de" of "de-AT"; English where the pane does not speak the language. */
function spokenIn(locale: string): Language {
  const [language = ''] = locale.toLowerCase().split('-')
  return Object.hasOwn(languages, language) ? (language as Language) : 'en'
}

/** Where English is written with a point. The first question about numbers takes a browser long, and most need not ask it. */
const withPoint = /^en(-(us|gb|au|ca|nz|ie))?$/i

function marksWithComma(locale: string): boolean {
  if (withPoint.test(locale)) return false
  try {
    return new Intl.NumberFormat(locale)
      .formatToParts(1.5)
      .some(({ type, value }) => type === 'decimal' && value === ',')
  } catch {
    // A host may name a language that the browser does not know.
    return false
  }
}
