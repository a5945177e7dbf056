/** Files that are saved in place, where the browser lets a page write them; Firefox and Safari do not. */
export const excelFile = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

export interface DiskFile {
  readonly handle: FileSystemFileHandle
  /** When it was last written, as far as this page knows, in milliseconds since 1970. */
  readonly writtenAt: number
}

interface Pickers {
  showOpenFilePicker(options: object): Promise<readonly FileSystemFileHandle[]>
  showSaveFilePicker(options: object): Promise<FileSystemFileHandle>
}

/** Not there for a file of the browser's own. */
interface Asking {
  requestPermission?(options: { readonly mode: 'readwrite' }): Promise<PermissionState>
}

const pickers = window as unknown as Pickers
const types = [{ accept: { [excelFile]: ['.xlsx'] } }]

export const canPick = (): boolean => 'showOpenFilePicker' in window && 'showSaveFilePicker' in window

/** Undefined where the user chose none. */
export async function pickToOpen(): Promise<FileSystemFileHandle | undefined> {
  return unlessLeft(pickers.showOpenFilePicker({ id: 'sticksheet', types }).then(([handle]) => handle))
}

/** Undefined where the user chose none. */
export async function pickToSave(suggestedName: string): Promise<FileSystemFileHandle | undefined> {
  return unlessLeft(pickers.showSaveFilePicker({ id: 'sticksheet', types, suggestedName }))
}

async function unlessLeft<Picked>(picked: Promise<Picked>): Promise<Picked | undefined> {
  try {
    return await picked
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined
    throw error
  }
}

export async function diskFile(handle: FileSystemFileHandle): Promise<DiskFile> {
  return { handle, writtenAt: (await handle.getFile()).lastModified }
}

/** Asks the user where the browser wants that. */
export async function mayWrite({ handle }: DiskFile): Promise<boolean> {
  const asking = (handle as Asking).requestPermission?.({ mode: 'readwrite' })
  const state = await asking?.catch((): PermissionState => 'denied')
  return state === undefined || state === 'granted'
}

/** Whether somebody else wrote it, moved it or took it away since this page read or wrote it. */
export async function isChanged({ handle, writtenAt }: DiskFile): Promise<boolean> {
  return (await diskFile(handle).catch(() => undefined))?.writtenAt !== writtenAt
}

/** The old file stays until all of the new one is there. */
export async function writeTo(handle: FileSystemFileHandle, bytes: Uint8Array): Promise<DiskFile> {
  const file = await handle.createWritable()
  try {
    await file.write(new Uint8Array(bytes))
  } catch (error) {
    await file.abort()
    throw error
  }
  await file.close()
  return diskFile(handle)
}
