/** What a user types for an argument, outside a formula: a number, a number with its unit, a list, cells, or a formula. */
import { tokenize, tokenTypes } from '@borgar/fx'
import type { Parameter } from '../core/definition/parameter'
import { readNumberText } from '../core/definition/readNumber'
import type { DecimalMark } from '../core/quantity/decimalMark'
import { constantText } from '../formula/constantText'
import { commaFormula, commaNumberOf, pointFormula, pointNumber } from '../formula/decimalComma'
import { isName, isReference } from '../formula/reference'

export type TypedArgument =
  | { readonly kind: 'blank' }
  /** `formulaText` is the value as it stands in a formula. */
  | {
      readonly kind: 'value'
      readonly value: Constant | readonly (readonly Constant[])[]
      readonly formulaText: string
    }
  | { readonly kind: 'cells'; readonly reference: string }
  /** What only the host can calculate. */
  | { readonly kind: 'formula'; readonly text: string }

type Constant = number | string

export function typedArgument(parameter: Parameter, typed: string, mark: DecimalMark = '.'): TypedArgument {
  const { number, formula } = readings[mark]
  const text = typed.trim()
  if (text === '') return { kind: 'blank' }
  if (text.startsWith('=')) return asFormula(formula(text.slice(1)))
  if (namesCells(parameter, text)) return { kind: 'cells', reference: text }
  if (parameter.shape === 'line' && text.includes(';'))
    return asList(partsOf(text).map((part) => (parameter.takes === 'number' ? number(part) : part)))
  const constant = constantOf(parameter, parameter.takes === 'number' ? number(text) : text)
  if (constant !== undefined)
    return {
      kind: 'value',
      value: constant,
      formulaText: parameter.takes === 'number' && isPerCent(number(text)) ? number(text) : constantText(constant),
    }
  return /[(*/^&+[#]/.test(text)
    ? asFormula(formula(text))
    : isName(text)
      ? { kind: 'cells', reference: text }
      : asValue(text)
}

const asItIs = (text: string): string => text

/** From what is typed to the en-US form. */
const readings = {
  '.': { number: asItIs, formula: asItIs },
  ',': { number: pointNumber, formula: pointFormula },
} as const

/** And back to what is shown. */
const showings = {
  '.': { number: asItIs, formula: asItIs },
  ',': { number: commaNumberOf, formula: commaFormula },
} as const

/** The text to show in the form for an argument of a formula: the reverse of typedArgument. */
export function textOfArgument(parameter: Parameter, formulaText: string, mark: DecimalMark = '.'): string {
  const text = formulaText.trim()
  const shown = shownText(text, parameter, mark)
  // A text that looks like a cell, a block of constants or a column of a table would mean something else if it were typed so.
  return spelled(textInFormula(typedArgument(parameter, shown, mark))) === spelled(text)
    ? shown
    : `=${showings[mark].formula(text)}`
}

/** What was typed with one decimal mark, as it is typed with the other; what is no value yet stays as it is. */
export function remarked(parameter: Parameter, typed: string, from: DecimalMark, to: DecimalMark): string {
  const shown = textOfArgument(parameter, textInFormula(typedArgument(parameter, typed, from)), to)
  return shown.startsWith('="') ? typed : shown
}

/** The argument as it stands in a formula. */
export function textInFormula(argument: TypedArgument): string {
  switch (argument.kind) {
    case 'blank':
      return ''
    case 'value':
      return argument.formulaText
    case 'cells':
      return argument.reference
    case 'formula':
      return argument.text
  }
}

function shownText(text: string, { takes }: Parameter, mark: DecimalMark): string {
  const { formula } = showings[mark]
  const number = takes === 'number' ? showings[mark].number : asItIs
  const tokens = tokenize(text)
  const [only] = tokens
  if (tokens.length === 1 && only?.type === tokenTypes.STRING) return number(unquoted(only.value))
  const inner = /^\{(.*)\}$/s.exec(text)?.[1]
  if (inner !== undefined) {
    const parts = tokenize(inner).filter(
      ({ type, value }) =>
        type !== tokenTypes.WHITESPACE && !(type === tokenTypes.OPERATOR && (value === ';' || value === ',')),
    )
    return parts
      .map(({ type, value }) => number(type === tokenTypes.STRING && !value.includes(';') ? unquoted(value) : value))
      .join('; ')
  }
  return !isPerCent(text) && tokens.some(({ type }) => type === tokenTypes.FUNCTION || type === tokenTypes.OPERATOR)
    ? `=${formula(text)}`
    : number(text)
}

/** A formula in one spelling, to compare two: without spaces, 0.90 as 0.9, and a row of constants as a column of them. */
function spelled(text: string): string {
  const tokens = tokenize(text).filter(({ type }) => type !== tokenTypes.WHITESPACE)
  const isRow =
    /^\{.*\}$/s.test(text) && !tokens.some(({ type, value }) => type === tokenTypes.OPERATOR && value === ';')
  return tokens
    .map(({ type, value }) => {
      if (type === tokenTypes.NUMBER) return String(Number(value))
      return isRow && type === tokenTypes.OPERATOR && value === ',' ? ';' : value
    })
    .join('')
}

function isPerCent(text: string): boolean {
  return /^[\d.]+ ?%$/.test(text)
}

/** A part in quotes may hold a semicolon; the inch mark of a pot is no such quote. */
function partsOf(list: string): readonly string[] {
  return [...`${list};`.matchAll(/\s*("(?:[^"]|"")*"\s*|[^;]*);/g)].map(([, part = '']) => part.trim())
}

/** A unit such as ft3 is also the address of a cell, so where text is taken only capital letters name a cell. */
function namesCells(parameter: Parameter, text: string): boolean {
  return isReference(text) && (parameter.takes === 'number' || text.includes('!') || text === text.toUpperCase())
}

function constantOf(parameter: Parameter, text: string): Constant | undefined {
  if (parameter.takes === 'text') return unquoted(text)
  const number = readNumberText(text)
  if (number === undefined || 'unclear' in number) return undefined
  return number.rest === '' ? number.value.toNumber() : text
}

function asList(parts: readonly string[]): TypedArgument {
  const values = parts.map((part): Constant => {
    const number = readNumberText(part)
    return number !== undefined && !('unclear' in number) && number.rest === ''
      ? number.value.toNumber()
      : unquoted(part)
  })
  return {
    kind: 'value',
    value: values.map((value) => [value]),
    formulaText: `{${values.map(constantText).join(';')}}`,
  }
}

function asFormula(text: string): TypedArgument {
  const formula = text.trim()
  return isReference(formula) || isName(formula)
    ? { kind: 'cells', reference: formula }
    : { kind: 'formula', text: formula }
}

/** Neither number nor cell: it goes on as text, and the argument reader says what is wrong with it. */
function asValue(text: string): TypedArgument {
  return { kind: 'value', value: text, formulaText: constantText(text) }
}

function unquoted(text: string): string {
  return /^".*"$/s.test(text) ? text.slice(1, -1).replaceAll('""', '"') : text
}
