import { expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { weekWorkOf } from '../../../src/workbook/season/weekWork'
import { figureOf, valuesOf } from './figuresOf'

it('The work of a week is what Monday has of it: its lines add up to the figures of the week, and those that stand are of weeks before.', async () => {
  const book = await calculateBook(demoSeason())
  const names = new Set(book.names.map(({ name }) => name))
  const work = await weekWorkOf({
    valuesOf: (name) => Promise.resolve(names.has(name) ? valuesOf(book, name).map((value) => [value]) : undefined),
  })
  const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0)
  expect(work!.lacks).toBe('')
  // The Monday of ISO week 16 of 2026 is 13 April (ISO 8601).
  expect(work!.week).toBe('2026-W16')
  const monday = '2026-04-13'
  expect(sum(work!.sticking.map(({ cuttings }) => cuttings))).toBe(figureOf(book, 'MondayCuttings'))
  expect(sum(work!.sticking.map(({ pieces }) => pieces))).toBe(figureOf(book, 'MondayPieces'))
  expect(work!.litres).toBe(figureOf(book, 'MondayLitres'))
  expect(work!.standing.length).toBeGreaterThan(0)
  expect(work!.standing.filter(({ until }) => until <= monday)).toEqual([])
  expect(
    work!.sticking.every(({ line, species, container }) => line !== '' && species !== '' && container !== ''),
  ).toBe(true)
})

it('A workbook without the sheet has no work of a week.', async () => {
  expect(await weekWorkOf({ valuesOf: () => Promise.resolve(undefined) })).toBeUndefined()
})
