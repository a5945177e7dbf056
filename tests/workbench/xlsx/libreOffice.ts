/** LibreOffice, where this machine has it: another program that opens what we write and saves it in its own way. */
import { execFile } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { firstInstalled, inWindows } from '../../browser/engines/installed'

const usualPlaces: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: ['soffice', 'libreoffice'],
  darwin: ['/Applications/LibreOffice.app/Contents/MacOS/soffice'],
  win32: inWindows('LibreOffice', 'program', 'soffice.exe'),
}

const installed = firstInstalled(usualPlaces[process.platform] ?? [])

export const libreOffice = {
  name: 'LibreOffice',
  version: installed?.version,
  missing: 'Install LibreOffice (in Debian the package libreoffice-calc-nogui).',
}

/** The file as LibreOffice saves it. Nothing of the user's own LibreOffice is read or written. */
export async function savedByLibreOffice(bytes: Uint8Array): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'sticksheet-office-'))
  try {
    await writeFile(join(folder, 'book.xlsx'), bytes)
    const own = `-env:UserInstallation=${pathToFileURL(join(folder, 'own')).href}`
    const act = ['--headless', '--convert-to', 'xlsx', '--outdir', join(folder, 'saved'), join(folder, 'book.xlsx')]
    await promisify(execFile)(installed!.program, [own, ...act])
    return await readFile(join(folder, 'saved', 'book.xlsx'))
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
