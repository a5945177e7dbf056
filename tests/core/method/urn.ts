/**
 * Polya's urn of balls that are alive or dead: each draw returns its ball and adds some more of its colour. How many
 * living ones are drawn is beta-binomial with the rates alive / added and dead / added, and binomial where none are
 * added (from memory).
 */
export interface Urn {
  readonly alive: number
  readonly dead: number
  readonly added: number
}

/** The chances of 0, 1, … living ones: each weight over their sum. */
export interface Chances {
  readonly weights: readonly bigint[]
  readonly sum: bigint
}

/** By the ratio of neighbours, in whole numbers so large that nothing above 1e-150 loses a digit of a double. */
export function chancesOf({ alive, dead, added }: Urn, draws: number): Chances {
  const weights = [1n << 600n]
  for (let k = 0; k < draws; k++) {
    weights.push(
      (weights[k]! * BigInt((draws - k) * (alive + added * k))) / BigInt((k + 1) * (dead + added * (draws - k - 1))),
    )
  }
  return { weights, sum: weights.reduce((sum, one) => sum + one, 0n) }
}

/** What an amount that depends on the living ones is on average; whole amounts only. */
export function onAverage({ weights, sum }: Chances, amount: (living: number) => number): number {
  const total = weights.reduce((all, weight, living) => all + weight * BigInt(amount(living)), 0n)
  return Number((total << 900n) / sum) / 2 ** 900
}

/** The mean share of the living, and its deviation from urn to urn. */
export function survivalOf({ alive, dead, added }: Urn): { readonly mean: number; readonly batchSpread: number } {
  const mean = alive / (alive + dead)
  // A beta distribution with the sum of its rates s has the variance mean (1 - mean) / (s + 1).
  return { mean, batchSpread: added === 0 ? 0 : Math.sqrt((mean * (1 - mean)) / ((alive + dead) / added + 1)) }
}
