/** What a part of the cost of a cutting is spent on, as far as its cell says so. */
export type CostClass = 'medium' | 'bench' | 'labour' | 'other'

type Told = Exclude<CostClass, 'other'>

const byFunction: Readonly<Record<Told, RegExp>> = {
  medium: /\bSTICK\.(MEDIUMCOST|BLENDCOST)\b/i,
  bench: /\bSTICK\.BENCHCOST\b/i,
  labour: /\bSTICK\.LABOURCOST\b/i,
}

const byWord: Readonly<Record<Told, RegExp>> = {
  medium: /\b(medium|media|mix|substrate|compost|soil|peat|coir|perlite|vermiculite|sand|premix|rockwool|water)\b/i,
  bench: /\b(bench|floor|space|heat|heating|light|lighting|rent)\b/i,
  labour: /\b(labou?r|work|wages?|hours|staff|sticking|mixing|filling)\b/i,
}

/** First the function that computes it decides, then what it is called; where those name two classes, it cannot be told. */
export function costClass(formula: string, headings: readonly string[]): CostClass {
  // Of a sum its function says what one term is.
  const computed = /\+/.test(outsideBrackets(formula)) ? '' : formula
  for (const [text, signs] of [
    [computed, byFunction] as const,
    ...headings.map((heading) => [heading, byWord] as const),
  ]) {
    const [only, ...more] = (Object.keys(signs) as Told[]).filter((one) => signs[one].test(text))
    if (only !== undefined) return more.length === 0 ? only : 'other'
  }
  return 'other'
}

function outsideBrackets(formula: string): string {
  const shorter = formula.replace(/\([^()]*\)/g, '')
  return shorter === formula ? formula : outsideBrackets(shorter)
}
