/** Files of other programs whose parts are unusual or broken: read right, or refused in one sentence. */
import { editZip, zip } from '@cj-tech-master/excelts/archive'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { putResults } from '../../../src/workbench/xlsx/putResults'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { resultsOf } from '../../../src/workbench/xlsx/results'
import { XlsxProblem } from '../../../src/workbench/xlsx/xlsxProblem'
import { partsFile, partsOfFile, type PartsFile } from './partsFile'

const texts = { path: 'sharedStrings.xml', texts: ['peat', 'coir'] }

/** A number, a text of the texts' part, and formulas of each form: plain, shared and array. */
const usual: PartsFile = {
  sheets: [
    {
      name: 'S',
      cells: {
        A1: { v: 2 },
        A2: { v: 1, attributes: 't="s"' },
        B1: { f: 'A1*2', v: 4 },
        B2: { f: 'LEN(A2)', fAttributes: 't="shared" ref="B2:B3" si="0"', v: 4 },
        B3: { fAttributes: 't="shared" si="0"', v: 0 },
        C1: { f: 'A1:A2', fAttributes: 't="array" ref="C1:C2"', v: 2 },
        C2: { v: 'coir' },
        D1: { v: 45000, attributes: 's="1"' },
      },
      rows: { 1: 'spans="1:4" ht="15"' },
      before: '<cols><col min="1" max="2" width="12" customWidth="1"/></cols>',
    },
  ],
  sharedStrings: texts,
  formats: ['yyyy-mm-dd'],
  names: '<definedName name="Medium">S!$A$1</definedName>',
}

async function outcome(bytes: Uint8Array): Promise<unknown> {
  try {
    const { book } = await readXlsx(bytes)
    const calculated = await calculateBook(book)
    resultsOf(book, calculated)
    await putResults(bytes, calculated)
    return Object.fromEntries([...calculated.sheets[0]!.cells].map(([address, { value }]) => [address, value]))
  } catch (problem) {
    if (!(problem instanceof XlsxProblem)) throw problem
    expect(problem.message).toMatch(/^[A-Z][^\n]+\.$/)
    return problem.code
  }
}

const sheetPath = 'xl/worksheets/sheet1.xml'

function withSheet(change: (xml: string) => string): PartsFile {
  return { ...usual, parts: { [sheetPath]: change(partsOfFile(usual)[sheetPath]!) } }
}

const results = { A1: 2, A2: 'coir', B1: 4, B2: 4, B3: 0, C1: 2, C2: 'coir', D1: 45000 }

describe('a file of another program', () => {
  // ECMA-376 part 2, 9.3: what a part is, its relation says, and not its name.
  it('may give its texts, styles and sheets other names, and comment its XML.', async () => {
    expect(await outcome(await partsFile(usual))).toEqual(results)
    const elsewhere = { ...usual, sharedStrings: { ...texts, path: 'texts/all.xml' } }
    expect(await outcome(await partsFile(elsewhere))).toEqual(results)
    const parts = partsOfFile(usual)
    const renamed = Object.fromEntries(
      Object.entries(parts).map(([path, xml]) => [
        path.replace(/worksheets\/sheet1\.xml$/, 'blatt.xml').replace('styles.xml', 'looks.xml'),
        xml.replaceAll('worksheets/sheet1.xml', 'blatt.xml').replaceAll('styles.xml', 'looks.xml'),
      ]),
    )
    const archive = zip()
    for (const [path, xml] of Object.entries(renamed)) archive.add(path, xml)
    expect(await outcome(await archive.bytes())).toEqual(results)
    const commented = withSheet((xml) => xml.replace('<row r="2">', '<!-- <row r="9"> --><row r="2"><!-- -->'))
    expect(await outcome(await partsFile(commented))).toEqual(results)
  })

  // ECMA-376 part 1, 18.3.1.4 (c) and 18.3.1.73 (row): each may end with an extLst.
  it.each([
    ['a cell', (xml: string) => xml.replace('<v>2</v></c>', '<v>2</v><extLst><ext uri="{x}"><y/></ext></extLst></c>')],
    ['an empty list', (xml: string) => xml.replace('<v>2</v></c>', '<v>2</v><extLst/></c>')],
    ['a row', (xml: string) => xml.replace('</row>', '<extLst><ext uri="{x}"/></extLst></row>')],
    ['a sheet', (xml: string) => xml.replace('</sheetData>', '</sheetData><extLst><ext uri="{x}"/></extLst>')],
    [
      'merged columns',
      (xml: string) =>
        xml.replace('</sheetData>', '</sheetData><mergeCells><mergeCell ref="F1:G1048576"/></mergeCells>'),
    ],
  ])('may have an extension or more: %s', async (_what, change) => {
    expect(await outcome(await partsFile(withSheet(change)))).toEqual(results)
  })

  it('may have a name of whole columns, which is not listed cell by cell.', async () => {
    const names = '<definedName name="All">S!$A$1:$XFD$1048576</definedName>'
    expect(await outcome(await partsFile({ ...usual, names }))).toEqual(results)
  })

  it.each<[string, PartsFile, string]>([
    ['a control character', withSheet((xml) => xml.replace('A1*2', 'A1*2\u0001')), 'damaged'],
    ['a control character by its number', withSheet((xml) => xml.replace('A1*2', 'A1*2&#x1F;')), 'damaged'],
    [
      'a row below the last one of Excel',
      withSheet((xml) => xml.replace('<row r="2">', '<row r="1048577">')),
      'damaged',
    ],
    ['a cell below it', withSheet((xml) => xml.replace('r="B3"', 'r="B1048577"')), 'damaged'],
    ['a column beyond the last one', withSheet((xml) => xml.replace('max="2"', 'max="99999999"')), 'damaged'],
    ['an array beyond the sheet', withSheet((xml) => xml.replace('C1:C2', 'C1:C21048577')), 'damaged'],
    ['an array as large as the sheet', withSheet((xml) => xml.replace('C1:C2', 'C1:XFD1048576')), 'tooLarge'],
    ['a text that there is not', { ...usual, sharedStrings: { ...texts, texts: ['peat'] } }, 'damaged'],
    ['texts without their part', { ...usual, parts: { 'xl/sharedStrings.xml': null } }, 'damaged'],
    ['a sheet without its part', { ...usual, parts: { [sheetPath]: null } }, 'damaged'],
    ['no relations', { ...usual, parts: { 'xl/_rels/workbook.xml.rels': null } }, 'damaged'],
    ['no workbook', { ...usual, parts: { 'xl/workbook.xml': null } }, 'notWorkbook'],
    ['XML without its end', withSheet((xml) => xml.replace('</sheetData></worksheet>', '')), 'damaged'],
    ['an unknown entity', withSheet((xml) => xml.replace('A1*2', '&nothing;')), 'damaged'],
  ])('is refused in one sentence with %s.', async (_what, file, code) => {
    expect(await outcome(await partsFile(file))).toBe(code)
  })

  it('is refused in one sentence where it is an archive of nothing.', async () => {
    expect(await outcome(await zip().bytes())).toBe('notWorkbook')
  })

  const junk = [
    '',
    '-1',
    '99999999999',
    'NaN',
    'x',
    'A0',
    '\u0001',
    '&#x1;',
    '<',
    '1048577',
    'A1:',
    '1.5',
    'A1:XFE9',
    '__proto__',
  ]
  const change = fc.record({
    part: fc.constantFrom(...Object.keys(partsOfFile(usual))),
    place: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    instead: fc.constantFrom(...junk),
    what: fc.constantFrom(/="([^"]*)"/g, />([^<]+)</g, /<[^>]+>/g, / [\w:]+="[^"]*"/g, /[\s\S]/g),
  })

  it('never throws, whatever stands in the place of a value, a text, a tag or a sign of a part.', () =>
    fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 2 }), async (changes) => {
        const archive = await editZip(await partsFile(usual))
        for (const { part, place, instead, what } of changes) {
          const xml = partsOfFile(usual)[part]!
          const found = [...xml.matchAll(what)]
          const one = found[Math.floor(place * found.length)]!
          archive.set(
            part,
            xml.slice(0, one.index) +
              one[0].replace(one[1] ?? one[0], () => instead) +
              xml.slice(one.index + one[0].length),
          )
        }
        await outcome(await archive.bytes())
      }),
      { numRuns: 80 },
    ))
})
