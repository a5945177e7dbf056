import { Workbook } from '@cj-tech-master/excelts'
import { editZip } from '@cj-tech-master/excelts/archive'
import { describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { labelsOf } from '../../../src/workbook/labels'
import type { Lost } from '../../../src/workbench/xlsx/lost'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import { files } from '../../../src/wording/en/files'
import { partsOf, sampleBook, sheet } from './sampleBook'

function said(lost: readonly Lost[]): string[] {
  return lost.map(({ what, names }) => files.lost[what](names))
}

/** A workbook as somebody else would make it, with what a book cannot hold. */
async function foreignFile(): Promise<Uint8Array> {
  const workbook = new Workbook()
  const prices = workbook.addWorksheet('Price list')
  prices.addTable({
    name: 'Prices',
    ref: 'A1',
    headerRow: true,
    totalsRow: true,
    columns: [
      { name: 'Pack', totalsRowLabel: 'Total' },
      { name: 'Each #1' },
      { name: 'Litres', totalsRowFunction: 'sum' },
    ],
    rows: [
      ['bag', 12.5, 60],
      ['bale', 24, 250],
    ],
  })
  const work = workbook.addWorksheet('Work')
  work.getCell('A1').value = { formula: "SUM(Prices[Each '#1])", result: 36.5 }
  work.getCell('A2').value = { formula: 'Prices[[#Totals],[Litres]]', result: 310 }
  work.getCell('A3').value = { formula: 'COUNTA(Prices[#All])', result: 11 }
  work.getCell('A4').value = { formula: 'Prices[No such column]', result: 0 }
  prices.getCell('D2').value = { formula: "Prices[[#This Row],[Each '#1]]*2", result: 25 }
  prices.getCell('D3').value = { formula: 'ROWS(Prices)', result: 2 }
  work.fillFormula('B1:B3', 'C1&"C1"&\'Price list\'!$B$2&C$1', ['', '', ''])
  work.getCell('C1').value = { richText: [{ text: 'two ' }, { text: 'words', font: { bold: true } }] }
  work.getCell('C2').value = { text: 'label law', hyperlink: 'https://example.org/' }
  work.getCell('C3').value = { error: '#N/A' }
  work.getCell('C4').value = new Date(Date.UTC(2024, 1, 29, 14, 24))
  work.getCell('C4').numFmt = 'yyyy-mm-dd hh:mm'
  work.getCell('C5').value = 'red'
  work.getCell('C5').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFF0000' } }
  work.mergeCells('D1:E2')
  work.getCell('D1').value = 'over four cells'
  work.getCell('F1').value = { formula: 'TRANSPOSE(C1:C2)', result: 'two words', shareType: 'array', ref: 'F1:G1' }
  work.getCell('G1').value = 'label law'
  work.getCell('A5').dataValidation = { type: 'whole', operator: 'greaterThan', formulae: [0] }
  work.addConditionalFormatting({
    ref: 'A1:A5',
    rules: [{ type: 'cellIs', operator: 'lessThan', formulae: [0], style: {} }],
  })
  workbook.addWorksheet('Behind', { state: 'hidden' }).getCell('A1').value = 'kept'
  workbook.definedNames.addFormula('each', "'Price list'!$B$2")
  return workbook.xlsx.writeBuffer({ validate: false })
}

describe('a workbook of somebody else', () => {
  it('is read with its tables, shared formulas, texts, links, dates, errors and hidden sheets', async () => {
    const { book } = await readXlsx(await foreignFile())
    expect(book.sheets.map(({ name }) => name)).toEqual(['Price list', 'Work', 'Behind'])
    const [prices, work] = book.sheets
    expect(prices?.rows.map((row) => row[3]?.formula)).toEqual([undefined, '=$B2*2', '=ROWS($A$2:$C$3)', undefined])
    expect(work?.rows.map((row) => row.slice(0, 7).map((cell) => cell?.formula ?? cell?.value))).toEqual([
      [
        "=SUM('Price list'!$B$2:$B$3)",
        '=C1&"C1"&\'Price list\'!$B$2&C$1',
        'two words',
        'over four cells',
        undefined,
        '=TRANSPOSE(C1:C2)',
      ],
      ["='Price list'!$C$4", '=C2&"C1"&\'Price list\'!$B$2&C$1', 'label law'],
      ["=COUNTA('Price list'!$A$1:$C$4)", '=C3&"C1"&\'Price list\'!$B$2&C$1', '=#N/A'],
      [0, undefined, 45351.6],
      [undefined, undefined, 'red'],
    ])
    expect(book.names).toEqual([{ name: 'each', refersTo: "'Price list'!$B$2" }])
  })

  it('calculates to what its tables hold', async () => {
    const { book } = await readXlsx(await foreignFile())
    const [prices, work] = (await calculateBook(book)).sheets
    expect(
      [prices?.cells.get('D2'), work?.cells.get('A1'), work?.cells.get('A2'), work?.cells.get('A3')].map(
        (cell) => cell?.value,
      ),
    ).toEqual([25, 36.5, 310, 11])
  })

  it('keeps a text that is bold as a heading, by which its cells are called, and no bold figure', async () => {
    const workbook = new Workbook()
    const prices = workbook.addWorksheet('Prices')
    prices.addRows([
      ['Medium', 'Price'],
      ['Peat', 21.8],
      ['Both', 21.8],
    ])
    for (const address of ['A1', 'B1', 'B3']) prices.getCell(address).font = { bold: true }
    const { book } = await readXlsx(await workbook.xlsx.writeBuffer())
    expect(book.sheets[0]!.rows.map((row) => row.map((cell) => cell?.look))).toEqual([
      ['heading', 'heading'],
      [undefined, undefined],
      [undefined, undefined],
    ])
    const { cells } = (await calculateBook(book)).sheets[0]!
    expect(labelsOf(cells).of({ row: 2, column: 1 })).toMatchObject({ row: 'Both', column: 'Price' })
  })

  it('is said to lose what a book cannot hold, in one sentence each', async () => {
    const { lost } = await readXlsx(await foreignFile())
    expect(said(lost)).toEqual([
      'Tables become plain cells, and formulas that read them by name read the same cells by address.',
      'Conditional formats are left out.',
      'Merged cells are separated; their text stays in the first one.',
      'Links in cells become plain text.',
      'The print set-up is replaced: landscape, one page wide, with the frozen rows on every page.',
      'Hidden sheets are shown: Behind.',
      'Formulas become the results that the file stores, because they read a name that is not known here: Work!A4.',
      'Formats of single words within a cell are left out; the text stays.',
      'Colours, fonts, borders and alignment are left out, and bold texts become headings; number formats stay.',
      'Rules for what may be typed into a cell (data validation) are left out, unless they ask for a number or a day within limits or an entry of a list and say so in words.',
    ])
  })

  it.each([
    ['xl/pivotTables/pivotTable1.xml', 'Pivot tables are left out.'],
    ['xl/charts/chart1.xml', 'Charts are left out.'],
    ['xl/media/image1.png', 'Pictures are left out.'],
    ['xl/externalLinks/externalLink1.xml', 'Links to other workbooks are not followed.'],
    ['xl/vbaProject.bin', 'Macros are left out.'],
  ])('is said to lose what lies in %s', async (path, sentence) => {
    const archive = await editZip(await writeXlsx(sampleBook))
    archive.set(path, '<x/>')
    expect(said((await readXlsx(await archive.bytes())).lost)).toEqual([sentence])
  })

  it('is read although a chart lies on a sheet, which is not read', async () => {
    const bytes = await writeXlsx(sampleBook)
    const { 'xl/worksheets/sheet1.xml': xml = '', 'xl/worksheets/_rels/sheet1.xml.rels': relations = '' } =
      await partsOf(bytes)
    const type = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
    const archive = await editZip(bytes)
    archive.set('xl/worksheets/sheet1.xml', xml.replace('<legacyDrawing', '<drawing r:id="rId9"/><legacyDrawing'))
    archive.set(
      'xl/worksheets/_rels/sheet1.xml.rels',
      relations.replace(
        '</Relationships>',
        `<Relationship Id="rId9" Type="${type}/drawing" Target="../drawings/drawing1.xml"/></Relationships>`,
      ),
    )
    archive.set('xl/drawings/drawing1.xml', '<xdr:wsDr/>')
    archive.set(
      'xl/drawings/_rels/drawing1.xml.rels',
      `<Relationships><Relationship Id="rId1" Type="${type}/chart" Target="../charts/chart1.xml"/></Relationships>`,
    )
    archive.set('xl/charts/chart1.xml', '<c:chartSpace/>')
    const { book, lost } = await readXlsx(await archive.bytes())
    expect(book.sheets[0]?.rows[0]?.[0]).toEqual(sampleBook.sheets[0]?.rows[0]?.[0])
    expect(said(lost)).toEqual(['Charts are left out.'])
  })

  it('is read with a name that holds on one sheet only, and says what it is called where two have the same name', async () => {
    const book = { names: [], sheets: [sheet('One', [[{ value: 1 }]]), sheet('Two', [[{ value: 2 }]])] }
    const bytes = await writeXlsx(book)
    const archive = await editZip(bytes)
    const { 'xl/workbook.xml': xml = '' } = await partsOf(bytes)
    archive.set(
      'xl/workbook.xml',
      xml.replace(
        '<calcPr',
        `<definedNames>
      <definedName name="rate" localSheetId="0">One!$A$1</definedName>
      <definedName name="rate" localSheetId="1">Two!$A$1</definedName>
      <definedName name="_xlnm.Print_Area" localSheetId="1">Two!$A$1</definedName>
      <definedName name="_hidden" hidden="1">Two!$A$1</definedName>
    </definedNames><calcPr`,
      ),
    )
    const { book: read, lost } = await readXlsx(await archive.bytes())
    expect(read.names).toEqual([
      { name: 'rate', refersTo: 'One!$A$1' },
      { name: 'rate_Two', refersTo: 'Two!$A$1' },
    ])
    expect(said(lost)).toEqual([
      'Print areas are left out, so that the whole sheet is printed: Two.',
      'The name rate of the sheet Two is called rate_Two from now on, because another one has the same name.',
      'Names that hold on one sheet hold in the whole workbook from now on: rate.',
      'Names that are hidden, or refer from the cell that uses them, are written out in formulas: _hidden.',
    ])
  })
})
