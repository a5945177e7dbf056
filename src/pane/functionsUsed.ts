import type { Definition } from '../core/definition/definition'

/** The functions of ours that a formula calls, each once, in the order of the formula. */
export function functionsUsed(formula: string, definitions: readonly Definition[]): readonly Definition[] {
  return [...new Set(idsCalled(formula))].flatMap((id) => definitions.find((definition) => definition.id === id) ?? [])
}

/** One for each call that is written in the formula. */
export function idsCalled(formula: string): readonly string[] {
  return [...withoutQuotes(formula).matchAll(/\bSTICK\.(\w+)\s*\(/gi)].map(([, id = '']) => id.toUpperCase())
}

/** Quoted texts and quoted sheet names may hold anything, so also what looks like a call. */
function withoutQuotes(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, '')
}
