import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addressOf } from '../../../src/formula/address'
import type { ReadCell } from '../../../src/workbook/openBook'
import { season } from '../../../src/workbook/season/season'
import { readCells } from '../../../src/workbench/grid/readCells'
import { openGrid } from '../../workbench/grid/univerInNode'
import { overviewOf } from './figuresOf'
import { smallSeason } from './smallSeason'

const book = season(smallSeason)

/** As long as the first box of these is blank, nobody asks, and what they answer is a dash. */
const answering = ['Monday', 'Mixing', 'Reuse', 'Risk', 'Quote', 'Surplus', 'Cheapest', 'Timing', 'Compare']

/** Every box in which something is typed, with what its column or line says about typing. */
const boxes = book.sheets.flatMap(({ name, rows }) => {
  const kinds = rows.find((row) => row[0]?.value === 'What to type')
  return rows.flatMap((cells, row) =>
    cells.flatMap((cell, column) =>
      cell?.look === 'input' && cell.value !== undefined
        ? [
            {
              sheet: name,
              row,
              column,
              value: cell.value,
              kind: String((kinds === undefined ? cells[3] : kinds[column])?.value),
            },
          ]
        : [],
    ),
  )
})

type Box = (typeof boxes)[number]

/** The first box of a sheet that answers a question. */
function isFirstAsked({ sheet, row }: Box): boolean {
  return answering.includes(sheet) && row === boxes.find((box) => box.sheet === sheet)!.row
}

describe('A box that is emptied', () => {
  const grid = openGrid()
  afterAll(() => grid.close())

  const cell = ({ sheet, row, column }: Box) =>
    grid.api.getActiveWorkbook()!.getSheetByName(sheet)!.getRange(row, column)
  const overview = () => {
    const sheet = grid.api.getActiveWorkbook()!.getSheetByName('Season')!.getSheet()
    return overviewOf({ names: [], sheets: [{ name: 'Season', cells: readCells(grid.injector, sheet, grid.calls) }] })
  }

  let before: ReadonlyMap<string, ReadCell>
  beforeAll(async () => {
    await grid.calculated(() => grid.replace(book, 'season'))
    before = overview()
  }, 60_000)

  it('is one of more than 200, and the season is complete before', () => {
    expect(boxes.length).toBeGreaterThan(200)
    expect(before.get('Complete')).toBe('Every sheet is complete.')
  })

  it.each(
    boxes
      .filter(({ kind }) => !kind.endsWith('or blank'))
      // Each takes two calculations of most of the season. EVERY_BOX=1 tries them all, as before a release.
      .filter((_, index) => process.env.EVERY_BOX === '1' || index % 3 === 0)
      .map((box) => [`${box.sheet} ${addressOf(box.row, box.column)}`, box] as const),
  )(
    '%s: the first figure of the season names what is not complete, no total changes without a word, and all is as before once it is filled again',
    async (_, box) => {
      await grid.calculated(() => cell(box).setValue({ v: null }))
      const after = overview()
      await grid.calculated(() => cell(box).setValue({ v: box.value }))
      if (!isFirstAsked(box)) expect(after.get('Complete')).toMatch(/^Not complete: /)
      const changed = [...after].filter(
        ([label, value]) => label !== 'Complete' && typeof value === 'number' && value !== before.get(label),
      )
      expect(changed.map(([label]) => label).join(', ')).toBe('')
      expect(overview()).toEqual(before)
    },
  )
})
