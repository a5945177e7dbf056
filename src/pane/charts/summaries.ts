/** What each chart says, in sentences: for those who do not see it, and for those in a hurry. */
import type { Odds } from '../../workbook/compare/odds'
import { costParts, type CostPart } from '../../workbook/compare/rooted'
import type { Rounds, RoundsLine } from '../../workbook/compare/rounds'
import type { Swing, Swings } from '../../workbook/compare/swings'
import type { WayCost } from '../../workbook/compare/ways'
import type { Words } from '../../wording/words'
import type { NumberText } from '../settings/numberText'

type CompareWords = Words['compare']

/** Of what one costs. */
const money = 'money per liner'

export function waysSummary(ways: readonly WayCost[], say: CompareWords['ways'], { label }: NumberText): string {
  const [cheapest, next, ...others] = [...ways].sort((a, b) => a.perLiner - b.perLiner)
  if (cheapest === undefined) return ''
  const amount = (part: CostPart) => cheapest.parts[part] ?? 0
  const largest = costParts.reduce((most, part) => (amount(part) > amount(most) ? part : most))
  const largestPart = say.largestPart(say.parts[largest].name, label(amount(largest), money))
  const price = label(cheapest.perLiner, money)
  if (next === undefined) return `${say.costs(cheapest.name, price)} ${largestPart}`
  const dearest = others.at(-1)
  return [
    say.cheapest(cheapest.name, price),
    largestPart,
    say.next(next.name, label(next.perLiner, money)),
    ...(dearest === undefined ? [] : [say.dearest(dearest.name, label(dearest.perLiner, money))]),
  ].join(' ')
}

export function roundsSummary(
  { unit, lines, singleUse }: Rounds,
  say: CompareWords['rounds'],
  { label }: NumberText,
): string {
  const lineSentences = lines.map((line) => lineSentence(line, singleUse?.name ?? say.anySingleUse, unit, say, label))
  if (singleUse === undefined) return lineSentences.join(' ')
  const { name, cost, isCheapest } = singleUse
  const costs = isCheapest ? say.cheapestCosts : say.onceCosts
  return [
    name === undefined ? say.singleUseCosts(label(cost, unit)) : costs(name, label(cost, unit)),
    ...lineSentences,
  ].join(' ')
}

/** @param once What it is compared with. */
function lineSentence(
  line: RoundsLine,
  once: string,
  unit: string,
  say: CompareWords['rounds'],
  label: NumberText['label'],
): string {
  const { name = say.usedAgain, points, breakEven, neverIn } = line
  const [first, last] = [points[0]!, points.at(-1)!]
  const course =
    first.round === last.round
      ? say.oneRound(name, label(first.cost, unit))
      : say.course(name, label(first.cost, unit), label(last.cost, unit), label(last.round))
  if (breakEven !== undefined) return say.beats(course, once, label(breakEven.round))
  return neverIn === undefined ? `${course}.` : say.neverBeats(course, once, label(neverIn))
}

/** In the words of the sheet, with the name by which the function knows it: "Overall rate (yield)". */
export function argumentText({ argument, called }: Swing): string {
  return called === undefined ? argument : `${called} (${argument})`
}

export function swingsSummary(
  { of, unit, likely, bars }: Swings,
  say: CompareWords['swings'],
  { label }: NumberText,
): string {
  const text = (value: number) => label(value, unit)
  const [widest, ...others] = bars
  if (widest === undefined) return ''
  const still = others.filter(({ swing }) => swing === 0).map(argumentText)
  return [
    say.likely(of, text(likely)),
    say.widest(argumentText(widest), text(widest.atLow), text(widest.atHigh)),
    ...(still.length === 0 ? [] : [say.still(still)]),
  ].join(' ')
}

export function oddsSummary(
  { of, unit, percentiles, likely, drawsWithoutAnswer }: Odds,
  say: CompareWords['odds'],
  { label }: NumberText,
): string {
  const text = (value: number) => label(value, unit)
  const at = (share: number) => text(percentiles.find((percentile) => percentile.share === share)!.result)
  return [
    say.spread(of, at(0.5), at(0.05), at(0.95)),
    say.likely(text(likely)),
    ...(drawsWithoutAnswer === 0 ? [] : [say.withoutAnswer(label(drawsWithoutAnswer))]),
  ].join(' ')
}
