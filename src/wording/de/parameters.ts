import { dayUnit, type Parameter } from '../../core/definition/parameter'
import { withMark, type DecimalMark } from '../../core/quantity/decimalMark'
import type { Words } from '../words'
import { ofUnit } from './definitions'

/** Such as "0 bis unter 1", "ganze Zahl ab 1"; for a row or column "jeweils über 0, nicht alle 0". */
function rangeText(parameter: Parameter, mark: DecimalMark = ','): string {
  if (parameter.takes === 'text') return 'Text'
  if (parameter.unit === dayUnit) return `${parameter.shape === 'cell' ? '' : 'jeweils '}Datum ab 1. März 1900`
  const numbers = numberRange(parameter, mark)
  const range = parameter.whole === true ? `ganze Zahl ${numbers ?? ''}`.trim() : (numbers ?? 'beliebige Zahl')
  const each = parameter.shape === 'cell' ? range : `jeweils ${range}`
  return parameter.notAllZero === true ? `${each}, nicht alle 0` : each
}

function defaultText(parameter: Parameter, mark: DecimalMark = ','): string | undefined {
  if (parameter.default === undefined) return undefined
  return typeof parameter.default === 'object'
    ? `dasselbe wie ${parameter.default.sameAs}`
    : numberText(parameter.default, mark)
}

function takesText(parameter: Parameter, mark: DecimalMark = ','): string {
  const taken = [...shapeText(parameter), ...unitText(parameter, mark), rangeText(parameter, mark)].join(', ')
  if (!parameter.optional) return taken
  const fallback = defaultText(parameter, mark)
  return fallback === undefined ? `${taken}; kann wegbleiben` : `${taken}; ohne Angabe ${fallback}`
}

function shapeText({ shape, oneForAll }: Parameter): readonly string[] {
  if (shape === 'cell') return []
  return [oneForAll === true ? 'eine Zelle für alle, oder eine Zeile oder Spalte' : 'eine Zeile oder Spalte']
}

function unitText(parameter: Parameter, mark: DecimalMark): readonly string[] {
  if (parameter.takes === 'text' || parameter.unit === 'any' || parameter.unit === dayUnit) return []
  if (parameter.share === true) return [`Anteil (${withMark('0.15', mark)} oder 15%)`]
  const unit = ofUnit(parameter.unit)
  return [parameter.dimension === undefined ? unit : `${unit} oder Text mit Einheit`]
}

/** undefined where the parameter has no limits. */
function numberRange({ atLeast, above, atMost, below }: Parameter, mark: DecimalMark): string | undefined {
  const low = atLeast ?? above
  const high = atMost ?? below
  const lowText = low === undefined ? undefined : `${above === undefined ? 'ab' : 'über'} ${numberText(low, mark)}`
  const highText = high === undefined ? undefined : `${below === undefined ? 'bis' : 'unter'} ${numberText(high, mark)}`
  if (lowText === undefined) return highText?.replace(/^bis/, 'höchstens')
  if (highText === undefined) return lowText
  if (above !== undefined && below !== undefined) return `${lowText} und ${highText}`
  return `${lowText.replace(/^ab /, '')} bis ${highText.replace(/^bis /, '')}`
}

function numberText(value: number, mark: DecimalMark): string {
  return withMark(value.toLocaleString('en-US', { maximumFractionDigits: 15 }), mark)
}

export const parameters: Words['parameters'] = { rangeText, defaultText, takesText }
