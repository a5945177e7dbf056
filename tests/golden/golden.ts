/** Published values against the cell functions: the expected value first, beside it its source and how that was seen. */
import { expect, test } from 'vitest'
import { call } from '../../src/derived/call'
import { workingOf } from '../../src/derived/working'
import { catalogue } from '../../src/functions/catalogue'
import { bibliography, type SourceKey } from '../../src/sources/bibliography'

/** How an expected value was seen. A row that does not say so does not compile. */
const howSeen = {
  /** In the source itself, or given by the program that the source names. */
  print: 'in print',
  /** In a stored copy of the source, or of a text that quotes it. */
  copy: 'in a stored copy',
  /** Worked out from the definition, or from figures that were read in the source. */
  arithmetic: 'by arithmetic',
  /** Not found to be read again: the value may be right, the source is not proven. */
  memory: 'from memory',
} as const

export type Seen = keyof typeof howSeen

export interface GoldenRow {
  readonly expected: number
  /** How far the source's own rounding lets the value lie off. */
  readonly within: number
  readonly is: string
  readonly computed: () => number
  readonly source: SourceKey
  readonly seen: Seen
}

export interface MisprintRow {
  readonly printed: number
  readonly expected: number
  readonly within: number
  readonly is: string
  readonly computed: () => number
  readonly source: SourceKey
  /** How the misprint was seen; what is right follows by arithmetic. */
  readonly seen: Seen
}

/** Calls a function of the catalogue and insists on one number. A nested array is a column. */
export function value(id: string, ...args: readonly unknown[]): number {
  const outcome = call(definition(id), args.map(asRange))
  if (outcome.kind !== 'value' || typeof outcome.value !== 'number')
    throw new Error(`${id}: ${JSON.stringify(outcome)}`)
  return outcome.value
}

/** The column of numbers that a spilling function gives. */
export function column(id: string, ...args: readonly unknown[]): readonly number[] {
  const outcome = call(definition(id), args.map(asRange))
  if (outcome.kind !== 'value' || typeof outcome.value === 'number')
    throw new Error(`${id}: ${JSON.stringify(outcome)}`)
  return outcome.value.flat().map((cell) => {
    if (typeof cell !== 'number') throw new Error(`${id} gives a text: ${cell}`)
    return cell
  })
}

/** The rows of a table below its headings. */
export function table(id: string, ...args: readonly unknown[]): readonly (readonly (number | string)[])[] {
  const outcome = call(definition(id), args.map(asRange))
  if (outcome.kind !== 'value' || typeof outcome.value === 'number')
    throw new Error(`${id}: ${JSON.stringify(outcome)}`)
  return outcome.value.slice(1)
}

/** The number that a table holds in the first row that starts with that name or number, under that heading. */
export function cellOf(id: string, row: number | string, heading: string, ...args: readonly unknown[]): number {
  const outcome = call(definition(id), args.map(asRange))
  if (outcome.kind !== 'value' || typeof outcome.value === 'number')
    throw new Error(`${id}: ${JSON.stringify(outcome)}`)
  const [headings = [], ...rows] = outcome.value
  const found = rows.find(([first]) => first === row)?.[headings.indexOf(heading)]
  if (typeof found !== 'number')
    throw new Error(`${id} has no number under ${heading} for ${row}: ${JSON.stringify(outcome.value)}`)
  return found
}

export function refusal(id: string, ...args: readonly unknown[]): { readonly code: string; readonly sentence: string } {
  const outcome = call(definition(id), args.map(asRange))
  if (outcome.kind !== 'error') throw new Error(`${id} was not refused: ${JSON.stringify(outcome)}`)
  return outcome
}

/** One named step of a working. */
export function step(name: string, id: string, ...args: readonly unknown[]): number {
  const working = workingOf(definition(id), args.map(asRange))
  const found = 'steps' in working ? working.steps.find((line) => line.name === name) : undefined
  if (typeof found?.value !== 'number') throw new Error(`${id} has no step ${name}: ${JSON.stringify(working)}`)
  return found.value
}

export function definition(id: string) {
  const found = catalogue.find((one) => one.id === id)
  if (found === undefined) throw new Error(`no function ${id}`)
  return found
}

function asRange(argument: unknown): unknown {
  return Array.isArray(argument) && !Array.isArray(argument[0]) ? argument.map((one: unknown) => [one]) : argument
}

export function goldenTests(rows: readonly GoldenRow[], misprints: readonly MisprintRow[] = []): void {
  test('the table of published values is not empty', () => expect(rows.length).toBeGreaterThan(0))
  for (const { expected, within, is, computed, source, seen } of rows) {
    test(`${is} is ${expected} (${bibliography[source].title}, ${howSeen[seen]})`, () => {
      const got = computed()
      expect(Math.abs(got - expected), `got ${got}`).toBeLessThanOrEqual(within)
    })
  }
  for (const { printed, expected, within, is, computed, source, seen } of misprints) {
    test(`${is} is ${expected}, and not ${printed} as misprinted (${bibliography[source].title}, ${howSeen[seen]})`, () => {
      const got = computed()
      expect(Math.abs(got - expected), `got ${got}`).toBeLessThanOrEqual(within)
      expect(Math.abs(got - printed), `got the misprint ${got}`).toBeGreaterThan(within)
    })
  }
}
