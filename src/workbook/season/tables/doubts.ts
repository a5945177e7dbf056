import { formats } from '../cells'
import { anyShare, choiceOf, figure, result } from '../table/column'
import { declareTable } from '../table/table'

/** What may be doubted, as Methods and Setup call it, and the arguments of ROOTINGCOST, which is what Risk asks about. */
export const argumentOf = {
  'Bought for': 'firstCost',
  'Serves rounds': 'rounds',
  'Places used': 'cuttingsPerRound',
  'Overall rate': 'yield',
  Washing: 'washCost',
  'Topped up': 'topUpShare',
  Broken: 'lossShare',
  'All but the container': 'otherCostPerCutting',
  'Worth at the end': 'endValue',
  'Interest per year': 'yearlyInterest',
  'Rounds per year': 'roundsPerYear',
} as const

export const doubtful = { name: 'DoubtfulFigures', words: Object.keys(argumentOf) } as const

/** How far each figure of a method may be off. */
export const doubts = declareTable({
  sheet: 'Doubts',
  row: 'Doubt',
  key: 'figure',
  typed: {
    figure: choiceOf('Figure', doubtful, { width: 24 }),
    lower: figure('Lower by', 'share', formats.share),
    higher: anyShare('Higher by', 'share'),
  },
  results: {
    argument: result('Argument', 'of ROOTINGCOST', undefined, { width: 22 }),
    likely: result('Likely', '', formats.mixed),
    low: result('Low', '', formats.mixed),
    high: result('High', '', formats.mixed),
  },
})
