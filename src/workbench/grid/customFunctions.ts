/** Registers the catalogue with the grid: one class for each function, and its texts for the signature help. */
import { BooleanNumber, type Ctor, type Nullable } from '@univerjs/core'
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  type ErrorType,
  ErrorValueObject,
  FunctionType,
  type IFunctionInfo,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula'
import type { Definition } from '../../core/definition/definition'
import type { CellError } from '../../core/definition/problem'
import { call, type CallOutcome } from '../../derived/call'
import type { CellCalls, Place } from './cellCalls'

const namespace = 'STICK.'

/** What the grid's formula plugin takes as `formula`. */
export interface CustomFunctions {
  readonly function: [Ctor<BaseFunction>, string][]
  readonly description: IFunctionInfo[]
}

export function customFunctions(definitions: readonly Definition[], calls: CellCalls): CustomFunctions {
  return {
    function: definitions.map((definition) => [functionClass(definition, calls), namespace + definition.id]),
    description: definitions.map(describe),
  }
}

/**
 * The number of arguments is not left to the grid (minParams, maxParams): it would answer #N/A without a word,
 * where `call` says which argument is missing.
 */
function functionClass(definition: Definition, calls: CellCalls): Ctor<BaseFunction> {
  return class extends BaseFunction {
    /** Else the grid turns the text "15%" or "1-2" into a number or a date before the function sees it. */
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true
    }

    override calculate(...args: BaseValueObject[]): BaseValueObject {
      const place: Place = {
        workbook: this.unitId ?? '',
        sheet: this.subUnitId ?? '',
        row: this.row,
        column: this.column,
      }
      const given = args.map(toArgument)
      const outcome = call(definition, given)
      calls.made(place, { definition, args: given, outcome })
      return toGridValue(outcome, place)
    }
  }
}

type Scalar = number | string | boolean | null | CellError

function toArgument(value: BaseValueObject): Scalar | Scalar[][] {
  if (!value.isArray()) return toScalar(value)
  return (value as ArrayValueObject).getArrayValue().map((row) => row.map((cell) => toScalar(cell)))
}

function toScalar(value: Nullable<BaseValueObject>): Scalar {
  if (value === null || value === undefined || value.isNull()) return null
  if (value.isError()) return { kind: 'cellError', code: (value as ErrorValueObject).getErrorType() }
  return value.getValue()
}

function toGridValue(outcome: CallOutcome, at: Place): BaseValueObject {
  if (outcome.kind !== 'value') return ErrorValueObject.create(outcome.code as ErrorType)
  const { value } = outcome
  if (typeof value === 'number' || typeof value === 'string') return toGridScalar(value)
  return ArrayValueObject.create({
    calculateValueList: value.map((row) => row.map(toGridScalar)),
    rowCount: value.length,
    columnCount: value[0]?.length ?? 0,
    unitId: at.workbook,
    sheetId: at.sheet,
    row: at.row,
    column: at.column,
  })
}

function toGridScalar(value: number | string): BaseValueObject {
  return typeof value === 'number' ? NumberValueObject.create(value) : StringValueObject.create(value)
}

function describe(definition: Definition): IFunctionInfo {
  return {
    functionName: namespace + definition.id,
    functionType: FunctionType.User,
    description: `${definition.summary} ${definition.convention}`,
    abstract: definition.summary,
    functionParameter: Object.entries(definition.parameters).map(([name, parameter]) => ({
      name,
      detail: `${parameter.text} (${parameter.unit})`,
      example: '',
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  }
}
