import { columnOf } from '../../core/definition/columns'
import {
  defineTable,
  type CellFunction,
  type TableFunction,
  type TextsOf,
  type WorkingStep,
} from '../../core/definition/definition'
import { asShown, Decimal } from '../../core/quantity/decimal'
import { askedParameters, endsOf, endWithoutAnswer, readAsked, type Asked, type Ends } from './asked'

const ofArgument = 'in the unit of the argument'
const ofResult = 'in the unit of the result'

const columns = {
  argument: { heading: 'argument' },
  low: { heading: 'low' },
  high: { heading: 'high' },
  atLow: { heading: 'at low' },
  likely: { heading: 'all likely' },
  atHigh: { heading: 'at high' },
  swing: { heading: 'swing' },
}

/** @param functions Those that can be asked for. They are handed over, since the list that holds them holds this one. */
export function swingsOver(functions: readonly CellFunction[]): TableFunction<typeof askedParameters, typeof columns> {
  return defineTable({
    id: 'SWINGS',
    subject: 'review',
    parameters: askedParameters,
    result: { name: 'swings', unit: 'table', columns },
    method: (args) => {
      const asked = readAsked(functions, args)
      if ('problem' in asked) return asked
      const ends = endsOf(asked)
      if ('problem' in ends) return ends
      const problem = endWithoutAnswer(asked, ends)
      if (problem !== undefined) return { problem }
      const rows = rowsOf(asked, ends)
      return { table: rows, working: () => workingOf(asked.of, rows) }
    },
    over: functions,
  })
}

export const swingsText: TextsOf<ReturnType<typeof swingsOver>> = {
  summary:
    'What each uncertain argument of another function does to its result, widest first: the table of a tornado chart.',
  convention:
    'Each argument alone goes to its low and to its high while the others stay at their likely values, so what moves together is not shown. The swing is the difference of those two results; what happens between the two ends does not count. Equal swings keep the order of the rows. Arguments that are not named take their defaults.',
  result: 'one row for each argument, widest swing first',
  columns: {
    argument: { text: 'the argument that moves', unit: 'text' },
    low: { text: 'its low', unit: ofArgument },
    high: { text: 'its high', unit: ofArgument },
    atLow: { text: 'the result with this argument at its low', unit: ofResult },
    likely: { text: 'the result with every argument at its likely value, the middle of the chart', unit: ofResult },
    atHigh: { text: 'the result with this argument at its high', unit: ofResult },
    swing: { text: 'the difference between the two ends', unit: ofResult },
  },
  plain: (columns) => {
    const below = (key: keyof typeof columns) => columnOf(columns, key, 'rowsBelow')
    return {
      reason:
        'Excel has no formula that computes a function by its name. Each end is one call of that function, with one argument at its low or high and the others at their likely values; its own plain formula checks it.',
      check:
        `LET(rowsBelow, DROP(swings, 1), MAX(ABS(ABS(${below('atHigh')} - ${below('atLow')}) - ${below('swing')})) ` +
        `* 10 ^ 12 <= MAX(${below('swing')}))`,
    }
  },
  examples: [
    {
      text: 'Cost of the medium of a cutting, 50 to 80 mL at 0.10 to 0.20 a litre',
      given: ['MEDIUMCOST', ['cuttingVolumeMl', 'costPerLitre'], [50, 0.1], [65, 0.15], [80, 0.2]],
      gives: [
        ['costPerLitre', 0.1, 0.2, 0.0065, 0.00975, 0.013, 0.0065],
        ['cuttingVolumeMl', 50, 80, 0.0075, 0.00975, 0.012, 0.0045],
      ],
      source: 'definition',
    },
    {
      text: 'Cost of a liner with two stages of losses: the same range twice is two cells of it',
      given: [
        'stick.perliner',
        ['costPerCutting', 'stageRates', 'stageRates'],
        [0.4, 0.8, 0.9],
        [0.4, 0.8, 1],
        [0.6, 1, 1],
      ],
      gives: [
        ['costPerCutting', 0.4, 0.6, 0.5, 0.5, 0.75, 0.25],
        ['stageRates 1', 0.8, 1, 0.5, 0.5, 0.4, 0.1],
        ['stageRates 2', 0.9, 1, 0.555555555555556, 0.5, 0.5, 0.0555555555555556],
      ],
      source: 'definition',
    },
  ],
}

interface Swing {
  readonly argument: string
  readonly low: Decimal
  readonly high: Decimal
  readonly atLow: Decimal
  readonly likely: Decimal
  readonly atHigh: Decimal
  readonly swing: Decimal
}

/** The widest first. Every end has an answer. */
function rowsOf({ rows }: Asked, ends: Ends): readonly Swing[] {
  const likely = new Decimal(ends.likely as number)
  return rows
    .map(({ label, low, high }, index) => {
      const [atLow, atHigh] = [ends.atLow[index] as number, ends.atHigh[index] as number]
      // From the digits that are shown, so that dust in the last ones does not part what is equal.
      const swing = new Decimal(asShown(atHigh)).sub(asShown(atLow)).abs()
      return { argument: label, low, high, atLow: new Decimal(atLow), likely, atHigh: new Decimal(atHigh), swing }
    })
    .sort((a, b) => b.swing.cmp(a.swing))
}

function workingOf({ id, result: { unit } }: CellFunction, rows: readonly Swing[]): readonly WorkingStep[] {
  return [
    {
      name: 'allLikely',
      text: { fact: 'allLikelyOf', id },
      formula: `${id} of the likelies`,
      value: rows[0]!.likely,
      unit,
    },
    {
      name: 'arguments',
      text: 'the arguments in the order of their swings',
      formula: 'sorted by swing, widest first',
      value: rows.map(({ argument }) => argument),
      unit: 'text',
    },
    {
      name: 'atLow',
      text: 'the result with this argument alone at its low',
      formula: `${id} of the likelies, with one low`,
      value: rows.map(({ atLow }) => atLow),
      unit,
    },
    {
      name: 'atHigh',
      text: 'the result with this argument alone at its high',
      formula: `${id} of the likelies, with one high`,
      value: rows.map(({ atHigh }) => atHigh),
      unit,
    },
    {
      name: 'swing',
      text: 'the difference between the two ends',
      formula: 'ABS(atHigh - atLow)',
      value: rows.map(({ swing }) => swing),
      unit,
    },
  ]
}
