/** Registers the cell functions with Excel. It needs the global CustomFunctions and nothing else: no DOM, no Office. */
import type { CellError } from '../core/definition/problem'
import type { CellFunction } from '../core/definition/definition'
import { call } from '../derived/call'
import type { CellValues } from '../derived/cellsOf'
import { errorGoesIn } from '../wording/en/problems'
import type { CallLog } from './callLog'

/** Excel calls functions as soon as the page is loaded, so this must run while the script is evaluated. */
export function associateFunctions(definitions: readonly CellFunction[], log: CallLog): void {
  for (const definition of definitions) {
    CustomFunctions.associate(definition.id, (...given: unknown[]) => answer(definition, given, log))
  }
}

function answer(definition: CellFunction, given: readonly unknown[], log: CallLog): CellValues {
  const args = withoutInvocation(definition, given).map(fromExcel)
  const address = addressOf(given.at(-1))
  if (address !== undefined) log.made(address, { id: definition.id, args })
  const outcome = call(definition, args)
  switch (outcome.kind) {
    case 'value':
      return outcome.value
    case 'error':
      throw excelError(outcome.code, outcome.sentence)
    case 'cellError':
      throw handedOn.test(outcome.code) ? excelError(outcome.code) : excelError('#VALUE!', errorGoesIn(outcome.code))
  }
}

/** #N/A, #DIV/0!, #VALUE!, #NUM! and #NULL!: Excel turns any other of a function into #VALUE! without a word. */
const handedOn = /^#(N\/|D|V|NU)/

/**
 * Excel hands over one argument more than the function has: an object that describes the call. It fills up with null
 * what was left out before it; should a version not do so, the object is still known by its name of the function.
 */
function withoutInvocation(definition: CellFunction, given: readonly unknown[]): readonly unknown[] {
  const last = given.at(-1)
  const describesTheCall =
    typeof last === 'object' &&
    last !== null &&
    !Array.isArray(last) &&
    (given.length > Object.keys(definition.parameters).length || 'functionName' in last)
  return describesTheCall ? given.slice(0, -1) : given
}

/** The cell that calls; functions.json asks for it. */
function addressOf(invocation: unknown): string | undefined {
  const { address } = (invocation ?? {}) as { readonly address?: unknown }
  return typeof address === 'string' ? address : undefined
}

function fromExcel(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(fromExcel)
  const code = errorCode(value)
  return code === undefined ? withoutFormat(value) : ({ kind: 'cellError', code } satisfies CellError)
}

/** Some versions of Excel hand over a number in a formatted cell as an object that holds the number and its format. */
function withoutFormat(value: unknown): unknown {
  const number =
    typeof value === 'object' && value !== null ? (value as { basicValue?: unknown }).basicValue : undefined
  return typeof number === 'number' ? number : value
}

/** An error value of an input cell is a CustomFunctions.Error, or the plain data of one, depending on the version of Excel. */
function errorCode(value: unknown): string | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  const { code, basicValue } = value as { code?: unknown; basicValue?: unknown }
  return [code, basicValue].find((text): text is string => typeof text === 'string' && text.startsWith('#'))
}

/** The values of CustomFunctions.ErrorCode are the error values as the sheet writes them. */
function excelError(code: string, sentence?: string): CustomFunctions.Error {
  return new CustomFunctions.Error(code as CustomFunctions.ErrorCode, sentence)
}
