/**
 * Files of other programs: each formula is calculated as Excel does, or keeps the result that the file stores, and so
 * does all that reads it. A stored result stands beside each formula as Excel would give it; those that are to be kept
 * are stored as another number, so that a calculation of them is seen.
 */
import { describe, expect, it } from 'vitest'
import { recalculated, type Recalculated } from './recalculated'
import type { PartsCell, PartsFile } from './partsFile'

const typed: Readonly<Record<string, PartsCell>> = {
  A1: { v: 2 },
  A2: { v: 3 },
  A3: { v: 5 },
  B1: { v: 10 },
  B2: { v: 20 },
  B3: { v: 30 },
}

const withCells = (cells: Readonly<Record<string, PartsCell>>, rest: Partial<PartsFile> = {}): PartsFile => ({
  sheets: [{ name: 'S', cells: { ...typed, ...cells } }],
  ...rest,
})

/** A formula with a stored result that no calculation gives. */
const stale = (f: string, v: number, fAttributes = ''): PartsCell => ({ f, v, fAttributes })
/** A formula without a result, which is to get one. */
const open = (f: string, fAttributes = ''): PartsCell => ({ f, fAttributes })

async function results(file: PartsFile): Promise<Recalculated['stored']> {
  return (await recalculated(file)).stored
}

describe('What cannot be calculated here keeps its stored result, as does what reads it', () => {
  const link = { 'xl/externalLinks/externalLink1.xml': '<externalLink/>' }
  it.each<[string, PartsFile, Readonly<Record<string, string>>]>([
    [
      'functions that are not known',
      withCells({
        C1: stale('FOO(A1)', 71),
        C2: stale('SUM(C1:C1,1)', 72),
        C3: stale('IFERROR(C1,0)', 73),
        C4: stale('COUNT(C1)+COUNTIF(C1,">5")', 74),
        C5: stale('_xll.PLUG.IN(A1)', 75),
        C6: stale('STICK.NOSUCH(A1)', 76),
        C7: stale('IFERROR(_xlfn.FUTURE(A1),1)', 77),
      }),
      {
        C1: 'unknownFunction',
        C2: '',
        C3: '',
        C4: '',
        C5: 'unknownFunction',
        C6: 'unknownFunction',
        C7: 'unknownFunction',
      },
    ],
    [
      'other workbooks and programs, by themselves or through a name',
      withCells(
        {
          C1: stale('[1]Sheet1!A1', 71),
          C2: stale('C1+1', 72),
          C3: stale("SUM('[1]My sheet'!A1:A3)", 73),
          C4: stale('[1]!Price', 74),
          C5: stale('IFERROR(Outside,0)', 75),
          C6: stale('Prog|topic!item', 76),
        },
        { parts: link, names: '<definedName name="Outside">[1]Sheet1!$A$1</definedName>' },
      ),
      {
        C1: 'otherWorkbook',
        C2: '',
        C3: 'otherWorkbook',
        C4: 'otherWorkbook',
        C5: 'otherWorkbook',
        C6: 'otherWorkbook',
      },
    ],
    [
      'circles, also where the workbook iterates',
      withCells(
        {
          C1: stale('C2+1', 71),
          C2: stale('C1+1', 72),
          C3: stale('IFERROR(C1*2,0)', 73),
          C4: stale('SUM(C4:C5)', 74),
        },
        { calcPr: 'iterate="1" iterateCount="50"' },
      ),
      { C1: 'circle', C2: 'circle', C3: 'circle', C4: 'circle' },
    ],
    [
      'names that there are not, and cells beyond the sheet',
      withCells({
        C1: stale('IFERROR(Nothing,1)', 71),
        C2: stale('COUNT(XFE1)', 72),
        C3: stale('A1048577', 73),
        C4: stale('COUNT(Gone!A1)', 74),
      }),
      { C1: 'unknownName', C2: 'unknownName', C3: 'unknownName', C4: 'unknownName' },
    ],
    [
      'several sheets where that is no sum',
      {
        sheets: [
          { name: 'S', cells: { ...typed, C1: stale('One:Two!A1', 71), C2: stale('RANK(A1,One:Two!A1:A3)', 72) } },
          { name: 'One', cells: typed },
          { name: 'Two', cells: typed },
        ],
      },
      { C1: 'acrossSheets', C2: 'acrossSheets' },
    ],
    [
      'subtotals over hidden rows',
      {
        sheets: [
          {
            name: 'S',
            cells: {
              ...typed,
              C1: stale('SUBTOTAL(109,A1:A3)', 71),
              C2: stale('SUBTOTAL(9,Sales)', 72),
              C3: stale('AGGREGATE(9,5,A1:A3)', 73),
              C4: stale('C1*2', 74),
              C5: stale('SUBTOTAL(109,OFFSET(A1,0,0,3,1))', 75),
            },
            rows: { 2: 'hidden="1"' },
          },
        ],
        names: '<definedName name="Sales">S!$A$1:$A$3</definedName>',
      },
      { C1: 'hiddenRows', C2: 'hiddenRows', C3: 'hiddenRows', C4: '', C5: 'hiddenRows' },
    ],
    [
      'days that are counted from 1904',
      withCells(
        {
          D1: { v: 43888, attributes: 's="1"' },
          C1: stale('YEAR(D1)', 71),
          C2: { f: 'D1+30', v: 43900, attributes: 's="1"' },
          C3: stale('DATE(2024,2,28)', 73),
          C4: stale('D1*1', 74),
          C5: stale('C3-1', 75),
        },
        { workbookPr: 'date1904="1"', formats: ['yyyy-mm-dd'] },
      ),
      { C1: 'daysFrom1904', C2: 'daysFrom1904', C3: 'daysFrom1904', C4: 'daysFrom1904', C5: '' },
    ],
    [
      'numbers that count as they are shown',
      withCells({ C1: stale('A1*2', 71) }, { calcPr: 'fullPrecision="0"' }),
      { C1: 'shownPrecision' },
    ],
    [
      'data tables',
      withCells({
        C1: stale('', 71, 't="dataTable" ref="C1:C2" dt2D="0" dtr="0" r1="A1"'),
        C2: { v: 72 },
        C3: stale('C2+1', 73),
      }),
      { C1: 'dataTable', C2: 'dataTable', C3: '' },
    ],
    [
      'plain formulas that take one cell of several in a way that is not sure',
      withCells({
        C1: stale('INDEX(A1:B3,0,1)', 71),
        C2: stale('SUM(IF(A1>1,A1:A3,B1:B3)*1)', 72),
        C3: stale('VLOOKUP(A1:A3,A1:B3,2,FALSE)+0*FOO(1)', 73),
      }),
      { C1: 'oldArray', C2: 'oldArray', C3: 'unknownFunction' },
    ],
    [
      'ranges that are joined, or common to others, and whole spilled ranges',
      withCells(
        {
          C1: stale('A1:A3 A2:C2', 71),
          C2: stale('COUNT((A1,A3))', 72),
          C3: stale('COUNT(Joined)', 73),
          C4: stale('IFERROR(SUM(_xlfn.ANCHORARRAY(A1)),0)', 74),
          C5: stale('SUM(ROW(A1:A3))', 75),
          C6: stale('_xlfn.LET(_xlpm.x,FOO(A1),IFERROR(_xlpm.x,0))', 76),
          C7: open('_xlfn.LET(_xlpm.x,A1,SUM( A1 , _xlpm.x ))'),
        },
        { names: '<definedName name="Joined">S!$A$1,S!$A$3</definedName>' },
      ),
      {
        ...{ C1: 'joinedRanges', C2: 'joinedRanges', C3: 'joinedRanges', C4: 'wholeSpill', C5: 'oldArray' },
        C6: 'unknownFunction',
      },
    ],
    [
      'cells found by calculating, where anything is kept',
      withCells({ C1: stale('FOO(A1)', 71), C2: stale('INDIRECT("C1")', 72), C3: stale('OFFSET(C1,0,0)', 73) }),
      { C1: 'unknownFunction', C2: '', C3: '' },
    ],
    [
      'what reads through names, blocks, other sheets and arrays',
      {
        sheets: [
          {
            name: 'S',
            cells: {
              ...typed,
              C1: stale('FOO(A1)', 71),
              C2: stale('Kept*2', 72),
              C3: stale('SUM(C:C)-SUM(C3)', 73),
              D1: stale('A1:A3+C1', 74, 't="array" ref="D1:D3"'),
              D2: { v: 75 },
              D3: { v: 76 },
              E1: stale('D3*2', 77),
              E2: open('A1*2'),
            },
          },
          { name: 'Two', cells: { A1: stale('S!E1', 78), A2: open('S!A1') } },
        ],
        names: '<definedName name="Kept">S!$C$1</definedName>',
      },
      { C1: 'unknownFunction', C2: '', C3: 'circle', D1: '', E1: '', 'Two!A1': '' },
    ],
  ])('%s.', async (_what, file, expected) => {
    const { stored, kept } = await recalculated(file)
    expect(kept).toEqual(expected)
    for (const { name, cells } of file.sheets)
      for (const [address, { v }] of Object.entries(cells))
        if (v !== undefined) expect(stored[name === 'S' ? address : `${name}!${address}`], address).toBe(v)
  })

  it('And it has none where the file stores none.', async () => {
    const { stored, kept } = await recalculated(withCells({ C1: open('FOO(A1)'), C2: open('IFERROR(C1,0)') }))
    expect(kept).toEqual({ C1: 'unknownFunction', C2: '' })
    expect([stored['C1'], stored['C2']]).toEqual([undefined, undefined])
  })
})

describe('What other programs write is calculated as Excel does', () => {
  it('Names hold on their sheet first, then everywhere.', async () => {
    // ECMA-376 part 1, 18.2.5, localSheetId: the index of the sheet on which alone the name holds.
    const file: PartsFile = {
      sheets: [
        {
          name: 'S',
          cells: {
            ...typed,
            C1: open('Price*2'),
            C2: open("'Two'!Price*2"),
            C3: open('Only+1'),
            C4: open('Two!Only+1'),
          },
        },
        { name: 'Two', cells: { A1: { v: 7 }, B1: open('Price*2'), B2: open('S!Price*2'), B3: open('Only+1') } },
      ],
      names: `<definedName name="Price">S!$A$1</definedName><definedName name="Price" localSheetId="1">Two!$A$1</definedName>
        <definedName name="Only" localSheetId="1">Two!$A$1</definedName><definedName name="Hid" hidden="1">S!$A$3</definedName>`,
    }
    const { stored, kept } = await recalculated(file)
    expect(stored).toMatchObject({ C1: 4, C2: 14, C4: 8, 'Two!B1': 14, 'Two!B2': 4, 'Two!B3': 8 })
    // Excel shows #NAME? in C3, which nothing is written over.
    expect(kept).toEqual({ C3: 'unknownName' })
  })

  it('Names may refer from the cell that uses them, and go on at the other edge.', async () => {
    // As a name is stored it refers from A1: XFD1 is one to the left, A1048576 one above.
    const file = withCells(
      {
        C2: open('Left+1'),
        C3: open('Above*2'),
        D3: open('SUM(Both)'),
        E1: open('Here'),
        E2: open('Hid*Left'),
        D2: { v: 4 },
      },
      {
        names: `<definedName name="Left">S!XFD1</definedName><definedName name="Above">!A1048576</definedName>
        <definedName name="Both">S!$A1:$B1</definedName><definedName name="Here">S!$A1+S!B$2</definedName>
        <definedName name="Hid" hidden="1">S!$A$3</definedName>`,
      },
    )
    // C2: B2+1. C3: twice C2. D3: A3+B3. E1: A1 and, four columns on, F2, which is blank. E2: A3 times D2.
    expect(await results(file)).toMatchObject({ C2: 21, C3: 42, D3: 35, E1: 2, E2: 20 })
  })

  it('Names like functions, with signs or calculations in them, stand for their value.', async () => {
    const file = withCells(
      {
        C1: open('DATE(2024,1,1)+Date'),
        C2: open('SUM(A1:A3)*SUM'),
        C3: open('100-Both*2'),
        C4: open('MAX(A1:A3)-Minus'),
      },
      {
        names: `<definedName name="Date">S!$A$3</definedName><definedName name="SUM">S!$B$1</definedName>
        <definedName name="Both">S!$A$1+S!$A$2</definedName><definedName name="Minus">-S!$A$1</definedName>`,
      },
    )
    expect(await results(file)).toMatchObject({ C1: 45297, C2: 100, C3: 90, C4: 7 })
  })

  it('Sums over several sheets take each from the first to the last.', async () => {
    // Microsoft, "Create a 3-D reference to the same cell range on multiple worksheets".
    const cells = { C1: open("SUM('One a:Three'!A1:A3)"), C2: open('AVERAGE(Two:Three!A1)+MAX(1,Two:Two!B1:B3)') }
    const file: PartsFile = {
      sheets: [
        { name: 'S', cells },
        { name: 'One a', cells: typed },
        { name: 'Two', cells: { A1: { v: 4 }, B3: { v: 9 } } },
        { name: 'Three', cells: typed },
      ],
    }
    expect(await results(file)).toMatchObject({ C1: 24, C2: 12 })
  })

  it('Plain formulas take of several cells the one in their row or column.', async () => {
    // Microsoft, "Implicit intersection operator: @"; which arguments take one cell is from memory.
    const file = withCells(
      {
        C1: open('A1:A3'),
        C2: open('A1:A3*2'),
        C3: open('SUM(A1:A3*B1:B3)'),
        D1: open('Column&"x"'),
        D2: open('_xlfn.SINGLE(A1:A3)+1'),
        D3: open('IF(A:A>2,"y","n")'),
        E1: open('SUMPRODUCT(A1:A3*B1:B3)'),
        E2: open('_xlfn.SINGLE(Column)'),
        E3: open('ROUND(A1:A3/2,0)+SUM(A1:A3)'),
        A4: open('A1:C1'),
        E4: open('A1:A3'),
        F1: open('COUNTIF(A1:A3,A1:A3)'),
        F2: open('LARGE(A1:A3,{1,2})'),
        F3: open('"a@Column SINGLE(A1)"&A1'),
      },
      { names: '<definedName name="Column">S!$A$1:$A$3</definedName>' },
    )
    expect(await results(file)).toMatchObject({
      ...{
        C1: 2,
        C2: 6,
        C3: 150,
        D1: '2x',
        D2: 4,
        D3: 'y',
        E1: 230,
        E2: 3,
        E3: 13,
        A4: 2,
        E4: '#VALUE!',
        F1: 1,
        F3: 'a@Column SINGLE(A1)2',
      },
    })
  })

  it('Tables are read wherever their part lies, also through names, and one cell of theirs in its row.', async () => {
    const type = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/table'
    const columns =
      '<tableColumns count="2"><tableColumn id="1" name="k"/><tableColumn id="2" name="v"/></tableColumns>'
    const cells = {
      ...{ A4: { v: 'k' }, B4: { v: 'v' }, A5: { v: 1 }, B5: { v: 7 }, A6: { v: 2 }, B6: { v: 8 } },
      C1: open('SUM(Sales[v])'),
      C2: open('SUM(Values)'),
      C3: stale('Sales[nothing]', 9),
      C5: open('Sales[[#This Row],[v]]*2'),
      C6: open('Sales[v]*3'),
    }
    const file: PartsFile = {
      sheets: [{ name: 'S', cells, after: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>' }],
      names: '<definedName name="Values">Sales[v]</definedName>',
      parts: {
        'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships><Relationship Id="rId1" Type="${type}" Target="/xl/all/t.xml"/></Relationships>`,
        'xl/all/t.xml': `<table id="1" name="Sales" displayName="Sales" ref="A4:B6">${columns}</table>`,
      },
    }
    const { stored, kept } = await recalculated(file)
    expect(stored).toMatchObject({ C1: 15, C2: 15, C3: 9, C5: 14, C6: 24 })
    expect(kept).toEqual({ C3: 'unknownName' })
  })

  it('Texts are read without their phonetics, and with the signs that are written by their number.', async () => {
    // ECMA-376 part 1, 18.4.6 (rPh) and 22.9.2.19 (ST_Xstring); a day may be written as such, 18.18.11 (t="d").
    const phonetic = '<rPh sb="0" eb="1"><t>zz</t></rPh><phoneticPr fontId="1"/>'
    const file = withCells(
      {
        D1: { attributes: 't="inlineStr"', inner: `<is><r><t>pe</t></r><r><t>at</t></r>${phonetic}</is>` },
        D2: { v: 'a_x0041__x000D_b' },
        D3: { v: 0, attributes: 't="s"' },
        D4: { v: '2024-02-29', attributes: 't="d"' },
        C1: open('LEN(D1)'),
        C2: open('D2&"|"&LEN(D2)'),
        C3: open('LEN(D3)'),
        C4: open('D4+1'),
      },
      {
        sharedStrings: { path: 'sharedStrings.xml', texts: [] },
        parts: { 'xl/sharedStrings.xml': `<sst xmlns="x"><si><t>coir_x0041_</t>${phonetic}</si></sst>` },
      },
    )
    expect(await results(file)).toMatchObject({ C1: 4, C2: 'aA_x000D_b|4', C3: 5, C4: 45352 })
  })

  it('Array formulas of fixed size fill their cells and no others.', async () => {
    // Microsoft, "Guidelines and examples of array formulas".
    const file = withCells({
      C1: open('SUM(A1:A3*B1:B3)', 't="array" ref="C1"'),
      D1: open('A1:A3*2', 't="array" ref="D1:D2"'),
      D3: { v: 99 },
      E1: open('SUM(D1:D3)'),
      F1: open('A1*7', 't="array" ref="F1:F3"'),
      G1: open('SUM(F1:F3)'),
      H1: open('A1:A2', 't="array" ref="H1:I3"'),
      J1: open('COUNT(H1:I3)'),
      K1: open('A1:A3', 't="array" ref="K1"'),
      K2: { v: 50 },
    })
    expect(await results(file)).toMatchObject({
      ...{ C1: 230, D1: 4, D2: 6, D3: 99, E1: 109, F1: 14, F2: 14, F3: 14, G1: 42 },
      ...{ H1: 2, I1: 2, H2: 3, I2: 3, H3: '#N/A', I3: '#N/A', J1: 4, K1: 2, K2: 50 },
    })
  })
})
