import {
  defineTable,
  placeOf,
  type CellFunction,
  type TableFunction,
  type TableRow,
  type TextsOf,
  type WorkingStep,
} from '../../core/definition/definition'
import { evaluate } from '../../core/definition/evaluate'
import { number, withExamples } from '../../core/definition/parameter'
import { stepsInDoubles } from '../../core/definition/stepsInDoubles'
import { randomNumbers } from '../../core/method/randomNumbers'
import { quantileOf } from '../../core/method/triangular'
import { Decimal, toCell } from '../../core/quantity/decimal'
import { argumentsOf, askedParameters, endsOf, endWithoutAnswer, readAsked, type Asked } from './asked'

/** Functions that search for their answer take about a millisecond a draw, and a cell may not take many seconds. */
const mostDrawsOfSearch = 1000
const shares = [0, 0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99, 1]
const digitsShown = 10
/** What a result of 0 may be off by in doubles, as a power of ten below the largest result. */
const dustBelowLargest = 12

const parameters = {
  ...withExamples(askedParameters, {
    functionName: 'PERLINER',
    argumentNames: 'costPerCutting',
    lows: 0.07,
    likelies: 0.08,
    highs: 0.1,
  }),
  draws: number('draws', {
    text: 'how many draws of random values are made; at most 1,000 for functions that search, such as CUTTINGS and BREAKEVEN',
    example: 100,
    default: 10_000,
    atLeast: 100,
    atMost: 100_000,
    whole: true,
  }),
  seed: number('seed', {
    text: 'the number from which the random values start: the same one gives the same draws',
    example: 7,
    default: 1,
    atLeast: 0,
    atMost: 2 ** 32 - 1,
    whole: true,
  }),
}

const columns = {
  share: { heading: 'share of draws' },
  result: { heading: 'result' },
}

/** @param functions Those that can be asked for. They are handed over, since the list that holds them holds this one. */
export function oddsOver(functions: readonly CellFunction[]): TableFunction<typeof parameters, typeof columns> {
  return defineTable({
    id: 'ODDS',
    subject: 'review',
    parameters,
    result: { name: 'odds', unit: 'table', columns },
    method: ({ draws, seed, ...args }) => {
      const asked = readAsked(functions, args)
      if ('problem' in asked) return asked
      if (!('steps' in asked.of.body) && draws.gt(mostDrawsOfSearch)) {
        return {
          problem: {
            code: 'tooManyDraws',
            parameter: 'draws',
            value: draws.toString(),
            of: asked.of.id,
            most: mostDrawsOfSearch,
          },
        }
      }
      const ends = endsOf(asked)
      if ('problem' in ends) return ends
      if (typeof ends.likely !== 'number') return { problem: endWithoutAnswer(asked, ends)! }

      const draw = drawn(asked, draws.toNumber(), seed.toNumber())
      if (draw.answers.length === 0)
        return { problem: { kind: 'noAnswer', code: 'noDrawHasAnswer', of: asked.of.id, draws: draws.toString() } }
      const found = oddsIn(draw, ends.likely, draws)
      return { table: tableOf(found), working: () => workingOf(asked, draw, found) }
    },
    over: functions,
  })
}

export const oddsText: TextsOf<ReturnType<typeof oddsOver>> = {
  summary:
    'How likely each result of another function is, when its arguments may lie anywhere between a low and a high.',
  convention:
    'A draw takes a random value of each argument between its low and its high, most often near its likely one (a triangular distribution), and calculates the result. Each argument is drawn by itself: what moves together is not shown. Whole arguments are rounded to the nearest whole number. A draw with which the function has no answer is counted in the last row, and the other rows are of the others. A result below which a given share of the draws lies is a percentile; between two draws it is interpolated, as by PERCENTILE.INC. The draws come from the Mersenne Twister MT19937, the result is rounded to 10 significant digits, and the same seed and rows give the same numbers on every machine; another seed shows how far they depend on chance.',
  result:
    'the result below which each share of the draws lies, then the mean, what it is with all likely values, and how many draws have no answer',
  columns: {
    share: {
      text: 'which share of the draws that have an answer lies at or below the result beside it, 0 for the least and 1 for the largest; or what the last rows hold',
      unit: 'share',
    },
    result: {
      text: 'the result of the function, and in the last row a number of draws',
      unit: 'in the unit of the result',
    },
  },
  plain: () => ({
    reason:
      'RAND of Excel cannot be given a seed, so no plain formula makes these draws again. SWINGS shows the two ends of each argument without any draws.',
  }),
  examples: [
    {
      text: 'Cost of a liner where the cost of a cutting and both stages of losses are uncertain',
      given: [
        'PERLINER',
        ['costPerCutting', 'stageRates', 'stageRates'],
        [0.07, 0.7, 0.9],
        [0.08, 0.85, 0.95],
        [0.1, 0.9, 1],
      ],
      gives: [
        [0, 0.08189562359],
        [0.01, 0.08853617884],
        [0.05, 0.09269515309],
        [0.1, 0.09529835766],
        [0.25, 0.1002373647],
        [0.5, 0.106885046],
        [0.75, 0.114479477],
        [0.9, 0.1214479018],
        [0.95, 0.1260918817],
        [0.99, 0.1341051129],
        [1, 0.1457909145],
        ['mean', 0.1078074908],
        ['all likely', 0.09907120743],
        ['draws without answer', 0],
      ],
      source: 'numpy-random',
    },
    {
      text: 'Where nothing is uncertain, every draw is the same',
      given: ['MEDIUMCOST', ['cuttingVolumeMl', 'costPerLitre'], [60, 0.15], [60, 0.15], [60, 0.15], 100, 7],
      gives: [
        [0, 0.009],
        [0.01, 0.009],
        [0.05, 0.009],
        [0.1, 0.009],
        [0.25, 0.009],
        [0.5, 0.009],
        [0.75, 0.009],
        [0.9, 0.009],
        [0.95, 0.009],
        [0.99, 0.009],
        [1, 0.009],
        ['mean', 0.009],
        ['all likely', 0.009],
        ['draws without answer', 0],
      ],
      source: 'definition',
    },
  ],
}

interface Drawn {
  /** The arguments of the first draw. */
  readonly first: readonly number[]
  /** The results that there are, ascending. */
  readonly answers: Float64Array
}

/** What the draws say, rounded. */
interface Odds {
  readonly percentiles: readonly Decimal[]
  readonly mean: Decimal
  readonly likely: Decimal
  readonly without: Decimal
}

function oddsIn({ answers }: Drawn, likely: number, draws: Decimal): Odds {
  const rounded = roundingFor(answers)
  return {
    percentiles: shares.map((share) => rounded(percentile(answers, share))),
    mean: rounded(answers.reduce((total, answer) => total + answer, 0) / answers.length),
    likely: rounded(likely),
    without: draws.sub(answers.length),
  }
}

function tableOf({ percentiles, mean, likely, without }: Odds): readonly TableRow<typeof columns>[] {
  return [
    ...shares.map((share, index) => ({ share: new Decimal(share), result: percentiles[index]! })),
    { share: { fact: 'mean' }, result: mean },
    { share: { fact: 'allLikely' }, result: likely },
    { share: { fact: 'drawsWithoutAnswer' }, result: without },
  ]
}

function workingOf(
  { of, rows }: Asked,
  { first }: Drawn,
  { percentiles, mean, likely, without }: Odds,
): readonly WorkingStep[] {
  const { unit } = of.result
  return [
    {
      name: 'arguments',
      text: 'the arguments that are drawn',
      formula: 'argumentNames',
      value: rows.map(({ label }) => label),
      unit: 'text',
    },
    {
      name: 'firstDraw',
      text: 'the first draw of each, so that one draw can be followed by hand',
      formula:
        'low + SQRT(u (high - low)(likely - low)) where u is less than (likely - low) / (high - low), else high - SQRT((1 - u)(high - low)(high - likely)); u random',
      value: first.map((value) => new Decimal(value)),
      unit: 'in the units of the arguments',
    },
    {
      name: 'allLikely',
      text: { fact: 'allLikelyOf', id: of.id },
      formula: `${of.id} of the likelies`,
      value: likely,
      unit,
    },
    {
      name: 'withoutAnswer',
      text: 'draws with which the function has no answer',
      formula: 'draws - those with an answer',
      value: without,
      unit: 'draws',
    },
    { name: 'mean', text: 'mean of the draws that have an answer', formula: 'SUM / COUNT', value: mean, unit },
    {
      name: 'percentiles',
      text: `results below which ${shares.map((share) => `${share * 100}`).join(', ')} % of these draws lie`,
      formula: 'PERCENTILE.INC of these draws',
      value: percentiles,
      unit,
    },
  ]
}

function drawn(asked: Asked, draws: number, seed: number): Drawn {
  const random = randomNumbers(seed)
  const ranges = asked.rows.map(({ parameter, low, likely, high }) => ({
    low: toCell(low),
    likely: toCell(likely),
    high: toCell(high),
    whole: asked.of.parameters[parameter]!.whole === true,
  }))
  const values = ranges.map(({ likely }) => likely)
  const compute = computing(asked)
  const answers = new Float64Array(draws)
  let [first, answered]: [readonly number[], number] = [values, 0]
  for (let draw = 0; draw < draws; draw++) {
    for (let row = 0; row < ranges.length; row++) {
      // An argument without doubt takes a random number too, so that taking doubt away from one leaves the others' draws.
      const value = quantileOf(ranges[row]!, random())
      values[row] = ranges[row]!.whole ? Math.round(value) : value
    }
    if (draw === 0) first = [...values]
    const answer = compute(values)
    if (Number.isFinite(answer)) answers[answered++] = answer
  }
  return { first, answers: answers.subarray(0, answered).sort() }
}

/** From a value for each row to the function's result, or to no finite number where it has none. */
function computing(asked: Asked): (values: readonly number[]) => number {
  const { of, rows } = asked
  if (!('steps' in of.body)) {
    return (values) => {
      const evaluation = evaluate(of, argumentsOf(asked, values))
      return 'result' in evaluation ? (evaluation.result as number) : NaN
    }
  }
  const names = Object.keys(of.parameters)
  const run = stepsInDoubles(of.body.steps, names)
  const atLikely = evaluate(
    of,
    argumentsOf(
      asked,
      rows.map(({ likely }) => toCell(likely)),
    ),
  )
  if (!('result' in atLikely)) throw new Error(`${of.id} was computed with these numbers before`)
  const slots = names.map((name) => {
    const value = atLikely.args[name]
    return Array.isArray(value) ? value.map(Number) : Number(value)
  })
  const cells = rows.map(({ parameter, place }) => {
    const slot = placeOf(of, parameter)
    const line = slots[slot]
    // A single cell stands for the whole range where it may.
    const standsForAll = rows.filter((row) => row.parameter === parameter).length === 1
    return { slot, places: !Array.isArray(line) ? undefined : standsForAll ? [...line.keys()] : [place] }
  })
  const copies = Object.entries(of.parameters).flatMap(([name, parameter], slot) =>
    typeof parameter.default === 'object' && !rows.some((row) => row.parameter === name)
      ? [{ slot, from: placeOf(of, parameter.default.sameAs) }]
      : [],
  )
  return (values) => {
    for (let row = 0; row < cells.length; row++) {
      const { slot, places } = cells[row]!
      if (places === undefined) slots[slot] = values[row]!
      else for (const place of places) (slots[slot] as number[])[place] = values[row]!
    }
    for (const { slot, from } of copies) slots[slot] = slots[from]!
    return run(slots) as number
  }
}

/** Between two draws in proportion, as PERCENTILE.INC of Excel. */
function percentile(ascending: Float64Array, share: number): number {
  const position = share * (ascending.length - 1)
  const below = Math.floor(position)
  const [lower, upper] = [ascending[below]!, ascending[Math.min(below + 1, ascending.length - 1)]!]
  return lower + (upper - lower) * (position - below)
}

/** To the digits that are shown, and no finer than the dust of the largest answer. */
function roundingFor(ascending: Float64Array): (value: number) => Decimal {
  const largest = Decimal.max(Math.abs(ascending[0]!), Math.abs(ascending.at(-1)!))
  const places = Math.max(0, dustBelowLargest - largest.e)
  return (value) => new Decimal(value).toSignificantDigits(digitsShown).toDecimalPlaces(places)
}
