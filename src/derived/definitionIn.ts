import type { Definition } from '../core/definition/definition'

/**
 * A definition whose texts another language says, with all that is computed from it as it was. Names of arguments,
 * units and the headings of tables stay: they stand in cells and formulas.
 */
export function definitionIn(definition: Definition, said: (english: string) => string): Definition {
  const { summary, convention, parameters, result, body, examples, over } = definition
  const withText = <T extends { readonly text: string }>(one: T): T => ({ ...one, text: said(one.text) })
  return {
    ...definition,
    summary: said(summary),
    convention: said(convention),
    parameters: Object.fromEntries(Object.entries(parameters).map(([name, parameter]) => [name, withText(parameter)])),
    result: { ...withText(result), name: said(result.name), ...(result.columns && { columns: result.columns.map(withText) }) },
    body: 'steps' in body ? { steps: body.steps.map(withText) } : body,
    examples: examples.map(withText),
    ...(over && { over: over.map((one) => definitionIn(one, said)) }),
  }
}
