/** What the words of facts are made of in every language. */
import type { Fact } from '../core/definition/fact'
import type { Decimal } from '../core/quantity/decimal'

export type FactWords = { readonly [F in Fact['fact']]: (fact: Extract<Fact, { fact: F }>) => string }

export function factIn(words: FactWords, fact: Fact): string {
  return (words[fact.fact] as (fact: Fact) => string)(fact)
}

/** Two decimals, and more only where the amount has more; no separators, which read differently from country to country. */
export function amountText(amount: Decimal): string {
  return amount.toFixed(Math.max(2, amount.decimalPlaces()))
}
