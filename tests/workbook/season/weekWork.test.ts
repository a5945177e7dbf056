import { beforeAll, describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { OpenBook, ReadCell } from '../../../src/workbook/openBook'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { weekWorkOf, type WeekWork } from '../../../src/workbook/season/weekWork'
import { figureOf, valuesOf } from './figuresOf'

let book: OpenBook

beforeAll(async () => {
  book = await calculateBook(demoSeason())
})

type Changed = Readonly<Record<string, readonly ReadCell[] | undefined>>

/** Of the demo season, whose cells of these names hold something else. */
function work(changed: Changed = {}) {
  const names = new Set(book.names.map(({ name }) => name))
  const cells = (name: string) => (name in changed ? changed[name] : names.has(name) ? valuesOf(book, name) : undefined)
  return weekWorkOf({ valuesOf: (name) => Promise.resolve(cells(name)?.map((value) => [value])) })
}

const error: ReadCell = { kind: 'cellError', code: '#N/A' }

it('The work of a week is what Monday has of it: its lines add up to the figures of the week, and those that stand are of weeks before.', async () => {
  const { week, litres, sticking, standing, mayGoOn } = (await work()) as WeekWork
  const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0)
  // The Monday of ISO week 16 of 2026 is 13 April (ISO 8601).
  expect(week).toBe('2026-W16')
  const monday = '2026-04-13'
  expect(sum(sticking.map(({ cuttings }) => cuttings))).toBe(figureOf(book, 'MondayCuttings'))
  expect(sum(sticking.map(({ pieces }) => pieces))).toBe(figureOf(book, 'MondayPieces'))
  expect(litres).toBe(figureOf(book, 'MondayLitres'))
  expect(standing.length).toBeGreaterThan(0)
  expect(standing.filter(({ until }) => until <= monday)).toEqual([])
  expect(sticking.every(({ line, species, container }) => line !== '' && species !== '' && container !== '')).toBe(true)
  expect(mayGoOn).toBe(false)
})

describe('In the place of work that would be wrong it says', () => {
  it.each<[string, Changed, string]>([
    ['what Monday lacks', { MondayState: ['Week of: type number'] }, 'Week of: type number'],
    ['that its state is blank', { MondayState: [null] }, 'empty'],
    ['an error of a figure', { MondayLitres: [error] }, 'To mix: #N/A'],
    ['a text in the place of a figure', { MondayHours: ['some'] }, 'Work: some'],
    ['a figure that is blank', { MondayDeliver: [null] }, 'To deliver: empty'],
    ['an error of a whole list', { MondayToStick: [error], MondayToStickLine: [null] }, 'line: #N/A'],
    ['an error in a line', { MondayStandingPieces: [3, error, 2, 5, 6] }, 'containers: #N/A'],
  ])('%s', async (_what, changed, lacks) => {
    expect(await work(changed)).toEqual({ lacks })
  })
})

it('A list that fills all rows that are drawn for it says that it may go on.', async () => {
  const line = (cell: ReadCell) => [cell, cell, cell]
  expect(
    await work({
      MondayToStickLine: line(7),
      MondayToStickSpecies: line('Hebe'),
      MondayToStickCuttings: line(10),
      MondayToStickPieces: line(1),
      MondayToStickContainer: line('Tray'),
      MondayToStickMedium: line(''),
    }),
  ).toMatchObject({ mayGoOn: true })
})

it('A workbook without the sheet, or one from before its cells had names, has no work of a week.', async () => {
  expect(await weekWorkOf({ valuesOf: () => Promise.resolve(undefined) })).toBeUndefined()
  expect(await work({ MondayToStickLine: undefined })).toBeUndefined()
})
