import type { CellFunction, Example, ExampleArgument } from '../core/definition/definition'
import { constantText } from '../formula/constantText'

/**
 * The example as a formula that can be put into a cell, in en-US form. Ranges become columns of an array
 * constant, because an example has no cells of its own to point to.
 */
export function exampleFormula(definition: CellFunction, example: Example): string {
  const written = example.given.map(argumentText).join(',')
  // Nobody types the commas of arguments that are left out at the end.
  return `=STICK.${definition.id}(${written.replace(/,+$/, '')})`
}

/** An argument as it stands in a formula; nothing where it is left out. */
export function argumentText(argument: ExampleArgument): string {
  if (argument === null) return ''
  return typeof argument === 'object' ? `{${argument.map(constantText).join(';')}}` : constantText(argument)
}
