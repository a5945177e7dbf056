import { odds, swings } from '../../functions/functions'
import { formats, headings, headOf, input, result, text, type NamedSheet, type Row } from './cells'
import { blank, layOut, type RowNumbers } from './layOut'
import { naming } from './names'
import { sixWays } from './sixWays'
import { aboveTable, letterOf, spilledTable } from './spilledTable'

interface Uncertain {
  readonly argument: string
  readonly what: string
  readonly likely: (way: (range: string) => string) => string
  readonly format: string
  readonly lower: number
  readonly higher: number
}

const { count, each, mixed, price, share } = formats

const uncertain: readonly Uncertain[] = [
  {
    argument: 'firstCost',
    what: 'Bought for, EUR',
    likely: (way) => way('WayFirstCost'),
    format: price,
    lower: 0.1,
    higher: 0.15,
  },
  {
    argument: 'rounds',
    what: 'Rounds it serves',
    likely: (way) => way('WayRounds'),
    format: count,
    lower: 0.5,
    higher: 0.25,
  },
  {
    argument: 'cuttingsPerRound',
    what: 'Places used',
    likely: (way) => way('WayPlacesUsed'),
    format: count,
    lower: 0.08,
    higher: 0.02,
  },
  {
    argument: 'yield',
    what: 'Overall rate',
    likely: (way) => way('WayRate'),
    format: share,
    lower: 0.12,
    higher: 0.05,
  },
  {
    argument: 'washCost',
    what: 'Washed for, EUR',
    likely: (way) => way('WayWash'),
    format: price,
    lower: 0.2,
    higher: 0.4,
  },
  {
    argument: 'topUpShare',
    what: 'Topped up',
    likely: (way) => way('WayTopUp'),
    format: share,
    lower: 0.25,
    higher: 0.5,
  },
  {
    argument: 'lossShare',
    what: 'Broken in a round',
    likely: (way) => way('WayLost'),
    format: share,
    lower: 0.4,
    higher: 1,
  },
  {
    argument: 'otherCostPerCutting',
    what: 'Paid every round, EUR',
    likely: (way) => way('WayOther'),
    format: each,
    lower: 0.08,
    higher: 0.15,
  },
  {
    argument: 'endValue',
    what: 'Worth at the end, EUR',
    likely: (way) => way('WayEndValue'),
    format: price,
    lower: 1,
    higher: 0,
  },
  {
    argument: 'yearlyInterest',
    what: 'Interest',
    likely: () => 'YearlyInterest',
    format: share,
    lower: 0.3,
    higher: 0.3,
  },
  {
    argument: 'roundsPerYear',
    what: 'Rounds a year',
    likely: () => 'RoundsPerYear',
    format: count,
    lower: 0,
    higher: 0,
  },
]

const rowsOfOdds = 14
/** Of the odds, right of the swings. */
const [cornerOfOdds, columnsBeforeOdds] = ['I', 8] as const

/** How sure the cost of a way is: what each doubt does alone, and what all do together. */
export function riskSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf(
      'Risk',
      'How sure the rooting cost of one way is: what each doubt alone does to a saleable liner, and how likely each cost is when all play together.',
    ),
    independent: () => [
      text(
        'The doubts are taken to have nothing to do with one another. Lower and higher: shares of the likely figure, invented. Ask those who do the work.',
      ),
    ],
    gap: blank,
    asked: () => headings('What is asked', 'Figure', '', '', '', '', ''),
    way: () => [text('Way of rooting'), input(sixWays.peat.name), undefined, text('One of the six on Ways')],
    functionName: () => [
      text('Function'),
      input('ROOTINGCOST'),
      undefined,
      text('The rooting cost for each saleable liner'),
    ],
    draws: () => [text('Draws'), input(10_000, count), undefined, text('The more, the smoother')],
    seed: () => [text('Seed'), input(1, count), undefined, text('The same seed gives the same odds on every machine')],
    gapBetween: blank,
    doubtHeading: () => headings('Argument', 'What it is', 'Likely', 'Lower by', 'Higher by', 'Low', 'High'),
    doubts: {
      height: uncertain.length,
      rows: (at) =>
        uncertain.map(({ argument, what, likely, format, lower, higher }, index) => {
          const row = at.doubts + index
          // Rounds are whole. All rows have the same formula, so that one that differs is a slip.
          const end = (formula: string) => result(`=IF(A${row}="rounds",ROUND(${formula},0),${formula})`, format)
          return [
            text(argument),
            text(what),
            result(`=${likely((range) => `INDEX(${range},MATCH(B$${at.way},WayName,0))`)}`, format),
            input(lower, share),
            input(higher, share),
            end(`C${row}-ABS(C${row})*D${row}`),
            end(`C${row}+ABS(C${row})*E${row}`),
          ]
        }),
    },
    gapBelow: blank,
    resultHeading: () => [
      ...aboveTable(swings, {
        argument: 'Each doubt alone',
        low: 'widest first',
        high: '',
        atLow: 'EUR a liner',
        likely: 'EUR a liner',
        atHigh: 'EUR a liner',
        swing: 'EUR a liner',
      }),
      undefined,
      ...aboveTable(odds, { share: 'All together', result: 'EUR a liner' }),
    ],
    results: {
      height: rowsOfOdds + 1,
      rows: (at) =>
        beside(
          spilledTable(
            swings,
            `=STICK.SWINGS(B${at.functionName},${given(at)})`,
            { argument: undefined, low: mixed, high: mixed, atLow: each, likely: each, atHigh: each, swing: each },
            uncertain.length,
          ),
          spilledTable(
            odds,
            `=STICK.ODDS(B${at.functionName},${given(at)},B${at.draws},B${at.seed})`,
            { share, result: mixed },
            rowsOfOdds,
          ),
          columnsBeforeOdds,
        ),
    },
  })
  const name = naming('Risk')
  return {
    sheet: {
      name: 'Risk',
      widths: [20, 21, 11, 11, 11, 11, 11, 2, 20, 11],
      frozenRows: at.invented,
      frozenColumns: 0,
      rows,
    },
    names: [
      name('RiskArgument', 'A', at.doubts, at.doubts + uncertain.length - 1),
      name('RiskMeaning', 'B', at.doubts, at.doubts + uncertain.length - 1),
      name('RiskiestArgument', letterOf(swings, 'argument'), at.results + 1),
      name('OddsShare', letterOf(odds, 'share', cornerOfOdds), at.results + 1, at.results + rowsOfOdds),
      name('OddsResult', letterOf(odds, 'result', cornerOfOdds), at.results + 1, at.results + rowsOfOdds),
    ],
  }
}

function given(at: RowNumbers<'doubts'>): string {
  return ['A', 'F', 'C', 'G']
    .map((column) => `${column}${at.doubts}:${column}${at.doubts + uncertain.length - 1}`)
    .join(',')
}

/** Two tables side by side, the second one from column number `column` on; both may grow downwards. */
function beside(left: readonly Row[], right: readonly Row[], column: number): readonly Row[] {
  return Array.from({ length: Math.max(left.length, right.length) }, (_, index) => {
    const before = left[index] ?? []
    return [...before, ...Array.from({ length: column - before.length }, () => undefined), ...(right[index] ?? [])]
  })
}
