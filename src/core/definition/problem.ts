/**
 * What is wrong with a call, as data. `wording/` makes the sentence, so a second language needs no change here.
 */
import type { Dimension } from '../quantity/units'

export type Problem = Refusal | NoAnswer

/** A limit that a value broke. */
export type Limit =
  { readonly is: 'atLeast' | 'above' | 'atMost' | 'below'; readonly value: number } | { readonly is: 'whole' }

export type Refusal = (
  | { readonly code: 'missing' }
  | { readonly code: 'emptyRange' }
  | { readonly code: 'notNumber'; readonly value: string }
  | { readonly code: 'notText'; readonly value: string }
  | { readonly code: 'logical'; readonly value: string }
  /** Not a number, or larger or smaller than any cell can hold. */
  | { readonly code: 'outsideCells' }
  | { readonly code: 'unclearComma'; readonly value: string }
  /** A text where a day is taken, and not as 2026-02-09. */
  | { readonly code: 'notDay'; readonly value: string }
  /** So many weeks before a day that the days counted here do not reach back to it. */
  | { readonly code: 'beforeFirstDay'; readonly other: string; readonly days: string }
  | { readonly code: 'tooManyWeeks'; readonly got: string; readonly most: number }
  /** 1.500.000, or 1,500.25. */
  | { readonly code: 'severalMarks'; readonly value: string }
  | { readonly code: 'notPlainDigits'; readonly value: string }
  | { readonly code: 'outOfRange'; readonly value: string; readonly limit: Limit }
  /** A zero where none can be meant: some hosts hand a blank cell over as 0. */
  | { readonly code: 'zeroOrBlank' }
  /** 15 typed for 15 %. */
  | { readonly code: 'percentTyped'; readonly value: string }
  | { readonly code: 'unitUnknown'; readonly unit: string }
  | { readonly code: 'unitAmbiguous'; readonly unit: string; readonly spellings: readonly string[] }
  | { readonly code: 'unitOfOtherKind'; readonly value: string; readonly got: Dimension; readonly takes: Dimension }
  | { readonly code: 'unitNotTaken'; readonly value: string }
  | {
      readonly code: 'unitsDiffer'
      readonly from: string
      readonly fromKind: Dimension
      readonly to: string
      readonly toKind: Dimension
    }
  | { readonly code: 'notOneCell'; readonly rows: number; readonly columns: number }
  | { readonly code: 'notOneLine'; readonly rows: number; readonly columns: number }
  | { readonly code: 'lengthsDiffer'; readonly length: number; readonly other: string; readonly otherLength: number }
  | { readonly code: 'blankInRow' }
  | { readonly code: 'allZero' }
  | { readonly code: 'sharesExclude'; readonly other: string; readonly value: string; readonly limit: string }
  /** Batches cannot differ where none of them loses anything. */
  | { readonly code: 'noSpreadAtOne'; readonly other: string; readonly value: string }
  /** Batches of one cutting each, which do not show how alike the cuttings of a batch are. */
  | { readonly code: 'batchesOfOne' }
  /** A value of a range that may not exceed the value beside it in another range. */
  | { readonly code: 'aboveOther'; readonly value: string; readonly other: string; readonly otherValue: string }
  /** A value that must stand in a range only once. */
  | { readonly code: 'givenTwice'; readonly value: string }
  | { readonly code: 'tooFewRows'; readonly got: number; readonly least: number }
  | { readonly code: 'tooManyRows'; readonly got: number; readonly most: number }
  /** One supplier with two different deliveries. */
  | { readonly code: 'deliveriesDiffer'; readonly value: string; readonly other: string }
  /** Amounts whose sums have more digits than are added exactly. */
  | { readonly code: 'beyondExact' }
  /** Two arguments, or two cells of a row, of which one says nothing without the other. */
  | { readonly code: 'needsOther'; readonly other: string }
  | { readonly code: 'functionUnknown'; readonly value: string; readonly known: readonly string[] }
  | { readonly code: 'argumentUnknown'; readonly value: string; readonly of: string; readonly known: readonly string[] }
  | { readonly code: 'argumentMissing'; readonly missing: string; readonly of: string }
  /** An argument that is one cell, named for a second time. */
  | { readonly code: 'argumentTwice'; readonly value: string; readonly of: string }
  | { readonly code: 'tooManyDraws'; readonly value: string; readonly of: string; readonly most: number }
  /** What a function said that this one computed by name. */
  | { readonly code: 'functionRefused'; readonly of: string; readonly problems: readonly Problem[] }
  | { readonly code: 'tooManyArguments'; readonly given: number; readonly most: number }
  | { readonly code: 'resultOutsideCells' }
) & {
  readonly kind: 'refused'
  /** Absent where the call as a whole is wrong. */
  readonly parameter?: string
  /** The place in a range, from 1. */
  readonly row?: number
}

export type NoAnswer =
  /** With what makes reuse dear, of the arguments that were given above 0. */
  (
    | {
        readonly code: 'neverPays'
        readonly least: string
        readonly singleUse: string
        readonly raises: readonly ('washCost' | 'topUpShare' | 'lossShare' | 'yearlyInterest')[]
      }
    | { readonly code: 'paysTooLate'; readonly mostRounds: string; readonly level: string; readonly singleUse: string }
    | { readonly code: 'needsTooMany'; readonly most: string }
    | { readonly code: 'cannotCover'; readonly needed: string; readonly most: string }
    | { readonly code: 'searchGivenUp'; readonly most: string }
    | { readonly code: 'surplusPays'; readonly surplus: string; readonly cost: string }
    | { readonly code: 'paysBeyond'; readonly most: string }
    /** What a function said that this one computed by name, with the values of one argument or of one of its rows. */
    | {
        readonly code: 'functionHasNoAnswer'
        readonly of: string
        readonly parameter: string
        readonly row?: number
        readonly why: NoAnswer
      }
    | { readonly code: 'noDrawHasAnswer'; readonly of: string; readonly draws: string }
  ) & { readonly kind: 'noAnswer' }

/** An error value that stood in an input cell. It comes through as that same error. */
export interface CellError {
  readonly kind: 'cellError'
  /** As the spreadsheet writes it: "#DIV/0!". */
  readonly code: string
}

export function isCellError(value: unknown): value is CellError {
  return typeof value === 'object' && value !== null && (value as { kind?: unknown }).kind === 'cellError'
}
