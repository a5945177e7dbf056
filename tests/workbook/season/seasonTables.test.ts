import { describe, expect, it } from 'vitest'
import { rangesRead } from '../../../src/formula/rangesRead'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { emptySeason } from '../../../src/workbook/season/emptySeason'
import { growing } from '../../../src/workbook/season/growing'
import { doubts } from '../../../src/workbook/season/tables/doubts'
import { realTables } from '../../../src/workbook/realTables'

describe.each([
  ['demo', demoSeason()],
  ['empty', emptySeason('CHF')],
] as const)('the tables of the %s season', (season, book) => {
  const tables = book.sheets.flatMap(({ tables: ofSheet = [] }) => ofSheet)

  it('are one for every sheet whose rows a nursery adds to and for the doubts', () => {
    expect(new Set(book.sheets.filter(({ tables: ofSheet }) => ofSheet !== undefined).map(({ name }) => name))).toEqual(
      new Set([...growing, doubts].map(({ sheet }) => sheet)),
    )
  })

  it('are all such as Excel takes, and have names that nothing else has', () => {
    expect(book.sheets.flatMap((sheet) => realTables(sheet).map(({ name }) => name))).toEqual(
      tables.map(({ name }) => name),
    )
    const names = [...book.names, ...tables].map(({ name }) => name.toLowerCase())
    expect(new Set(names).size).toBe(names.length)
  })

  it('hold no cell that a formula spills over', async () => {
    const { sheets } = await calculateBook(book)
    const spilled = sheets.flatMap(({ name, cells }) =>
      [...cells.values()].flatMap(({ spill }) => (spill === undefined ? [] : rangesRead(`=${spill}`, name, new Map()))),
    )
    const overlaps = book.sheets.flatMap((sheet) =>
      realTables(sheet).filter(({ top, left, bottom, right }) =>
        spilled.some(
          (spill) =>
            spill.sheet === sheet.name &&
            spill.top <= bottom &&
            spill.bottom >= top &&
            spill.left <= right &&
            spill.right >= left,
        ),
      ),
    )
    expect(overlaps.map(({ name }) => name)).toEqual([])
    if (season === 'demo') expect(spilled.length).toBe(25)
  })
})
