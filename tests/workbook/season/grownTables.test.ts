/** What becomes of a season whose tables have grown: by lines typed below them in Excel, or rows that the pane added. */
import { describe, expect, it } from 'vitest'
import { addressOf } from '../../../src/formula/address'
import { filledInto } from '../../../src/formula/relativeFormula'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { Book } from '../../../src/workbook/book'
import { realTables } from '../../../src/workbook/realTables'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { season } from '../../../src/workbook/season/season'
import { figureIn, tableIn } from './figuresOf'
import { smallSeason } from './smallSeason'

describe('A table of the season that grows', () => {
  it('is filled by Excel, because each of its columns is typed or has one formula in all rows', () => {
    const mixed = demoSeason().sheets.flatMap((sheet) =>
      realTables(sheet).flatMap(({ top, bottom, left, headings }) =>
        headings.flatMap((heading, column) => {
          const at = (row: number) => addressOf(row, left + column)
          const formulas = sheet.rows.slice(top + 1, bottom + 1).map((row) => row[left + column]?.formula)
          const [first] = formulas
          const isAlike = formulas.every((formula, row) =>
            first === undefined ? formula === undefined : formula === filledInto(first, at(top + 1), at(top + 1 + row)),
          )
          return isAlike ? [] : [`${sheet.name}: ${heading}`]
        }),
      ),
    )
    expect(mixed).toEqual([])
  })

  it('leaves no figure behind that reads what another formula makes of its rows', async () => {
    const before = season(smallSeason)
    const [own] = smallSeason.methods
    // The method that is not washed costs most, so it stands in the last row of Compare, the fourth of three drawn.
    const grown = season({
      ...smallSeason,
      methods: [...smallSeason.methods, ...['again', 'once more'].map((name) => ({ ...own, name }))],
      open: { ...smallSeason.open, methods: 0 },
    })
    const spilledOn = ({ refersTo }: { readonly refersTo: string }) => /^(Compare|Cheapest)!/.test(refersTo)
    const asExcelLeavesIt: Book = {
      ...grown,
      names: [...grown.names.filter((name) => !spilledOn(name)), ...before.names.filter(spilledOn)],
    }
    const calculated = await calculateBook(asExcelLeavesIt)
    const rows = tableIn(calculated, 'Compare', 'name')
    expect(rows.map(([name, , , , , from]) => [name, from]).at(-1)).toEqual(['Premix in thin trays', 'single use'])
    expect(rows).toHaveLength(4)
    expect(figureIn(calculated, 'Compare', 'Single use compared with', '')).toBe('Premix in thin trays')
  }, 60_000)
})
