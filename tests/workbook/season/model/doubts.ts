/** Doubts: the figures of the method that Risk asks about, and how far each may be off. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import { argumentOf, type doubts } from '../../../../src/workbook/season/tables/doubts'
import type { Fraction } from '../fraction'
import type { MethodCosts } from './methods'
import { discountOf, levelCost } from './reused'
import { rowCalled, typed, type ResultsOf } from './typed'

/** What ROOTINGCOST is given of a method, by the names of its arguments. */
type Likely = Readonly<Record<string, Fraction>>

function likelyOf(data: SeasonData, methods: readonly MethodCosts[]): Likely {
  const { shown } = rowCalled(methods, 'name', data.risk.method)
  return {
    firstCost: shown.first,
    rounds: shown.rounds,
    cuttingsPerRound: shown.used,
    yield: shown.rate,
    washCost: shown.wash,
    topUpShare: shown.topUp,
    lossShare: shown.broken,
    otherCostPerCutting: shown.otherCost,
    endValue: shown.endValue,
    yearlyInterest: typed(data.setup.yearlyInterest),
    roundsPerYear: typed(data.setup.roundsPerYear),
  }
}

/** The cost of a saleable liner, with one figure other than it is likely to be. */
function perLiner(likely: Likely, argument: string, value: Fraction): Fraction {
  const given = (name: string) => (name === argument ? value : likely[name]!)
  const piece = {
    first: given('firstCost'),
    wash: given('washCost'),
    topUp: given('topUpShare'),
    broken: given('lossShare'),
    endValue: given('endValue'),
  }
  const level = levelCost(
    piece,
    Number(given('rounds').above),
    discountOf(given('yearlyInterest'), given('roundsPerYear')),
  )
  return level.over(given('cuttingsPerRound')).plus(given('otherCostPerCutting')).over(given('yield'))
}

const argumentOfFigure = (figure: unknown) => argumentOf[figure as keyof typeof argumentOf]

/** The figure whose doubt alone moves the cost of a liner most. */
export function widestOf(data: SeasonData, methods: readonly MethodCosts[]): string {
  const likely = likelyOf(data, methods)
  const swings = data.doubts.map((doubt) => {
    const argument = argumentOfFigure(doubt.figure)
    const { low, high } = doubtOf(doubt, data, methods)
    const swing = perLiner(likely, argument, high).minus(perLiner(likely, argument, low))
    return { figure: String(doubt.figure), swing: swing.atLeast(swing.times(-1)) }
  })
  return swings.reduce((widest, one) => (widest.swing.isBelow(one.swing) ? one : widest)).figure
}

/** Lower is less, of a figure below 0 too: what is paid for disposal may be more. */
export function doubtOf(doubt: SeasonData['doubts'][number], data: SeasonData, methods: readonly MethodCosts[]) {
  const argument = argumentOfFigure(doubt.figure)
  const likely = likelyOf(data, methods)[argument]!
  const size = likely.atLeast(likely.times(-1))
  const [low, high] = [likely.minus(size.times(typed(doubt.lower))), likely.plus(size.times(typed(doubt.higher)))]
  const isWhole = argument === 'rounds'
  return {
    argument,
    likely,
    low: isWhole ? low.plus(0.5).down().atLeast(1) : low,
    high: isWhole ? high.plus(0.5).down() : high,
  } satisfies ResultsOf<typeof doubts>
}
