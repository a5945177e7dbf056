import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from '../architecture/sourceTree'
import { excelFaults } from './excelFaults'

test('Each fault that npm run mutate:excel puts into src/excel has its place there, and only one.', () => {
  const places = excelFaults.map(({ file, what, from }) => {
    const text = readFileSync(join(root, 'src', 'excel', file), 'utf8')
    return { what, places: text.split(from).length - 1 }
  })
  expect(places.filter((one) => one.places !== 1)).toEqual([])
  expect(places.length).toBeGreaterThanOrEqual(36)
})
