import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect } from 'vitest'

/** The file that came into an empty folder by an act. A browser gives it its last name once it is whole. */
export async function downloadedInto(folder: string, act: () => Promise<void>): Promise<Uint8Array> {
  const files = () => readdirSync(folder).filter((name) => name.endsWith('.xlsx'))
  const before = files()
  await act()
  let file: string | undefined
  await expect
    .poll(() => {
      file = files().find((name) => !before.includes(name) && readFileSync(join(folder, name)).length > 0)
      return file
    })
    .toBeDefined()
  return readFileSync(join(folder, file!))
}
