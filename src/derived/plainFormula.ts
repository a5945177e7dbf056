/** A call of a cell function as a plain Excel formula, for people without the add-in. */
import type { AstExpression } from '@borgar/fx'
import type { Definition } from '../core/definition/definition'
import type { Parameter } from '../core/definition/parameter'
import { isBlank, readValue, takesZero } from '../core/definition/readArguments'
import { parseFormula } from '../core/expression/expression'
import { substitute } from '../core/expression/substitute'
import { writeFormula } from '../core/expression/write'
import { Decimal } from '../core/quantity/decimal'

export type PlainCall =
  | { readonly formula: string }
  /** The check is a formula too. It calls the answer by the name of the result. */
  | { readonly reason: string; readonly check?: string }

/**
 * @param argumentTexts The arguments as they stand in the cell's formula: "A1", "65", "\"65 mL\"", "B2:B5".
 * Optional ones may be missing or empty. A cell that holds text with a unit is not read by plain Excel.
 */
export function plainFormula(definition: Definition, argumentTexts: readonly string[]): PlainCall {
  const { id, body, plain } = definition
  const replacements = new Map<string, AstExpression>()
  for (const [index, [name, parameter]] of Object.entries(definition.parameters).entries()) {
    const argument = argumentFor(parameter, argumentTexts[index] ?? '', replacements)
    if (argument !== undefined) replacements.set(name, argument)
  }
  if ('steps' in body) {
    let last: AstExpression | undefined
    for (const { name, expression } of body.steps) {
      last = substitute(expression.tree, replacements)
      replacements.set(name, last)
    }
    return { formula: `=${writeFormula(last!)}` }
  }
  const overArguments = (formula: string) => `=${writeFormula(substitute(parseFormula(formula), replacements))}`
  if (plain === undefined) throw new Error(`${id} has neither steps nor a plain formula`)
  if ('formula' in plain) return { formula: overArguments(plain.formula) }
  const { reason, check } = plain
  return check === undefined ? { reason } : { reason, check: overArguments(check) }
}

function argumentFor(
  parameter: Parameter,
  text: string,
  earlier: ReadonlyMap<string, AstExpression>,
): AstExpression | undefined {
  const fallback =
    typeof parameter.default === 'object'
      ? earlier.get(parameter.default.sameAs)
      : // What has no default is blank where it is left out, as an empty cell is.
        literal(parameter.default ?? (parameter.optional ? '""' : undefined))
  if (isBlank(text)) return fallback
  const tree = parseFormula(text)
  if (tree.type === 'Literal' && typeof tree.value === 'string' && parameter.takes === 'number') {
    const read = readValue(parameter, tree.value)
    if (read instanceof Decimal) return literal(read.toString())
  }
  // A blank cell counts as 0 in plain Excel, which is the default only where the default is 0.
  const defaultDiffers = parameter.default !== undefined && parameter.default !== 0
  if (tree.type !== 'ReferenceIdentifier' || fallback === undefined || !defaultDiffers) return tree
  const cell = writeFormula(tree)
  const isLeftOut = takesZero(parameter) ? `${cell}=""` : `OR(${cell}="",${cell}=0)`
  return parseFormula(`IF(${isLeftOut},${writeFormula(fallback)},${cell})`)
}

function literal(value: number | string | undefined): AstExpression | undefined {
  return value === undefined ? undefined : parseFormula(String(value))
}
