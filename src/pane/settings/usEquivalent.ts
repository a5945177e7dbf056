import { Decimal } from '../../core/quantity/decimal'
import { convert, unit } from '../../core/quantity/units'

/** The US customary unit that the trade takes for each metric one: media go by the cubic foot, pots by the inch. */
const equivalents: Readonly<Record<string, string>> = {
  mL: 'in3',
  L: 'ft3',
  m3: 'yd3',
  mm: 'in',
  cm: 'in',
  m: 'ft',
  g: 'oz',
  kg: 'lb',
  t: 'short ton',
  'kg/m3': 'lb/ft3',
  'kg per L': 'lb/ft3',
}

const measure = /^(kg per L|kg\/m3|mL|L|m3|mm|cm|m|g|kg|t)( loose)?( per (?:bag|cutting|pack|tray|block))?$/
const moneyPerMeasure = /^money per (loose )?(L|m3|kg)$/

/** A metric measure in US customary units, or undefined where it has no such equivalent: "L loose per bag" becomes "ft3 loose per bag". */
export function usEquivalent(
  value: number,
  metric: string,
): { readonly value: number; readonly unit: string } | undefined {
  const [, symbol, loose = '', per = ''] = measure.exec(metric) ?? []
  if (symbol !== undefined) return { value: converted(value, symbol), unit: `${equivalents[symbol]}${loose}${per}` }
  const [, looseMeasure = '', of] = moneyPerMeasure.exec(metric) ?? []
  // What costs so much a litre costs less a cubic inch: the price goes the other way.
  return of === undefined
    ? undefined
    : { value: value / converted(1, of), unit: `money per ${looseMeasure}${equivalents[of]}` }
}

function converted(value: number, symbol: string): number {
  return convert(new Decimal(value), unit(symbol.replace(' per ', '/')), unit(equivalents[symbol]!)).toNumber()
}
