import { unzip } from '@cj-tech-master/excelts/archive'
import type { Book, Cell, Sheet } from '../../../src/workbook/book'

export function sheet(
  name: string,
  rows: readonly (readonly (Cell | undefined)[])[],
  rest: Partial<Sheet> = {},
): Sheet {
  return { name, widths: [], frozenRows: 0, frozenColumns: 0, rows, ...rest }
}

/** One of everything that a book can hold. */
export const sampleBook: Book = {
  shown: 'Plain',
  properties: {
    author: 'An invented grower',
    title: 'Mixes & more',
    subject: 'rooting',
    keywords: 'peat, perlite',
    description: 'Nothing is real.',
    category: 'samples',
    manager: 'Another grower',
    company: 'An invented nursery',
  },
  names: [
    { name: 'mixShrink', refersTo: "'Mix & match'!$B$2" },
    { name: 'parts', refersTo: "'Mix & match'!$A$5:$A$6" },
    { name: 'wholeColumn', refersTo: 'Plain!$A:$A' },
    { name: 'vat', refersTo: '0.19' },
  ],
  sheets: [
    sheet(
      'Mix & match',
      [
        [{ value: 'A mix', look: 'title', note: 'An invented mix.\nNothing is real.' }],
        [
          { value: 'mix shrink', look: 'text' },
          { value: 0.15, look: 'input', format: '0%' },
        ],
        [
          { value: 'Parts', look: 'heading' },
          { value: 'Litres', look: 'heading' },
          { value: 'Supplier' },
          { value: 'Price of' },
        ],
        [
          { look: 'input', allowed: { list: 'parts', sentence: 'Choose a part.' } },
          { look: 'input', format: '0.0 "L"', allowed: { from: 0, sentence: 'Type litres, 0 or more.' } },
        ],
        [
          { value: 1, look: 'input', allowed: { from: 1, to: 9, whole: true, sentence: 'Type "1" to <9>.' } },
          { formula: '=STICK.BLENDPARTS(100,A5:A6,mixShrink)', spills: true, format: '0.0 "L"', look: 'result' },
        ],
        [{ value: 2, look: 'input', allowed: { from: 1, to: 9, whole: true, sentence: 'Type "1" to <9>.' } }],
        [
          { value: 'Bags', look: 'total' },
          { formula: '=STICK.BAGS(SUM(B5:B6),"60 L")', format: '0 "bags"', look: 'total' },
        ],
        [{ value: 'Mind the dust.', look: 'caution' }],
      ],
      { widths: [24, 12.5, 9, 40], frozenRows: 3, frozenColumns: 1, tables: [{ name: 'PartsToMix', range: 'C3:D5' }] },
    ),
    sheet(
      'Plain',
      [
        [
          { value: true },
          { value: false },
          { value: -1.5e-7 },
          { value: 1e21 },
          { value: '60' },
          { value: '=not a formula' },
        ],
        [],
        [
          undefined,
          undefined,
          {
            value: 45351.25,
            format: 'yyyy-mm-dd',
            allowed: { from: 36526, to: 73050, day: true, sentence: 'Type a day.' },
          },
          { value: 12.3456789, format: '0.00\\ \\m' },
          { note: 'A note on an empty cell.' },
        ],
        [
          { formula: '=1/0' },
          { formula: '=SUM(A1:A3*2)' },
          { formula: '=XLOOKUP("60",E1:E1,F1:F1)' },
          { formula: "='Mix & match'!B7" },
        ],
        [{ value: '  edges \n two lines ' }, { value: 'a & b < c > "d" \'e\'' }, { value: '_x0041_ é 🌱' }],
      ],
      {
        layout: {
          rightToLeft: true,
          hidesGridlines: true,
          zoom: 85,
          tabColour: 'FF00B050',
          margins: { left: 0.25, right: 0.25, top: 1, bottom: 1, header: 0.5, footer: 0.5 },
        },
      },
    ),
  ],
}

/** The parts of a file as text, by their path. */
export async function partsOf(bytes: Uint8Array): Promise<Record<string, string>> {
  const parts: Record<string, string> = {}
  for await (const entry of unzip(bytes).entries()) parts[entry.path] = await entry.text()
  return parts
}
