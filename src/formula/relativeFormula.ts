import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx'

/** A formula by how far away the cells are that it reads: the same text in every row of a column that was filled down. */
export function relativeFormula(formula: string, address: string): string {
  return translateFormulaToR1C1(formula, address)
}

/** The formula that such a text stands for in one cell. */
export function formulaAt(relative: string, address: string): string {
  return translateFormulaToA1(relative, address)
}

/** A formula of one cell as it would be in another one that it was filled into. */
export function filledInto(formula: string, from: string, into: string): string {
  return formulaAt(relativeFormula(formula, from), into)
}
