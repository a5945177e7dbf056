/** What a file of another program has besides its cells: it comes back in the file that we save, or it is told on opening. */
import { describe, expect, it } from 'vitest'
import { bookToGrid } from '../../../src/workbench/grid/bookToGrid'
import { gridToBook } from '../../../src/workbench/grid/gridToBook'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import { files } from '../../../src/wording/en/files'
import { partsFile, partsOfFile, type PartsFile, type PartsSheet } from './partsFile'
import { partsOf } from './sampleBook'

interface Change extends Partial<PartsFile> {
  readonly sheet?: Partial<PartsSheet>
  /** Elements of the workbook, before its sheets and at its end. */
  readonly views?: string
  readonly end?: string
}

const sheetPart = 'xl/worksheets/sheet1.xml'
const packaged = 'http://schemas.openxmlformats.org/package/2006'
const office = 'http://schemas.openxmlformats.org/officeDocument/2006'

function fileWith({ sheet, views = '', end = '', parts = {}, ...rest }: Change): Promise<Uint8Array> {
  const file: PartsFile = {
    sheets: [{ name: 'Orders', cells: { A1: { v: 'Line' }, A2: { v: 7 } }, ...sheet }],
    ...rest,
  }
  const workbook = partsOfFile({ ...file, parts })['xl/workbook.xml']!
  const changed = workbook.replace('<sheets>', `${views}<sheets>`).replace('</workbook>', `${end}</workbook>`)
  return partsFile({ ...file, parts: { 'xl/workbook.xml': changed, ...parts } })
}

async function toldOf(change: Change): Promise<string[]> {
  const { lost } = await readXlsx(await fileWith(change))
  return lost.map(({ what, names }) => files.lost[what](names))
}

/** The parts that the workbench saves of it. */
async function savedFrom(change: Change): Promise<Record<string, string>> {
  const { book } = await readXlsx(await fileWith(change))
  const inGrid = gridToBook(bookToGrid(book, 'book'))
  return partsOf(await writeXlsx({ ...inGrid, ...(book.shown && { shown: book.shown }) }))
}

/** The properties of a file as parts, with the relations that lead to them. */
function propertyParts(core: string, app = '', custom = ''): Record<string, string> {
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`
  return {
    '_rels/.rels': `<Relationships xmlns="${packaged}/relationships">${relation('rId1', `${office}/relationships/officeDocument`, 'xl/workbook.xml')}${relation('rId2', `${packaged}/relationships/metadata/core-properties`, 'docProps/core.xml')}${relation('rId3', `${office}/relationships/extended-properties`, 'docProps/app.xml')}${relation('rId4', `${office}/relationships/custom-properties`, 'docProps/custom.xml')}</Relationships>`,
    'docProps/core.xml': `<cp:coreProperties xmlns:cp="${packaged}/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/">${core}</cp:coreProperties>`,
    'docProps/app.xml': `<Properties xmlns="${office}/extended-properties"><Application>Microsoft Excel</Application><AppVersion>16.0300</AppVersion>${app}</Properties>`,
    'docProps/custom.xml': `<Properties xmlns="${office}/custom-properties">${custom}</Properties>`,
  }
}

const view = (attributes: string, inner = '') =>
  `<sheetViews><sheetView ${attributes} workbookViewId="0">${inner}</sheetView></sheetViews>`
const extension = (inner: string) => `<extLst><ext uri="{1}">${inner}</ext></extLst>`

describe('What the workbench carries through a file:', () => {
  it.each<[string, Change, path: string, RegExp]>([
    [
      'a sheet from right to left',
      { sheet: { before: view('rightToLeft="1"') } },
      sheetPart,
      /<sheetView [^>]*rightToLeft="1"/,
    ],
    [
      'hidden gridlines',
      { sheet: { before: view('showGridLines="0"') } },
      sheetPart,
      /<sheetView [^>]*showGridLines="0"/,
    ],
    [
      'its zoom',
      { sheet: { before: view('zoomScale="85" zoomScaleNormal="85"') } },
      sheetPart,
      /<sheetView [^>]*zoomScale="85"/,
    ],
    [
      'a zoom beside frozen rows',
      {
        sheet: {
          before: view('zoomScale="85"', '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>'),
        },
      },
      sheetPart,
      /<sheetView [^>]*zoomScale="85"[^>]*><pane ySplit="1" [^>]*state="frozen"/,
    ],
    [
      'the colour of a tab',
      { sheet: { before: '<sheetPr><tabColor rgb="FF00B050"/></sheetPr>' } },
      sheetPart,
      /<tabColor rgb="FF00B050"\/>/,
    ],
    [
      'margins',
      { sheet: { after: '<pageMargins left="0.25" right="0.25" top="1" bottom="1" header="0.5" footer="0.5"/>' } },
      sheetPart,
      /<pageMargins left="0.25" right="0.25" top="1" bottom="1" header="0.5" footer="0.5"\/>/,
    ],
    [
      'the sheet that was seen',
      {
        sheets: [
          { name: 'One', cells: {} },
          { name: 'Two', cells: {} },
        ],
        views: '<bookViews><workbookView activeTab="1"/></bookViews>',
      },
      'xl/workbook.xml',
      /activeTab="1"/,
    ],
    [
      'its author',
      { parts: propertyParts('<dc:creator>A. Grower</dc:creator>') },
      'docProps/core.xml',
      /<dc:creator>A. Grower<\/dc:creator>/,
    ],
    [
      'its title',
      { parts: propertyParts('<dc:title>Prices &amp; offers</dc:title>') },
      'docProps/core.xml',
      /<dc:title>Prices &amp; offers<\/dc:title>/,
    ],
    [
      'its subject and keywords',
      { parts: propertyParts('<dc:subject>Liners</dc:subject><cp:keywords>peat</cp:keywords>') },
      'docProps/core.xml',
      /<dc:subject>Liners<\/dc:subject>.*<cp:keywords>peat<\/cp:keywords>/,
    ],
    [
      'its description and category',
      { parts: propertyParts('<dc:description>Of spring</dc:description><cp:category>Costs</cp:category>') },
      'docProps/core.xml',
      /<dc:description>Of spring<\/dc:description>.*<cp:category>Costs<\/cp:category>/,
    ],
    [
      'its company and manager',
      { parts: propertyParts('', '<Manager>B. Grower</Manager><Company>A nursery</Company>') },
      'docProps/app.xml',
      /<Company>A nursery<\/Company><Manager>B. Grower<\/Manager>|<Manager>B. Grower<\/Manager><Company>A nursery<\/Company>/,
    ],
  ])('%s.', async (_, change, path, expected) => {
    expect(await toldOf(change)).toEqual([])
    expect((await savedFrom(change))[path]).toMatch(expected)
  })
})

describe('What the workbench tells on opening a file that it leaves out:', () => {
  it.each<[string, Change, sentence: string | RegExp]>([
    [
      'hidden names',
      { names: '<definedName name="rate" hidden="1">Orders!$A$2</definedName>' },
      'Names that are hidden, or refer from the cell that uses them, are written out in formulas: rate.',
    ],
    [
      'names of one sheet',
      { names: '<definedName name="rate" localSheetId="0">Orders!$A$2</definedName>' },
      'Names that hold on one sheet hold in the whole workbook from now on: rate.',
    ],
    [
      'split panes',
      { sheet: { before: view('', '<pane xSplit="1200" topLeftCell="B1" activePane="topRight"/>') } },
      'Settings of the view are left out: panes that are split but not frozen.',
    ],
    [
      'formulas that are shown, and hidden zeros',
      { sheet: { before: view('showFormulas="1" showZeros="0"') } },
      'Settings of the view are left out: formulas in the place of their results, hidden zeros.',
    ],
    [
      'hidden headings, in a view of pages',
      { sheet: { before: view('showRowColHeaders="0" view="pageLayout"') } },
      'Settings of the view are left out: hidden headings of rows and columns, the view of pages.',
    ],
    [
      'two windows',
      { views: '<bookViews><workbookView/><workbookView/></bookViews>' },
      'Settings of the view are left out: further windows and views.',
    ],
    [
      'a tab in a colour of the theme',
      { sheet: { before: '<sheetPr><tabColor theme="4"/></sheetPr>' } },
      'The colour of the tab, which is one of the theme, is left out: Orders.',
    ],
    [
      'print areas',
      { names: '<definedName name="_xlnm.Print_Area" localSheetId="0">Orders!$A$1:$A$2</definedName>' },
      'Print areas are left out, so that the whole sheet is printed: Orders.',
    ],
    [
      'print titles',
      { names: '<definedName name="_xlnm.Print_Titles" localSheetId="0">Orders!$A:$A,Orders!$1:$1</definedName>' },
      /^The print set-up is replaced/,
    ],
    [
      'portrait',
      { sheet: { after: '<pageSetup paperSize="9" orientation="portrait"/>' } },
      /^The print set-up is replaced/,
    ],
    [
      'another scale',
      { sheet: { after: '<pageSetup paperSize="9" scale="60" orientation="landscape"/>' } },
      /^The print set-up is replaced/,
    ],
    ['printed gridlines', { sheet: { after: '<printOptions gridLines="1"/>' } }, /^The print set-up is replaced/],
    [
      'another header',
      { sheet: { after: '<headerFooter><oddHeader>&amp;CPrices</oddHeader></headerFooter>' } },
      /^The print set-up is replaced/,
    ],
    [
      'iteration',
      { calcPr: 'iterate="1"' },
      'Settings of the calculation are left out: repeated calculation of circles.',
    ],
    [
      'precision as shown',
      { calcPr: 'fullPrecision="0"' },
      'Settings of the calculation are left out: numbers calculated as they are shown.',
    ],
    [
      'calculation by hand, and R1C1',
      { calcPr: 'calcMode="manual" refMode="R1C1"' },
      'Settings of the calculation are left out: calculation by hand only, addresses as R1C1.',
    ],
    [
      'links to other workbooks',
      { parts: { 'xl/externalLinks/externalLink1.xml': '<externalLink/>' } },
      'Links to other workbooks are not followed.',
    ],
    [
      'a rule without a sentence',
      {
        sheet: {
          after:
            '<dataValidations count="1"><dataValidation type="list" sqref="A2"><formula1>$A$1</formula1></dataValidation></dataValidations>',
        },
      },
      /^Rules for what may be typed/,
    ],
    [
      'a rule in an extension',
      {
        sheet: {
          after: extension(
            '<x14:dataValidations xmlns:x14="x"><x14:dataValidation type="list"/></x14:dataValidations>',
          ),
        },
      },
      /^Rules for what may be typed/,
    ],
    [
      'the format of a whole column',
      { sheet: { before: '<cols><col min="1" max="1" width="9" style="1"/></cols>' }, formats: ['0.00'] },
      'Formats of whole rows and columns are left out; those of filled cells stay.',
    ],
    [
      'the height of all rows',
      { sheet: { before: '<sheetFormatPr defaultRowHeight="30" customHeight="1"/>' } },
      'Row heights set by hand are left out.',
    ],
    [
      'properties of its own',
      {
        parts: propertyParts(
          '<cp:contentStatus>Draft</cp:contentStatus>',
          '<HyperlinkBase>x</HyperlinkBase>',
          '<property name="Checked by"/>',
        ),
      },
      'Properties of the file are left out: contentStatus, HyperlinkBase, Checked by.',
    ],
    [
      'scenarios and guarded ranges',
      { sheet: { after: '<protectedRanges/><scenarios/>' } },
      'Other things are left out, which the file calls: protectedRanges, scenarios.',
    ],
    [
      'what the workbook says',
      { end: '<fileSharing/><webPublishing/>' },
      'Other things are left out, which the file calls: fileSharing, webPublishing.',
    ],
    [
      'an extension that nobody knows',
      { sheet: { after: extension('<new:thing xmlns:new="x"/>') } },
      'Other things are left out, which the file calls: thing.',
    ],
    [
      'parts that nobody knows',
      {
        parts: {
          'xl/richData/rdrichvalue.xml': '<x/>',
          'xl/richData/rdarray.xml': '<x/>',
          'customXml/item1.xml': '<x/>',
          'docMetadata/LabelInfo.xml': '<x/>',
        },
      },
      'Other things are left out, which the file calls: customXml, docMetadata, xl/richData.',
    ],
  ])('%s.', async (_, change, sentence) => {
    expect(await toldOf(change)).toEqual([typeof sentence === 'string' ? sentence : expect.stringMatching(sentence)])
  })

  it('notes by somebody, in letters of their own.', async () => {
    const notes = (author: string, run: string) =>
      `<comments><authors><author>${author}</author></authors><commentList><comment ref="A2" authorId="0"><text>${run}</text></comment></commentList></comments>`
    const file = (xml: string): Change => ({
      parts: {
        'xl/comments1.xml': xml,
        'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="${packaged}/relationships"><Relationship Id="rId1" Type="${office}/relationships/comments" Target="../comments1.xml"/></Relationships>`,
      },
    })
    const sentence = 'Who wrote a note, and the formats of its words, are left out; the text stays.'
    expect(await toldOf(file(notes('A. Grower', '<t>Dear</t>')))).toEqual([sentence])
    expect(await toldOf(file(notes('', '<r><rPr><b/></rPr><t>Dear</t></r>')))).toEqual([sentence])
    expect(await toldOf(file(notes('', '<t>Dear</t>')))).toEqual([])
  })
})

it('The width of columns that the file says once for all is that of each filled column.', async () => {
  const { book } = await readXlsx(
    await fileWith({
      sheet: {
        cells: { A1: { v: 1 }, C1: { v: 2 } },
        before:
          '<sheetFormatPr defaultColWidth="14" defaultRowHeight="15"/><cols><col min="2" max="2" width="5"/></cols>',
      },
    }),
  )
  expect(book.sheets[0]!.widths).toEqual([14, 5, 14])
})

it('A plain workbook as Excel saves it has nothing to tell.', async () => {
  const change: Change = {
    sheet: {
      before: `<sheetPr codeName="Sheet1"><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="A1:A2"/>${view('tabSelected="1" zoomScaleNormal="100"', '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="A2" sqref="A2"/>')}<sheetFormatPr defaultRowHeight="15"/><cols><col min="1" max="1" width="12" customWidth="1"/></cols>`,
      after:
        '<phoneticPr fontId="1"/><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><pageSetup paperSize="9" fitToHeight="0" orientation="landscape" horizontalDpi="300" r:id="rId1"/><headerFooter><oddFooter>&amp;L&amp;F, &amp;A&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter>',
    },
    names: '<definedName name="_xlnm.Print_Titles" localSheetId="0">Orders!$1:$1</definedName>',
    views: '<bookViews><workbookView xWindow="0" yWindow="0" windowWidth="28800" windowHeight="12300"/></bookViews>',
    end: extension('<xcalcf:calcFeatures xmlns:xcalcf="x"/>'),
    parts: {
      ...propertyParts(
        '<dc:creator>A. Grower</dc:creator><cp:lastModifiedBy>B. Grower</cp:lastModifiedBy>',
        '<DocSecurity>0</DocSecurity><Company></Company>',
      ),
      'xl/calcChain.xml': '<calcChain/>',
      'xl/printerSettings/printerSettings1.bin': 'x',
    },
  }
  expect(await toldOf(change)).toEqual([])
})
