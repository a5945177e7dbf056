import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import type { Book, Cell } from '../../../src/workbook/book'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import { partsOf, sampleBook, sheet } from './sampleBook'

/** Escaped characters of a format come back quoted or bare, which Excel shows alike. */
const expected = JSON.parse(JSON.stringify(sampleBook).replace(String.raw`0.00\\ \\m`, String.raw`0.00 \"m\"`)) as Book

describe('a book that was written to a file', () => {
  it('comes back the same, calculated, with nothing lost', async () => {
    const { book, lost } = await readXlsx(await writeXlsx(sampleBook, await calculateBook(sampleBook)))
    expect(JSON.parse(JSON.stringify(book))).toEqual(expected)
    expect(lost).toEqual([])
  })

  it('comes back the same without results, but for the extent of a spill, which only a calculation tells', async () => {
    const { book } = await readXlsx(await writeXlsx(sampleBook))
    const withoutSpills = JSON.parse(JSON.stringify(expected).replace('"spills":true,', '')) as Book
    expect(JSON.parse(JSON.stringify(book))).toEqual(withoutSpills)
  })

  it('gives the same results when it is calculated again', async () => {
    const before = await calculateBook(sampleBook)
    const { book } = await readXlsx(await writeXlsx(sampleBook, before))
    expect(await calculateBook(book)).toEqual(before)
  })

  it('says in the file what may be typed, one rule for each block of cells', async () => {
    const { 'xl/worksheets/sheet1.xml': xml } = await partsOf(await writeXlsx(sampleBook))
    expect(xml).toContain(
      '<dataValidation type="list" allowBlank="1" showErrorMessage="1" errorStyle="stop" errorTitle="Sticksheet" error="Choose a part." sqref="A4"><formula1>parts</formula1></dataValidation>',
    )
    expect(xml).toMatch(
      /<dataValidation type="whole" [^>]*error="Type &quot;1&quot; to &lt;9&gt;\." sqref="A5:A6"><formula1>1<\/formula1><formula2>9<\/formula2>/,
    )
  })

  it('keeps any typed value in any place', async () => {
    const content = fc.oneof(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }).filter((text) => !hasCharactersForbiddenInXml(text)),
      fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number + 0),
      fc.boolean(),
    )
    const cell = fc.option(
      content.map((value): Cell => ({ value })),
      { nil: undefined },
    )
    await fc.assert(
      fc.asyncProperty(fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 5 }), async (rows) => {
        const { book } = await readXlsx(await writeXlsx({ names: [], sheets: [sheet('Any', rows)] }))
        const cells = (grid: readonly (readonly (Cell | undefined)[])[]) =>
          grid.flatMap((row, y) => row.flatMap((one, x) => (one === undefined ? [] : [[y, x, one.value]])))
        expect(cells(book.sheets[0]?.rows ?? [])).toEqual(cells(rows))
      }),
      { numRuns: 150 },
    )
  })
})

describe('the file', () => {
  it('has the same bytes whenever it is written', async () => {
    const writtenAt = async (day: string) => {
      vi.setSystemTime(day)
      return writeXlsx(sampleBook)
    }
    vi.useFakeTimers({ toFake: ['Date'] })
    try {
      expect(await writtenAt('2026-03-01')).toEqual(await writtenAt('2027-11-30'))
    } finally {
      vi.useRealTimers()
    }
  })

  it('stores each function of ours as Excel does: with its prefix, as a dynamic array, and with its result', async () => {
    const { 'xl/worksheets/sheet1.xml': xml, 'xl/metadata.xml': metadata } = await partsOf(
      await writeXlsx(sampleBook, await calculateBook(sampleBook)),
    )
    expect(xml).toMatch(
      /<c r="B5" s="\d+" cm="1"><f t="array" ref="B5:B6">_xldudf_STICK_BLENDPARTS\(100,A5:A6,mixShrink\)<\/f><v>39\.2/,
    )
    expect(xml).toMatch(/<c r="B6"[^>]*><v>78\.4/)
    expect(xml).toMatch(
      /<c r="B7" s="\d+" cm="1"><f t="array" ref="B7">_xldudf_STICK_BAGS\(SUM\(B5:B6\),&quot;60 L&quot;\)<\/f><v>2<\/v>/,
    )
    expect(metadata).toContain('<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/>')
  })

  it('stores a plain formula as a plain one, and an error as an error', async () => {
    const { 'xl/worksheets/sheet2.xml': xml } = await partsOf(
      await writeXlsx(sampleBook, await calculateBook(sampleBook)),
    )
    expect(xml).toContain('<c r="A4" t="e"><f>1/0</f><v>#DIV/0!</v></c>')
    expect(xml).toContain('<f t="array" ref="B4">SUM(A1:A3*2)</f>')
    expect(xml).toContain('_xlfn.XLOOKUP(')
  })

  it('asks Excel to recalculate, freezes the heading rows, prints in landscape on one page width, and repeats the heading rows', async () => {
    const { 'xl/workbook.xml': workbook, 'xl/worksheets/sheet1.xml': xml } = await partsOf(await writeXlsx(sampleBook))
    expect(workbook).toContain('fullCalcOnLoad="1"')
    expect(workbook).toContain('>&apos;Mix &amp; match&apos;!$1:$3</definedName>')
    expect(xml).toContain('<pane xSplit="1" ySplit="3" topLeftCell="B4" activePane="bottomRight" state="frozen"/>')
    expect(xml).toContain('<pageSetUpPr fitToPage="1"/>')
    expect(xml).toContain('orientation="landscape"')
  })

  it('has a view, without which Excel may fail on printing, and names us as the program that wrote it', async () => {
    const { 'xl/workbook.xml': workbook, 'docProps/app.xml': properties } = await partsOf(await writeXlsx(sampleBook))
    expect(workbook).toMatch(/<bookViews><workbookView [^>]*activeTab="1"/)
    expect(properties).toContain('<Application>Sticksheet</Application>')
    expect(properties).not.toContain('Microsoft')
    // What names a version of Excel as the one that saved the file.
    expect(workbook).not.toContain('fileVersion')
  })

  it('is opened on the sheet that was seen when it was saved, and read so', async () => {
    const bytes = await writeXlsx(sampleBook)
    expect((await partsOf(bytes))['xl/workbook.xml']).toContain('activeTab="1"')
    expect((await readXlsx(bytes)).book.shown).toBe('Plain')
    const { shown: _, ...first } = sampleBook
    expect((await readXlsx(await writeXlsx(first))).book.shown).toBeUndefined()
  })

  it('stores half a formula as text, because Excel would call the whole file damaged', async () => {
    const { book } = await readXlsx(await writeXlsx({ names: [], sheets: [sheet('S', [[{ formula: '=IF(A2,' }]])] }))
    expect(book.sheets[0]?.rows).toEqual([[{ value: '=IF(A2,' }]])
  })

  it('gives a blocked spill no room in the file', async () => {
    const book: Book = {
      names: [],
      sheets: [
        sheet('S', [
          [{ value: 1 }, { formula: '=A1:A2*2', spills: true }],
          [{ value: 2 }, { value: 'in the way' }],
        ]),
      ],
    }
    const bytes = await writeXlsx(book, await calculateBook(book))
    expect((await partsOf(bytes))['xl/worksheets/sheet1.xml']).toContain(
      '<f t="array" ref="B1">A1:A2*2</f><v>#SPILL!</v>',
    )
    expect((await readXlsx(bytes)).book.sheets[0]?.rows[1]).toEqual([{ value: 2 }, { value: 'in the way' }])
  })
})

function hasCharactersForbiddenInXml(text: string): boolean {
  return /\p{Cc}|\p{Cs}|[\ufffe\uffff]/u.test(text)
}
