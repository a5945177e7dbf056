/** A call of one of the cell functions, by the names of its parameters: their order stands in the definition alone. */
import type { Definition, Parameters } from '../../../core/definition/definition'

/** @param given References or formulas; what is left out takes its default. */
export function call<P extends Parameters>(
  { id, parameters }: Pick<Definition<P>, 'id' | 'parameters'>,
  given: { readonly [K in keyof P]?: string },
): string {
  const inOrder = Object.keys(parameters).map((name) => given[name] ?? '')
  while (inOrder.at(-1) === '') inOrder.pop()
  return `STICK.${id}(${inOrder.join(',')})`
}
