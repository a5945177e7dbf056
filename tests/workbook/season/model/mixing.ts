/** Mixing: the loads of the mixer, which takes the parts before they shrink. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { mixing } from '../../../../src/workbook/season/tables/answers'
import { sum, type Fraction } from '../fraction'
import { rowCalled, typed, type FiguresOf } from './typed'

export function mixingOf(data: SeasonData, needed: Fraction) {
  const blend = rowCalled(data.blends, 'name', data.mixing.blend)
  const mixed = data.mixing.litres === undefined ? needed : typed(data.mixing.litres)
  const loose = mixed.times(typed(blend.before)).over(typed(blend.after))
  const parts = data.components.filter((component) => component.blend === blend.name)
  const all = sum(parts.map((component) => typed(component.parts)))
  const additives = { lime: blend.lime, wetting: blend.wetting, feed: blend.feed }
  return {
    figures: { mixed, loads: loose.over(typed(data.mixing.mixer)).up() } satisfies FiguresOf<typeof mixing>,
    /** Of all loads together. */
    litres: parts.map((component) => ({
      medium: String(component.medium),
      litres: loose.times(typed(component.parts)).over(all),
    })),
    kilograms: Object.entries(additives)
      .filter(([, each]) => each !== undefined)
      .map(([additive, each]) => ({ additive, kilograms: mixed.over(1000).times(typed(each)) })),
  }
}
