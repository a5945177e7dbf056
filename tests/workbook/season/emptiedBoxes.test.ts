import { beforeAll, describe, expect, it } from 'vitest'
import { addressOf } from '../../../src/formula/address'
import type { Book } from '../../../src/workbook/book'
import type { ReadCell } from '../../../src/workbook/openBook'
import { season } from '../../../src/workbook/season/season'
import { calculateBook } from '../../../src/workbench/engine/calculate'
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
              kind: String((kinds === undefined ? cells[3] : kinds[column])?.value),
            },
          ]
        : [],
    ),
  )
})

function without({ sheet, row, column }: (typeof boxes)[number]): Book {
  return {
    ...book,
    sheets: book.sheets.map((one) =>
      one.name !== sheet
        ? one
        : {
            ...one,
            rows: one.rows.map((cells, index) => {
              if (index !== row) return cells
              const emptied = Array.from(cells)
              const { value: _, ...box } = emptied[column]!
              emptied[column] = box
              return emptied
            }),
          },
    ),
  }
}

/** The first box of a sheet that answers a question. */
function isFirstAsked({ sheet, row }: (typeof boxes)[number]): boolean {
  return answering.includes(sheet) && row === boxes.find((box) => box.sheet === sheet)!.row
}

describe('A box that is emptied', () => {
  let before: ReadonlyMap<string, ReadCell>
  beforeAll(async () => {
    before = overviewOf(await calculateBook(book))
  }, 60_000)

  it('is one of more than 200, and the season is complete before', () => {
    expect(boxes.length).toBeGreaterThan(200)
    expect(before.get('Complete')).toBe('Every sheet is complete.')
  })

  // Each takes a calculation of two seconds. EVERY_BOX=1 tries them all, as before a release.
  const every = process.env.EVERY_BOX === '1' ? 1 : 7
  const mustBeFilled = boxes.filter(({ kind }) => !kind.endsWith('or blank')).filter((_, index) => index % every === 0)

  it.each(mustBeFilled.map((box) => [`${box.sheet} ${addressOf(box.row, box.column)}`, box] as const))(
    '%s: the first figure of the season names what is not complete, and no total changes without a word',
    async (_, box) => {
      const after = overviewOf(await calculateBook(without(box)))
      if (!isFirstAsked(box)) expect(after.get('Complete')).toMatch(/^Not complete: /)
      const changed = [...after].filter(
        ([label, value]) => label !== 'Complete' && typeof value === 'number' && value !== before.get(label),
      )
      expect(changed.map(([label]) => label).join(', ')).toBe('')
    },
  )
})
