/** What the witness said, line by line, for the command that recalculates. */
import { isCellError } from '../core/definition/problem'
import { check } from '../wording/en/check'
import type { NotJudged, NoTestimony, Testimony } from '../workbook/check/testimony'
import type { ReadCell } from '../workbook/openBook'

const say = check.witness

export function witnessLines(testimony: Testimony | NoTestimony | undefined): readonly string[] {
  if (testimony === undefined) return []
  if (typeof testimony === 'string') return [say[testimony]]
  const { disagreements, judged, notJudged } = testimony
  const reasons = Object.entries(notJudged) as [NotJudged, number][]
  const count = reasons.reduce((sum, [, some]) => sum + some, 0)
  return [
    ...disagreements.map(
      ({ sheet, address, first, second }) => `${sheet}!${address}  ${say.differ(valueText(first), valueText(second))}`,
    ),
    say.said(disagreements.length, judged),
    ...(count === 0 ? [] : [say.notJudged(count)]),
    ...reasons.map(([why, some]) => `  ${some}  ${say.reasons[why]}`),
  ]
}

function valueText(value: ReadCell): string {
  if (value === null) return say.blank
  if (isCellError(value)) return value.code
  return typeof value === 'string' ? `“${value}”` : String(value).toUpperCase()
}
