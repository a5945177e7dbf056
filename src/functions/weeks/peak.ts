import { defineByMethod, type TextsOf } from '../../core/definition/definition'
import { zero, type Decimal } from '../../core/quantity/decimal'
import { mondayOf } from './calendar'
import { changesOf, plainStays, standingIn, stayParameters } from './stays'

export const peak = defineByMethod({
  id: 'PEAK',
  subject: 'weeks',
  parameters: stayParameters,
  result: { name: 'peak', unit: 'any' },
  method: (starts) => {
    const changes = changesOf(starts)
    const most = changes.reduce<{ readonly week?: number; readonly standing: Decimal }>(
      (best, change) => (change.standing.gt(best.standing) ? change : best),
      { standing: zero },
    )
    return {
      value: most.standing,
      working: () => [
        {
          name: 'sum',
          text: 'all starts together',
          formula: 'SUM(amounts)',
          value: starts.amounts.reduce((sum, amount) => sum.add(amount), zero),
          unit: 'any',
        },
        {
          name: 'largest',
          text: 'the largest start that stands',
          formula: 'MAX of amounts with weeksHeld above 0',
          value: starts.amounts.reduce(
            (most, amount, start) => (starts.weeksHeld[start]!.gt(0) && amount.gt(most) ? amount : most),
            zero,
          ),
          unit: 'any',
        },
        ...(most.week === undefined
          ? []
          : [
              {
                name: 'monday',
                text: 'the first week in which most stand',
                formula: 'week from, where standing is largest',
                value: mondayOf(most.week),
                unit: 'day',
              },
            ]),
        {
          name: 'peak',
          text: 'what stands then',
          formula: 'SUM of amounts, where start week <= week < start week + ROUNDUP(weeksHeld + turnroundWeeks, 0)',
          value: most.standing,
          unit: 'any',
        },
      ],
    }
  },
})

export const peakText: TextsOf<typeof peak> = {
  summary: 'The most that stand at once: how many containers to have, where the season uses them again and again.',
  convention:
    'The largest of STANDING, by the same weeks: never more than all starts together, and never less than the largest that stands at all. Buy for it and not for the sum; what breaks on the way comes on top.',
  result: 'the most that stand in one week',
  plain: () => ({ formula: `LET(${plainStays}, MAX(MAP(startWeek, LAMBDA(week, ${standingIn('week')}))))` }),
  examples: [
    {
      text: 'Of 40, 25 and 30 trays at most 65 stand at once, since the first are free when the last are stuck',
      given: [
        ['2026-12-21', '2026-12-30', '2027-01-11'],
        [3, 2, 4],
        [40, 25, 30],
      ],
      gives: 65,
      source: 'definition',
    },
    {
      text: 'With a week for washing all 95 are needed',
      given: [['2026-12-21', '2026-12-30', '2027-01-11'], [3, 2, 4], [40, 25, 30], 1],
      gives: 95,
      source: 'definition',
    },
  ],
}
