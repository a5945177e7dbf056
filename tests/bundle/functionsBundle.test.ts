import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { runInNewContext } from 'node:vm'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { catalogue } from '../../src/functions/catalogue'
import { bundleText, CellErrorOfHost, dist, loadBundle } from './loadBundle'

const functions = loadBundle()

function ask(id: string, ...args: unknown[]): unknown {
  const run = functions.get(id)
  if (run === undefined) throw new Error(`${id} is not in the bundle`)
  return run(...args)
}

function refusal(id: string, ...args: unknown[]): CellErrorOfHost {
  try {
    const value = ask(id, ...args)
    throw new Error(`${id} answered ${String(value)}`)
  } catch (error) {
    if (error instanceof CellErrorOfHost) return error
    throw error
  }
}

test('The bundle associates every function of the catalogue, and functions.json lists the same ones in the same order.', () => {
  const ids = catalogue.map((definition) => definition.id)
  const { functions: entries } = JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as {
    functions: { id: string }[]
  }
  expect([...functions.keys()]).toEqual(ids)
  expect(entries.map((entry) => entry.id)).toEqual(ids)
  expect(ids.length).toBeGreaterThan(0)
})

test('The bundle does nothing where there is no Excel to register with.', () => {
  const world = {}
  runInNewContext(bundleText(), world)
  expect(Object.keys(world)).toEqual([])
})

test('The bundle stays under 60 kB when it is gzipped.', () => {
  expect(gzipSync(bundleText()).length).toBeLessThan(60_000)
})

// The minimizer drops them, unless something in them is computed as the module loads.
test('The bundle holds no text that a call does not need, of no function.', () => {
  const bundle = bundleText()
  const texts = catalogue.flatMap(({ id, summary, convention, examples }) =>
    [summary, convention, ...examples.map(({ text }) => text)].map((text) => ({ id, text })),
  )
  expect(texts.length).toBeGreaterThan(100)
  expect(texts.filter(({ text }) => bundle.includes(text))).toEqual([])
})

test.each(catalogue.map((definition) => [definition.id, definition] as const))(
  'STICK.%s gives through the bundle what it gives from its source, results and sentences alike.',
  (id, definition) => {
    for (const { given } of definition.examples) {
      const args = given.map((argument) =>
        Array.isArray(argument) ? (argument as readonly unknown[]).map((one) => [one]) : argument,
      )
      expect(call(definition, args)).toEqual({ kind: 'value', value: ask(id, ...args) })
    }
    for (const wrong of [
      [],
      Object.keys(definition.parameters).map(() => 'plenty'),
      Object.keys(definition.parameters).map(() => -1),
    ]) {
      const { code, message } = refusal(id, ...wrong)
      expect(call(definition, wrong)).toEqual({ kind: 'error', code, sentence: message })
    }
  },
)

// 0.1 m3 + 0.2 m3 is 300 L, and in binary arithmetic a little more. Source: exact division, 300 / 60 = 5.
test('The sum of 0.1 and 0.2 cubic metres fills five bags of 60 litres through the bundle, not six.', () => {
  expect(ask('BAGS', (0.1 + 0.2) * 1000, 60, null, null, null, null)).toBe(5)
  expect(ask('BAGS', '0.3 m3', '60 L')).toBe(5)
})

test('The object that Excel hands over beside the arguments of a call changes nothing.', () => {
  const invocation = { address: 'Sheet1!B4', functionName: 'BAGS' }
  expect(ask('BAGS', 300, 60, null, null, null, null, invocation)).toBe(5)
})

test('A number that Excel hands over together with its format is read as that number.', () => {
  const formatted = { type: 'FormattedNumber', basicType: 'Double', basicValue: 300, numberFormat: '0.00 "L"' }
  expect(ask('BAGS', formatted, 60)).toBe(5)
  expect(ask('BLENDPARTS', 90, [[{ ...formatted, basicValue: 1 }], [2]], null)).toEqual([[30], [60]])
})

// Source: exact division; 1 part in 3 of 90 L is 30 L.
test('A function over a range spills in the shape of that range.', () => {
  expect(ask('BLENDPARTS', 90, [[1, 2]], null)).toEqual([[30, 60]])
  expect(ask('BLENDPARTS', 90, [[1], [2]], null)).toEqual([[30], [60]])
})

test('A refusal arrives as #VALUE! with a sentence that names the argument.', () => {
  const { code, message } = refusal('FILL', 1000, 65, null, 15)
  expect(code).toBe('#VALUE!')
  expect(message).toContain('spill')
  expect(message).toContain('15%')
})

test('Where no answer exists, #N/A arrives with the reason.', () => {
  const { code, message } = refusal('BREAKEVEN', 1, 10, 5, null, null, null, null, null, null, null, null)
  expect(code).toBe('#N/A')
  expect(message.length).toBeGreaterThan(20)
})

test.each([
  ['an error object of Excel', new CellErrorOfHost('#DIV/0!')],
  ['an error value as plain data', { type: 'Error', basicType: 'Error', basicValue: '#DIV/0!' }],
  ['an error within a range', [[new CellErrorOfHost('#DIV/0!')]]],
])('The error of an input cell comes through as that same error: %s.', (_kind, input) => {
  expect(refusal('FILL', input, 65, null, null).code).toBe('#DIV/0!')
})
