/** The plain Excel formula of each function gives what the function gives: both are calculated side by side in the grid's engine. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Definition } from '../../src/core/definition/definition'
import type { Parameter } from '../../src/core/definition/parameter'
import { plainFormula } from '../../src/derived/plainFormula'
import { catalogue } from '../../src/functions/catalogue'
import { calculateBook } from '../../src/workbench/engine/calculate'
import type { Book, Cell } from '../../src/workbook/book'
import type { CalculatedCell } from '../../src/workbook/calculated'

const callsOfEach = 60
/** A range of a call takes this many cells of its row. */
const cellsOfRange = 3
const firstInput = 2

interface Call { readonly cells: readonly (Cell | undefined)[]; readonly argumentTexts: readonly string[] }

/** A plausible value: short decimals, as people type them. */
function inputOf(parameter: Parameter): fc.Arbitrary<number> {
  const { atLeast, above, atMost, below, whole, share } = parameter
  if (share === true) return fc.integer({ min: above === undefined ? 0 : 50, max: below === 1 || atMost === 1 ? 950 : 400 }).map((permille) => permille / 1000)
  const low = Math.max(atLeast ?? 0, above === undefined ? 0 : 1)
  if (whole === true) return fc.integer({ min: low, max: Math.min(atMost ?? 150, 150) })
  return fc.integer({ min: above === undefined ? 0 : 10, max: Math.min((atMost ?? 500) * 100, 50_000) }).map((hundredths) => hundredths / 100)
}

function columnName(column: number): string {
  return column < 26 ? String.fromCharCode(65 + column) : `A${String.fromCharCode(65 + column - 26)}`
}

/** Lays the arguments of one call out in a row; some optional ones are blank cells, and some are left out at the end. */
function callInRow(definition: Definition, row: number): fc.Arbitrary<Call> {
  const parameters = Object.values(definition.parameters)
  const required = parameters.filter(({ optional }) => !optional).length
  const values = parameters.map((parameter) => {
    const filled = parameter.shape === 'line' ? fc.array(inputOf(parameter).map((value) => Math.max(value, 0.05)), { minLength: cellsOfRange, maxLength: cellsOfRange }) : inputOf(parameter).map((value) => [value])
    return parameter.optional ? fc.option(filled, { freq: 3 }) : filled
  })
  return fc.tuple(fc.integer({ min: required, max: parameters.length }), fc.tuple(...values)).map(([given, arguments_]) => {
    const cells: (Cell | undefined)[] = []
    const argumentTexts = arguments_.slice(0, given).map((argument, index) => {
      const width = parameters[index]!.shape === 'line' ? cellsOfRange : 1
      const from = firstInput + cells.length
      for (let cell = 0; cell < width; cell++) cells.push(argument === null ? undefined : { value: argument[cell]! })
      const first = `$${columnName(from)}${row}`
      return width === 1 ? first : `${first}:$${columnName(from + width - 1)}${row}`
    })
    return { cells, argumentTexts }
  })
}

/** The engine gives #REF! for a SEQUENCE that reaches below the sheet's last row, so empty rows follow. */
async function calculated(rows: Book['sheets'][number]['rows']): Promise<ReadonlyMap<string, CalculatedCell>> {
  const room = Array.from({ length: 250 }, (): Cell[] => [{ value: '' }])
  const book: Book = { sheets: [{ name: 'Calls', widths: [], frozenRows: 0, frozenColumns: 0, rows: [...rows, ...room] }], names: [] }
  return (await calculateBook(book)).sheets[0]!.cells
}

const withFormula = catalogue.filter((definition) => 'formula' in plainFormula(definition, Object.keys(definition.parameters).map((_, index) => `A${index + 1}`)))

test('all but CUTTINGS and UNITS have a plain formula, and those two say why not', () => {
  const without = catalogue.filter((definition) => !withFormula.includes(definition))
  expect(without.map(({ id }) => id)).toEqual(['CUTTINGS', 'UNITS'])
})

test.each(withFormula.map((definition) => [definition.id, definition] as const))('the plain formula of STICK.%s agrees with the function over random cells', async (id, definition) => {
  const calls = fc.sample(fc.constant(null), callsOfEach).map((_, index) => fc.sample(callInRow(definition, index + 1), { numRuns: 1, seed: 1000 + index })[0]!)
  const rows = calls.map(({ cells, argumentTexts }): (Cell | undefined)[] => {
    const plain = plainFormula(definition, argumentTexts)
    if (!('formula' in plain)) throw new Error(plain.reason)
    // A function that fills several cells is compared by their sum.
    const whole = (formula: string) => definition.result.like === undefined ? formula : `=SUM(${formula.slice(1)})`
    return [{ formula: whole(`=STICK.${id}(${argumentTexts.join(',')})`) }, { formula: whole(plain.formula) }, ...cells]
  })
  const cells = await calculated(rows)
  let numbers = 0
  rows.forEach((row, index) => {
    const [ours, plain] = [cells.get(`A${index + 1}`), cells.get(`B${index + 1}`)]
    const what = `${row[0]?.formula ?? ''} beside ${row[1]?.formula ?? ''} of ${row.slice(2).map((cell) => cell?.value ?? 'blank').join(' ')}`
    // A refusal has no plain twin, and an answer that does not exist is #N/A on both sides.
    if (ours?.error === '#N/A') expect(plain?.error, what).toBe('#N/A')
    if (typeof ours?.value !== 'number' || ours.error !== undefined) return
    numbers++
    if (typeof plain?.value !== 'number') throw new Error(`${what} gives ${JSON.stringify(plain)}`)
    expect(Math.abs(plain.value - ours.value), what).toBeLessThanOrEqual(1e-9 * Math.abs(ours.value) + 1e-12)
  })
  expect(numbers, 'numbers that were compared').toBeGreaterThan(callsOfEach / 4)
})

function numberIn(cell: CalculatedCell | undefined): number {
  if (typeof cell?.value !== 'number') throw new Error(`no number, but ${JSON.stringify(cell)}`)
  return cell.value
}

/** What the function and its plain formula give for arguments that are typed numbers, one call a row. */
async function besideEachOther(id: string, calls: readonly (readonly number[])[]): Promise<readonly (readonly [number, number])[]> {
  const definition = catalogue.find((one) => one.id === id)!
  const rows = calls.map((given) => {
    const texts = given.map(String)
    const plain = plainFormula(definition, texts)
    if (!('formula' in plain)) throw new Error(plain.reason)
    return [{ formula: `=STICK.${id}(${texts.join(',')})` }, { formula: plain.formula }]
  })
  const cells = await calculated(rows)
  return rows.map((_, index) => [numberIn(cells.get(`A${index + 1}`)), numberIn(cells.get(`B${index + 1}`))] as const)
}

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
  const needs = [23.7, 49.8, 0.1, 12.3].map((part) => ({ need: Array<number>(75).fill(part).reduce((sum, one) => sum + one), stock: Number((75 * part).toPrecision(15)) }))
  const given = await besideEachOther('BAGS', needs.map(({ need, stock }) => [need, 60, 1, stock]))
  for (const bags of given.flat()) expect(bags).toBeCloseTo(0, 12)
})
