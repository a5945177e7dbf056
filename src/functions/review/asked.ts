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
    text: 'what it most likely is; where there is no doubt, all three are the same',
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

export function readAsked(
  functions: readonly CellFunction[],
  { functionName, argumentNames, lows, likelies, highs }: Given,
): Asked | Refused {
  if (argumentNames.length > mostRows)
    return { problem: { code: 'tooManyRows', parameter: 'argumentNames', got: argumentNames.length, most: mostRows } }
  const wanted = functionName.toUpperCase().replace(/^STICK\./, '')
  const of = functions.find(({ id }) => id === wanted)
  if (of === undefined)
    return {
      problem: {
        code: 'functionUnknown',
        parameter: 'functionName',
        value: functionName,
        known: functions.map(({ id }) => id),
      },
    }
  const known = Object.keys(of.parameters).filter((name) => of.parameters[name]!.takes === 'number')
  const cellsOf = new Map<string, number>()
  const rows: AskedRow[] = []
  for (const [index, typed] of argumentNames.entries()) {
    const row = index + 1
    const parameter = known.find((name) => name.toLowerCase() === typed.toLowerCase())
    if (parameter === undefined)
      return { problem: { code: 'argumentUnknown', parameter: 'argumentNames', row, value: typed, of: of.id, known } }
    const place = cellsOf.get(parameter) ?? 0
    if (place > 0 && of.parameters[parameter]!.shape === 'cell')
      return { problem: { code: 'argumentTwice', parameter: 'argumentNames', row, value: parameter, of: of.id } }
    cellsOf.set(parameter, place + 1)
    const [low, likely, high] = [lows[index]!, likelies[index]!, highs[index]!]
    if (low.gt(likely))
      return {
        problem: {
          code: 'aboveOther',
          parameter: 'lows',
          row,
          value: low.toString(),
          other: 'likelies',
          otherValue: likely.toString(),
        },
      }
    if (likely.gt(high))
      return {
        problem: {
          code: 'aboveOther',
          parameter: 'likelies',
          row,
          value: likely.toString(),
          other: 'highs',
          otherValue: high.toString(),
        },
      }
    rows.push({ label: parameter, parameter, place, low, likely, high })
  }
  const missing = known.find((name) => !of.parameters[name]!.optional && !cellsOf.has(name))
  if (missing !== undefined)
    return { problem: { code: 'argumentMissing', parameter: 'argumentNames', missing, of: of.id } }
  return {
    of,
    rows: rows.map((row) =>
      cellsOf.get(row.parameter) === 1 ? row : { ...row, label: `${row.label} ${row.place + 1}` },
    ),
  }
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
