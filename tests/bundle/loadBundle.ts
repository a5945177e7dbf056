/** Evaluates dist/functions.js as Excel does, with nothing around it but CustomFunctions: no DOM, no Node. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { runInNewContext } from 'node:vm'

export const dist = join(import.meta.dirname, '..', '..', 'dist')

/** What Excel offers to a function that refuses. */
export class CellErrorOfHost extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message)
  }
}

export type CellFunction = (...args: unknown[]) => unknown

export function loadBundle(): ReadonlyMap<string, CellFunction> {
  const functions = new Map<string, CellFunction>()
  const CustomFunctions = {
    associate: (id: string, run: CellFunction) => functions.set(id, run),
    Error: CellErrorOfHost,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
  }
  runInNewContext(bundleText(), { CustomFunctions })
  return functions
}

export function bundleText(): string {
  return readFileSync(join(dist, 'functions.js'), 'utf8')
}

/** What Excel reads of functions.json before it calls anything. */
export function metadata(): { readonly allowErrorForDataTypeAny?: boolean } {
  return JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as { allowErrorForDataTypeAny?: boolean }
}
