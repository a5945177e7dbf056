/**
 * What a parameter takes, in words. The pane and the help pages show the same texts, made here from the
 * definition, so that a text can never promise what the argument reader refuses.
 */
import { dayUnit, type Parameter } from '../../core/definition/parameter'
import { withMark, type DecimalMark } from '../../core/quantity/decimalMark'

/** "0 to below 1", "above 0", "whole number from 1"; for a row or column "each above 0, not all 0". */
export function rangeText(parameter: Parameter, mark: DecimalMark = '.'): string {
  if (parameter.takes === 'text') return 'text'
  if (parameter.unit === dayUnit) return `${parameter.shape === 'cell' ? '' : 'each a '}date from 1 March 1900`
  const range = parameter.whole === true ? wholeRange(parameter, mark) : (numberRange(parameter, mark) ?? 'any number')
  const each = parameter.shape === 'cell' ? range : `each ${parameter.whole === true ? 'a ' : ''}${range}`
  return parameter.notAllZero === true ? `${each}, not all 0` : each
}

/** What a missing argument or a blank cell stands for; undefined where it stands for nothing. */
export function defaultText(parameter: Parameter, mark: DecimalMark = '.'): string | undefined {
  if (parameter.default === undefined) return undefined
  if (typeof parameter.default === 'object') return `the same as ${parameter.default.sameAs}`
  return numberText(parameter.default, mark)
}

/** All of it on one line: "mL or text with its unit, above 0", "share (0.15 or 15%), 0 to below 1; left out, it is 0". */
export function takesText(parameter: Parameter, mark: DecimalMark = '.'): string {
  const taken = [...shapeText(parameter), ...unitText(parameter, mark), rangeText(parameter, mark)].join(', ')
  if (!parameter.optional) return taken
  const fallback = defaultText(parameter, mark)
  return fallback === undefined ? `${taken}; may be left out` : `${taken}; left out, it is ${fallback}`
}

function shapeText({ shape, oneForAll }: Parameter): readonly string[] {
  if (shape === 'cell') return []
  return [oneForAll === true ? 'one cell for all, or a row or column' : 'a row or column']
}

/** Nothing where another argument says the unit, and nothing for text. */
function unitText(parameter: Parameter, mark: DecimalMark): readonly string[] {
  if (parameter.takes === 'text' || parameter.unit === 'any' || parameter.unit === dayUnit) return []
  if (parameter.share === true) return [`share (${withMark('0.15', mark)} or 15%)`]
  return [parameter.dimension === undefined ? parameter.unit : `${parameter.unit} or text with its unit`]
}

function wholeRange(parameter: Parameter, mark: DecimalMark): string {
  const range = numberRange(parameter, mark)
  if (range === undefined) return 'whole number'
  return /^-?\d/.test(range) ? `whole number from ${range}` : `whole number ${range}`
}

/** undefined where the parameter has no limits. */
function numberRange({ atLeast, above, atMost, below }: Parameter, mark: DecimalMark): string | undefined {
  const low = atLeast ?? above
  const high = atMost ?? below
  const lowText = low === undefined ? undefined : `${above === undefined ? '' : 'above '}${numberText(low, mark)}`
  const highText = high === undefined ? undefined : `${below === undefined ? '' : 'below '}${numberText(high, mark)}`
  if (lowText !== undefined && highText !== undefined) {
    return above !== undefined && below !== undefined ? `${lowText} and ${highText}` : `${lowText} to ${highText}`
  }
  if (lowText !== undefined) return above === undefined ? `from ${lowText}` : lowText
  if (highText !== undefined) return below === undefined ? `at most ${highText}` : highText
  return undefined
}

function numberText(value: number, mark: DecimalMark): string {
  return withMark(value.toLocaleString('en-US', { maximumFractionDigits: 15 }), mark)
}

export const parameters = { rangeText, defaultText, takesText }
