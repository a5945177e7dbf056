import { functions } from '../../../functions/functions'
import { rootingCost } from '../../../functions/cost/rootingCost'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import { money } from '../table/column'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type TypedFigures } from '../table/figuresSheet'
import { fromSpilled, spilled, spilledColumn } from '../table/spilled'
import { all, onlyReady, countReady, notComplete } from '../table/table'
import { risk } from '../tables/answers'
import { doubts } from '../tables/doubts'

const { odds, swings } = functions
const alone = 'RiskAlone'
const together = 'RiskTogether'
const at = (key: FigureOf<typeof risk>) => figureOf(risk, key)

/** What both functions are given: the doubts that are complete. */
const given = {
  functionName: `"${rootingCost.id}"`,
  argumentNames: onlyReady(doubts, 'argument'),
  lows: onlyReady(doubts, 'low'),
  likelies: onlyReady(doubts, 'likely'),
  highs: onlyReady(doubts, 'high'),
}

/** Doubts wait for the method of this sheet, and its tables for the doubts. */
function whenDoubted(formula: string): string {
  return whenReady(
    risk,
    `IF(OR(${notComplete(doubts)}>0,${countReady(doubts)}=0),"Doubts are not complete",${formula})`,
  )
}

export function riskSheet(mark: string, typed: TypedFigures<typeof risk>, doubted: number): NamedSheet {
  return figuresSheet(
    risk,
    {
      title: 'Risk',
      about: [
        'How sure the rooting cost of one method is: what each doubt alone does to a saleable liner, and how likely each cost is when all play together. The doubts are taken to have nothing to do with one another.',
      ],
      results: {
        atMost: fromSpilled(
          together,
          `IFNA(INDEX(${spilledColumn(together, 'result')},MATCH(${at('sure')},${spilledColumn(together, 'share')},0)),"choose a share of the table")`,
        ),
        widest: fromSpilled(
          alone,
          `INDEX(${all(doubts, 'figure')},MATCH(INDEX(${spilledColumn(alone, 'argument')},1),${all(doubts, 'argument')},0))`,
        ),
      },
      tables: [
        spilled(swings, {
          name: alone,
          formula: whenDoubted(call(swings, given)),
          formats: {
            argument: undefined,
            low: formats.mixed,
            high: formats.mixed,
            atLow: formats.each,
            likely: formats.each,
            atHigh: formats.each,
            swing: formats.each,
          },
          units: {
            argument: 'Each doubt alone',
            low: 'widest first',
            high: '',
            atLow: money('liner'),
            likely: money('liner'),
            atHigh: money('liner'),
            swing: money('liner'),
          },
          height: doubted,
        }),
        spilled(odds, {
          name: together,
          formula: whenDoubted(call(odds, { ...given, draws: at('draws'), seed: at('seed') })),
          formats: { share: formats.share, result: formats.mixed },
          units: { share: 'All together', result: money('liner') },
          height: 14,
        }),
      ],
    },
    mark,
    typed,
  )
}
