import type { Body, Definition, MethodResult, WorkingStep } from '../core/definition/definition'

type Said = (english: string) => string

/**
 * A definition whose texts another language says, with all that is computed from it as it was. Names of arguments,
 * units and the headings of tables stay: they stand in cells and formulas. So does the name of a result by which a
 * check formula calls the answer.
 */
export function definitionIn(definition: Definition, said: Said): Definition {
  const { summary, convention, parameters, result, body, examples, over } = definition
  const isCalled = 'plain' in body && 'check' in body.plain
  return {
    ...definition,
    summary: said(summary),
    convention: said(convention),
    parameters: Object.fromEntries(Object.entries(parameters).map(([name, parameter]) => [name, withText(parameter, said)])),
    result: { ...withText(result, said), name: isCalled ? result.name : said(result.name), ...(result.columns && { columns: result.columns.map((column) => withText(column, said)) }) },
    body: bodyIn(body, said),
    examples: examples.map((example) => withText(example, said)),
    ...(over && { over: over.map((one) => definitionIn(one, said)) }),
  }
}

function bodyIn(body: Body, said: Said): Body {
  if ('steps' in body) return { steps: body.steps.map((step) => withText(step, said)) }
  const { method, plain } = body
  return {
    method: (args) => resultIn(method(args), said),
    plain: 'reason' in plain ? { ...plain, reason: said(plain.reason) } : plain,
  }
}

/** What a method computes, with its working in the other language. */
function resultIn(result: MethodResult, said: Said): MethodResult {
  return 'problem' in result ? result : { ...result, working: () => result.working().map((step) => withText({ ...step, value: valueIn(step.value, said) }, said)) }
}

/** A text among the values says why there is no number. */
function valueIn(value: WorkingStep['value'], said: Said): WorkingStep['value'] {
  if (typeof value === 'string') return said(value)
  return Array.isArray(value) && value.every((one) => typeof one === 'string') ? value.map(said) : value
}

function withText<T extends { readonly text: string }>(one: T, said: Said): T {
  return { ...one, text: said(one.text) }
}
