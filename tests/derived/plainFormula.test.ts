/** The plain Excel formula of each function gives what the function gives: both are calculated side by side in the grid's engine. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Definition } from '../../src/core/definition/definition'
import type { Parameter } from '../../src/core/definition/parameter'
import { call } from '../../src/derived/call'
import { plainFormula, type PlainCall } from '../../src/derived/plainFormula'
import { addressOf } from '../../src/formula/address'
import { catalogue } from '../../src/functions/catalogue'
import { calculateBook } from '../../src/workbench/engine/calculate'
import type { Cell, CellContent, Sheet } from '../../src/workbook/book'
import type { OpenCell } from '../../src/workbook/openBook'
import { errorOf } from '../workbook/errorOf'
import { definition as definitionOf } from '../golden/golden'

const callsOfEach = 40
const mostPlaces = 4
const words = ['Bed', 'Plug', 'Tray', 'Block', 'Water']

/** A blank cell is null. */
type Content = CellContent | null
/** The cells of an argument, or nothing where it is left out. */
type Argument = readonly Content[] | undefined

interface Call {
  readonly lies: 'row' | 'column'
  readonly given: readonly Argument[]
}

/** A plausible value: short decimals, as people type them. */
function inputOf({ takes, atLeast, above, atMost, below, whole, share }: Parameter): fc.Arbitrary<CellContent> {
  if (takes === 'text') return fc.constantFrom(...words)
  if (share === true)
    return fc
      .integer({ min: above === undefined ? 0 : 50, max: below === 1 || atMost === 1 ? 950 : 400 })
      .map((permille) => permille / 1000)
  const low = atLeast ?? (above === undefined ? -20 : 1)
  if (whole === true)
    return fc.oneof(fc.integer({ min: low, max: low + 2 }), fc.integer({ min: low, max: Math.min(atMost ?? 60, 60) }))
  return fc
    .integer({ min: above === undefined ? low * 100 : 10, max: Math.min((atMost ?? 500) * 100, 50_000) })
    .map((hundredths) => hundredths / 100)
}

/** What may be left out is left out or blank now and then, and a range has blank cells. */
function argumentOf(parameter: Parameter, places: number): fc.Arbitrary<Argument> {
  const { shape, optional, oneForAll } = parameter
  const input: fc.Arbitrary<Content> = optional ? fc.option(inputOf(parameter), { freq: 3 }) : inputOf(parameter)
  const cells = (count: number): fc.Arbitrary<Argument> => fc.array(input, { minLength: count, maxLength: count })
  const filled = shape === 'cell' ? cells(1) : oneForAll === true ? fc.oneof(cells(places), cells(1)) : cells(places)
  return optional ? fc.option(filled, { freq: 5, nil: undefined }) : filled
}

/** A call that the function does not refuse. Now and then a row of its ranges is blank in all of them. */
function callOf({ parameters, ...definition }: Definition): fc.Arbitrary<Call> {
  const all = Object.values(parameters)
  return fc
    .record({
      lies: fc.constantFrom('row' as const, 'column' as const),
      places: fc.integer({ min: 1, max: mostPlaces }),
      blankPlace: fc.option(fc.nat({ max: mostPlaces }), { nil: undefined, freq: 2 }),
    })
    .chain(({ lies, places, blankPlace }) =>
      fc.tuple(...all.map((parameter) => argumentOf(parameter, places))).map((given): Call => ({
        lies,
        given: given.map((argument, index) =>
          blankPlace === undefined ||
          argument === undefined ||
          all[index]!.shape === 'cell' ||
          argument.length !== places
            ? argument
            : [...argument.slice(0, blankPlace), null, ...argument.slice(blankPlace)],
        ),
      })),
    )
    .filter(({ lies, given }) => {
      const outcome = call(
        { ...definition, parameters },
        given.map((argument, index) => handedOver(argument, all[index]!, lies)),
      )
      return outcome.kind === 'value' || (outcome.kind === 'error' && outcome.code === '#N/A')
    })
}

function handedOver(argument: Argument, { shape }: Parameter, lies: Call['lies']): unknown {
  if (argument === undefined) return null
  if (shape === 'cell') return argument[0]
  return lies === 'row' ? [argument] : argument.map((cell) => [cell])
}

/** Both results may spill as wide as this; the cells of the arguments lie beside them. */
const widest = 12
const argumentsFrom = 2 * widest

interface LaidOut {
  readonly texts: readonly string[]
  readonly sheet: (ours: string, plain: string) => Sheet
}

/** Each call has a sheet of its own, where both of its results have room. */
function laidOut({ lies, given }: Call): LaidOut {
  const rows: (Cell | undefined)[][] = [[]]
  const placeOf = (argument: number, cell: number) =>
    lies === 'row' ? { row: argument, column: argumentsFrom + cell } : { row: cell, column: argumentsFrom + argument }
  const texts = given.map((cells, argument) => {
    if (cells === undefined) return ''
    cells.forEach((content, cell) => {
      const { row, column } = placeOf(argument, cell)
      while (rows.length <= row) rows.push([])
      if (content !== null) rows[row]![column] = { value: content }
    })
    const [first, last] = [placeOf(argument, 0), placeOf(argument, cells.length - 1)]
    return cells.length === 1
      ? addressOf(first.row, first.column)
      : `${addressOf(first.row, first.column)}:${addressOf(last.row, last.column)}`
  })
  return {
    texts,
    sheet: (ours, plain) => {
      rows[0]![0] = { formula: ours }
      rows[0]![widest] = { formula: plain }
      return { name: 'Call', widths: [], frozenRows: 0, frozenColumns: 0, rows: rows.map((row) => Array.from(row)) }
    },
  }
}

type Block = readonly (readonly (OpenCell | undefined)[])[]

/** What stands in both places of each sheet: our result, and the plain one. */
async function calculated(sheets: readonly Sheet[]): Promise<readonly (readonly [ours: Block, plain: Block])[]> {
  const book = await calculateBook({
    sheets: sheets.map((sheet, index) => ({ ...sheet, name: `${sheet.name} ${index + 1}` })),
    names: [],
  })
  return book.sheets.map(({ cells }) => [blockAt(cells, 0), blockAt(cells, widest)] as const)
}

function blockAt(cells: ReadonlyMap<string, OpenCell>, column: number): Block {
  const block: (OpenCell | undefined)[][] = []
  for (let row = 0; row === 0 || block[row - 1]!.length > 0; row++) {
    const inRow = Array.from({ length: widest }, (_, beside) => cells.get(addressOf(row, column + beside)))
    while (inRow.length > 0 && inRow.at(-1) === undefined) inRow.pop()
    block.push(inRow)
  }
  return block.slice(0, -1)
}

function formulaOf(plain: PlainCall): string {
  if (!('formula' in plain)) throw new Error(plain.reason)
  return plain.formula
}

const plainOf = (definition: Definition, texts: readonly string[]) => plainFormula(definition, texts)
const withFormula = catalogue.filter((definition) => 'formula' in plainOf(definition, []))
const without = catalogue.filter((definition) => !withFormula.includes(definition))

test('only these have no plain formula: each says why, and gives a formula that checks the answer where there can be one', () => {
  expect(without.map(({ id }) => id).sort()).toEqual([
    'BUYPLAN',
    'CUTTINGS',
    'ODDS',
    'ONTRACK',
    'OVERSTICK',
    'STOCKPLAN',
    'SWINGS',
    'UNITS',
  ])
  expect(
    without
      .filter((definition) => 'check' in plainOf(definition, []))
      .map(({ id }) => id)
      .sort(),
  ).toEqual(Object.keys(checkedCalls).sort())
  for (const definition of without)
    expect(plainOf(definition, [])).toMatchObject({ reason: expect.stringMatching(/^[A-Z].+\.$/) as unknown })
})

test.each(withFormula.map((definition) => [definition.id, definition] as const))(
  'the plain formula of STICK.%s agrees with the function, cell by cell, over random cells',
  async (id, definition) => {
    const calls = fc.sample(callOf(definition), { numRuns: callsOfEach, seed: 1000 })
    const sheets = calls.map((one) => {
      const { texts, sheet } = laidOut(one)
      return sheet(`=STICK.${id}(${texts.join(',')})`, formulaOf(plainOf(definition, texts)))
    })
    let values = 0
    ;(await calculated(sheets)).forEach(([ours, plain], index) => {
      const what = `${sheets[index]!.rows[0]![0]!.formula!} beside ${sheets[index]!.rows[0]![widest]!.formula!} of ${JSON.stringify(calls[index])}`
      const [first] = ours[0]!
      if (errorOf(first) === undefined) values++
      expect(errorOf(first) ?? '#N/A', what).toBe('#N/A')
      expect(
        plain.map((row) => row.length),
        what,
      ).toEqual(ours.map((row) => row.length))
      ours.forEach((row, at) =>
        row.forEach((cell, column) =>
          expectSame(cell, plain[at]![column], `${what}, row ${at + 1}, column ${column + 1}`),
        ),
      )
    })
    expect(values, 'calls that have an answer').toBeGreaterThan(callsOfEach / 4)
  },
)

/** Excel computes in binary, so numbers may differ in their last digits. */
function expectSame(ours: OpenCell | undefined, plain: OpenCell | undefined, what: string): void {
  if (typeof ours?.value !== 'number' || typeof plain?.value !== 'number') {
    expect(plain?.value, what).toEqual(ours?.value)
    return
  }
  expect(Math.abs(plain.value - ours.value), what).toBeLessThanOrEqual(1e-9 * Math.abs(ours.value) + 1e-10)
}

/** Calls that the check of a function covers. The engine's BINOM.DIST, unlike Excel's, has no answer from about a thousand trials on. */
const checkedCalls: Readonly<Record<string, readonly (readonly Argument[])[]>> = {
  CUTTINGS: [
    [[51], [0.9], [0.95]],
    [[500], [0.9, 0.95], [0.99]],
    [[1], [0.5], [0.5]],
  ],
  OVERSTICK: [
    [[100], [0.8], [0.1], [1.5]],
    [[500], [0.9, 0.95], [0.08], [0.9], [0.05]],
  ],
  ONTRACK: [
    [[51], [60], [0.9]],
    [[40], [30, 20], [0.9], [0.05]],
    [[40], [30, 20], [0.9, 0.8], [0], [0.9], [0.95]],
  ],
  UNITS: [
    [[1], ['ft3'], ['L']],
    [[2.5], ['in'], ['m']],
    [[40], ['kg'], ['g']],
    [[0], ['m'], ['in']],
  ],
  BUYPLAN: [
    [[340], ['Perlite 100 L', 'Perlite 20 L'], [100, 20], [18, 4.2]],
    [
      [500],
      ['Mix 60 L', 'Mix 70 L', 'Bale 250 L'],
      [60, 70, 250],
      [9, 10, 40],
      [8, null, null],
      [8.5, null, null],
      [null, 100, 1],
      [1, 2, 1],
      ['North', 'North', 'South'],
      [25, null, 30],
    ],
  ],
  STOCKPLAN: [
    [[10, 20, 30, 40], [30], [1]],
    [[100, 100, 100], [40, 40, 40], [0.1], [2, 2, 3], [50]],
  ],
  SWINGS: [[['MEDIUMCOST'], ['cuttingVolumeMl', 'costPerLitre'], [50, 0.1], [65, 0.15], [80, 0.2]]],
}

test.each(Object.entries(checkedCalls))(
  'the formula that checks STICK.%s is true of what the function gives, and of no count that is one off',
  async (id, calls) => {
    const definition = definitionOf(id)
    const sheets = calls.flatMap((given) => {
      const { texts, sheet } = laidOut({ lies: 'column', given })
      const outcome = call(
        definition,
        given.map((argument, index) => handedOver(argument, Object.values(definition.parameters)[index]!, 'column')),
      )
      if (outcome.kind !== 'value') throw new Error(JSON.stringify(outcome))
      const answer =
        typeof outcome.value === 'number'
          ? 'A1'
          : `A1:${addressOf(outcome.value.length - 1, outcome.value[0]!.length - 1)}`
      const plain = plainOf(definition, texts)
      if (!('check' in plain)) throw new Error(`${id} gives no check`)
      const check = plain.check!.replaceAll(new RegExp(`\\b${definition.result.name}\\b`, 'g'), answer)
      const ours = `=STICK.${id}(${texts.join(',')})`
      return definition.result.unit === 'cuttings'
        ? [sheet(ours, check), sheet(`${ours}-1`, check)]
        : [sheet(ours, check)]
    })
    ;(await calculated(sheets)).forEach(([, plain], index) => {
      const isOff = sheets[index]!.rows[0]![0]!.formula!.endsWith('-1')
      expect(
        plain.map((row) => row.map((cell) => cell?.value)),
        sheets[index]!.rows[0]![widest]!.formula,
      ).toEqual([[!isOff]])
    })
  },
)

/** What the function and its plain formula give for arguments that are typed numbers. */
async function besideEachOther(
  id: string,
  calls: readonly (readonly number[])[],
): Promise<readonly (readonly unknown[])[]> {
  const blocks = await calculated(
    calls.map((given) => {
      const texts = given.map(String)
      return laidOut({ lies: 'column', given: [] }).sheet(
        `=STICK.${id}(${texts.join(',')})`,
        formulaOf(plainOf(definitionOf(id), texts)),
      )
    }),
  )
  return blocks.map((pair) => pair.map((block) => block[0]![0]?.value))
}

test('what is left out and has no default is an empty text in the plain formula, which counts as blank', () => {
  const standing = plainOf(definitionOf('STANDING'), ['A1:A3', 'B1:B3', 'C1:C3'])
  expect('formula' in standing && standing.formula).toContain('IF(LEN("")>0')
})

test('an exact tie counts as reached in the plain formula of BREAKEVEN as in the function, for small money and for large', async () => {
  // Over so many rounds first cost and washing come to exactly single use, as the sheet shows it in 15 digits.
  const ties = [0.001, 1, 1000, 100_000].flatMap((scale) => [2, 7, 9, 13, 46, 56].map((rounds) => ({ scale, rounds })))
  const calls = ties.map(({ scale, rounds }) => {
    const [firstCost, washCost] = [Number((600 * scale).toPrecision(15)), Number((0.34 * scale).toPrecision(15))]
    return [Number(((firstCost - washCost) / rounds + washCost).toPrecision(15)), firstCost, washCost]
  })
  const given = await besideEachOther('BREAKEVEN', calls)
  ties.forEach(({ rounds }, index) => expect(given[index], calls[index]!.join(' ')).toEqual([rounds, rounds]))
})

test('the dust that a stock leaves of a sum of the very need buys no bag in the plain formula of BAGS nor in the function', async () => {
  const needs = [23.7, 49.8, 0.1, 12.3].map((part) => ({
    need: Array<number>(75)
      .fill(part)
      .reduce((sum, one) => sum + one),
    stock: Number((75 * part).toPrecision(15)),
  }))
  const given = await besideEachOther(
    'BAGS',
    needs.map(({ need, stock }) => [need, 60, 1, stock]),
  )
  for (const bags of given.flat()) expect(bags).toBeCloseTo(0, 12)
})
