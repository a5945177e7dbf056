/** Numbers, measures and money as the settings want them shown. */
import { dayUnit } from '../../core/definition/parameter'
import { dayText } from '../../core/quantity/day'
import type { Words } from '../../wording/words'
import type { Settings } from './settings'
import { usEquivalent } from './usEquivalent'

/**
 * All digits that a spreadsheet keeps, for an auditor who recalculates; so many as a reader needs to follow a step;
 * enough to compare with the cell; or so few that a label has room for them.
 */
export type Digits = 'exact' | 'step' | 'short' | 'label'

export interface NumberText {
  /** A number by itself; what is text stays as it is. */
  plain(value: number | string, digits: Digits): string
  /** A number with so many decimals, for the scale of a chart. */
  fixed(value: number, decimals: number): string
  percent(share: number): string
  /** A value with its unit: money in the currency, a metric measure with its US equivalent where that is wanted. */
  measured(value: number | string, unit: string, digits: Digits): string
  /** The same without the unit, for what has it in a heading. */
  inColumn(value: number | string, unit: string, digits: Digits): string
  /** Short, for a label: with its currency where it is money, and otherwise without its unit. */
  label(value: number, unit?: string): string
  /** The unit by itself: "EUR per liner". */
  unit(unit: string): string
}

const significant = { exact: 15, step: 6, short: 10, label: 4, equivalent: 4 } as const
/** From this size on a number is cut by its decimals, so that its whole part stays. */
const decimalsFrom = { step: { least: 1, decimals: 6 }, label: { least: 100, decimals: 2 } } as const

export function numberText(settings: Settings, words: Words): NumberText {
  const { decimalMark, units, currency, decimals } = settings
  const locale = decimalMark === ',' ? 'de-DE' : 'en-US'

  const plain: NumberText['plain'] = (value, digits) => {
    if (typeof value === 'string') return value === '' && isOfWorking(digits) ? words.frame.blank : value
    return value.toLocaleString(locale, cutOf(value, digits))
  }

  const fixed = (value: number, places: number) =>
    value.toLocaleString(locale, { minimumFractionDigits: places, maximumFractionDigits: places })

  /** An amount has the decimals of its currency; where more are needed to tell it, as of a cutting's price, it has more. */
  function amount(value: number, unit: string, digits: Digits): string {
    const shown = plain(value, digits)
    const shownDecimals = shown.split(decimalMark)[1]?.length ?? 0
    const isWholeAmount = unit === 'money' && !isOfWorking(digits) && Math.abs(value) >= 1
    return shownDecimals < decimals || isWholeAmount ? fixed(value, decimals) : shown
  }

  function inColumn(value: number | string, unit: string, digits: Digits): string {
    if (typeof value === 'string') return plain(value, digits)
    const date = unit === dayUnit ? dayText(value) : undefined
    // The cell shows the number until it is formatted as a date.
    if (date !== undefined) return `${value} (${date})`
    return currency !== '' && isMoney(unit) ? amount(value, unit, digits) : plain(value, digits)
  }

  const unitText = (unit: string) => {
    if (unit === 'text') return ''
    const text = words.ofUnit(unit)
    return currency !== '' && isMoney(unit) ? words.frame.inCurrency(text, currency) : text
  }

  /** "EUR 1.50 per liner", "1.50 EUR per liner", "5.17 L". */
  function withUnit(value: number, unit: string, digits: Digits): string {
    const number = inColumn(value, unit, digits)
    if (unit === dayUnit) return number
    if (currency === '' || !isMoney(unit)) return `${number} ${unitText(unit)}`.trim()
    return unitText(unit).replace(currency, () => withCurrency(number, settings))
  }

  return {
    plain,
    fixed,
    percent: (share) => share.toLocaleString(locale, { style: 'percent', maximumFractionDigits: 1 }),
    inColumn,
    label: (value, unit = '') =>
      currency !== '' && isMoney(unit) ? withCurrency(inColumn(value, unit, 'label'), settings) : plain(value, 'label'),
    unit: unitText,
    measured(value, unit, digits) {
      if (typeof value === 'string') return plain(value, digits)
      const us = units === 'us' ? usEquivalent(value, unit) : undefined
      const text = withUnit(value, unit, digits)
      return us === undefined
        ? text
        : `${text} (${withUnit(Number(us.value.toPrecision(significant.equivalent)), us.unit, digits)})`
    },
  }
}

/** Where a number is cut. */
function cutOf(value: number, digits: Digits): Intl.NumberFormatOptions {
  const cut = digits === 'step' || digits === 'label' ? decimalsFrom[digits] : undefined
  return cut && Math.abs(value) >= cut.least
    ? { maximumFractionDigits: cut.decimals }
    : { maximumSignificantDigits: significant[digits] }
}

function withCurrency(number: string, { currency, currencyPlace }: Settings): string {
  if (currencyPlace === 'after') return `${number}\u00a0${currency}`
  // A code stands apart from its number, a sign before it does not.
  return `${currency}${/[\p{L}.]$/u.test(currency) ? '\u00a0' : ''}${number}`
}

/** There a number is followed and not just read. */
function isOfWorking(digits: Digits): boolean {
  return digits === 'exact' || digits === 'step'
}

function isMoney(unit: string): boolean {
  return /^money\b/.test(unit)
}
