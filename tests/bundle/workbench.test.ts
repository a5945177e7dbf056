import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { dist } from './loadBundle'

const gzipped = (file: string): number => gzipSync(readFileSync(join(dist, file))).length

test('The page of the workbench answers after 200 kB, and shows the sheet after 1.6 MB, gzipped; both were one script of 2 MB.', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8')
  const files = [...page.matchAll(/(?:src|href)="([^"]+\.(?:js|css))"/g)].map(([, file]) => file!)
  expect(files).toContain('chunks/grid.js')
  expect(gzipped('workbench.js')).toBeLessThan(200_000)
  expect(files.reduce((sum, file) => sum + gzipped(file), 0)).toBeLessThan(1_600_000)
})
