/** The German texts of the definitions: there is one for each English text, and it says the same numbers and names. */
import { expect, test } from 'vitest'
import type { Definition } from '../../src/core/definition/definition'
import { workingOf } from '../../src/derived/working'
import { catalogue } from '../../src/functions/catalogue'
import { german } from '../../src/wording/de/words'
import { germanTexts, ofDefinition } from '../../src/wording/de/definitions'

/** Symbols of measures, and a unit that names an argument. */
const symbols = new Set(['L', 'mL', 'm', 'mm', 'mm2', 'kg', 'kg/m3', 'in toUnit'])

const shown = new Set(catalogue.flatMap(textsOf))

function textsOf(definition: Definition): readonly string[] {
  const { summary, convention, parameters, result, body, examples } = definition
  const columns = result.columns ?? []
  const steps = 'steps' in body ? body.steps : []
  const plain = 'plain' in body && 'reason' in body.plain ? [body.plain.reason] : []
  const workings = examples.flatMap(({ given }) => {
    const working = workingOf(definition, given)
    if (!('steps' in working)) throw new Error(`${definition.id} has an example without a working`)
    return working.steps
  })
  return [
    summary, convention, ...plain, result.text, result.unit,
    // A name of several words stays as it is.
    ...(/[A-Z]/.test(result.name) ? [] : [result.name]),
    ...columns.flatMap(({ heading, text, unit }) => [heading, text, unit]),
    ...[...Object.values(parameters), ...steps, ...workings].flatMap(({ text, unit }) => [text, unit]),
    ...examples.map(({ text }) => text),
  ]
}

test('each text that a definition shows has a German one in src/wording/de/definitions, but for symbols', () => {
  expect([...shown].filter((text) => ofDefinition(text) === text && !symbols.has(text))).toEqual([])
})

test('no German text is left over that no definition shows', () => {
  expect(Object.keys(germanTexts).filter((text) => !shown.has(text))).toEqual([])
})

test('no German text is empty, ends in blanks or ends otherwise than the English one', () => {
  const end = (text: string) => (text.endsWith('.') ? '.' : '')
  expect(Object.entries(germanTexts).filter(([english, said]) => said.trim() === '' || said !== said.trim() || end(said) !== end(english))).toEqual([])
})

test('each German text has the numbers and names of the English one', () => {
  const said = (texts: readonly string[]) => texts.map((text) => [text, numbersIn(ofDefinition(text), ','), namesIn(ofDefinition(text))])
  const expected = (texts: readonly string[]) => texts.map((text) => [text, numbersIn(text, '.'), namesIn(text)])
  expect(said([...shown])).toEqual(expected([...shown]))
})

/** Without separators of thousands and with a decimal point, in order of size: German may say them in another order. */
function numbersIn(text: string, mark: '.' | ','): readonly string[] {
  const separator = mark === ',' ? '.' : ','
  return (text.match(/\d+(?:[.,]\d+)*/g) ?? []).map((number) => number.replaceAll(separator, '').replace(mark, '.')).sort()
}

/** Names of functions, of arguments of more than one word, and formulas; breakQuantity is a cell of breakQuantities and no name. */
function namesIn(text: string): readonly string[] {
  return [...new Set(text.match(/\b[A-Z][A-Z.\d]{2,}\b(?:\([^ ]*\))?|\b[a-z]+(?:[A-Z][a-z0-9]*)+\b/g) ?? [])].filter((name) => name !== 'breakQuantity').sort()
}

test.each([
  ['in3 loose per cutting', 'in3 lose pro Steckling'],
  ['ft3 loose', 'ft3 lose'],
  ['money per loose ft3', 'Geld pro ft3 lose'],
  ['money per yd3', 'Geld pro yd3'],
  ['kg/m3 per lb/yd3', 'kg/m3 pro lb/yd3'],
  ['US dry qt in one short ton', 'ein short ton in US dry qt'],
  ['ODDS with every argument at its likely value', 'ODDS mit jedem Argument auf seinem wahrscheinlichsten Wert'],
  ['Mix 60 L: break', 'Mix 60 L: Staffel'],
  ['delivery from North', 'Lieferung von North'],
  ['1 more bag reaches the break and costs 4.50 more', '1 Sack mehr erreicht die Staffel und kostet 4,50 mehr'],
  ['an order of 414 costs 335.34, 500 cost 335.00', 'ein Auftrag über 414 kostet 335,34, 500 kosten 335,00'],
  ['5 more bags reach the break and save 12.00', '5 Säcke mehr erreichen die Staffel und sparen 12,00'],
])('a text that is made with a name in it is German around it: %s', (english, said) => {
  expect(ofDefinition(english)).toBe(said)
})

test.each(['Mix 60 L', 'costPerLiner', 'constructor', 'lb/ft3'])('what is a name or a symbol stays: %s', (name) => {
  expect(ofDefinition(name)).toBe(name)
})

test('where an amount has a currency, no unit of money is left without it', () => {
  const units = [...shown].filter((text) => /^money\b/.test(text)).map(ofDefinition)
  expect(units.length).toBeGreaterThan(10)
  expect(units.map((unit) => german.frame.inCurrency(unit, 'EUR')).filter((unit) => !/^EUR\b/.test(unit))).toEqual([])
})
