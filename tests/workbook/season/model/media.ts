/** Media: what a loose litre costs, and the packs to buy. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { media } from '../../../../src/workbook/season/tables/media'
import { fraction, sum, type Fraction } from '../fraction'
import { typed, type ResultsOf } from './typed'

type Medium = SeasonData['media'][number]

/** Litres of a volume and kilograms of a weight: exact by definition of the inch and the pound (NIST SP 811). */
const litresIn: Readonly<Record<string, number>> = { L: 1, m3: 1000, ft3: 28.316846592, yd3: 764.554857984 }
const kilogramsIn: Readonly<Record<string, number>> = { kg: 1, t: 1000, lb: 0.45359237 }

/** A weight becomes litres by the label, or else by its dry part over the dry density. */
export function declaredOf(medium: Medium): Fraction {
  const size = typed(medium.size)
  const litres = litresIn[String(medium.unit)]
  if (litres !== undefined) return size.times(litres)
  const weight = size.times(kilogramsIn[String(medium.unit)]!)
  if (medium.labelYield !== undefined) return weight.times(typed(medium.labelYield))
  return weight
    .times(fraction(1).minus(typed(medium.water, 0)))
    .times(1000)
    .over(typed(medium.density))
}

/** Loose litres of a pack, before anything is wasted. */
export const looseOf = (medium: Medium): Fraction => declaredOf(medium).times(typed(medium.expansion, 1))
/** The share that is not wasted. */
export const keptOf = (medium: Medium): Fraction => fraction(1).minus(typed(medium.waste, 0))
export const packCostOf = (medium: Medium): Fraction => typed(medium.price).plus(typed(medium.delivery, 0))

export const litrePriceOf = (medium: Medium): Fraction => packCostOf(medium).over(looseOf(medium).times(keptOf(medium)))

/** @param needed Loose litres that the season takes. */
export function mediumNeeds(medium: Medium, needed: Fraction) {
  const withWaste = needed.over(keptOf(medium))
  const missing = withWaste.minus(typed(medium.onHand, 0)).atLeast(0)
  const packs = missing.over(looseOf(medium))
  const toBuy = missing.equals(0)
    ? fraction(0)
    : packs.atLeast(typed(medium.minimum, 0)).upTo(typed(medium.multiple, 1))
  return {
    declared: declaredOf(medium),
    litre: litrePriceOf(medium),
    needed,
    withWaste,
    toBuy,
    cost: toBuy.times(packCostOf(medium)).toCent(),
    leftOver: toBuy.times(looseOf(medium)).plus(typed(medium.onHand, 0)).minus(withWaste),
  } satisfies ResultsOf<typeof media>
}

/** What the methods and the blends take of a medium. */
export function neededOf(
  medium: Medium,
  methods: readonly { readonly medium: unknown; readonly litres: Fraction }[],
  components: readonly { readonly medium: unknown; readonly needed: Fraction }[],
): Fraction {
  const isOfIt = (row: { readonly medium: unknown }) => row.medium === medium.name
  return sum([
    ...methods.filter(isOfIt).map(({ litres }) => litres),
    ...components.filter(isOfIt).map((component) => component.needed),
  ])
}
