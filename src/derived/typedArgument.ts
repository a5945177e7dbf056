/** What a user types for an argument, outside a formula: a number, a number with its unit, a list, cells, or a formula. */
import { tokenize, tokenTypes } from '@borgar/fx'
import type { Parameter } from '../core/definition/parameter'
import { readNumberText } from '../core/definition/readNumber'
import { isName, isReference } from './reference'

export type TypedArgument =
  | { readonly kind: 'blank' }
  /** `formulaText` is the value as it stands in a formula. */
  | { readonly kind: 'value'; readonly value: Constant | readonly (readonly Constant[])[]; readonly formulaText: string }
  | { readonly kind: 'cells'; readonly reference: string }
  /** What only the host can calculate. */
  | { readonly kind: 'formula'; readonly text: string }

type Constant = number | string

export function typedArgument(parameter: Parameter, typed: string): TypedArgument {
  const text = typed.trim()
  if (text === '') return { kind: 'blank' }
  if (text.startsWith('=')) return asFormula(text.slice(1))
  if (namesCells(parameter, text)) return { kind: 'cells', reference: text }
  if (parameter.shape === 'line' && text.includes(';')) return asList(text.split(';').map((part) => part.trim()))
  const constant = constantOf(parameter, text)
  if (constant !== undefined) return { kind: 'value', value: constant, formulaText: /^[\d.]+ ?%$/.test(text) ? text : constantText(constant) }
  return /[(*/^&+]/.test(text) ? asFormula(text) : isName(text) ? { kind: 'cells', reference: text } : asValue(text)
}

/** The text to show in the form for an argument of a formula: the reverse of typedArgument. */
export function textOfArgument(formulaText: string): string {
  const text = formulaText.trim()
  const tokens = tokenize(text)
  const [only] = tokens
  if (tokens.length === 1 && only?.type === tokenTypes.STRING) return unquoted(only.value)
  const inner = /^\{(.*)\}$/s.exec(text)?.[1]
  if (inner !== undefined) {
    const parts = tokenize(inner).filter(({ type, value }) => type !== tokenTypes.WHITESPACE && !(type === tokenTypes.OPERATOR && (value === ';' || value === ',')))
    return parts.map(({ type, value }) => (type === tokenTypes.STRING ? unquoted(value) : value)).join('; ')
  }
  return tokens.some(({ type }) => type === tokenTypes.FUNCTION || type === tokenTypes.OPERATOR) ? `=${text}` : text
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
    return number !== undefined && !('unclear' in number) && number.rest === '' ? number.value.toNumber() : unquoted(part)
  })
  return { kind: 'value', value: values.map((value) => [value]), formulaText: `{${values.map(constantText).join(';')}}` }
}

function asFormula(text: string): TypedArgument {
  const formula = text.trim()
  return isReference(formula) || isName(formula) ? { kind: 'cells', reference: formula } : { kind: 'formula', text: formula }
}

/** Neither number nor cell: it goes on as text, and the argument reader says what is wrong with it. */
function asValue(text: string): TypedArgument {
  return { kind: 'value', value: text, formulaText: constantText(text) }
}

function constantText(value: Constant): string {
  return typeof value === 'number' ? String(value).toUpperCase() : `"${value.replaceAll('"', '""')}"`
}

function unquoted(text: string): string {
  return /^".*"$/s.test(text) ? text.slice(1, -1).replaceAll('""', '"') : text
}
