/** Why formulas keep the results that the file stores: completes "because". */
const kept = {
  otherWorkbook: 'they read another workbook or program',
  unknownFunction: 'they call a function that is not known here',
  unknownName: 'they read a name that is not known here',
  acrossSheets: 'they read the same cells of several sheets',
  wholeSpill: 'they read a whole spilled range (A1#)',
  joinedRanges: 'they read several ranges as one, or what is common to them',
  oldArray: 'they take one cell of several, or an array, in a way that cannot be told for certain',
  circle: 'they read their own result, or what follows from one that does',
  hiddenRows: 'they may leave hidden rows out',
  daysFrom1904: 'the workbook counts its days from 1904',
  shownPrecision: 'the workbook calculates with the numbers as they are shown',
  dataTable: 'only Excel calculates data tables',
}

/** Settings of the view, and of the calculation: they complete "are left out: ". */
const view = {
  splitPanes: 'panes that are split but not frozen',
  shownFormulas: 'formulas in the place of their results',
  hiddenZeros: 'hidden zeros',
  hiddenHeadings: 'hidden headings of rows and columns',
  pageView: 'the view of pages',
  severalViews: 'further windows and views',
}
const calculation = {
  iteration: 'repeated calculation of circles',
  shownPrecision: 'numbers calculated as they are shown',
  byHand: 'calculation by hand only',
  rowsAndColumns: 'addresses as R1C1',
}

/** Why a file cannot be read, and what of it the workbench cannot hold. */
export const files = {
  problems: {
    empty: 'The file is empty. Choose an .xlsx workbook.',
    protected:
      'The workbook is protected by a password. Open it in Excel, save a copy without the password, and choose the copy.',
    oldExcel: 'This is a workbook of Excel 2003 or earlier (.xls). Open it in Excel and save it as .xlsx.',
    binaryExcel: 'This is a binary workbook (.xlsb). Open it in Excel and save it as .xlsx.',
    openDocument:
      'This is an OpenDocument spreadsheet (.ods). Open it in the program that wrote it and save it as .xlsx.',
    notWorkbook: 'This is not an Excel workbook. Text files (.csv) must be opened in Excel and saved as .xlsx first.',
    damaged:
      'The workbook is damaged or incomplete and cannot be read. Try Open and Repair in Excel, and save it again.',
    tooLarge:
      'The workbook is too large to open here. Leave out the sheets that have nothing to do with the season, and save it again.',
  },
  kept,
  view,
  calculation,
  /** What of a file the grid has no place for: one sentence each, to be said before anything is saved. */
  lost: {
    pivotTables: () => 'Pivot tables are left out.',
    charts: () => 'Charts are left out.',
    pictures: () => 'Pictures are left out.',
    linkedWorkbooks: () => 'Links to other workbooks are not followed.',
    keptResults: ([why, ...places]: readonly string[]) =>
      `Formulas become the results that the file stores, because ${kept[why as keyof typeof kept]}: ${places.join(', ')}.`,
    relativeNames: (names: readonly string[]) =>
      `Names that are hidden, or refer from the cell that uses them, are written out in formulas: ${names.join(', ')}.`,
    macros: () => 'Macros are left out.',
    dataConnections: () => 'Data connections and queries are left out.',
    slicers: () => 'Slicers and timelines are left out.',
    formControls: () => 'Buttons and other form controls are left out.',
    embeddedDocuments: () => 'Embedded documents are left out.',
    conversations: () => 'Conversations in comments become plain notes.',
    signature: () => 'The digital signature is left out.',
    tables: () => 'Tables become plain cells, and formulas that read them by name read the same cells by address.',
    shapes: () => 'Drawn shapes and text boxes are left out.',
    conditionalFormats: () => 'Conditional formats are left out.',
    mergedCells: () => 'Merged cells are separated; their text stays in the first one.',
    filters: () => 'Filters are left out.',
    sheetProtection: () => 'The protection of sheets is left out.',
    pageBreaks: () => 'Page breaks set by hand are left out.',
    links: () => 'Links in cells become plain text.',
    sparklines: () => 'Sparklines are left out.',
    hiddenRows: () => 'Hidden rows and columns are shown.',
    groups: () => 'Groups of rows and columns are left out.',
    rowHeights: () => 'Row heights set by hand are left out.',
    printSetUp: () => 'The print set-up is replaced: landscape, one page wide, with the frozen rows on every page.',
    rowFormats: () => 'Formats of whole rows and columns are left out; those of filled cells stay.',
    printAreas: (sheets: readonly string[]) =>
      `Print areas are left out, so that the whole sheet is printed: ${sheets.join(', ')}.`,
    tabColours: (sheets: readonly string[]) =>
      `The colour of the tab, which is one of the theme, is left out: ${sheets.join(', ')}.`,
    view: (names: readonly string[]) =>
      `Settings of the view are left out: ${names.map((name) => view[name as keyof typeof view]).join(', ')}.`,
    calculation: (names: readonly string[]) =>
      `Settings of the calculation are left out: ${names.map((name) => calculation[name as keyof typeof calculation]).join(', ')}.`,
    workbookProtection: () => 'The protection of the workbook is left out.',
    datesFrom1904: () =>
      'Dates are counted from 1900 from now on; a formula that adds to a date written out as a number may differ by four years.',
    hiddenSheets: (sheets: readonly string[]) => `Hidden sheets are shown: ${sheets.join(', ')}.`,
    secondName: ([name, sheet, now]: readonly string[]) =>
      `The name ${name} of the sheet ${sheet} is called ${now} from now on, because another one has the same name.`,
    sheetNames: (names: readonly string[]) =>
      `Names that hold on one sheet hold in the whole workbook from now on: ${names.join(', ')}.`,
    noteFormats: () => 'Who wrote a note, and the formats of its words, are left out; the text stays.',
    properties: (names: readonly string[]) => `Properties of the file are left out: ${names.join(', ')}.`,
    others: (names: readonly string[]) => `Other things are left out, which the file calls: ${names.join(', ')}.`,
    richText: () => 'Formats of single words within a cell are left out; the text stays.',
    ownStyles: () =>
      'Colours, fonts, borders and alignment are left out, and bold texts become headings; number formats stay.',
    otherRules: () =>
      'Rules for what may be typed into a cell (data validation) are left out, unless they ask for a number or a day within limits or an entry of a list and say so in words.',
  },
}
