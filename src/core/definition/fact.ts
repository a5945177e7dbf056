/**
 * What is true of a call and is no number, as data: a code with its numbers and names. `wording/` alone makes words of
 * it, the text that its cell shows and what a further language says in the pane.
 */
import type { Decimal } from '../quantity/decimal'

export type Fact =
  | { readonly fact: 'none' }
  | { readonly fact: 'total' }

  // BUYPLAN
  | { readonly fact: 'breakOf'; readonly pack: string }
  | { readonly fact: 'breakFrom'; readonly bags: Decimal; readonly price: Decimal }
  /** So many bags more would have to be bought, which cost so much more. */
  | { readonly fact: 'breakCosts'; readonly bags: Decimal; readonly amount: Decimal }
  /** So many bags more were bought, which save so much. */
  | { readonly fact: 'breakSaves'; readonly bags: Decimal; readonly amount: Decimal }
  | { readonly fact: 'breakNeeded' }
  | { readonly fact: 'breakOutOfReach' }
  | { readonly fact: 'delivery'; readonly from: string }
  | { readonly fact: 'deliveryShares'; readonly shares: readonly DeliveryShare[] }
  | { readonly fact: 'noOtherOrder' }
  | { readonly fact: 'searchGivenUp' }
  | { readonly fact: 'notKnown' }

  // COMPARE
  | { readonly fact: 'singleUse' }
  | { readonly fact: 'noSingleUse' }
  | { readonly fact: 'notInRounds'; readonly rounds: Decimal }
  | { readonly fact: 'noWayOfOneRound' }

  // MIXLOADS
  | { readonly fact: 'component'; readonly number: Decimal }
  | { readonly fact: 'additive'; readonly number: Decimal }
  | { readonly fact: 'finishedMix' }

  // ONTRACK
  | { readonly fact: 'moreThan'; readonly most: Decimal }

  // ODDS and SWINGS
  | { readonly fact: 'mean' }
  | { readonly fact: 'allLikely' }
  | { readonly fact: 'drawsWithoutAnswer' }
  | { readonly fact: 'allLikelyOf'; readonly id: string }

  // QUOTE
  /** At least one of the two. */
  | { readonly fact: 'quoteWarning'; readonly dearerThan?: Decimal; readonly zone?: Overlap }
  | {
      readonly fact: 'orderCosts'
      readonly order: Decimal
      readonly amount: Decimal
      readonly larger: Decimal
      readonly largerAmount: Decimal
    }

  // UNITS
  | { readonly fact: 'unitsInOne'; readonly symbol: string; readonly one: string }

  // VARIANCE
  | { readonly fact: 'price' }
  | { readonly fact: 'usage' }
  | { readonly fact: 'adverse' }
  | { readonly fact: 'favourable' }

export interface DeliveryShare {
  readonly amount: Decimal
  readonly pack: string
}

/** Orders from `first` to `last` pieces cost more than the larger quantity. */
export interface Overlap {
  readonly first: Decimal
  readonly last: Decimal
  readonly larger: Decimal
}

export function isFact(value: unknown): value is Fact {
  return typeof value === 'object' && value !== null && 'fact' in value
}
