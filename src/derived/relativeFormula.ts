import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx'

/** A formula by how far away the cells are that it reads: the same text in every row of a column that was filled down. */
export function relativeFormula(formula: string, address: string): string {
  return translateFormulaToR1C1(formula, address)
}

/** A formula of one cell as it would be in another one that it was filled into. */
export function filledInto(formula: string, from: string, into: string): string {
  return translateFormulaToA1(relativeFormula(formula, from), into)
}
