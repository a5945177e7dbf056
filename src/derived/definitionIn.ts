import type { Body, Cell, CellFunction, Definition, MethodResult, WorkingStep } from '../core/definition/definition'
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
  const { summary, convention, result, plain, examples } = definition
  const { ofDefinition: say } = said
  const isCalled = plain !== undefined && 'check' in plain
  return {
    ...functionIn(definition, said),
    summary: say(summary),
    convention: say(convention),
    result: {
      ...withText(result, said),
      name: isCalled ? result.name : say(result.name),
      ...(result.columns && {
        columns: Object.fromEntries(
          Object.entries(result.columns).map(([key, column]) => [key, withText(column, said)]),
        ),
      }),
    },
    ...(plain && { plain: 'reason' in plain ? { ...plain, reason: say(plain.reason) } : plain }),
    examples: examples.map((example) => withText(example, said)),
  }
}

/** What a call, its sentences and its working are made of, in that language. */
export function functionIn(one: CellFunction, said: Said): CellFunction {
  const { parameters, result, body, over } = one
  return {
    ...one,
    parameters: Object.fromEntries(
      Object.entries(parameters).map(([name, parameter]) => [name, withText(parameter, said)]),
    ),
    result: { ...result, name: said.ofDefinition(result.name) },
    body: bodyIn(body, said),
    ...(over && { over: over.map((other) => functionIn(other, said)) }),
  }
}

function bodyIn(body: Body, said: Said): Body {
  if ('steps' in body) return { steps: body.steps.map((step) => withText(step, said)) }
  return { method: (args) => resultIn(body.method(args), said) }
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
