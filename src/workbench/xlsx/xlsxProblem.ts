/** Why a file cannot be read, as data and as a sentence for whoever chose the file. */
export type XlsxProblemCode = 'empty' | 'protected' | 'oldExcel' | 'binaryExcel' | 'openDocument' | 'notWorkbook' | 'damaged' | 'tooLarge'

const sentences: Readonly<Record<XlsxProblemCode, string>> = {
  empty: 'The file is empty. Choose an .xlsx workbook.',
  protected: 'The workbook is protected by a password. Open it in Excel, save a copy without the password, and choose the copy.',
  oldExcel: 'This is a workbook of Excel 2003 or earlier (.xls). Open it in Excel and save it as .xlsx.',
  binaryExcel: 'This is a binary workbook (.xlsb). Open it in Excel and save it as .xlsx.',
  openDocument: 'This is an OpenDocument spreadsheet (.ods). Open it in the program that wrote it and save it as .xlsx.',
  notWorkbook: 'This is not an Excel workbook. Text files (.csv) must be opened in Excel and saved as .xlsx first.',
  damaged: 'The workbook is damaged or incomplete and cannot be read. Try Open and Repair in Excel, and save it again.',
  tooLarge: 'The workbook is too large to open here. Leave out the sheets that have nothing to do with the season, and save it again.',
}

export class XlsxProblem extends Error {
  constructor(readonly code: XlsxProblemCode, options?: ErrorOptions) {
    super(sentences[code], options)
    this.name = 'XlsxProblem'
  }
}
