/**
 * Random files of other programs. What each formula gives is known from how the file was made; what cannot be
 * calculated here is stored as a number that no calculation gives, and must come through with all that reads it.
 */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { PartsCell, PartsFile } from './partsFile'
import { recalculated } from './recalculated'

/** Of the file: what is typed in A1:B5 of both sheets, which rows of the first are hidden, how its days count. */
interface Ground {
  readonly inputs: readonly (readonly [a: number, b: number])[]
  readonly others: readonly (readonly [a: number, b: number])[]
  readonly hidden: readonly number[]
  readonly countsFrom1904: boolean
  readonly textsPath: string
}

/** What a formula may read: an earlier one, or a typed cell. */
interface Read {
  readonly address: string
  /** Undefined where it is kept. */
  readonly value: number | undefined
}

interface Place extends Ground {
  /** From 0. */
  readonly row: number
  readonly address: string
  readonly one: Read
  readonly other: Read
  /** Those above in the same column. */
  readonly above: readonly Read[]
}

interface Made {
  readonly f: string
  readonly fAttributes?: string
  readonly value: number | undefined
}

const rowCount = 5
const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)
const columnA = ({ inputs }: Ground) => inputs.map(([a]) => a)
const allOf = (reads: readonly Read[], calculate: (values: readonly number[]) => number): number | undefined => {
  const values = reads.flatMap(({ value }) => value ?? [])
  return values.length < reads.length ? undefined : calculate(values)
}

const kinds: Readonly<Record<string, (place: Place) => Made>> = {
  plain: ({ one, other }) => ({
    f: `${one.address}*2-${other.address}`,
    value: allOf([one, other], ([x, y]) => x! * 2 - y!),
  }),
  caught: ({ one }) => ({ f: `IFERROR(${one.address},0)+1`, value: allOf([one], ([x]) => x! + 1) }),
  total: ({ above, address, row }) => ({
    f: row === 0 ? 'SUM(B1:B5)*0' : `SUM(${address.replace(/\d+/, '1')}:${address.replace(/\d+/, String(row))})`,
    value: allOf(above, sum),
  }),
  unknown: ({ one }) => ({ f: `IFERROR(NOSUCH(${one.address}),1)`, value: undefined }),
  outside: ({ one }) => ({ f: `SUM([1]Sheet1!A1,${one.address})`, value: undefined }),
  circle: ({ one, address }) => ({ f: `${one.address}+${address}`, value: undefined }),
  nameOfSheet: ({ one, inputs }) => ({ f: `Price+${one.address}`, value: allOf([one], ([x]) => inputs[0]![0] + x!) }),
  nameOfOther: ({ others }) => ({ f: 'Two!Price*3', value: others[0]![0] * 3 }),
  relative: ({ row, inputs }) => ({ f: 'InColumnB-1', value: inputs[row]![1] - 1 }),
  likeFunction: (place) => ({ f: 'MAX(A1:A5)+Max*2', value: Math.max(...columnA(place)) + place.inputs[1]![1] * 2 }),
  calculated: ({ inputs }) => ({ f: '100-Sum2*2', value: 100 - (inputs[0]![0] + inputs[1]![0]) * 2 }),
  acrossSheets: (place) => ({
    f: 'SUM(One:Two!A1:A2)',
    value: sum([...place.inputs, ...place.others].flatMap(([a], index) => (index % rowCount < 2 ? [a] : []))),
  }),
  oneCell: ({ row, inputs }) => ({ f: 'A1:A5*2', value: inputs[row]![0] * 2 }),
  oneCellWithin: ({ row, inputs }) => ({ f: 'SUM(A1:A5*B1:B5)', value: inputs[row]![0] * inputs[row]![1] }),
  product: ({ inputs }) => ({ f: 'SUMPRODUCT(A1:A5*B1:B5)', value: sum(inputs.map(([a, b]) => a * b)) }),
  array: ({ inputs, address }) => ({
    f: 'SUM(A1:A5*B1:B5)',
    fAttributes: `t="array" ref="${address}"`,
    value: sum(inputs.map(([a, b]) => a * b)),
  }),
  firstOfArray: ({ inputs, address }) => ({
    f: 'A1:A5+1',
    fAttributes: `t="array" ref="${address}"`,
    value: inputs[0]![0] + 1,
  }),
  subtotal: (place) => ({
    f: 'SUBTOTAL(109,A1:A5)',
    value: place.hidden.length > 0 ? undefined : sum(columnA(place)),
  }),
  day: ({ inputs, countsFrom1904 }) => ({
    f: 'YEAR(A1*1000)',
    // Day 25569 is the first of 1970.
    value: countsFrom1904 ? undefined : new Date((inputs[0]![0] * 1000 - 25569) * 86_400_000).getUTCFullYear(),
  }),
  text: () => ({ f: 'LEN(D1)+LEN(D2)', value: 'coir'.length + 'bark'.length }),
}

const pairs = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 })), {
  minLength: rowCount,
  maxLength: rowCount,
})
const ground = fc.record({
  inputs: pairs,
  others: pairs,
  hidden: fc.oneof(fc.constant<number[]>([]), fc.subarray([2, 4])),
  countsFrom1904: fc.boolean(),
  textsPath: fc.constantFrom('sharedStrings.xml', 'texts.xml', 'words/all.xml'),
})
const choice = fc.record({
  kind: fc.constantFrom(...Object.keys(kinds)),
  one: fc.nat(),
  other: fc.nat(),
  /** No result yet, or an old one. */
  isStored: fc.boolean(),
})
const columns = ['F', 'G', 'H']
const choices = fc.array(choice, { minLength: rowCount * columns.length, maxLength: rowCount * columns.length })

const names = `<definedName name="Price">One!$A$1</definedName><definedName name="Price" localSheetId="1">Two!$A$1</definedName>
  <definedName name="InColumnB">One!$B1</definedName><definedName name="Max">One!$B$2</definedName>
  <definedName name="Sum2">One!$A$1+One!$A$2</definedName>`

function made(on: Ground, chosen: readonly { kind: string; one: number; other: number; isStored: boolean }[]) {
  const reads: Read[] = on.inputs.flatMap(([a, b], row) => [
    { address: `A${row + 1}`, value: a },
    { address: `B${row + 1}`, value: b },
  ])
  const cells: Record<string, PartsCell> = { D1: { v: 1, attributes: 't="s"' }, D2: { v: 2, attributes: 't="s"' } }
  for (const { address, value } of reads) cells[address] = { v: value! }
  const results = new Map<string, number | undefined>()
  const kept = new Map<string, number>()
  chosen.forEach(({ kind, one, other, isStored }, index) => {
    const row = index % rowCount
    const address = `${columns[Math.floor(index / rowCount)]}${row + 1}`
    const above = row === 0 ? [] : reads.slice(-row)
    const place = { ...on, row, address, one: reads[one % reads.length]!, other: reads[other % reads.length]!, above }
    const { f, fAttributes = '', value } = kinds[kind]!(place)
    cells[address] = { f, fAttributes, ...((isStored || value === undefined) && { v: 1_000_000 + index }) }
    if (value === undefined) kept.set(address, 1_000_000 + index)
    else results.set(address, value)
    reads.push({ address, value })
  })
  const others = on.others.flatMap(([a, b], row) => [
    [`A${row + 1}`, { v: a }],
    [`B${row + 1}`, { v: b }],
  ])
  const file: PartsFile = {
    sheets: [
      { name: 'One', cells, rows: Object.fromEntries(on.hidden.map((row) => [row, 'hidden="1"'])) },
      { name: 'Two', cells: Object.fromEntries(others) as Record<string, PartsCell> },
    ],
    names,
    workbookPr: on.countsFrom1904 ? 'date1904="1"' : '',
    sharedStrings: { path: on.textsPath, texts: ['peat', 'coir', 'bark'] },
  }
  return { file, results, kept }
}

it('Every formula of any file gives what it should, or keeps what is stored and is named.', () =>
  fc.assert(
    fc.asyncProperty(ground, choices, async (on, chosen) => {
      const { file, results, kept } = made(on, chosen)
      const { stored, kept: named } = await recalculated(file)
      expect(Object.keys(named).sort()).toEqual([...kept.keys()].sort())
      for (const [address, number] of kept) expect(stored[address], address).toBe(number)
      for (const [address, value] of results)
        expect(stored[address], `${address} ${file.sheets[0]!.cells[address]!.f}`).toBeCloseTo(value!, 6)
    }),
    { numRuns: 60 },
  ))
