/**
 * The metadata that Excel reads: names, texts and shapes of the cell functions.
 * Parameters are of type "any" so that blanks, texts with units and wrong kinds reach the argument reader, which
 * has a sentence for each; a typed parameter would be refused by Excel without one.
 */
import { fillsOneCell, type Definition } from '../core/definition/definition'
import { takesText } from '../wording/en/parameters'

/** Where the add-in is served while it is developed; a store wants all files on one domain. */
const addinAddress = 'https://localhost:3000'

export interface FunctionsJson {
  /** Else Excel answers an error of an input cell with #VALUE! itself, and the function is not asked. */
  readonly allowErrorForDataTypeAny: true
  readonly functions: readonly FunctionEntry[]
}

interface FunctionEntry {
  readonly id: string
  readonly name: string
  readonly description: string
  readonly helpUrl: string
  readonly parameters: readonly ParameterEntry[]
  /** The pane shows the working of a cell, so a call must tell its cell. */
  readonly options: { readonly requiresAddress: true }
  readonly result: { readonly type: 'number' | 'any'; readonly dimensionality: 'scalar' | 'matrix' }
}

interface ParameterEntry {
  readonly name: string
  readonly description: string
  readonly type: 'any'
  readonly dimensionality: 'scalar' | 'matrix'
  readonly optional?: true
}

export function functionsJson(catalogue: readonly Definition[], address = addinAddress): FunctionsJson {
  return { allowErrorForDataTypeAny: true, functions: catalogue.map((definition) => entryOf(definition, address)) }
}

function entryOf({ id, summary, parameters, result }: Definition, address: string): FunctionEntry {
  return {
    id,
    name: id,
    description: summary,
    helpUrl: `${address}/help/${id}.html`,
    parameters: Object.entries(parameters).map(([name, parameter]) => ({
      name,
      description: `${parameter.text} (${takesText(parameter)})`,
      type: 'any',
      dimensionality: parameter.shape === 'line' ? 'matrix' : 'scalar',
      ...(parameter.optional ? { optional: true as const } : {}),
    })),
    options: { requiresAddress: true },
    result: {
      type: result.columns === undefined ? 'number' : 'any',
      dimensionality: fillsOneCell(result) ? 'scalar' : 'matrix',
    },
  }
}
