/** Files of this machine: one is opened in the grid, the open workbook is saved to one. */
import type { Grid } from '../../workbench/grid/grid'
import type { Lost } from '../../workbench/xlsx/lost'
import { beginsEmpty, emptyBook } from './beginning'
import { type DiskFile, excelFile, writeTo } from './diskFiles'

/** The file that the open workbook came from, or would be saved to. */
export interface OpenFile {
  readonly name: string
  /** What it held that a saved one will not. */
  readonly lost: readonly Lost[]
  /** Where it is saved in place. Absent where that cannot be, or would take something of it away. */
  readonly disk?: DiskFile
}

const emptyFile: OpenFile = { name: 'workbook.xlsx', lost: [] }
const demoFile: OpenFile = { name: 'season.xlsx', lost: [] }

/** In milliseconds. */
const longEnoughToSave = 60_000

/** What the workbook that the page begins with would be saved to. */
export function firstFile(): OpenFile {
  return beginsEmpty() ? emptyFile : demoFile
}

export async function openEmpty(grid: Grid): Promise<OpenFile> {
  await grid.open(emptyBook)
  return emptyFile
}

/** Throws where it cannot be read; the open workbook then stays. */
export async function openFile(grid: Grid, file: File, handle?: FileSystemFileHandle): Promise<OpenFile> {
  const lost = await openBytes(grid, new Uint8Array(await file.arrayBuffer()))
  // What is saved holds no macros, and under the ending of a file with macros Excel would not open it.
  const name = file.name.replace(/(\.xl\w*)?$/i, '.xlsx')
  const isWhole = lost.length === 0 && name === file.name
  return { name, lost, ...(handle && isWhole && { disk: { handle, writtenAt: file.lastModified } }) }
}

/** Gives what the grid has no place for. */
export async function openBytes(grid: Grid, bytes: Uint8Array): Promise<readonly Lost[]> {
  const { readXlsx } = await import('../../workbench/xlsx/readXlsx')
  const { book, lost } = await readXlsx(bytes)
  await grid.open(book)
  return lost
}

/** Where the handle leads, else as a download. Gives what is open then. */
export async function saveFile(grid: Grid, file: OpenFile, handle?: FileSystemFileHandle): Promise<OpenFile> {
  const { writeXlsx } = await import('../../workbench/xlsx/writeXlsx')
  const { book, results } = await grid.calculated()
  const bytes = await writeXlsx(book, results)
  const disk = handle && (await writeTo(handle, bytes))
  if (disk === undefined) download(bytes, file.name)
  grid.markSaved(book)
  return disk === undefined ? { ...file } : { name: disk.handle.name, lost: [], disk }
}

export function download(bytes: Uint8Array, name: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: excelFile }))
  link.download = name
  link.click()
  // Some browsers read it a while after the click.
  setTimeout(() => URL.revokeObjectURL(link.href), longEnoughToSave)
}
