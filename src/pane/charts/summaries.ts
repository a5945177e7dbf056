/** What each chart says, in sentences: for those who do not see it, and for those in a hurry. */
import type { Odds } from '../../workbook/compare/odds'
import { costParts, type CostPart } from '../../workbook/compare/rooted'
import type { Rounds, RoundsLine } from '../../workbook/compare/rounds'
import type { Swings } from '../../workbook/compare/swings'
import type { WayCost } from '../../workbook/compare/ways'
import type { Words } from '../../wording/words'
import type { NumberText } from '../settings/numberText'

/** Of what one costs. */
const money = 'money per liner'

export function waysSummary(ways: readonly WayCost[], words: Words['compare']['parts'], { label }: NumberText): string {
  const [cheapest, next, ...others] = [...ways].sort((a, b) => a.perLiner - b.perLiner)
  if (cheapest === undefined) return ''
  const amount = (part: CostPart) => cheapest.parts[part] ?? 0
  const largest = costParts.reduce((most, part) => (amount(part) > amount(most) ? part : most))
  const largestPart = `Its largest part is “${words[largest].name}” with ${label(amount(largest), money)}.`
  const price = `${label(cheapest.perLiner, money)} for a saleable liner`
  if (next === undefined) return `${cheapest.name} costs ${price}. ${largestPart}`
  const dearest = others.at(-1)
  return [
    `${cheapest.name} is cheapest: ${price}. ${largestPart} ${next.name} comes next with ${label(next.perLiner, money)}.`,
    ...(dearest === undefined ? [] : [`${dearest.name} is dearest with ${label(dearest.perLiner, money)}.`]),
  ].join(' ')
}

export function roundsSummary({ unit, lines, singleUse }: Rounds, { label }: NumberText): string {
  const single = singleUse === undefined ? [] : [`${singleUse.name === 'Single use' ? 'Single use' : `${singleUse.name}, the cheapest single use,`} costs ${label(singleUse.cost, unit)}.`]
  return [...single, ...lines.map((line) => lineSentence(line, unit, label))].join(' ')
}

function lineSentence({ name, points, breakEven, never }: RoundsLine, unit: string, label: NumberText['label']): string {
  const [first, last] = [points[0]!, points.at(-1)!]
  const course = first.round === last.round
    ? `${name} costs ${label(first.cost, unit)} over 1 round`
    : `${name} goes from ${label(first.cost, unit)} over 1 round to ${label(last.cost, unit)} over ${label(last.round)}`
  if (breakEven !== undefined) return `${course}, and is no dearer than single use from round ${label(breakEven.round)} on.`
  return never === undefined ? `${course}.` : `${course}, and does not beat single use: ${never}.`
}

export function swingsSummary({ of, unit, likely, bars }: Swings, { label }: NumberText): string {
  const text = (value: number) => label(value, unit)
  const [widest, ...others] = bars
  if (widest === undefined) return ''
  const still = others.filter(({ swing }) => swing === 0).map(({ argument }) => argument)
  return [
    `With every argument at its likely value ${of} gives ${text(likely)}.`,
    `${widest.argument} moves it most: ${text(widest.atLow)} at its low, ${text(widest.atHigh)} at its high.`,
    ...(still.length === 0 ? [] : [`What does not move it: ${still.join(', ')}.`]),
  ].join(' ')
}

export function oddsSummary({ of, unit, percentiles, likely, drawsWithoutAnswer }: Odds, { label }: NumberText): string {
  const text = (value: number) => label(value, unit)
  const at = (share: number) => text(percentiles.find((percentile) => percentile.share === share)!.result)
  return [
    `Half of the draws of ${of} lie at or below ${at(0.5)}, and nine in ten between ${at(0.05)} and ${at(0.95)}.`,
    `With every argument at its likely value it is ${text(likely)}.`,
    ...(drawsWithoutAnswer === 0 ? [] : [`${label(drawsWithoutAnswer)} draws have no answer and are left out.`]),
  ].join(' ')
}
