/** The compiler holds both languages to one shape; here no English is left over in it by accident. */
import { describe, expect, test } from 'vitest'
import { Decimal } from '../../src/core/quantity/decimal'
import { catalogue } from '../../src/functions/catalogue'
import { definitionIn } from '../../src/derived/definitionIn'
import { tryCall } from '../../src/derived/tryCall'
import { german } from '../../src/wording/de/words'
import { english } from '../../src/wording/en/words'

/** The same word in both languages, a unit that is translated where it is shown, or a name of the program. */
const same = new Set([
  'frame.sections.Name',
  'compare.perLiner',
  'season.weeks.units.bench',
  'season.weeks.units.ground',
])

function texts(words: object, path = ''): readonly (readonly [path: string, text: string])[] {
  return Object.entries(words).flatMap(([key, value]: [string, unknown]) => {
    const at = path === '' ? key : `${path}.${key}`
    if (typeof value === 'string') return [[at, value] as const]
    return typeof value === 'object' && value !== null ? texts(value, at) : []
  })
}

test('Every text of the pane is said in German, not left in English.', () => {
  const inEnglish = new Map(texts(english))
  const left = texts(german).filter(([path, text]) => inEnglish.get(path) === text && !same.has(path))
  expect(left).toEqual([])
  expect(
    texts(german)
      .map(([path]) => path)
      .sort(),
  ).toEqual([...inEnglish.keys()].sort())
})

describe('a sentence about a call', () => {
  const say = (id: string, args: readonly unknown[]) => {
    const definition = definitionIn(
      catalogue.find((one) => one.id === id)!,
      german,
    )
    const tried = tryCall(definition, args, (problem, of) => german.sentence(problem, of, ','))
    return 'problems' in tried ? tried.problems.map(({ sentence }) => sentence).join(' ') : ''
  }

  test.each([
    ['neededL muss mindestens 0 L sein; dort steht -3,5 L.', 'BAGS', [-3.5, 60]],
    [
      'bagVolumeL hat "gal", und das sind zwei verschiedene Einheiten. Geben Sie "US gal" oder "imp gal" ein.',
      'BAGS',
      [300, '2 gal'],
    ],
    ['Geben Sie einen Anteil ein, etwa', 'PERLINER', [1, [['x']]]],
    ['costPerCutting nimmt eine Zahl; dort steht "viel".', 'PERLINER', ['viel', [[0.5]]]],
  ] as const)('says in German, with a comma: %s', (expected, id, args) => {
    expect(say(id, args)).toContain(expected)
  })
})

test('The warning about a quote says in German what its cell says in English.', () => {
  const zone = { first: new Decimal(953), last: new Decimal(999), larger: new Decimal(1000) }
  expect(german.found.overlap('500', { fact: 'quoteWarning', zone })).toContain(
    ': 953 bis 999 kosten mehr als 1000. Ändern Sie',
  )
})
