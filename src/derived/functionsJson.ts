/**
 * The metadata that Excel reads: names, texts and shapes of the cell functions.
 * Parameters are of type "any" so that blanks, texts with units and wrong kinds reach the argument reader, which
 * has a sentence for each; a typed parameter would be refused by Excel without one.
 */
import { fillsOneCell, type Definition } from '../core/definition/definition'
import type { Words } from '../wording/words'
import { definitionIn } from './definitionIn'

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

/**
 * @param address Where the add-in is, without a slash at its end. @param help The folder of the help pages.
 */
export function functionsJson(
  catalogue: readonly Definition[],
  words: Words,
  help: string,
  address = addinAddress,
): FunctionsJson {
  return {
    allowErrorForDataTypeAny: true,
    functions: catalogue.map((definition) =>
      entryOf(definitionIn(definition, words), words.parameters.takesText, `${address}/${help}`),
    ),
  }
}

function entryOf(
  { id, summary, parameters, result }: Definition,
  takesText: Words['parameters']['takesText'],
  help: string,
): FunctionEntry {
  return {
    id,
    // The same in every language, or a workbook would not be read by others.
    name: id,
    description: summary,
    helpUrl: `${help}/${id}.html`,
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
