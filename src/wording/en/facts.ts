/** Facts in English: the texts that cells show. Saved workbooks compare with them, so they stay to the letter. */
import type { Overlap, Fact } from '../../core/definition/fact'
import type { Decimal } from '../../core/quantity/decimal'
import { amountText, factIn, type FactWords } from '../factParts'

const reached = (bags: Decimal, does: string, amount: Decimal) =>
  bags.eq(1)
    ? `1 more bag reaches the break and ${does}s ${amountText(amount)}`
    : `${bags} more bags reach the break and ${does} ${amountText(amount)}`

const inZone = ({ first, last, larger }: Overlap) =>
  first.eq(last) ? `${first} costs more than ${larger}` : `${first} to ${last} cost more than ${larger}`

const facts: FactWords = {
  none: () => 'none',
  total: () => 'total',

  breakOf: ({ pack }) => `${pack}: break`,
  breakFrom: ({ bags, price }) => `from ${bags} bags at ${price}`,
  breakCosts: ({ bags, amount }) => `${reached(bags, 'cost', amount)} more`,
  breakSaves: ({ bags, amount }) => reached(bags, 'save', amount),
  breakNeeded: () => 'the need reaches the break',
  breakOutOfReach: () => 'the break cannot be reached with what is available',
  delivery: ({ from }) => (from === '' ? 'delivery' : `delivery from ${from}`),
  deliveryShares: ({ shares }) => shares.map(({ amount, pack }) => `${amount} for ${pack}`).join(' + '),
  noOtherOrder: () => 'there is no other',
  searchGivenUp: () => 'the search for it was given up',
  notKnown: () => 'not known',

  singleUse: () => 'single use',
  noSingleUse: () => 'no single use to beat',
  notInRounds: ({ rounds }) => `not in ${rounds} rounds`,
  noWayOfOneRound: () => 'no way with 1 round is given',

  component: ({ number }) => `component ${number}`,
  additive: ({ number }) => `additive ${number}`,
  finishedMix: () => 'finished mix',
  moreThan: ({ most }) => `more than ${most}`,

  mean: () => 'mean',
  allLikely: () => 'all likely',
  drawsWithoutAnswer: () => 'draws without answer',
  allLikelyOf: ({ id }) => `${id} with every argument at its likely value`,

  quoteWarning: ({ dearerThan, zone }) =>
    [
      ...(dearerThan === undefined ? [] : [`dearer each than ${dearerThan}`]),
      ...(zone === undefined ? [] : [inZone(zone)]),
    ].join('; '),
  orderCosts: ({ order, amount, larger, largerAmount }) =>
    `an order of ${order} costs ${amountText(amount)}, ${larger} cost ${amountText(largerAmount)}`,

  unitsInOne: ({ symbol, one }) => `${symbol} in one ${one}`,

  price: () => 'price',
  usage: () => 'usage',
  adverse: () => 'adverse',
  favourable: () => 'favourable',
}

export function factText(fact: Fact): string {
  return factIn(facts, fact)
}
