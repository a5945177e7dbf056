/** Every source is the source of something: a published value, an example or a band. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bibliography } from '../../src/sources/bibliography'
import { root } from './sourceTree'

test('No source stands in the bibliography that nothing names.', () => {
  const texts = ['src/functions', 'src/workbook/library', 'tests/golden'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .map((path) => readFileSync(join(root, folder, path), 'utf8')),
  )
  const unnamed = Object.keys(bibliography).filter((key) => !texts.some((text) => text.includes(`'${key}'`)))
  expect(unnamed).toEqual([])
})
