/** What the words of facts are made of in every language. */
import type { Fact } from '../core/definition/fact'
import type { Decimal } from '../core/quantity/decimal'

export type FactWords = { readonly [F in Fact['fact']]: (fact: Extract<Fact, { fact: F }>) => string }

export function factIn(words: FactWords, fact: Fact): string {
  return (words[fact.fact] as (fact: Fact) => string)(fact)
}

/** Two decimals, more only where the amount has more, and no separators, which countries read differently. */
export function amountText(amount: Decimal): string {
  return amount.toFixed(Math.max(2, amount.decimalPlaces()))
}
