import { expect, test } from 'vitest'
import { Decimal } from '../../../src/core/quantity/decimal'
import { convert, readUnit, unit } from '../../../src/core/quantity/units'

test('every spelling that a user may type is read as the unit that the project writes', () => {
  const spellings: readonly [string, string][] = [
    ['mL', 'ml millilitre milliliter millilitres milliliters cm3 cu_cm cc cm³ ML'],
    ['L', 'l litre liter litres liters ltr dm3 dm^3'],
    ['m3', 'cu_m cubic_metre cubic_meter cubic_metres cubic_meters m³ m^3'],
    ['in3', 'cu_in cubic_inch cubic_inches cu._in. in³'],
    ['ft3', 'cu_ft cubic_foot cubic_feet cu._ft. CU__FT ft^3'],
    ['yd3', 'cu_yd cubic_yard cubic_yards'],
    ['US dry qt', 'dry_qt dry_quart dry_quarts us_dry_quart us_dry_quarts'],
    ['US bushel', 'us_bu us_bushels'],
    ['imp bushel', 'imp_bu imperial_bushel imperial_bushels'],
    ['US gal', 'us_gallon us_gallons gal_us gal_(us) U.S._gal'],
    ['imp gal', 'imperial_gallon imperial_gallons imp_gallon imp_gallons uk_gal uk_gallon gal_imp gal_(imp)'],
    ['mm', 'millimetre millimeter millimetres millimeters'],
    ['cm', 'centimetre centimeter centimetres centimeters'],
    ['m', 'metre meter metres meters'],
    ['in', 'inch inches " in.'],
    ['ft', "foot feet ' ft."],
    ['yd', 'yard yards'],
    ['g', 'gram grams gramme grammes'],
    ['kg', 'kilogram kilograms kilo kilos'],
    ['t', 'tonne tonnes metric_ton metric_tons'],
    ['oz', 'ounce ounces'],
    ['lb', 'lbs pound pounds lb.'],
    ['short ton', 'short_tons us_ton us_tons'],
  ]
  for (const [symbol, words] of spellings) {
    for (const word of words.split(' ').map((one) => one.replaceAll('_', ' ')))
      expect(readUnit(` ${word} `), word).toMatchObject({ symbol })
  }
})

test('a word that means two units is refused with both spellings', () => {
  expect(readUnit(' Gal ')).toEqual({ code: 'unitAmbiguous', unit: 'Gal', spellings: ['US gal', 'imp gal'] })
  for (const [words, spellings] of [
    ['gallon gallons', ['US gal', 'imp gal']],
    ['bu bushel bushels', ['US bushel', 'imp bushel']],
    ['qt quart quarts', ['US dry qt', 'L']],
    ['ton tons', ['t', 'short ton']],
  ] as const)
    for (const word of words.split(' '))
      expect(readUnit(word)).toEqual({ code: 'unitAmbiguous', unit: word, spellings })
})

test('a word that every object has is no unit', () => {
  for (const word of ['constructor', 'toString', '', 'kg/constructor'])
    expect(readUnit(word)).toEqual({ code: 'unitUnknown', unit: word })
})

test('a ratio is mass per volume or volume per mass, and no other', () => {
  expect(readUnit('kg per m3')).toMatchObject({ symbol: 'kg/m3', dimension: 'massPerVolume' })
  expect(readUnit('lb / cu yd')).toMatchObject({ symbol: 'lb/yd3', dimension: 'massPerVolume' })
  expect(readUnit('L/kg')).toMatchObject({ symbol: 'L/kg', dimension: 'volumePerMass' })
  for (const text of ['L/m3', 'kg/g', 'm/kg', 'kg/m', 'm/L', 'L/m', 'kg/m3/L', 'kg/', '/m3', 'kg/parsec', 'parsec/L'])
    expect(readUnit(` ${text}`), text).toEqual({ code: 'unitUnknown', unit: text })
})

test('a ratio of a word that means two units is refused with every spelling of the ratio', () => {
  expect(readUnit('lb/gal ')).toEqual({ code: 'unitAmbiguous', unit: 'lb/gal', spellings: ['lb/US gal', 'lb/imp gal'] })
  expect(readUnit('ton/bu')).toEqual({
    code: 'unitAmbiguous',
    unit: 'ton/bu',
    spellings: ['t/US bushel', 't/imp bushel', 'short ton/US bushel', 'short ton/imp bushel'],
  })
})

test('a number of the same unit stays as it is, and another kind of unit is a mistake of ours', () => {
  const third = new Decimal(1).div(3)
  expect(convert(third, unit('ft3'), unit('cu ft'))).toBe(third)
  expect(convert(new Decimal(3), unit('ft'), unit('yd')).toString()).toBe('1')
  expect(() => convert(third, unit('ft3'), unit('kg'))).toThrow('ft3 does not convert to kg')
  expect(() => unit('gal')).toThrow('no unit "gal"')
})
