import type { Body, Cell, Definition, MethodResult, WorkingStep } from '../core/definition/definition'
import { isFact, type Fact } from '../core/definition/fact'
import type { Words } from '../wording/words'

/** The two ways in which a language says what a definition tells: its texts, by the English ones, and facts. */
type Said = Pick<Words, 'ofDefinition' | 'factText'>

/**
 * A definition whose texts another language says, with all that is computed from it as it was. Names of arguments,
 * units and the headings of tables stay: they stand in cells and formulas. So does the name of a result by which a
 * check formula calls the answer.
 */
export function definitionIn(definition: Definition, said: Said): Definition {
  const { summary, convention, parameters, result, body, examples, over } = definition
  const { ofDefinition: say } = said
  const isCalled = 'plain' in body && 'check' in body.plain
  return {
    ...definition,
    summary: say(summary),
    convention: say(convention),
    parameters: Object.fromEntries(
      Object.entries(parameters).map(([name, parameter]) => [name, withText(parameter, said)]),
    ),
    result: {
      ...withText(result, said),
      name: isCalled ? result.name : say(result.name),
      ...(result.columns && {
        columns: Object.fromEntries(
          Object.entries(result.columns).map(([key, column]) => [key, withText(column, said)]),
        ),
      }),
    },
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
    plain: 'reason' in plain ? { ...plain, reason: said.ofDefinition(plain.reason) } : plain,
  }
}

/** What a method computes, with its working in the other language. */
function resultIn(result: MethodResult, said: Said): MethodResult {
  return 'problem' in result ? result : { ...result, working: () => result.working().map((step) => stepIn(step, said)) }
}

function stepIn({ name, text, formula, value, unit }: WorkingStep, { ofDefinition, factText }: Said): WorkingStep {
  const ofFact = <T extends Cell>(one: T | Fact) => (isFact(one) ? factText(one) : one)
  return {
    name: ofFact(name),
    text: isFact(text) ? factText(text) : ofDefinition(text),
    formula: ofFact(formula),
    value: isList(value) ? value.map(ofFact) : ofFact(value),
    unit,
  }
}

function isList(value: WorkingStep['value']): value is readonly Cell[] {
  return Array.isArray(value)
}

function withText<T extends { readonly text: string }>(one: T, { ofDefinition }: Said): T {
  return { ...one, text: ofDefinition(one.text) }
}
