/** The ids of our functions that a formula calls: one for each call that is written in it, in their order. */
export function idsCalled(formula: string): readonly string[] {
  return [...withoutQuotes(formula).matchAll(/\bSTICK\.(\w+)\s*\(/gi)].map(([, id = '']) => id.toUpperCase())
}

/** Quoted texts and quoted sheet names may hold anything, so also what looks like a call. */
function withoutQuotes(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, '')
}
