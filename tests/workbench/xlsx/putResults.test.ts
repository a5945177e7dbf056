import { editZip } from '@cj-tech-master/excelts/archive'
import { describe, expect, it } from 'vitest'
import type { Book, Cell } from '../../../src/workbook/book'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { withKeptResults } from '../../../src/workbench/xlsx/keptResults'
import { putResults } from '../../../src/workbench/xlsx/putResults'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import { partsOf, sampleBook, sheet } from './sampleBook'

const sheetPath = 'xl/worksheets/sheet1.xml'

/** The file with other text in one of its sheets, as another program would have stored it. */
async function stored(book: Book, change: (xml: string) => string): Promise<Uint8Array> {
  const bytes = await writeXlsx(book)
  const archive = await editZip(bytes)
  archive.set(sheetPath, change((await partsOf(bytes))[sheetPath] ?? ''))
  return archive.bytes()
}

async function recalculated(
  bytes: Uint8Array,
): Promise<{ xml: string; kept: readonly { sheet: string; address: string }[] }> {
  const read = await readXlsx(bytes)
  const { book, kept } = withKeptResults(read, await calculateBook(read.book))
  const { bytes: after } = await putResults(bytes, book, kept)
  return { xml: (await partsOf(after))[sheetPath] ?? '', kept }
}

const one = (rows: readonly (readonly (Cell | undefined)[])[]): Book => ({ names: [], sheets: [sheet('S', rows)] })

describe('results put into a workbook', () => {
  it('make a file without results the same as one that was written with them', async () => {
    const calculated = await calculateBook(sampleBook)
    const { bytes } = await putResults(await writeXlsx(sampleBook), calculated)
    const { bytes: again } = await putResults(await writeXlsx(sampleBook, calculated), calculated)
    // Which columns a row uses is only said while it is certain.
    const withoutSpans = async (file: Uint8Array) =>
      Object.values(await partsOf(file)).map((text) => text.replace(/ spans="[\d:]+"/g, ''))
    expect(await withoutSpans(bytes)).toEqual(await withoutSpans(again))
    const { book, lost } = await readXlsx(bytes)
    expect({ book, lost }).toEqual({ book: (await readXlsx(await writeXlsx(sampleBook, calculated))).book, lost: [] })
  })

  it('leave every part but the sheets with formulas as it was, byte by byte', async () => {
    const archive = await editZip(
      await writeXlsx({ ...sampleBook, sheets: [...sampleBook.sheets, sheet('No formulas', [[{ value: 1 }]])] }),
    )
    archive
      .set('xl/media/image1.png', new Uint8Array([1, 2, 3, 0, 255]))
      .set('xl/vbaProject.bin', 'macros')
      .set('customXml/item1.xml', '<x/>')
    const before = await archive.bytes()
    const { bytes, breaksSignature } = await putResults(before, await calculateBook((await readXlsx(before)).book))
    const [partsBefore, partsAfter] = [await partsOf(before), await partsOf(bytes)]
    expect(Object.keys(partsAfter).sort()).toEqual(Object.keys(partsBefore).sort())
    const changed = Object.keys(partsBefore).filter((path) => partsBefore[path] !== partsAfter[path])
    expect(changed).toEqual(['xl/worksheets/sheet1.xml', 'xl/worksheets/sheet2.xml'])
    expect(breaksSignature).toBe(false)
  })

  it('say that a digital signature no longer holds', async () => {
    const archive = await editZip(await writeXlsx(sampleBook))
    archive.set('_xmlsignatures/sig1.xml', '<x/>')
    expect((await putResults(await archive.bytes(), await calculateBook(sampleBook))).breaksSignature).toBe(true)
  })

  it('grow a spill over cells and rows that the file did not have, and shrink it without a trace', async () => {
    const grown = await recalculated(
      await writeXlsx(
        one([
          [{ value: 1 }, { formula: '=SORT(A1:A4)', spills: true }],
          [{ value: 3 }],
          [{ value: 2 }],
          [{ value: 4 }],
        ]),
      ),
    )
    expect(grown.xml).toContain('<f t="array" ref="B1:B4">_xlfn._xlws.SORT(A1:A4)</f><v>1</v>')
    expect(grown.xml).toContain('<c r="B4"><v>4</v></c></row></sheetData>')
    const shrunk = await recalculated(
      await stored(
        one([
          [{ value: 1 }, { formula: '=STICK.BAGS(A1,60)' }],
          [{ value: 3 }, { value: 99 }],
          [undefined, { value: 98 }],
        ]),
        (xml) => xml.replace('ref="B1"', 'ref="B1:B3"'),
      ),
    )
    expect(shrunk.xml).toContain('<f t="array" ref="B1">_xldudf_STICK_BAGS(A1,60)</f><v>1</v></c></row>')
    expect(shrunk.xml).toContain('<c r="B2"/>')
    expect(shrunk.xml).toContain('<c r="B3"/>')
  })

  it('let one spill grow to where another one was', async () => {
    const book = one([
      [{ formula: '=SORT(D1:D3)', spills: true }],
      [],
      [],
      [{ formula: '=SORT(D1:E1)', spills: true }],
      [],
      [{ value: 7 }],
    ])
    const withInputs: Book = one(
      (book.sheets[0]?.rows ?? []).map((row, index) => [
        row[0],
        undefined,
        undefined,
        { value: 3 - index },
        { value: 9 },
      ]),
    )
    const { xml } = await recalculated(
      await stored(withInputs, (text) => text.replace('ref="A1"', 'ref="A1:A2"').replace('ref="A4"', 'ref="A4:A5"')),
    )
    expect(xml).toMatch(
      /ref="A1:A3">.*<c r="A2"><v>2<\/v><\/c>.*<c r="A3"><v>3<\/v><\/c>.*ref="A4:B4">.*<c r="B4"><v>9<\/v><\/c>/,
    )
  })

  it('fill an array of fixed size only, with #N/A beyond the result', async () => {
    const bytes = await stored(one([[{ value: 2 }, { formula: '=SORT(A1:A2)' }], [{ value: 1 }]]), (xml) =>
      xml.replace(' cm="1"', '').replace('ref="B1"', 'ref="B1:B3"'),
    )
    const { xml } = await recalculated(bytes)
    expect(xml).toContain('<f t="array" ref="B1:B3">_xlfn._xlws.SORT(A1:A2)</f><v>1</v>')
    expect(xml).toContain('<c r="B2"><v>2</v></c>')
    expect(xml).toContain('<c r="B3" t="e"><v>#N/A</v></c>')
  })

  it('store texts, truths, errors and texts with spaces at their ends each in their own way, and drop what belonged to the old value', async () => {
    const formulas = ['=" a "', '=1<2', '=1/0', '=2*3', '="x"&"<y>"', '="_x0041_"&CHAR(7)&"é"']
    const bytes = await stored(one([formulas.map((formula) => ({ formula }))]), (xml) =>
      xml.replace('<c r="D1">', '<c r="D1" t="e" vm="1">'),
    )
    const { xml } = await recalculated(bytes)
    expect(xml).toContain('<v xml:space="preserve"> a </v>')
    expect(xml).toContain('<c r="B1" t="b"><f>1&lt;2</f><v>1</v></c>')
    expect(xml).toContain('<c r="C1" t="e"><f>1/0</f><v>#DIV/0!</v></c>')
    expect(xml).toContain('<c r="D1"><f>2*3</f><v>6</v></c>')
    expect(xml).toContain('<v>x&lt;y&gt;</v>')
    // ECMA-376 part 1, 22.9.2.19: _x0007_ stands for the sign of that number, and _x005F_ for an underscore.
    expect(xml).toContain('<v>_x005F_x0041__x0007_é</v>')
  })

  it('do not touch a result that cannot be calculated here, and say where', async () => {
    const bytes = await stored(
      one([[{ value: 5 }, { formula: '=A1+1' }, { formula: '=A1+2' }], [{ value: 6 }]]),
      (xml) =>
        xml
          .replace('<f>A1+1</f>', '<f>FUNCTIONOFMYOWN(A1)</f><v>41</v>')
          // From before dynamic arrays: Excel reads the one cell of the range that is in the same row.
          .replace('<f>A1+2</f>', '<f>A1:A2</f><v>42</v>'),
    )
    const { xml, kept } = await recalculated(bytes)
    expect(xml).toContain('<f>FUNCTIONOFMYOWN(A1)</f><v>41</v>')
    expect(xml).toContain('<f>A1:A2</f><v>5</v>')
    expect(kept).toEqual([{ sheet: 'S', address: 'B1', why: 'unknownFunction' }])
  })

  it('find the cells of a sheet that numbers neither its rows nor its cells and has a prefix before its tags', async () => {
    const bytes = await stored(
      one([
        [{ value: 2 }, { formula: '=A1*2' }],
        [{ value: 3 }, { formula: '=A2*2' }],
      ]),
      () => `<?xml version="1.0"?>
      <x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData>
        <x:row><x:c><x:v>2</x:v></x:c><x:c><x:f>A1*2</x:f></x:c></x:row><x:row><x:c><x:v>3</x:v></x:c><x:c><x:f>A2*2</x:f></x:c></x:row>
      </x:sheetData></x:worksheet>`,
    )
    const { bytes: after } = await putResults(
      bytes,
      await calculateBook(
        one([
          [{ value: 2 }, { formula: '=A1*2' }],
          [{ value: 3 }, { formula: '=A2*2' }],
        ]),
      ),
    )
    expect((await partsOf(after))[sheetPath]).toContain('<x:c r="B2"><x:f>A2*2</x:f><x:v>6</x:v></x:c>')
  })
})
