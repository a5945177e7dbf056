/** Files of this machine: one is opened in the grid, the open workbook is saved to one. */
import type { Grid } from '../../workbench/grid/grid'
import type { Lost } from '../../workbench/xlsx/lost'
import type { Book } from '../../workbook/book'

export const excelFile = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

/** The file that the open workbook came from, or would be saved to. */
export interface OpenFile {
  readonly name: string
  /** What it held that a saved one will not. */
  readonly lost: readonly Lost[]
}

/** In milliseconds. */
const longEnoughToSave = 60_000

const emptyBook: Book = {
  names: [],
  sheets: [{ name: 'Sheet1', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }],
}

export async function openEmpty(grid: Grid): Promise<OpenFile> {
  await grid.open(emptyBook)
  return { name: 'workbook.xlsx', lost: [] }
}

/** Throws where it cannot be read; the open workbook then stays. */
export async function openFile(grid: Grid, file: File): Promise<OpenFile> {
  const { readXlsx } = await import('../../workbench/xlsx/readXlsx')
  const { book, lost } = await readXlsx(new Uint8Array(await file.arrayBuffer()))
  await grid.open(book)
  // What is saved holds no macros, and under the ending of a file with macros Excel would not open it.
  return { name: file.name.replace(/(\.xl\w*)?$/i, '.xlsx'), lost }
}

export async function saveFile(grid: Grid, name: string): Promise<void> {
  const { writeXlsx } = await import('../../workbench/xlsx/writeXlsx')
  const { book, results } = await grid.calculated()
  download(await writeXlsx(book, results), name)
  grid.markSaved(book)
}

export function download(bytes: Uint8Array, name: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: excelFile }))
  link.download = name
  link.click()
  // Some browsers read it a while after the click.
  setTimeout(() => URL.revokeObjectURL(link.href), longEnoughToSave)
}
