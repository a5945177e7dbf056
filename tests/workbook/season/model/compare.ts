/** Compare and Reuse: which method wins, and from which round on one that is used again does. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { compareMethods, reuse } from '../../../../src/workbook/season/tables/answers'
import { fraction, type Fraction } from '../fraction'
import type { MethodCosts } from './methods'
import { levelCost, paysFrom } from './reused'
import { rowCalled, typed, type FiguresOf } from './typed'

const isSingleUse = ({ container }: MethodCosts): boolean => Number(container.rounds) === 1

/** The methods in the order of the table, the cheapest liner first. */
export function ranked(methods: readonly MethodCosts[]): readonly MethodCosts[] {
  return [...methods].sort((one, other) => Number(one.shown.perLiner.minus(other.shown.perLiner).above > 0n) * 2 - 1)
}

/** The cost of a saleable liner after so many rounds is no more than that of single use. */
function paysAgainst(single: MethodCosts, reused: MethodCosts, most: number): Fraction | '' {
  const { used, otherCost, rate } = reused.shown
  const isNoMore = (level: Fraction) => !single.shown.perLiner.isBelow(level.over(used).plus(otherCost).over(rate))
  return paysFrom(isNoMore, reused.flows, reused.discount, most)
}

/** The round from which on a method beats the cheapest of single use, or why there is none. */
function beatsFrom(method: MethodCosts, single: MethodCosts | undefined): Fraction | string {
  if (single === undefined) return 'no single use to beat'
  if (isSingleUse(method)) return 'single use'
  const rounds = Number(method.container.rounds)
  const from = paysAgainst(single, method, rounds)
  return from === '' ? `not in ${rounds} rounds` : from
}

/** The table: the level cost is that of the containers alone, the cash all that the first round takes. */
export function comparedOf(data: SeasonData, methods: readonly MethodCosts[]) {
  const single = ranked(methods).find(isSingleUse)
  const cuttings = typed(data.compare.cuttings)
  return ranked(methods).map((method) => {
    const { name, shown, flows } = method
    return {
      name: String(name),
      levelCost: shown.piece.times(cuttings),
      perCutting: shown.cost,
      perLiner: shown.perLiner,
      cashBefore: flows.first.over(shown.used).plus(shown.otherCost).times(cuttings),
      beatsFrom: beatsFrom(method, single),
    }
  })
}

export function compareOf(methods: readonly MethodCosts[]): FiguresOf<typeof compareMethods> {
  const [first, second] = ranked(methods)
  const single = ranked(methods).find(isSingleUse)
  return {
    winner: String(first!.name),
    perLiner: first!.shown.perLiner,
    from: beatsFrom(first!, single),
    against: single === undefined ? 'no method serves one round' : String(single.name),
    next: String(second!.name),
    ahead: second!.shown.perLiner.minus(first!.shown.perLiner),
  }
}

export function reuseOf(data: SeasonData, methods: readonly MethodCosts[]) {
  const reused = rowCalled(methods, 'name', data.reuse.reused)
  const single = rowCalled(methods, 'name', data.reuse.single)
  const { used, otherCost } = reused.shown
  const perCutting = (amount: Fraction) => amount.over(used)
  const pays = paysAgainst(single, reused, 200)
  return {
    singleCost: single.shown.cost,
    everyRound: otherCost,
    firstRound: perCutting(reused.flows.first).plus(otherCost),
    laterRound: perCutting(reused.flows.wash.plus(reused.flows.topUp.times(reused.flows.first))).plus(otherCost),
    broken: reused.flows.broken,
    endValue: perCutting(reused.flows.endValue),
    rounds: reused.shown.rounds,
    singleRate: single.shown.rate,
    reusedRate: reused.shown.rate,
    pays: pays === '' ? 'not in its life' : pays,
    years: pays === '' ? '–' : fraction(pays).over(typed(data.setup.roundsPerYear)),
    wholeLife: perCutting(levelCost(reused.flows, Number(reused.container.rounds), reused.discount)).plus(otherCost),
    saved: single.shown.perLiner.minus(reused.shown.perLiner),
  } satisfies FiguresOf<typeof reuse>
}
