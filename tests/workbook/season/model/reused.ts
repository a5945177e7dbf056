/** What serves several rounds: the flows of a piece, and its level cost a round. */
import { fraction, raised, type Fraction } from '../fraction'

export interface Piece {
  readonly first: Fraction
  readonly wash: Fraction
  /** Share of the first cost that each later round pays again. */
  readonly topUp: Fraction
  readonly broken: Fraction
  readonly endValue: Fraction
}

/** 1 paid a round later is worth so much now. */
export function discountOf(yearlyInterest: Fraction, roundsPerYear: Fraction): Fraction {
  return fraction(1).over(raised(yearlyInterest.plus(1), fraction(1).over(roundsPerYear)))
}

/** What is paid, over the uses had, both in money and uses of today: flow by flow, without a closed form. */
export function levelCost(piece: Piece, rounds: number, discount: Fraction): Fraction {
  let left = fraction(1)
  let paid = piece.first
  let uses = fraction(1)
  for (let round = 2; round <= rounds; round++) {
    left = left.times(fraction(1).minus(piece.broken)).times(discount).cut()
    paid = paid.plus(left.times(piece.wash.plus(piece.topUp.times(piece.first)))).cut()
    uses = uses.plus(left)
  }
  left = left.times(fraction(1).minus(piece.broken)).times(discount)
  return paid.minus(left.times(piece.endValue)).over(uses)
}

/** The first number of rounds at which the level cost is no more than a limit. */
export function paysFrom(
  limit: (levelCost: Fraction) => boolean,
  piece: Piece,
  discount: Fraction,
  most: number,
): Fraction | '' {
  for (let rounds = 1; rounds <= most; rounds++) if (limit(levelCost(piece, rounds, discount))) return fraction(rounds)
  return ''
}
