import { breakEven } from '../../../functions/reuse/breakEven'
import { reuseCost } from '../../../functions/reuse/reuseCost'
import { reuseLedger } from '../../../functions/reuse/reuseLedger'
import { cautionRows } from '../cautionRows'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import { money } from '../table/column'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type FiguresSheet, type TypedFigures } from '../table/figuresSheet'
import { spilled } from '../table/spilled'
import { lookUp, type ColumnOf } from '../table/table'
import { reuse } from '../tables/answers'
import { methods } from '../tables/methods'
import { setup } from '../tables/setup'

const at = (key: FigureOf<typeof reuse>) => figureOf(reuse, key)
const ofReused = (column: ColumnOf<typeof methods>) => lookUp(methods, at('reused'), column)
const ofSingle = (column: ColumnOf<typeof methods>) => lookUp(methods, at('single'), column)
const perPlace = (column: ColumnOf<typeof methods>) => `${ofReused(column)}/${ofReused('used')}`

/** Whatever costs, it is paid for each cutting and round; the first use is not washed. */
const paid = {
  firstCost: at('firstRound'),
  washCost: at('laterRound'),
  lossShare: at('broken'),
  endValue: at('endValue'),
  yearlyInterest: figureOf(setup, 'yearlyInterest'),
  roundsPerYear: figureOf(setup, 'roundsPerYear'),
}

/** How many rounds of a ledger are drawn; it may be longer. */
const rounds = 16

/** What each of the two costs, and from which round on the one pays. */
const results: FiguresSheet<typeof reuse>['results'] = {
  singleCost: ofSingle('cost'),
  everyRound: ofReused('otherCost'),
  firstRound: `${perPlace('first')}+${at('everyRound')}`,
  laterRound: `${perPlace('wash')}+${ofReused('topUp')}*${perPlace('first')}+${at('everyRound')}`,
  broken: ofReused('broken'),
  endValue: perPlace('endValue'),
  rounds: ofReused('rounds'),
  singleRate: ofSingle('rate'),
  reusedRate: ofReused('rate'),
  // #N/A says that there is no such round; any other error must stay to be seen.
  pays: `IFNA(${call(breakEven, { singleUseCost: at('singleCost'), ...paid, mostRounds: at('rounds'), singleUseYield: at('singleRate'), reusableYield: at('reusedRate') })},"not in its life")`,
  years: `IF(ISNUMBER(${at('pays')}),${at('pays')}/${figureOf(setup, 'roundsPerYear')},"–")`,
  wholeLife: call(reuseCost, { ...paid, rounds: at('rounds') }),
  saved: `${at('singleCost')}/${at('singleRate')}-${at('wholeLife')}/${at('reusedRate')}`,
}

export function reuseSheet(mark: string, typed: TypedFigures<typeof reuse>): NamedSheet {
  return figuresSheet(
    reuse,
    {
      title: 'Reuse or single use',
      about: [
        'Two methods for one species: from which round on the one that is washed and used again is no more expensive for a saleable liner.',
      ],
      cautions: cautionRows(reuseCost),
      sections: { pays: 'The answer' },
      needs: [
        [`${ofReused('rounds')}<2`, '"Used again: its container serves one round"'],
        [`${ofSingle('rounds')}>1`, '"Single use: its container serves several rounds"'],
      ],
      results,
      tables: [
        spilled(reuseLedger, {
          name: 'ReuseTable',
          formula: whenReady(
            reuse,
            call(reuseLedger, {
              firstCost: ofReused('first'),
              rounds: at('rounds'),
              washCost: ofReused('wash'),
              topUpShare: ofReused('topUp'),
              lossShare: at('broken'),
              endValue: ofReused('endValue'),
              yearlyInterest: paid.yearlyInterest,
              roundsPerYear: paid.roundsPerYear,
            }),
          ),
          formats: {
            round: formats.count,
            unitsInUse: formats.each,
            outlay: formats.each,
            presentValue: formats.each,
            runningPresentValue: formats.each,
            levelCost: formats.each,
          },
          units: {
            round: 'Ledger of a container',
            unitsInUse: 'of one bought',
            outlay: money(),
            presentValue: money(),
            runningPresentValue: money(),
            levelCost: money('piece, round'),
          },
          height: rounds,
        }),
      ],
    },
    mark,
    typed,
  )
}
