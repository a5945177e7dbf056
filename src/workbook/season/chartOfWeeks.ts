/** The chart of a measure week by week, as a sheet itself can hold it. */
import { addressOf, blockAddress } from '../../formula/address'
import { namedRanges, rangesRead } from '../../formula/rangesRead'
import { english } from '../../wording/en/words'
import type { DefinedName } from '../book'
import type { SheetChart } from '../sheetChart'
import { rowsOf } from './table/rowsSheet'
import { calendar } from './tables/calendar'
import type { Weeks } from './weeks'

/** In English, as all that the pane writes into a workbook. */
const { weeks: words } = english.season

const there = { bench: 'benchThere', ground: 'groundThere', hours: 'hoursThere' } as const

/** Undefined where the workbook has no calendar. */
export function chartOfWeeks(of: Weeks['of'], names: readonly DefinedName[]): SheetChart | undefined {
  const named = namedRanges(names)
  const rangeOf = (column: keyof typeof calendar.columns) => rangesRead(`=${rowsOf(calendar, column)}`, '', named)[0]
  const [along, taken, limit, last] = [rangeOf('week'), rangeOf(of), rangeOf(there[of]), rangeOf('note')]
  if (along === undefined || taken === undefined || limit === undefined || last === undefined) return undefined
  return {
    sheet: along.sheet,
    kind: 'line',
    title: words.titles[of],
    along: blockAddress(along),
    alongTitle: words.week,
    valueTitle: words.units[of],
    series: [
      { name: words.taken, values: blockAddress(taken) },
      { name: words.limit, values: blockAddress(limit) },
    ],
    free: addressOf(last.top, last.right + 1 + 1),
  }
}
