/** What must hold of every cell function alike, in one loop over the catalogue. */
import { describe, expect, test } from 'vitest'
import type { Example } from '../../src/core/definition/definition'
import { isBlank } from '../../src/core/definition/readArguments'
import { functionsJson } from '../../src/derived/functionsJson'
import { helpPage } from '../../src/derived/helpPage'
import { english } from '../../src/wording/en/words'
import { help } from '../../src/wording/en/help'
import { call } from '../../src/derived/call'
import type { CellValues } from '../../src/derived/cellsOf'
import { workingOf } from '../../src/derived/working'
import { catalogue } from '../../src/functions/catalogue'
import { bibliography } from '../../src/sources/bibliography'

// A new function joins the list. None ever leaves it or gets another name, because saved workbooks hold its id.
test('the catalogue holds every function of the contract with saved workbooks, and no other', () => {
  expect(catalogue.map(({ id }) => id).sort()).toEqual([
    'BAGS',
    'BATCHSPREAD',
    'BEDFILL',
    'BENCHCOST',
    'BLENDCOST',
    'BLENDPARTS',
    'BLENDWEIGHT',
    'BLOCKS',
    'BREAKEVEN',
    'BUYPLAN',
    'CELLVOLUME',
    'COMPARE',
    'CUTTINGS',
    'FILL',
    'LABOURCOST',
    'LINERCOST',
    'LINERPRICE',
    'MEDIUMCOST',
    'MIXLOADS',
    'MOTHERPLANTS',
    'ODDS',
    'ONTRACK',
    'OVERSTICK',
    'PACKPRICE',
    'PEAK',
    'PERLINER',
    'QUOTE',
    'REUSECOST',
    'REUSELEDGER',
    'ROOTINGCOST',
    'ROUNDCELL',
    'STANDING',
    'STICKDAY',
    'STOCKPLAN',
    'SWINGS',
    'TRAYS',
    'UNITS',
    'VARIANCE',
    'WATER',
    'WEIGHTTOLITRES',
  ])
})

describe.each(catalogue.map((definition) => [definition.id, definition] as const))('STICK.%s', (id, definition) => {
  const names = Object.keys(definition.parameters)
  const first = definition.examples[0]!
  /** The first example, typed into cells, with one argument replaced. */
  const withArgument = (name: string, argument: unknown) =>
    call(
      definition,
      names.map((one, index) => (one === name ? argument : inCells(first.given[index] ?? null, 'column'))),
    )
  /** How many cells the ranges of the first example have that belong to one list with this one. */
  const placesOf = (name: string) =>
    Math.max(
      1,
      ...names.map((other, index) => {
        const [argument, { shape, list }] = [first.given[index], definition.parameters[other]!]
        const isBeside = shape === 'line' && list === definition.parameters[name]!.list
        return Array.isArray(argument) && isBeside ? argument.length : 1
      }),
    )
  /** The range of the first example without its first cell; blank cells where the example has no such range. */
  const restOfRange = (name: string): unknown[][] => {
    const example = first.given[names.indexOf(name)]
    if (Array.isArray(example)) return (example as readonly unknown[]).slice(1).map((one) => [one])
    return Array.from({ length: definition.parameters[name]!.oneForAll === true ? 0 : placesOf(name) - 1 }, () => [
      null,
    ])
  }
  /** Puts a wrong value into the cell, or into the first cell of the range, that the argument points to. */
  const sentenceFor = (name: string, wrong: unknown): string => {
    const isRange = definition.parameters[name]!.shape === 'line' && !Array.isArray(wrong) && !isBlank(wrong)
    const argument = isRange ? [[wrong], ...restOfRange(name)] : wrong
    const outcome = withArgument(name, argument)
    if (outcome.kind !== 'error')
      throw new Error(`${name} took ${JSON.stringify(argument)}: ${JSON.stringify(outcome)}`)
    expect(outcome.code).toBe('#VALUE!')
    expect(outcome.sentence).not.toMatch(/undefined|NaN|Infinity|\[object|fault of its own/)
    expect(outcome.sentence).toMatch(/[.?]$/)
    return outcome.sentence
  }

  test.each(definition.examples.map((example) => [example.text, example] as const))(
    'gives what its example says: %s',
    (_, example) => {
      for (const lies of ['row', 'column'] as const) {
        const outcome = call(
          definition,
          example.given.map((argument) => inCells(argument, lies)),
        )
        if (outcome.kind !== 'value') throw new Error(JSON.stringify(outcome))
        expectClose(outcome.value, example, lies, definition.result.columns !== undefined)
      }
      expect(bibliography).toHaveProperty(example.source)
    },
  )

  test('has texts for people: a summary, a convention, and a unit with every number', () => {
    expect(definition.summary).toMatch(/^[A-Z].*\.$/)
    expect(definition.convention).toMatch(/^[A-Z0-9].*\.$/s)
    expect(definition.result.unit).not.toBe('')
    for (const { text, unit } of Object.values(definition.parameters)) {
      expect(text).toMatch(/[^.]$/)
      expect(unit).not.toBe('')
    }
  })

  test('uses every parameter', () => {
    const { body } = definition
    if ('steps' in body) {
      const sources = body.steps.map(({ expression }) => expression.source).join(' ')
      for (const name of names) expect(sources).toMatch(new RegExp(`\\b${name}\\b`))
      return
    }
    const used = new Set<string>()
    for (const example of definition.examples) {
      const working = workingOf(
        { ...definition, body: { ...body, method: (args) => body.method(watched(args, used)) } },
        example.given.map((argument) => inCells(argument, 'column')),
      )
      expect(working).toHaveProperty('steps')
    }
    expect([...used].filter((name) => names.includes(name)).sort()).toEqual([...names].sort())
  })

  test.each(names)('%s: a blank is its default where it may be left out, and else refused with a sentence', (name) => {
    const parameter = definition.parameters[name]!
    const blanks = [null, undefined, '', '  ', [[null]], [['']]]
    if (!parameter.optional) {
      for (const blank of blanks)
        expect(sentenceFor(name, blank)).toMatch(new RegExp(`^${name} is blank; it takes .*Type `))
      return
    }
    const index = names.indexOf(name)
    const omitted = call(
      definition,
      first.given.slice(0, index).map((argument) => inCells(argument, 'column')),
    )
    for (const blank of blanks)
      expect(
        call(definition, [
          ...first.given.slice(0, index).map((argument) => inCells(argument, 'column')),
          ...Array<null>(Math.max(0, index - first.given.length)).fill(null),
          blank,
        ]),
      ).toEqual(omitted)
    const { default: fallback, shape } = parameter
    if (typeof fallback !== 'number') return
    const typed = shape === 'line' ? Array.from({ length: placesOf(name) }, () => [fallback]) : fallback
    expect(withArgument(name, typed)).toEqual(withArgument(name, null))
  })

  test.each(names.filter((name) => definition.parameters[name]!.takes === 'number'))(
    '%s: a text, a logical value, an infinity and a stranger unit are refused with what to type',
    (name) => {
      for (const wrong of ['plenty', true, Infinity, -Infinity, NaN, '12 parsecs'])
        expect(sentenceFor(name, wrong)).toMatch(/Type |Or /)
      const sentence = sentenceFor(name, 'plenty')
      expect(sentence).toContain(name)
      expect(sentence).toContain('"plenty"')
    },
  )

  test.each(names.filter((name) => definition.parameters[name]!.example !== undefined))(
    '%s: what its sentences say to type is not refused',
    (name) => {
      const { example, shape } = definition.parameters[name]!
      const typed = shape === 'line' ? [[example], ...restOfRange(name)] : example
      expect(withArgument(name, typed)).not.toHaveProperty('code', '#VALUE!')
    },
  )

  test.each(names)('%s: a wrong shape is refused, and the sentence names the size', (name) => {
    const block = [
      [1, 1, 1],
      [1, 1, 1],
    ]
    expect(sentenceFor(name, block)).toContain('2 by 3')
  })

  test.each(names)('%s: an error value in a cell comes through as that same error', (name) => {
    const error = { kind: 'cellError', code: '#DIV/0!' }
    expect(withArgument(name, error)).toEqual({ kind: 'cellError', code: '#DIV/0!' })
    expect(withArgument(name, [[1], [error]])).toEqual({ kind: 'cellError', code: '#DIV/0!' })
  })

  for (const [name, parameter] of Object.entries(definition.parameters)) {
    const limits = [
      [parameter.atLeast, -1, 'or more'],
      [parameter.above, 0, 'above'],
      [parameter.atMost, 1, 'at most'],
      [parameter.below, 0, 'below'],
    ] as const
    for (const [limit, beyond, words] of limits) {
      if (limit === undefined) continue
      if (
        limit + beyond === 0 &&
        parameter.optional &&
        (parameter.shape === 'cell' || parameter.default !== undefined)
      ) {
        test(`${name}: a 0, as which some versions of Excel hand over a blank cell, counts as one, because none can be meant`, () => {
          const blankAs = (blank: unknown) =>
            withArgument(name, parameter.shape === 'cell' ? blank : [[blank], ...restOfRange(name)])
          expect(blankAs(0)).toEqual(blankAs(null))
        })
        continue
      }
      test(`${name}: ${limit + beyond} is refused with its limit`, () => {
        const sentence = sentenceFor(name, limit + beyond)
        if (limit + beyond === 0) expect(sentence).toContain('0, or a blank cell')
        else expect(sentence).toContain(words)
        expect(sentence).toContain(name)
      })
    }
    if (parameter.share === true) {
      test(`${name}: 15 typed for 15 % is refused with the sentence that says so`, () => {
        expect(sentenceFor(name, 15)).toMatch(
          new RegExp(
            `^${name}(, row 1,)? must be (below|at most) 1 \\(100 %\\); it is 15\\. For 15 per cent type 15% or 0\\.15\\.$`,
          ),
        )
      })
    }
    if (parameter.dimension !== undefined) {
      test(`${name}: a unit of the wrong kind, and gal alone, are refused`, () => {
        const stranger = parameter.dimension === 'mass' ? '3 mm' : '3 kg'
        expect(sentenceFor(name, stranger)).toMatch(
          new RegExp(`${name}.* takes a .*; it is "${stranger}", a (mass|length)\\. Type `),
        )
        expect(sentenceFor(name, '2 gal')).toContain('Type "US gal" or "imp gal"')
      })
    }
    if (parameter.whole === true) {
      test(`${name}: a fraction is refused`, () => {
        const fraction = (parameter.atLeast ?? 0) + 2.5
        expect(sentenceFor(name, fraction)).toContain(`must be a whole number; it is ${fraction}`)
      })
    }
  }

  test('refuses a forgotten argument too many', () => {
    const outcome = call(definition, [...names.map((_, index) => inCells(first.given[index] ?? null, 'column')), 7])
    expect(outcome).toMatchObject({
      kind: 'error',
      code: '#VALUE!',
      sentence: expect.stringContaining(
        `takes at most ${names.length} arguments; it got ${names.length + 1}`,
      ) as unknown,
    })
  })

  test('its metadata and help page name every parameter', () => {
    const [entry] = functionsJson([definition], english, 'help').functions
    expect(entry?.parameters.map(({ name }) => name)).toEqual(names)
    expect(entry?.parameters.map(({ optional }) => optional === true)).toEqual(
      names.map((name) => definition.parameters[name]!.optional),
    )
    const page = helpPage(definition, { words: english, help })
    for (const name of names) expect(page).toContain(`<code>${name}</code>`)
    expect(page).not.toMatch(/undefined|NaN|\[object/)
  })

  test('a blank cell of a range that may be left out is what the whole range would be, left out', () => {
    for (const [name, parameter] of Object.entries(definition.parameters)) {
      if (parameter.shape !== 'line' || !parameter.optional) continue
      expect(
        withArgument(
          name,
          Array.from({ length: placesOf(name) }, () => ['']),
        ),
      ).toEqual(withArgument(name, null))
    }
  })

  test('its working ends in the value, and names a unit with every number', () => {
    const working = workingOf(
      definition,
      first.given.map((argument) => inCells(argument, 'column')),
    )
    if (!('steps' in working)) throw new Error(JSON.stringify(working))
    const given = call(
      definition,
      first.given.map((argument) => inCells(argument, 'column')),
    )
    if (definition.result.columns === undefined) {
      const values = working.steps.map(({ value }) =>
        Array.isArray(value) ? (value as readonly unknown[]).map((one) => [one]) : value,
      )
      expect(values).toContainEqual(given.kind === 'value' ? given.value : undefined)
    } else {
      const inTable = given.kind === 'value' && typeof given.value !== 'number' ? given.value.flat() : []
      expect(inTable).toEqual(expect.arrayContaining([working.steps.at(-1)!.value].flat()))
    }
    for (const { unit, text, formula } of working.steps)
      for (const words of [unit, text, formula]) expect(words, id).not.toBe('')
  })
})

function inCells(argument: Example['given'][number], lies: 'row' | 'column'): unknown {
  if (!Array.isArray(argument)) return argument
  const cells = argument as readonly unknown[]
  return lies === 'row' ? [cells] : cells.map((one) => [one])
}

function expectClose(got: CellValues, { gives }: Example, lies: 'row' | 'column', isTable: boolean): void {
  if (typeof gives === 'number') {
    if (typeof got !== 'number') throw new Error('a range instead of a number')
    expect(Math.abs(got - gives)).toBeLessThanOrEqual(Math.abs(gives) * 1e-12)
    return
  }
  if (typeof got === 'number') throw new Error('a number instead of a range')
  const rows = isTable ? got.slice(1) : got
  if (isTable) expect(rows.map((row) => row.length)).toEqual(gives.map((row) => row.length))
  else expect(got.length, 'the result lies as its range lay').toBe(lies === 'row' ? 1 : gives.length)
  const expected = gives.flat()
  expect(rows.flat()).toHaveLength(expected.length)
  rows.flat().forEach((one, index) => {
    const wanted = expected[index]!
    if (typeof wanted === 'number')
      expect(Math.abs(Number(one) - wanted), `cell ${index + 1}: ${one}`).toBeLessThanOrEqual(
        1e-9 + 1e-12 * Math.abs(wanted),
      )
    else expect(one).toBe(wanted)
  })
}

function watched<T extends object>(args: T, used: Set<string>): T {
  return new Proxy(args, {
    get: (target, name) => {
      used.add(String(name))
      return Reflect.get(target, name) as unknown
    },
    ownKeys: (target) => {
      for (const name of Object.keys(target)) used.add(name)
      return Reflect.ownKeys(target)
    },
  })
}
