import { isCellError } from '../../core/definition/problem'
import type { ReadCell } from '../../workbook/openBook'

/** Doubles end after some sixteen digits, and what is left of a difference has fewer. */
const relative = 1e-9
const absolute = 1e-9

/** Whether two engines say the same of a cell. Which error a cell shows makes no number wrong. */
export function sameResult(first: ReadCell, second: ReadCell): boolean {
  if (typeof first === 'number' && typeof second === 'number') return isNear(first, second)
  if (isCellError(first) || isCellError(second)) return isCellError(first) && isCellError(second)
  if (typeof first === 'string' && typeof second === 'string')
    return first === second || sameButForDigits(first, second)
  return first === second
}

function isNear(first: number, second: number): boolean {
  const least = Math.min(Math.abs(first), Math.abs(second))
  return Math.abs(first - second) <= Math.max(absolute, relative * least)
}

const numberInText = /\d+(?:\.\d+)?(?:E[+-]?\d+)?/gi

/** The second engine writes 1/3 in a text with sixteen digits, Excel with fifteen; and nothing below zero as -0. */
function sameButForDigits(first: string, second: string): boolean {
  const [one, other] = [first, second].map((text) => text.replace(/-0(?![\d.])/g, '0'))
  if (cut(one!) === cut(other!)) return true
  if (one!.replace(numberInText, '') !== other!.replace(numberInText, '')) return false
  const [ours, others] = [one!, other!].map((text) => text.match(numberInText) ?? [])
  return ours!.length === others!.length && ours!.every((digits, at) => sameResult(Number(digits), Number(others![at])))
}

/** Numbers that stand against each other in a text cannot be told apart. */
function cut(text: string): string {
  return text.replace(/(\d{13}|\.\d{9})\d+/g, '$1')
}
