import { expect, test } from 'vitest'
import { columnOf, columnsBefore, headingRow, inOrder, lastOf } from '../../../src/core/definition/columns'
import {
  defineByMethod,
  defineBySteps,
  defineTable,
  fillsOneCell,
  placeOf,
  type Parameters,
  type TableRow,
  type ValueResult,
} from '../../../src/core/definition/definition'
import { evaluate, rowsOf } from '../../../src/core/definition/evaluate'
import { number, numbers } from '../../../src/core/definition/parameter'
import { resultOfSteps, runSteps, splitWhereRead, valuesOfSteps } from '../../../src/core/definition/runSteps'
import { stepsInDoubles } from '../../../src/core/definition/stepsInDoubles'
import { Decimal } from '../../../src/core/quantity/decimal'

const about = { id: 'OWN', subject: 'counting' } as const
const one = { name: 'count', unit: 'cuttings' }
const columns = {
  name: { heading: 'way' },
  amount: { heading: 'cost' },
}

const steps = defineBySteps({
  ...about,
  result: one,
  parameters: { a: number('x', { text: 'x' }), b: number('x', { text: 'x', default: 2 }) },
  steps: [
    ['sum', 'a + b', 'x', 'both'],
    ['double', 'sum * 2', 'x', 'twice'],
  ],
})

const parts = defineBySteps({
  ...about,
  result: { ...one, like: 'parts' },
  parameters: { parts: numbers('x', { text: 'x' }) },
  steps: [['twice', 'parts * 2', 'x', 'x']],
})

const own = { ...about, parameters: { rows: numbers('x', { text: 'x', optional: true }) } }

function method(result: ValueResult, resultOf = {}) {
  return defineByMethod({ ...own, result: { ...one, ...resultOf }, method: () => result })
}

function tableOf(rows: readonly TableRow<typeof columns>[]) {
  return defineTable({ ...own, result: { ...one, columns }, method: () => ({ table: rows, working: noWorking }) })
}

const noWorking = () => []

test('steps give the last one, and each with its value in the working', () => {
  const evaluation = evaluate(steps, [3])
  if (!('result' in evaluation)) throw new Error(JSON.stringify(evaluation))
  expect(evaluation.result).toBe(10)
  expect(
    evaluation.working().map(({ name, formula, value, text, unit }) => [name, formula, String(value), text, unit]),
  ).toEqual([
    ['sum', 'a + b', '5', 'both', 'x'],
    ['double', 'sum * 2', '10', 'twice', 'x'],
  ])
})

test('a step may use what stands before it alone', () => {
  const early = defineBySteps({
    ...about,
    result: one,
    parameters: {},
    steps: [
      ['first', 'second', 'x', 'x'],
      ['second', '1', 'x', 'x'],
    ],
  })
  expect(() => evaluate(early, [])).toThrow('second')
  expect(() => runSteps([], {})).toThrow('at least one step')
})

test('a range of results lies as its argument lay, with 0 in its blank places', () => {
  expect(evaluate(parts, [[[1], [''], [3]]])).toMatchObject({ result: [[2], [0], [6]] })
  expect(evaluate(parts, [[[1, '', 3]]])).toMatchObject({ result: [[2, 0, 6]] })
})

test('refusals and error values of the arguments are handed on', () => {
  expect(evaluate(steps, ['x'])).toEqual({
    problems: [{ kind: 'refused', code: 'notNumber', parameter: 'a', value: 'x' }],
  })
  expect(evaluate(steps, [{ kind: 'cellError', code: '#REF!' }])).toEqual({
    cellError: { kind: 'cellError', code: '#REF!' },
  })
})

test('a result that no cell holds is refused, alone, in a range and in a table', () => {
  const outside = { problems: [{ kind: 'refused', code: 'resultOutsideCells' }] }
  const large = new Decimal('1e400')
  expect(evaluate(method({ value: large, working: noWorking }), [])).toEqual(outside)
  expect(evaluate(parts, [[[1e307], [9e307]]])).toEqual(outside)
  expect(
    evaluate(
      tableOf([
        { name: 'x', amount: new Decimal(1) },
        { name: 'y', amount: large },
      ]),
      [],
    ),
  ).toEqual(outside)
})

test('A table has its columns by key, numbers as numbers, and facts as facts.', () => {
  const evaluation = evaluate(
    tableOf([
      { amount: new Decimal('1.5'), name: 'x' },
      { name: { fact: 'total' }, amount: new Decimal(2) },
    ]),
    [],
  )
  expect(evaluation).toMatchObject({
    result: {
      columns,
      rows: [
        { name: 'x', amount: 1.5 },
        { name: { fact: 'total' }, amount: 2 },
      ],
    },
  })
  expect('result' in evaluation && rowsOf(evaluation.result)).toHaveLength(2)
  expect(rowsOf(7)).toEqual([])
})

test('The places, the headings and the formulas of columns follow their order.', () => {
  expect([columnsBefore(columns, 'name'), columnsBefore(columns, 'amount')]).toEqual([0, 1])
  expect(headingRow(columns)).toBe('HSTACK("way", "cost")')
  expect(inOrder(columns, { amount: 'b', name: 'a' })).toBe('a, b')
  expect([columnOf(columns, 'amount', 'block'), lastOf(columns, 'amount', 'block')]).toEqual([
    'INDEX(block, 0, 2)',
    'INDEX(block, ROWS(block), 2)',
  ])
})

test('An argument is found by its name, and the steps that do not read it stand before those that do.', () => {
  expect([placeOf(steps, 'a'), placeOf(steps, 'b'), placeOf<Parameters>(steps, 'c')]).toEqual([0, 1, -1])
  const two = defineBySteps({
    ...about,
    result: one,
    parameters: { a: number('x', { text: 'x' }), b: number('x', { text: 'x' }) },
    steps: [
      ['first', 'MAX(a, 1)', 'x', 'x'],
      ['second', '-b + first', 'x', 'x'],
      ['third', 'second * 2', 'x', 'x'],
    ],
  })
  expect(splitWhereRead(two, 'b').map((part) => part.map(({ name }) => name))).toEqual([['first'], ['second', 'third']])
  expect(String(resultOfSteps(two, { a: new Decimal(3), b: new Decimal(1) }))).toBe('4')
  expect(String(valuesOfSteps(two.body.steps, { a: new Decimal(3), b: new Decimal(1) }).second)).toBe('2')
})

test('a table that is not the one described is a mistake of ours, and so is a range in no shape', () => {
  // The compiler sees each of these, so they are hidden from it.
  const wrong = (row: object) => tableOf([row] as never)
  for (const row of [{ name: 'x' }, { name: 'x', cost: 'y' }, { name: 'x', amount: 'y', more: 'z' }]) {
    expect(() => evaluate(wrong(row), [])).toThrow('OWN gives a table that is not the one it describes')
  }
  expect(() => evaluate({ ...wrong({}), result: one }, [])).toThrow('not the one it describes')
  const range = { value: [new Decimal(1)], working: noWorking }
  expect(() => evaluate(method(range), [[[1]]])).toThrow('OWN gives a range but does not say in whose shape')
  expect(() => evaluate(method(range, { like: 'rows' }), [])).toThrow('does not say in whose shape')
})

test('a problem of a method is a refusal unless it says otherwise, and its row is that of the range', () => {
  expect(
    evaluate(method({ problem: { code: 'batchesOfOne', parameter: 'rows', row: 2 } }), [[[1], [''], [3]]]),
  ).toEqual({ problems: [{ kind: 'refused', code: 'batchesOfOne', parameter: 'rows', row: 3 }] })
  expect(evaluate(method({ problem: { code: 'batchesOfOne', parameter: 'rows', row: 2 } }), [])).toEqual({
    problems: [{ kind: 'refused', code: 'batchesOfOne', parameter: 'rows', row: 2 }],
  })
  expect(evaluate(method({ problem: { code: 'batchesOfOne' } }), [[[1]]])).toEqual({
    problems: [{ kind: 'refused', code: 'batchesOfOne' }],
  })
  expect(evaluate(method({ problem: { kind: 'noAnswer', code: 'needsTooMany', most: '9' } }), [])).toEqual({
    problems: [{ kind: 'noAnswer', code: 'needsTooMany', most: '9' }],
  })
})

test('a function fills one cell unless its result is a range or a table', () => {
  expect([fillsOneCell({}), fillsOneCell({ like: 'parts' }), fillsOneCell({ columns })]).toEqual([true, false, false])
})

test('the steps in doubles give the last one, call after call', () => {
  const run = stepsInDoubles(steps.body.steps, ['a', 'b'])
  const slots = [3, 2]
  expect([run(slots), ((slots[0] = 4), run(slots)), slots]).toEqual([10, 12, [4, 2, 6, 12]])
})
