import type { Overlap, Fact } from '../../core/definition/fact'
import { withMark } from '../../core/quantity/decimalMark'
import type { Decimal } from '../../core/quantity/decimal'
import { amountText, factIn, type FactWords } from '../factParts'

const n = (number: Decimal) => withMark(number.toString(), ',')
const money = (amount: Decimal) => withMark(amountText(amount), ',')

const reached = (bags: Decimal, does: { readonly one: string; readonly more: string }, amount: Decimal) =>
  bags.eq(1)
    ? `1 Sack mehr erreicht die Staffel und ${does.one} ${money(amount)}`
    : `${n(bags)} Säcke mehr erreichen die Staffel und ${does.more} ${money(amount)}`

const inZone = ({ first, last, larger }: Overlap) =>
  first.eq(last)
    ? `${n(first)} kostet mehr als ${n(larger)}`
    : `${n(first)} bis ${n(last)} kosten mehr als ${n(larger)}`

const facts: FactWords = {
  none: () => 'keine',
  total: () => 'Summe',

  breakOf: ({ pack }) => `${pack}: Staffel`,
  breakFrom: ({ bags, price }) => `ab ${n(bags)} Säcken zu ${n(price)}`,
  breakCosts: ({ bags, amount }) => `${reached(bags, { one: 'kostet', more: 'kosten' }, amount)} mehr`,
  breakSaves: ({ bags, amount }) => reached(bags, { one: 'spart', more: 'sparen' }, amount),
  breakNeeded: () => 'der Bedarf erreicht die Staffel',
  breakOutOfReach: () => 'die Staffel ist mit dem, was verfügbar ist, nicht zu erreichen',
  delivery: ({ from }) => (from === '' ? 'Lieferung' : `Lieferung von ${from}`),
  deliveryShares: ({ shares }) => shares.map(({ amount, pack }) => `${n(amount)} für ${pack}`).join(' + '),
  noOtherOrder: () => 'es gibt keine andere',
  searchGivenUp: () => 'die Suche danach wurde aufgegeben',
  notKnown: () => 'nicht bekannt',

  singleUse: () => 'Einweg',
  noSingleUse: () => 'kein Einweg zum Vergleich',
  notInRounds: ({ rounds }) => `nicht in ${n(rounds)} Durchgängen`,
  noWayOfOneRound: () => 'kein Verfahren mit 1 Durchgang ist angegeben',

  component: ({ number }) => `Bestandteil ${number}`,
  additive: ({ number }) => `Zusatz ${number}`,
  finishedMix: () => 'fertige Mischung',
  moreThan: ({ most }) => `mehr als ${n(most)}`,

  mean: () => 'Mittelwert',
  allLikely: () => 'mit wahrscheinlichsten Werten',
  drawsWithoutAnswer: () => 'Ziehungen ohne Antwort',
  allLikelyOf: ({ id }) => `${id} mit jedem Argument auf seinem wahrscheinlichsten Wert`,

  quoteWarning: ({ dearerThan, zone }) =>
    [
      ...(dearerThan === undefined ? [] : [`je Stück teurer als bei ${n(dearerThan)}`]),
      ...(zone === undefined ? [] : [inZone(zone)]),
    ].join('; '),
  orderCosts: ({ order, amount, larger, largerAmount }) =>
    `ein Auftrag über ${n(order)} kostet ${money(amount)}, ${n(larger)} kosten ${money(largerAmount)}`,

  unitsInOne: ({ symbol, one }) => `ein ${one} in ${symbol}`,

  price: () => 'Preis',
  usage: () => 'Verbrauch',
  adverse: () => 'ungünstig',
  favourable: () => 'günstig',
}

export function factText(fact: Fact): string {
  return factIn(facts, fact)
}
