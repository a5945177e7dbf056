import { headingRow, inOrder } from '../../core/definition/columns'
import { defineTable, type RefusalWithoutKind, type TextsOf } from '../../core/definition/definition'
import { number } from '../../core/definition/parameter'
import { Decimal, zero } from '../../core/quantity/decimal'
import { days, mondayOf, weekOf } from './calendar'
import { changesOf, plainStays, standingIn, stayParameters } from './stays'

/** Some forty years. */
const mostWeeks = 2000

const columns = {
  monday: { heading: 'week from' },
  standing: { heading: 'standing' },
}

export const standing = defineTable({
  id: 'STANDING',
  subject: 'weeks',
  parameters: {
    ...stayParameters,
    firstDay: number('day', { text: 'a day of the first week to show', optional: true, ...days }),
    weeks: number('weeks', {
      text: 'weeks to show',
      optional: true,
      atLeast: 1,
      atMost: mostWeeks,
      whole: true,
      example: 4,
    }),
  },
  result: { name: 'standing', unit: 'table', columns },
  method: ({ firstDay, weeks, ...starts }) => {
    const changes = changesOf(starts)
    const earliest = starts.startDays.reduce((one, other) => (other.lt(one) ? other : one))
    const first = changes[0] === undefined || firstDay !== undefined ? weekOf(firstDay ?? earliest) : changes[0].week
    const shown = weeks?.toNumber() ?? Math.max(1, (changes.at(-1)?.week ?? first) - first)
    if (shown > mostWeeks) return { problem: tooManyWeeks(shown) }
    let [next, now] = [0, zero]
    const table = Array.from({ length: shown }, (_, row) => {
      const week = first + row
      for (; next < changes.length && changes[next]!.week <= week; next++) now = changes[next]!.standing
      return { monday: mondayOf(week), standing: now }
    })
    const most = table.reduce((best, row) => (row.standing.gt(best.standing) ? row : best))
    return {
      table,
      working: () => [
        {
          name: 'starts',
          text: 'starts that stand in some week',
          formula: 'COUNT of weeksHeld and amounts above 0',
          value: new Decimal(starts.amounts.filter((one, start) => one.gt(0) && starts.weeksHeld[start]!.gt(0)).length),
          unit: 'starts',
        },
        { name: 'weeks', text: 'weeks shown', formula: 'rows of the table', value: new Decimal(shown), unit: 'weeks' },
        {
          name: 'monday',
          text: 'the first week in which most stand',
          formula: 'week from, where standing is largest',
          value: most.monday,
          unit: 'day',
        },
        {
          name: 'most',
          text: 'what stands then',
          formula: 'SUM of amounts, where start week <= week < start week + ROUNDUP(weeksHeld + turnroundWeeks, 0)',
          value: most.standing,
          unit: 'any',
        },
      ],
    }
  },
})

export const standingText: TextsOf<typeof standing> = {
  summary: 'What stands in each week: containers in use, or bench that is taken, from the starts of the season.',
  convention:
    'Weeks begin on Monday (ISO 8601). A start stands in the week of its day and in as many weeks as it is held, with the weeks between two uses; a part of a week counts as a week, and which day of the week it was does not count. Where trays are cleared late in a week and others are stuck early in the same, type a week between. What is held 0 weeks stands nowhere and needs no washing. Without firstDay the table begins with the first week in which something stands, and without weeks it ends with the last; weeks in which nothing stands are in it, and where nothing stands at all there is one week with 0. What began before firstDay and still stands counts. The weeks are numbers of days; format their column as dates.',
  result: 'a row for each week',
  columns: {
    monday: { text: 'the Monday with which the week begins', unit: 'day' },
    standing: { text: 'what stands in that week', unit: 'any' },
  },
  plain: (columns) => ({
    formula:
      `LET(${plainStays}, stands, (freeWeek > startWeek) * (amountEach > 0), ` +
      'beginWeek, IF(LEN(firstDay) > 0, INT((N(firstDay) - 2) / 7), IF(SUM(stands) = 0, MIN(startWeek), MIN(IF(stands = 1, startWeek, 10 ^ 9)))), ' +
      'weekCount, IF(LEN(weeks) > 0, N(weeks), MAX(1, MAX(IF(stands = 1, freeWeek, 0)) - beginWeek)), ' +
      'weekEach, SEQUENCE(weekCount) - 1 + beginWeek, ' +
      `VSTACK(${headingRow(columns)}, HSTACK(${inOrder(columns, {
        monday: '7 * weekEach + 2',
        standing: `MAP(weekEach, LAMBDA(week, ${standingIn('week')}))`,
      })})))`,
  }),
  examples: [
    {
      text: '40 trays for 3 weeks and, a week later, 25 for 2 weeks: 65 stand in the second and third week',
      given: [
        ['2026-12-21', '2026-12-30'],
        [3, 2],
        [40, 25],
      ],
      gives: [
        [46377, 40],
        [46384, 65],
        [46391, 65],
      ],
      source: 'definition',
    },
    {
      text: 'The same with a week for washing, from the week of 4 January 2027 on, for 4 weeks',
      given: [['2026-12-21', '2026-12-30'], [3, 2], [40, 25], 1, '2027-01-06', 4],
      gives: [
        [46391, 65],
        [46398, 65],
        [46405, 0],
        [46412, 0],
      ],
      source: 'definition',
    },
  ],
}

function tooManyWeeks(got: number): RefusalWithoutKind {
  return { code: 'tooManyWeeks', parameter: 'startDays', got: String(got), most: mostWeeks }
}
