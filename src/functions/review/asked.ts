/** What SWINGS and ODDS have in common: another function, asked for by name with arguments that are uncertain. */
import { fillsOneCell, type CellFunction, type RefusalWithoutKind } from '../../core/definition/definition'
import { evaluate } from '../../core/definition/evaluate'
import { signedNumbers, text, texts } from '../../core/definition/parameter'
import type { NoAnswer } from '../../core/definition/problem'
import { toCell, type Decimal } from '../../core/quantity/decimal'

/** The functions that can be asked for by numbers alone, and answer with one number. */
export function thoseOfNumbers(functions: readonly CellFunction[]): readonly CellFunction[] {
  return functions.filter(
    ({ parameters, result }) =>
      fillsOneCell(result) && Object.values(parameters).every(({ takes, optional }) => takes === 'number' || optional),
  )
}

/** Every row is one more argument in each of up to 100,000 draws, and a cell may not take many seconds. */
const mostRows = 50

const unit = 'in the unit of the argument'

export const askedParameters = {
  functionName: text({
    text: 'the function to ask for by name; any that takes numbers and gives one',
    example: 'MEDIUMCOST',
  }),
  argumentNames: texts({
    text: 'its arguments by name, one a row; the same range again is its next cell, so stageRates three times are three stages',
    example: 'cuttingVolumeMl',
  }),
  lows: signedNumbers(unit, { text: 'the least that the argument can be', example: 50 }),
  likelies: signedNumbers(unit, {
    text: 'what it most likely is; where it is certain, all three are the same',
    example: 65,
  }),
  highs: signedNumbers(unit, { text: 'the most that it can be', example: 80 }),
}

export interface AskedRow {
  /** As the user is shown it: "settle", or "stageRates 2" where the range has several cells. */
  readonly label: string
  readonly parameter: string
  /** Which cell of the argument it is, from 0. */
  readonly place: number
  readonly low: Decimal
  readonly likely: Decimal
  readonly high: Decimal
}

export interface Asked {
  readonly of: CellFunction
  readonly rows: readonly AskedRow[]
}

interface Refused {
  readonly problem: RefusalWithoutKind
}

interface Given {
  readonly functionName: string
  readonly argumentNames: readonly string[]
  readonly lows: readonly Decimal[]
  readonly likelies: readonly Decimal[]
  readonly highs: readonly Decimal[]
}

export function readAsked(functions: readonly CellFunction[], given: Given): Asked | Refused {
  const { functionName, argumentNames } = given
  if (argumentNames.length > mostRows)
    return { problem: { code: 'tooManyRows', parameter: 'argumentNames', got: argumentNames.length, most: mostRows } }
  const wanted = functionName.toUpperCase().replace(/^STICK\./, '')
  const of = functions.find(({ id }) => id === wanted)
  if (of === undefined) {
    const known = functions.map(({ id }) => id)
    return { problem: { code: 'functionUnknown', parameter: 'functionName', value: functionName, known } }
  }
  const known = Object.keys(of.parameters).filter((name) => of.parameters[name]!.takes === 'number')
  const rows: AskedRow[] = []
  for (const index of argumentNames.keys()) {
    const row = readRow(of, known, given, index, rows)
    if ('problem' in row) return row
    rows.push(row)
  }
  const rowsOf = (name: string) => rows.filter(({ parameter }) => parameter === name)
  const missing = known.find((name) => !of.parameters[name]!.optional && rowsOf(name).length === 0)
  if (missing !== undefined)
    return { problem: { code: 'argumentMissing', parameter: 'argumentNames', missing, of: of.id } }
  const labelled = (row: AskedRow) =>
    rowsOf(row.parameter).length === 1 ? row : { ...row, label: `${row.label} ${row.place + 1}` }
  return { of, rows: rows.map(labelled) }
}

/** @param before The rows above it. */
function readRow(
  of: CellFunction,
  known: readonly string[],
  { argumentNames, lows, likelies, highs }: Given,
  index: number,
  before: readonly AskedRow[],
): AskedRow | Refused {
  const row = index + 1
  const typed = argumentNames[index]!
  const parameter = known.find((name) => name.toLowerCase() === typed.toLowerCase())
  if (parameter === undefined)
    return { problem: { code: 'argumentUnknown', parameter: 'argumentNames', row, value: typed, of: of.id, known } }
  const place = before.filter((other) => other.parameter === parameter).length
  if (place > 0 && of.parameters[parameter]!.shape === 'cell')
    return { problem: { code: 'argumentTwice', parameter: 'argumentNames', row, value: parameter, of: of.id } }
  const [low, likely, high] = [lows[index]!, likelies[index]!, highs[index]!]
  const above = (
    name: 'lows' | 'likelies',
    value: Decimal,
    other: string,
    otherValue: Decimal,
  ): RefusalWithoutKind => ({
    code: 'aboveOther',
    parameter: name,
    row,
    value: value.toString(),
    other,
    otherValue: otherValue.toString(),
  })
  if (low.gt(likely)) return { problem: above('lows', low, 'likelies', likely) }
  if (likely.gt(high)) return { problem: above('likelies', likely, 'highs', high) }
  return { label: parameter, parameter, place, low, likely, high }
}

/** The arguments of a call of the function asked for, from a value for each row. */
export function argumentsOf({ of, rows }: Asked, values: ArrayLike<number>): readonly unknown[] {
  return Object.entries(of.parameters).map(([name, { shape }]) => {
    const cells = rows.flatMap(({ parameter }, index) => (parameter === name ? [values[index]!] : []))
    if (cells.length === 0) return null
    return shape === 'cell' ? cells[0] : cells.map((cell) => [cell])
  })
}

export type Outcome = number | NoAnswer

export interface Ends {
  readonly likely: Outcome
  /** The results with the argument of one row at its low, or at its high, and all others at their likely values. */
  readonly atLow: readonly Outcome[]
  readonly atHigh: readonly Outcome[]
}

/** Computes the function with all likely values, and with each argument at its ends. It must accept them all. */
export function endsOf(asked: Asked): Ends | Refused {
  const { rows } = asked
  const likelies = rows.map(({ likely }) => toCell(likely))
  const moved = (end: 'low' | 'high') =>
    rows.map((row, index) =>
      outcomeOf(
        asked,
        likelies.map((value, other) => (other === index ? toCell(row[end]) : value)),
        `${end}s`,
        index + 1,
      ),
    )
  const [likely, atLow, atHigh] = [outcomeOf(asked, likelies, 'likelies'), moved('low'), moved('high')]
  return [likely, ...atLow, ...atHigh].find(isRefused) ?? ({ likely, atLow, atHigh } as Ends)
}

function isRefused(outcome: Outcome | Refused): outcome is Refused {
  return typeof outcome === 'object' && 'problem' in outcome
}

/** @param parameter Where the values stand that are to blame, should they be refused, and in which row. */
function outcomeOf(asked: Asked, values: readonly number[], parameter: string, row?: number): Outcome | Refused {
  const evaluation = evaluate(asked.of, argumentsOf(asked, values))
  if ('result' in evaluation && typeof evaluation.result === 'number') return evaluation.result
  const problems = 'problems' in evaluation ? evaluation.problems : []
  const [first] = problems
  if (first?.kind === 'noAnswer') return first
  return {
    problem: { code: 'functionRefused', of: asked.of.id, problems, parameter, ...(row === undefined ? {} : { row }) },
  }
}

/** The first of the ends that has no answer, as what is to be said of it. */
export function endWithoutAnswer({ of }: Asked, { likely, atLow, atHigh }: Ends): NoAnswer | undefined {
  const none = (why: Outcome, parameter: string, row?: number): NoAnswer[] =>
    typeof why === 'number'
      ? []
      : [
          {
            kind: 'noAnswer',
            code: 'functionHasNoAnswer',
            of: of.id,
            parameter,
            why,
            ...(row === undefined ? {} : { row }),
          },
        ]
  const each = (outcomes: readonly Outcome[], parameter: string) =>
    outcomes.flatMap((why, index) => none(why, parameter, index + 1))
  return [...none(likely, 'likelies'), ...each(atLow, 'lows'), ...each(atHigh, 'highs')][0]
}
