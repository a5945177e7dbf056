/** Whatever stands in the cells, a function gives numbers or one sentence: no throw, NaN, Infinity or blank. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { plainFormula } from '../../src/derived/plainFormula'
import { workingOf } from '../../src/derived/working'
import { catalogue } from '../../src/functions/catalogue'

const likely = fc.oneof(
  fc.double({ min: 0, max: 1 }),
  fc.integer({ min: -3, max: 2000 }),
  fc.double({ min: 0, max: 1e6 }),
  fc.constantFrom(0, 1, -1, 0.15, 15, 1e-300, 5e-324, 1e15, 1e300, Number.MAX_VALUE, 0.1 + 0.2, 1 - 1e-16),
)
const odd = fc.oneof(
  fc.double(),
  fc.boolean(),
  fc.constantFrom(
    null,
    undefined,
    '',
    ' ',
    '15%',
    '15',
    '3.8 cu ft',
    '2 gal',
    '1,500',
    '0,15',
    '65 mL',
    '12 in',
    '5 lb',
    'ft3',
    'L',
    'constructor',
    '__proto__',
    'NaN',
    ' undefined ',
    'Infinity',
    '1e999',
    '-',
    '%',
    '1e5 L',
  ),
  fc.string(),
  fc.constantFrom({}, { a: 1 }, [], [[]], [[], []]),
)
const cell = fc.oneof({ weight: 5, arbitrary: likely }, { weight: 1, arbitrary: odd })
const range = fc.oneof(
  fc.array(cell, { maxLength: 5 }).map((cells) => cells.map((one) => [one])),
  fc.array(cell, { maxLength: 5 }).map((cells) => [cells]),
  fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 3 }),
)
const argument = fc.oneof({ weight: 4, arbitrary: cell }, { weight: 2, arbitrary: range })

/** The sentence without the texts that it quotes: whoever typed "NaN" is told so. */
function withoutGiven(sentence: string, args: unknown[]): string {
  const texts = args.flat(2).filter((given) => typeof given === 'string' && given !== '')
  return texts.reduce<string>((rest, text) => rest.replaceAll(`"${String(text)}"`, '""'), sentence)
}

test.each(catalogue.map((definition) => [definition.id, definition] as const))(
  'STICK.%s gives finite numbers or a sentence for any input',
  (_, definition) => {
    const most = Object.keys(definition.parameters).length + 1
    fc.assert(
      fc.property(fc.array(argument, { maxLength: most }), (args) => {
        const outcome = call(definition, args)
        if (outcome.kind === 'value') {
          const cells = typeof outcome.value === 'number' ? [outcome.value] : outcome.value.flat()
          expect(cells.length).toBeGreaterThan(0)
          for (const cell of cells) expect(typeof cell === 'string' ? cell !== '' : Number.isFinite(cell)).toBe(true)
          expect(workingOf(definition, args)).toHaveProperty('steps')
        } else {
          if (outcome.kind !== 'error') throw new Error('no error value was given, and one came back')
          expect(['#VALUE!', '#N/A']).toContain(outcome.code)
          expect(outcome.sentence).toMatch(/^\S.*[.?]$/s)
          expect(withoutGiven(outcome.sentence, args)).not.toMatch(
            /undefined|NaN|Infinity|\[object Object\], |fault of its own/,
          )
        }
      }),
      { numRuns: 1500 },
    )
  },
)

test.each(catalogue.map((definition) => [definition.id, definition] as const))(
  'STICK.%s has a plain formula or the reason why not, for any cells',
  (_, definition) => {
    const reference = fc.constantFrom(
      'A1',
      '$B$2',
      'Prices!C3:C9',
      "'Rooting method'!D4",
      'rounds',
      '0.15',
      '-3',
      'A1+B1',
      '"65 mL"',
      '',
    )
    fc.assert(
      fc.property(fc.array(reference, { maxLength: Object.keys(definition.parameters).length }), (texts) => {
        const plain = plainFormula(definition, texts)
        if ('formula' in plain) expect(plain.formula).toMatch(/^=\S/)
        else expect(plain.reason).toMatch(/\.$/)
      }),
      { numRuns: 200 },
    )
  },
)
