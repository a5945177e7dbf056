/** What each chart says, in sentences: for those who do not see it, and for those in a hurry. */
import type { Odds } from '../../workbook/compare/odds'
import { costParts } from '../../workbook/compare/rooted'
import type { Rounds, RoundsLine } from '../../workbook/compare/rounds'
import type { Swings } from '../../workbook/compare/swings'
import type { WayCost } from '../../workbook/compare/ways'
import { amountText } from './amountText'

export function waysSummary(ways: readonly WayCost[]): string {
  const [cheapest, next, ...others] = [...ways].sort((a, b) => a.perLiner - b.perLiner)
  if (cheapest === undefined) return ''
  const largest = costParts.reduce((most, part) => (cheapest.parts[part.key] > cheapest.parts[most.key] ? part : most))
  const largestPart = `Its largest part is “${largest.name}” with ${amountText(cheapest.parts[largest.key])}.`
  const price = `${amountText(cheapest.perLiner)} for a saleable liner`
  if (next === undefined) return `${cheapest.name} costs ${price}. ${largestPart}`
  const dearest = others.at(-1)
  return [
    `${cheapest.name} is cheapest: ${price}. ${largestPart} ${next.name} comes next with ${amountText(next.perLiner)}.`,
    ...(dearest === undefined ? [] : [`${dearest.name} is dearest with ${amountText(dearest.perLiner)}.`]),
  ].join(' ')
}

export function roundsSummary({ lines, singleUse }: Rounds): string {
  const single = singleUse === undefined ? [] : [`${singleUse.name === 'Single use' ? 'Single use' : `${singleUse.name}, the cheapest single use,`} costs ${amountText(singleUse.cost)}.`]
  return [...single, ...lines.map(lineSentence)].join(' ')
}

function lineSentence({ name, points, breakEven, never }: RoundsLine): string {
  const [first, last] = [points[0]!, points.at(-1)!]
  const course = first.round === last.round
    ? `${name} costs ${amountText(first.cost)} over 1 round`
    : `${name} goes from ${amountText(first.cost)} over 1 round to ${amountText(last.cost)} over ${amountText(last.round)}`
  if (breakEven !== undefined) return `${course}, and is no dearer than single use from round ${amountText(breakEven.round)} on.`
  return never === undefined ? `${course}.` : `${course}, and does not beat single use: ${never}.`
}

export function swingsSummary({ of, likely, bars }: Swings): string {
  const [widest, ...others] = bars
  if (widest === undefined) return ''
  const still = others.filter(({ swing }) => swing === 0).map(({ argument }) => argument)
  return [
    `With every argument at its likely value ${of} gives ${amountText(likely)}.`,
    `${widest.argument} moves it most: ${amountText(widest.atLow)} at its low, ${amountText(widest.atHigh)} at its high.`,
    ...(still.length === 0 ? [] : [`What does not move it: ${still.join(', ')}.`]),
  ].join(' ')
}

export function oddsSummary({ of, percentiles, likely, drawsWithoutAnswer }: Odds): string {
  const at = (share: number) => amountText(percentiles.find((percentile) => percentile.share === share)!.result)
  return [
    `Half of the draws of ${of} lie at or below ${at(0.5)}, and nine in ten between ${at(0.05)} and ${at(0.95)}.`,
    `With every argument at its likely value it is ${amountText(likely)}.`,
    ...(drawsWithoutAnswer === 0 ? [] : [`${amountText(drawsWithoutAnswer)} draws have no answer and are left out.`]),
  ].join(' ')
}
