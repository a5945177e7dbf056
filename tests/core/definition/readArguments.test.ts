import { expect, test } from 'vitest'
import type { Parameters } from '../../../src/core/definition/definition'
import {
  number,
  numbers,
  quantity,
  share,
  shares,
  signedNumbers,
  text,
  texts,
} from '../../../src/core/definition/parameter'
import { environmentOf, isBlank, readArguments, readValue } from '../../../src/core/definition/readArguments'
import { Decimal } from '../../../src/core/quantity/decimal'

/** The arguments as plain values, or the problems, or the cell error. */
function read(parameters: Parameters, ...given: readonly unknown[]): unknown {
  const outcome = readArguments(parameters, given)
  if (!('args' in outcome))
    return 'problems' in outcome
      ? outcome.problems.map(({ kind, ...rest }) => ({ ...rest, ...(kind === 'refused' ? {} : { kind }) }))
      : outcome.cellError.code
  return JSON.parse(
    JSON.stringify(Object.fromEntries(Object.entries(outcome.args).map(([name, value]) => [name, plain(value)]))),
  )
}

const plain = (value: unknown): unknown =>
  value instanceof Decimal
    ? value.toNumber()
    : Array.isArray(value)
      ? value.map((one: unknown) => (one === undefined ? 'blank' : plain(one)))
      : value

function layout(parameters: Parameters, ...given: readonly unknown[]) {
  const outcome = readArguments(parameters, given)
  return 'args' in outcome ? outcome.layout : undefined
}

const need = number('L', { text: 'the need' })
const size = number('L', { text: 'the size', default: 60 })
const spare = number('L', { text: 'the spare', default: { sameAs: 'size' } })
const chance = share({ text: 'the chance', optional: true })
const pair = { parts: numbers('parts', { text: 'the parts' }), prices: numbers('money', { text: 'the prices' }) }

test('what is left out or blank takes its default, that of another argument, or nothing', () => {
  expect(read({ need, size, spare, chance }, 5)).toEqual({ need: 5, size: 60, spare: 60 })
  expect(read({ need, size, spare, chance }, 5, '', null, undefined)).toEqual({ need: 5, size: 60, spare: 60 })
  expect(read({ need, size, spare, chance }, 5, 70, ' ', 0.5)).toEqual({ need: 5, size: 70, spare: 70, chance: 0.5 })
  expect(read({ need, size }, null, 1)).toEqual([{ code: 'missing', parameter: 'need' }])
})

test('a cell comes as a value or in a box, and a block is refused with its size', () => {
  expect(read({ need }, [[5]])).toEqual({ need: 5 })
  expect(read({ need }, [[5, 6]])).toEqual([{ code: 'notOneCell', parameter: 'need', rows: 1, columns: 2 }])
  expect(read({ need }, [[5], [6]])).toEqual([{ code: 'notOneCell', parameter: 'need', rows: 2, columns: 1 }])
  expect(read({ need }, [5, 6])).toEqual([{ code: 'notOneCell', parameter: 'need', rows: 2, columns: 1 }])
  expect(read({ need }, [])).toEqual([{ code: 'notOneCell', parameter: 'need', rows: 0, columns: 1 }])
})

test('arguments beyond the last are refused unless they are blank', () => {
  expect(read({ need }, 5, '', null)).toEqual({ need: 5 })
  expect(read({ need }, 5, null, 7)).toEqual([{ code: 'tooManyArguments', given: 2, most: 1 }])
  expect(read({ need, size }, 5, 7, 8, 9)).toEqual([{ code: 'tooManyArguments', given: 4, most: 2 }])
})

test('every problem is told, not the first alone', () => {
  expect(read({ need, size }, 'plenty', true)).toEqual([
    { code: 'notNumber', parameter: 'need', value: 'plenty' },
    { code: 'logical', parameter: 'size', value: 'TRUE' },
  ])
})

test('an error value comes through as itself, wherever it stands', () => {
  const error = { kind: 'cellError', code: '#DIV/0!' }
  expect([
    read({ need, size }, 'plenty', error),
    read(pair, [[1], [error]], [[1]]),
    read(pair, [[1]], [[[error]]]),
  ]).toEqual(['#DIV/0!', '#DIV/0!', '#DIV/0!'])
  expect(read({ need }, { kind: 'other' })).toEqual([
    { code: 'notNumber', parameter: 'need', value: '[object Object]' },
  ])
})

test('a range lies in a row or in a column, and keeps where its places were', () => {
  expect(layout(pair, [[1], [2]], [[3], [4]])).toEqual({ places: 2, kept: [0, 1], lies: 'column' })
  expect(layout(pair, [[1, 2]], [[3], [4]])).toEqual({ places: 2, kept: [0, 1], lies: 'row' })
  expect(layout(pair, [['', 2, null]], [['', 4, ' ']])).toEqual({ places: 3, kept: [1], lies: 'row' })
  expect(layout(pair, 1, 2)).toEqual({ places: 1, kept: [0], lies: 'column' })
  expect(layout({ need }, 5)).toBeUndefined()
  expect(read(pair, [1, 2], [[3], [4]])).toEqual({ parts: [1, 2], prices: [3, 4] })
})

test('a block is refused where a row or a column is taken', () => {
  expect(
    read(
      pair,
      [
        [1, 2],
        [3, 4],
      ],
      [[1], [2]],
    ),
  ).toEqual([{ code: 'notOneLine', parameter: 'parts', rows: 2, columns: 2 }])
  expect(read(pair, [[1], [2, 3]], [[1], [2]])).toEqual([
    { code: 'notOneLine', parameter: 'parts', rows: 2, columns: 2 },
  ])
  expect(read(pair, [], [[1]])).toEqual([{ code: 'notOneLine', parameter: 'parts', rows: 0, columns: 0 }])
})

test('ranges of different length are refused with both lengths', () => {
  expect(read({ ...pair, more: numbers('L', { text: 'more' }) }, [[1, 2]], [[3]], [[1, 2]])).toEqual([
    { code: 'lengthsDiffer', parameter: 'prices', length: 1, other: 'parts', otherLength: 2 },
  ])
})

test('a row that is blank everywhere is skipped, and one that is blank in one range is refused with its row', () => {
  expect(read(pair, [[1], [''], [3]], [[4], [null], [6]])).toEqual({ parts: [1, 3], prices: [4, 6] })
  expect(read(pair, [[1], [2], [3]], [[4], [''], [6]])).toEqual([{ code: 'blankInRow', parameter: 'prices', row: 2 }])
  expect(read(pair, [[''], ['']], [[''], ['']])).toEqual([
    { code: 'emptyRange', parameter: 'parts' },
    { code: 'emptyRange', parameter: 'prices' },
  ])
  expect(read(pair, null, [[1]])).toEqual([{ code: 'missing', parameter: 'parts' }])
})

test('a range that may be left out is its default in every place, and so is a blank cell of it', () => {
  const parameters = {
    parts: pair.parts,
    wash: numbers('money', { text: 'washing', default: 3 }),
    from: numbers('bags', { text: 'bags from', optional: true }),
  }
  expect(read(parameters, [[1, '', 2]])).toEqual({ parts: [1, 2], wash: [3, 3], from: ['blank', 'blank'] })
  expect(read(parameters, [[1, '', 2]], [[5, '', '']], [['', '', 6]])).toEqual({
    parts: [1, 2],
    wash: [5, 3],
    from: ['blank', 6],
  })
  expect(read(parameters, [[1, 2]], [['', '']], [['', '']])).toEqual({
    parts: [1, 2],
    wash: [3, 3],
    from: ['blank', 'blank'],
  })
})

test('one cell stands for all rows where the range says so', () => {
  const parameters = { parts: pair.parts, cost: numbers('money', { text: 'the cost', oneForAll: true }) }
  expect(read(parameters, [[1], [2]], 7)).toEqual({ parts: [1, 2], cost: [7, 7] })
  expect(read(parameters, [[1], [2]], [[7], [8]])).toEqual({ parts: [1, 2], cost: [7, 8] })
  expect(read(parameters, [[1], [2]], 'dear')).toEqual([
    { code: 'notNumber', parameter: 'cost', row: 1, value: 'dear' },
  ])
  expect(read({ cost: parameters.cost }, 7)).toEqual({ cost: [7] })
  expect(read(pair, [[1], [2]], 7)).toEqual([
    { code: 'lengthsDiffer', parameter: 'prices', length: 1, other: 'parts', otherLength: 2 },
  ])
})

test('a wrong cell of a range is refused with its row, counted with the blank ones', () => {
  expect(read(pair, [[''], [2], [-3]], [[''], ['x'], [1]])).toEqual([
    { code: 'outOfRange', parameter: 'parts', row: 3, value: '-3', limit: { is: 'atLeast', value: 0 } },
    { code: 'notNumber', parameter: 'prices', row: 2, value: 'x' },
  ])
  expect(read({ parts: signedNumbers('parts', { text: 'the parts' }) }, [[-3]])).toEqual({ parts: [-3] })
})

test('a range that is divided by its sum must not be 0 throughout', () => {
  const parameters = { parts: numbers('parts', { text: 'the parts', notAllZero: true }) }
  expect(read(parameters, [[0, 0]])).toEqual([{ code: 'allZero', parameter: 'parts' }])
  expect(read(parameters, [[0, 1]])).toEqual({ parts: [0, 1] })
  expect(read(parameters, [[0, 'x']])).toEqual([{ code: 'notNumber', parameter: 'parts', row: 2, value: 'x' }])
  expect(read(parameters, [[''], ['']])).toEqual([{ code: 'emptyRange', parameter: 'parts' }])
  expect(read({ names: texts({ text: 'the names' }) }, [['a']])).toEqual({ names: ['a'] })
})

test('a name is a text, trimmed, and within a range a number too', () => {
  const name = text({ text: 'the name' })
  expect([readValue(name, ' Bed '), readValue(name, 60), readValue(name, true), readValue(name, NaN)]).toEqual([
    'Bed',
    { code: 'notText', value: '60' },
    { code: 'notText', value: 'TRUE' },
    { code: 'outsideCells' },
  ])
  expect(read({ names: texts({ text: 'the names' }) }, [[' Bed ', 60, 0.1 + 0.2]])).toEqual({
    names: ['Bed', '60', '0.3'],
  })
  expect(read({ names: texts({ text: 'the names' }) }, [[{}]])).toEqual([
    { code: 'notText', parameter: 'names', row: 1, value: '[object Object]' },
  ])
  expect(read({ names: texts({ text: 'the names' }) }, [[false]])).toEqual([
    { code: 'notText', parameter: 'names', row: 1, value: 'FALSE' },
  ])
})

test('numbers are read with the digits that are shown, and what no cell holds is refused', () => {
  expect(String(readValue(need, 0.1 + 0.2))).toBe('0.3')
  for (const outside of [Infinity, -Infinity, NaN, 1e308, 5e-324])
    expect(readValue(need, outside)).toEqual({ code: 'outsideCells' })
  expect([readValue(need, true), readValue(need, false), readValue(need, {}), readValue(need, null)]).toEqual([
    { code: 'logical', value: 'TRUE' },
    { code: 'logical', value: 'FALSE' },
    { code: 'notNumber', value: '[object Object]' },
    { code: 'notNumber', value: 'null' },
  ])
})

test('text with a unit comes in the unit of the parameter', () => {
  const volume = quantity('L', { text: 'the volume', above: 0 })
  expect(['65 mL', '2 m3', '7', ' 1,5 l '].map((typed) => String(readValue(volume, typed)))).toEqual([
    '0.065',
    '2000',
    '7',
    '1.5',
  ])
  expect([
    readValue(volume, '3 kg'),
    readValue(volume, '2 gal'),
    readValue(volume, '2 parsecs'),
    readValue(volume, '1,500 L'),
    readValue(volume, '-2 L'),
    readValue(volume, '0 L'),
  ]).toEqual([
    { code: 'unitOfOtherKind', value: '3 kg', got: 'mass', takes: 'volume' },
    expect.objectContaining({ code: 'unitAmbiguous' }),
    expect.objectContaining({ code: 'unitUnknown' }),
    { code: 'unclearComma', value: '1,500 L' },
    { code: 'outOfRange', value: '-2', limit: { is: 'above', value: 0 } },
    { code: 'zeroOrBlank' },
  ])
  expect([readValue(need, '5 L'), readValue(need, '5')].map(String)).toEqual([String({}), '5'])
  expect(readValue(need, '5 L')).toEqual({ code: 'unitNotTaken', value: '5 L' })
  expect(readValue(volume, 'a lot')).toEqual({ code: 'notNumber', value: 'a lot' })
})

test('a share is read as a fraction or in per cent, and 15 for 15 % is told apart from what is out of range', () => {
  const loss = share({ text: 'the loss', below: 1 })
  expect(['15%', '0.15', '15 %'].map((typed) => String(readValue(loss, typed)))).toEqual(['0.15', '0.15', '0.15'])
  expect([
    readValue(loss, 15),
    readValue(loss, 100),
    readValue(loss, 101),
    readValue(loss, 1),
    readValue(loss, -0.1),
    readValue(loss, '15 L'),
    readValue(loss, '150%'),
  ]).toEqual([
    { code: 'percentTyped', value: '15' },
    { code: 'percentTyped', value: '100' },
    { code: 'outOfRange', value: '101', limit: { is: 'below', value: 1 } },
    { code: 'outOfRange', value: '1', limit: { is: 'below', value: 1 } },
    { code: 'outOfRange', value: '-0.1', limit: { is: 'atLeast', value: 0 } },
    { code: 'unitNotTaken', value: '15 L' },
    { code: 'percentTyped', value: '1.5' },
  ])
  const most = share({ text: 'the share', atMost: 1 })
  expect(
    [readValue(most, 1), readValue(most, 15)].map((one) => (one instanceof Decimal ? one.toNumber() : one)),
  ).toEqual([1, { code: 'percentTyped', value: '15' }])
  expect(readValue(number('L', { text: 'x', below: 1 }), 15)).toEqual({
    code: 'outOfRange',
    value: '15',
    limit: { is: 'below', value: 1 },
  })
})

test('every limit refuses what breaks it, takes what just meets it, and names itself', () => {
  const fault = (range: LimitsOfOne, value: number) => {
    const outcome = readValue(number('L', { text: 'x', ...range }), value)
    return outcome instanceof Decimal ? outcome.toNumber() : outcome
  }
  expect([fault({ atLeast: 2 }, 2), fault({ atLeast: 2 }, 1)]).toEqual([
    2,
    { code: 'outOfRange', value: '1', limit: { is: 'atLeast', value: 2 } },
  ])
  expect([fault({ above: 2 }, 2.5), fault({ above: 2 }, 2)]).toEqual([
    2.5,
    { code: 'outOfRange', value: '2', limit: { is: 'above', value: 2 } },
  ])
  expect([fault({ atMost: 2 }, 2), fault({ atMost: 2 }, 3)]).toEqual([
    2,
    { code: 'outOfRange', value: '3', limit: { is: 'atMost', value: 2 } },
  ])
  expect([fault({ below: 2 }, 1.5), fault({ below: 2 }, 2)]).toEqual([
    1.5,
    { code: 'outOfRange', value: '2', limit: { is: 'below', value: 2 } },
  ])
  expect([fault({ whole: true }, 2), fault({ whole: true }, 2.5)]).toEqual([
    2,
    { code: 'outOfRange', value: '2.5', limit: { is: 'whole' } },
  ])
  expect([
    fault({ atLeast: 1 }, 0),
    fault({ above: 0 }, 0),
    fault({ atLeast: 0 }, 0),
    fault({ below: 0 }, 0),
    fault({ atMost: -1 }, 0),
    fault({ above: 0 }, -1),
  ]).toEqual([
    { code: 'zeroOrBlank' },
    { code: 'zeroOrBlank' },
    0,
    { code: 'outOfRange', value: '0', limit: { is: 'below', value: 0 } },
    { code: 'outOfRange', value: '0', limit: { is: 'atMost', value: -1 } },
    { code: 'outOfRange', value: '-1', limit: { is: 'above', value: 0 } },
  ])
})

type LimitsOfOne = {
  readonly atLeast?: number
  readonly above?: number
  readonly atMost?: number
  readonly below?: number
  readonly whole?: true
}

test('blank is null, nothing, and a text of blanks; 0 and FALSE are not', () => {
  expect([null, undefined, '', ' \t', 0, false, 'x', []].map(isBlank)).toEqual([
    true,
    true,
    true,
    true,
    false,
    false,
    false,
    false,
  ])
})

test('the steps compute with the arguments that are numbers', () => {
  const [one, two] = [new Decimal(1), new Decimal(2)]
  expect(
    environmentOf({
      one,
      line: [one, two],
      name: 'Bed',
      names: ['Bed'],
      mixed: [one, undefined],
      none: undefined,
      empty: [],
    }),
  ).toEqual({ one, line: [one, two], empty: [] })
})

test('a shares range keeps its own limits beside those of every share', () => {
  expect(shares({ text: 'rates', above: 0, atMost: 1 })).toEqual({
    takes: 'number',
    shape: 'line',
    unit: 'share',
    share: true,
    text: 'rates',
    optional: false,
    above: 0,
    atMost: 1,
  })
})

test('ranges of another list have a length of their own, and those of one list must be of one length', () => {
  const lists = {
    ...pair,
    rates: numbers('kg/m3', { text: 'the rates', optional: true, list: 'additives' }),
    names: texts({ text: 'the names', optional: true, list: 'additives' }),
  }
  const [parts, prices] = [
    [[1], [2]],
    [[3], [4]],
  ]
  expect(read(lists, parts, prices)).toEqual({ parts: [1, 2], prices: [3, 4], rates: [], names: [] })
  expect(read(lists, parts, prices, 5)).toEqual({ parts: [1, 2], prices: [3, 4], rates: [5], names: ['blank'] })
  expect(read(lists, parts, prices, [[5], [null], [6]], [['lime'], [''], ['']])).toEqual({
    parts: [1, 2],
    prices: [3, 4],
    rates: [5, 6],
    names: ['lime', 'blank'],
  })
  expect(read(lists, parts, prices, [[5], [6], [7]], [['lime'], ['feed']])).toEqual([
    { code: 'lengthsDiffer', parameter: 'names', length: 2, other: 'rates', otherLength: 3 },
  ])
  // Results lie as the first list lies.
  expect(layout(lists, [[1, 2]], [[3, 4]], [[5], [6], [7]])).toEqual({ places: 2, kept: [0, 1], lies: 'row' })
})

test('a day is a number or a text of the form 2026-03-02, and no other text', () => {
  const when = number('day', { text: 'the day', atLeast: 61 })
  for (const typed of [46_083, '2026-03-02', ' 2026-03-02 ', '46083'])
    expect(read({ when }, typed)).toEqual({ when: 46_083 })
  for (const text of ['02.03.2026', '3/2/2026', '2026-3-2', '2026-02-30', '46083 days', 'March'])
    expect(read({ when }, text)).toEqual([{ code: 'notDay', parameter: 'when', value: text }])
  expect(read({ when }, 60)).toEqual([
    { code: 'outOfRange', parameter: 'when', value: '60', limit: { is: 'atLeast', value: 61 } },
  ])
})

test('a whole column is read, however long', () => {
  const { parts } = pair
  const outcome = readArguments({ parts }, [Array.from({ length: 200_000 }, () => [null]).concat([[1]] as never)])
  expect('args' in outcome && outcome.args['parts']).toHaveLength(1)
})

test('a 0 counts as a blank where none can be meant, and as a 0 wherever it can', () => {
  const optional = {
    expansion: number('', { text: 'x', above: 0, default: 1 }),
    held: number('', { text: 'x', default: 3 }),
  }
  expect(read(optional, 0, 0)).toEqual({ expansion: 1, held: 0 })
  expect(read(optional, [[0]], 0)).toEqual({ expansion: 1, held: 0 })
  const rows = {
    quantities: numbers('', { text: 'x', above: 0 }),
    margins: numbers('', { text: 'x' }),
    multiples: numbers('', { text: 'x', above: 0, default: 1 }),
  }
  const columns = (...cells: (number | null)[][]) => cells.map((column) => column.map((cell) => [cell]))
  expect(read(rows, ...columns([250, 500, 0], [0, 0.3, 0], [4, 0, 0]))).toEqual({
    quantities: [250, 500],
    margins: [0, 0.3],
    multiples: [4, 1],
  })
  expect(read(rows, ...columns([250, 0], [0.2, 0.3], [4, 5]))).toEqual([
    { code: 'zeroOrBlank', parameter: 'quantities', row: 2 },
  ])
})

test('a 0 that was typed into a range of its own is refused, for nothing else tells that the cell is blank', () => {
  expect(read({ rates: shares({ text: 'x', above: 0 }) }, [[0.9], [0]])).toEqual([
    { code: 'zeroOrBlank', parameter: 'rates', row: 2 },
  ])
})

test('a need of 0 is one where a single price stands for all', () => {
  const rows = { needs: numbers('', { text: 'x' }), prices: numbers('', { text: 'x', above: 0, oneForAll: true }) }
  expect(read(rows, [[5], [0], [7]], [[13]])).toEqual({ needs: [5, 0, 7], prices: [13, 13, 13] })
})
