/** The German texts of the definitions: there is one for each English text, and it says the same numbers and names. */
import { expect, test } from 'vitest'
import type { Definition } from '../../src/core/definition/definition'
import { evaluate } from '../../src/core/definition/evaluate'
import { catalogue } from '../../src/functions/catalogue'
import { german } from '../../src/wording/de/words'
import { germanTexts, ofDefinition, ofUnit } from '../../src/wording/de/definitions'

/** Symbols of measures, and a unit that names an argument. */
const symbols = new Set(['L', 'mL', 'm', 'mm', 'mm2', 'kg', 'kg/m3', 'in toUnit'])

const shown = new Set(catalogue.flatMap(textsOf))

/** A text, or a unit, which may be made of others. */
function said(english: string): string {
  return Object.hasOwn(germanTexts, english) ? ofDefinition(english) : ofUnit(english)
}

function textsOf(definition: Definition): readonly string[] {
  const { summary, convention, parameters, result, body, plain, examples } = definition
  const columns = Object.values(result.columns ?? {})
  const steps = 'steps' in body ? body.steps : []
  const reason = plain !== undefined && 'reason' in plain ? [plain.reason] : []
  const workings = examples.flatMap(({ given }) => {
    const evaluation = evaluate(definition, given)
    if (!('result' in evaluation)) throw new Error(`${definition.id} has an example without a working`)
    // What is made of a fact has its words in facts.ts.
    return evaluation
      .working()
      .flatMap(({ text, unit }) => (typeof text === 'string' ? [{ text, unit }] : [{ text: unit, unit }]))
  })
  return [
    summary,
    convention,
    ...reason,
    result.text,
    result.unit,
    // A name of several words stays as it is.
    ...(/[A-Z]/.test(result.name) ? [] : [result.name]),
    ...columns.flatMap(({ heading, text, unit }) => [heading, text, unit]),
    ...[...Object.values(parameters), ...steps, ...workings].flatMap(({ text, unit }) => [text, unit]),
    ...examples.map(({ text }) => text),
  ]
}

test('each text that a definition shows has a German one in src/wording/de/definitions, but for symbols', () => {
  expect([...shown].filter((text) => said(text) === text && !symbols.has(text))).toEqual([])
})

test('no German text is left over that no definition shows', () => {
  expect(Object.keys(germanTexts).filter((text) => !shown.has(text))).toEqual([])
})

test('no German text is empty, ends in blanks or ends otherwise than the English one', () => {
  const end = (text: string) => (text.endsWith('.') ? '.' : '')
  expect(
    Object.entries(germanTexts).filter(
      ([english, said]) => said.trim() === '' || said !== said.trim() || end(said) !== end(english),
    ),
  ).toEqual([])
})

test('each German text has the numbers and names of the English one', () => {
  const inGerman = (texts: readonly string[]) =>
    texts.map((text) => [text, numbersIn(said(text), ','), namesIn(said(text))])
  const expected = (texts: readonly string[]) => texts.map((text) => [text, numbersIn(text, '.'), namesIn(text)])
  expect(inGerman([...shown])).toEqual(expected([...shown]))
})

/** Without separators of thousands and with a decimal point, in order of size: German may say them in another order. */
function numbersIn(text: string, mark: '.' | ','): readonly string[] {
  const separator = mark === ',' ? '.' : ','
  return (text.match(/\d+(?:[.,]\d+)*/g) ?? [])
    .map((number) => number.replaceAll(separator, '').replace(mark, '.'))
    .sort()
}

/** Names of functions, of arguments of more than one word, and formulas; breakQuantity is a cell of breakQuantities and no name. */
function namesIn(text: string): readonly string[] {
  return [...new Set(text.match(/\b[A-Z][A-Z.\d]{2,}\b(?:\([^ ]*\))?|\b[a-z]+(?:[A-Z][a-z0-9]*)+\b/g) ?? [])]
    .filter((name) => name !== 'breakQuantity')
    .sort()
}

test.each([
  ['in3 loose per cutting', 'in3 lose pro Steckling'],
  ['ft3 loose', 'ft3 lose'],
  ['money per loose ft3', 'Geld pro ft3 lose'],
  ['money per yd3', 'Geld pro yd3'],
  ['kg/m3 per lb/yd3', 'kg/m3 pro lb/yd3'],
  ['US gal loose per bag', 'US gal lose pro Sack'],
])('A unit that is made with a symbol is German around it: %s', (english, expected) => {
  expect(ofUnit(english)).toBe(expected)
})

test.each(['Mix 60 L', 'costPerLiner', 'constructor', 'lb/ft3'])('what is a name or a symbol stays: %s', (name) => {
  expect([ofDefinition(name), ofUnit(name)]).toEqual([name, name])
})

test('where an amount has a currency, no unit of money is left without it', () => {
  const units = [...shown].filter((text) => /^money\b/.test(text)).map(ofUnit)
  expect(units.length).toBeGreaterThan(10)
  expect(units.map((unit) => german.frame.inCurrency(unit, 'EUR')).filter((unit) => !/^EUR\b/.test(unit))).toEqual([])
})
