/** Blends and Components: what a finished litre costs and weighs, and what the season takes of each part. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { blends } from '../../../../src/workbook/season/tables/blends'
import type { components } from '../../../../src/workbook/season/tables/components'
import { fraction, sum, type Fraction } from '../fraction'
import { litrePriceOf } from './media'
import type { Setup } from './setup'
import { rowCalled, typed, type ResultsOf } from './typed'

type Blend = SeasonData['blends'][number]

/** What is left of the summed loose volumes of the parts: shrink divides. */
const leftOf = (blend: Blend): Fraction => typed(blend.after).over(typed(blend.before))

/** Additives are paid for a cubic metre of finished mix, and so is the mixing where its pace is known. */
export function blendOf(blend: Blend, data: SeasonData, { hourCost }: Setup) {
  const parts = data.components
    .filter((component) => component.blend === blend.name)
    .map((component) => ({
      parts: typed(component.parts),
      medium: rowCalled(data.media, 'name', component.medium),
    }))
  const finished = sum(parts.map((part) => part.parts)).times(leftOf(blend))
  const material = sum(parts.map((part) => part.parts.times(litrePriceOf(part.medium)))).over(finished)
  const mixing = blend.pace === undefined ? fraction(0) : hourCost.over(typed(blend.pace))
  const dry = sum(parts.map((part) => part.parts.times(typed(part.medium.density))))
    .over(finished)
    .over(1000)
  return {
    name: blend.name,
    shrink: fraction(1).minus(leftOf(blend)),
    litre: material.plus(typed(blend.additives, 0).plus(mixing).over(1000)),
    dry,
    watered: blend.held === undefined ? '' : dry.plus(typed(blend.held)),
  }
}

/** @param methods Those that are filled with it. */
export function blendNeeds(
  blend: Blend,
  data: SeasonData,
  setup: Setup,
  methods: readonly { readonly medium: unknown; readonly litres: Fraction }[],
) {
  const needed = sum(methods.filter(({ medium }) => medium === blend.name).map(({ litres }) => litres))
  const { name: _, ...prices } = blendOf(blend, data, setup)
  return { ...prices, needed } satisfies ResultsOf<typeof blends>
}

/** Its part of the loose litres that shrink to what is needed of the blend. */
export function componentOf(
  component: SeasonData['components'][number],
  data: SeasonData,
  blendNeeded: Fraction,
): ResultsOf<typeof components> & { readonly needed: Fraction } {
  const medium = rowCalled(data.media, 'name', component.medium)
  const all = sum(data.components.filter(({ blend }) => blend === component.blend).map(({ parts }) => typed(parts)))
  return {
    litre: litrePriceOf(medium),
    density: typed(medium.density),
    needed: blendNeeded
      .over(leftOf(rowCalled(data.blends, 'name', component.blend)))
      .times(typed(component.parts))
      .over(all),
  }
}
