/**
 * Units of measure and the exact factors between them.
 * Factors: NIST Special Publication 811 (2008), appendix B, and NIST Handbook 44, appendix C. Where these print rounded
 * ones, the exact ones follow from the inch, the pound, the US gallon of 231 and the US bushel of 2,150.42 cubic inches.
 * The imperial bushel is 8 imperial gallons (UK Weights and Measures Act 1985, from memory).
 */
import { Decimal } from './decimal'

export type Dimension = 'volume' | 'length' | 'mass' | 'massPerVolume' | 'volumePerMass'

export interface Unit {
  /** As the project writes it. */
  readonly symbol: string
  readonly dimension: Dimension
  /** How many litres, metres, kilograms, kg/L or L/kg one of it is. */
  readonly factor: Decimal
}

export type UnitProblem =
  | { readonly code: 'unitUnknown'; readonly unit: string }
  | { readonly code: 'unitAmbiguous'; readonly unit: string; readonly spellings: readonly string[] }

type Row = readonly [symbol: string, factor: string, ...spellings: string[]]

const rows: Readonly<Record<'volume' | 'length' | 'mass', readonly Row[]>> = {
  volume: [
    ['mL', '0.001', 'ml', 'millilitre', 'milliliter', 'millilitres', 'milliliters', 'cm3', 'cu cm', 'cc'],
    ['L', '1', 'l', 'litre', 'liter', 'litres', 'liters', 'ltr', 'dm3'],
    ['m3', '1000', 'cu m', 'cubic metre', 'cubic meter', 'cubic metres', 'cubic meters'],
    ['in3', '0.016387064', 'cu in', 'cubic inch', 'cubic inches'],
    ['ft3', '28.316846592', 'cu ft', 'cubic foot', 'cubic feet'],
    ['yd3', '764.554857984', 'cu yd', 'cubic yard', 'cubic yards'],
    ['US dry qt', '1.101220942715', 'dry qt', 'dry quart', 'dry quarts', 'us dry quart', 'us dry quarts'],
    ['US bushel', '35.23907016688', 'us bu', 'us bushels'],
    ['imp bushel', '36.36872', 'imp bu', 'imperial bushel', 'imperial bushels'],
    ['US gal', '3.785411784', 'us gallon', 'us gallons', 'gal us', 'gal (us)'],
    [
      'imp gal',
      '4.54609',
      'imperial gallon',
      'imperial gallons',
      'imp gallon',
      'imp gallons',
      'uk gal',
      'uk gallon',
      'gal imp',
      'gal (imp)',
    ],
  ],
  length: [
    ['mm', '0.001', 'millimetre', 'millimeter', 'millimetres', 'millimeters'],
    ['cm', '0.01', 'centimetre', 'centimeter', 'centimetres', 'centimeters'],
    ['m', '1', 'metre', 'meter', 'metres', 'meters'],
    ['in', '0.0254', 'inch', 'inches', '"'],
    ['ft', '0.3048', 'foot', 'feet', "'"],
    ['yd', '0.9144', 'yard', 'yards'],
  ],
  mass: [
    ['g', '0.001', 'gram', 'grams', 'gramme', 'grammes'],
    ['kg', '1', 'kilogram', 'kilograms', 'kilo', 'kilos'],
    ['t', '1000', 'tonne', 'tonnes', 'metric ton', 'metric tons'],
    ['oz', '0.028349523125', 'ounce', 'ounces'],
    ['lb', '0.45359237', 'lbs', 'pound', 'pounds'],
    ['short ton', '907.18474', 'short tons', 'us ton', 'us tons'],
  ],
}

/** Words that mean two different units. Never guessed: the user is shown both spellings. */
const ambiguous: Readonly<Record<string, readonly string[]>> = {
  gal: ['US gal', 'imp gal'],
  gallon: ['US gal', 'imp gal'],
  gallons: ['US gal', 'imp gal'],
  bu: ['US bushel', 'imp bushel'],
  bushel: ['US bushel', 'imp bushel'],
  bushels: ['US bushel', 'imp bushel'],
  qt: ['US dry qt', 'L'],
  quart: ['US dry qt', 'L'],
  quarts: ['US dry qt', 'L'],
  ton: ['t', 'short ton'],
  tons: ['t', 'short ton'],
}

function plain(text: string): string {
  return text.trim().toLowerCase().replace(/³/g, '3').replace(/\^3/g, '3').replace(/\./g, '').replace(/\s+/g, ' ')
}

const bySpelling = new Map<string, Unit>()
for (const dimension of ['volume', 'length', 'mass'] as const) {
  for (const [symbol, factor, ...spellings] of rows[dimension]) {
    const unit: Unit = { symbol, dimension, factor: new Decimal(factor) }
    for (const spelling of [symbol, ...spellings]) bySpelling.set(plain(spelling), unit)
  }
}

/** Reads "cu ft", "yd3", "kg/m3". */
export function readUnit(text: string): Unit | UnitProblem {
  const spelling = plain(text)
  const known = bySpelling.get(spelling)
  if (known !== undefined) return known
  const spellings = Object.hasOwn(ambiguous, spelling) ? ambiguous[spelling] : undefined
  if (spellings !== undefined) return { code: 'unitAmbiguous', unit: text.trim(), spellings }
  const [above = '', below, ...more] = spelling.split(/\/| per /)
  if (below === undefined || more.length > 0) return { code: 'unitUnknown', unit: text.trim() }
  return ratio(readUnit(above), readUnit(below), text.trim())
}

function ratio(above: Unit | UnitProblem, below: Unit | UnitProblem, text: string): Unit | UnitProblem {
  if ('code' in above || 'code' in below) {
    const spellings = spellingsOf(above).flatMap((one) => spellingsOf(below).map((other) => `${one}/${other}`))
    return spellings.length === 0
      ? { code: 'unitUnknown', unit: text }
      : { code: 'unitAmbiguous', unit: text, spellings }
  }
  const factor = above.factor.div(below.factor)
  const symbol = `${above.symbol}/${below.symbol}`
  if (above.dimension === 'mass' && below.dimension === 'volume') return { symbol, dimension: 'massPerVolume', factor }
  if (above.dimension === 'volume' && below.dimension === 'mass') return { symbol, dimension: 'volumePerMass', factor }
  return { code: 'unitUnknown', unit: text }
}

/** What a part of a ratio may be written as; nothing where it is no unit. */
function spellingsOf(part: Unit | UnitProblem): readonly string[] {
  if (!('code' in part)) return [part.symbol]
  return part.code === 'unitAmbiguous' ? part.spellings : []
}

/** Both units must measure the same thing. Multiplies before it divides, so that exact results stay exact. */
export function convert(value: Decimal, from: Unit, to: Unit): Decimal {
  if (from.dimension !== to.dimension) throw new Error(`${from.symbol} does not convert to ${to.symbol}`)
  return from.symbol === to.symbol ? value : value.mul(from.factor).div(to.factor)
}

/** A unit of the project's own code; an unknown one is a programmer's mistake. */
export function unit(symbol: string): Unit {
  const read = readUnit(symbol)
  if ('code' in read) throw new Error(`no unit "${symbol}"`)
  return read
}
