import { isCellError } from '../core/definition/problem'
import type { ReadCell } from './openBook'

/** Excel shows these while it is still asking a function. */
const waiting = new Set(['#BUSY!', '#GETTING_DATA'])

/** Whether a cell waits for its result: what it shows is no error. */
export function isWaiting(value: ReadCell): boolean {
  return isCellError(value) && waiting.has(value.code)
}
