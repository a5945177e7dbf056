import { formats } from '../cells'
import { anyShare, choiceOf, figure, result } from '../table/column'
import { declareTable } from '../table/table'

/** The arguments of ROOTINGCOST, which is what Risk asks about. */
export const doubtful = {
  name: 'DoubtfulArguments',
  words: [
    'firstCost',
    'rounds',
    'cuttingsPerRound',
    'yield',
    'washCost',
    'topUpShare',
    'lossShare',
    'otherCostPerCutting',
    'endValue',
    'yearlyInterest',
    'roundsPerYear',
  ],
} as const

/** How far each figure of a method may be off. */
export const doubts = declareTable({
  sheet: 'Doubts',
  row: 'Doubt',
  key: 'argument',
  typed: {
    argument: choiceOf('Argument', doubtful, { width: 24 }),
    lower: figure('Lower by', 'share', formats.share),
    higher: anyShare('Higher by', 'share'),
  },
  results: {
    likely: result('Likely', '', formats.mixed),
    low: result('Low', '', formats.mixed),
    high: result('High', '', formats.mixed),
  },
})
