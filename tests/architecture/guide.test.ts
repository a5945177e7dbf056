/** Holds the guide to what the pane, the workbench and the demo season say, so that nobody looks for a label that is gone. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { root } from './sourceTree'

const folder = join(root, 'assets', 'guide')
const guide = readFileSync(join(folder, 'guide.md'), 'utf8')

/** What the pane and the workbench say, as it stands in their files. */
const said = ['src/pane', 'src/wording/en', 'src/start']
  .flatMap((path) =>
    readdirSync(join(root, path), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => readFileSync(join(root, path, file), 'utf8')),
  )
  .join('\n')

const { sheets } = demoSeason()
const onSheets = new Set(sheets.flatMap(({ name, rows }) => [name, ...rows.flat().map((cell) => cell?.value)]))

test('The guide names only labels that stand in the pane, in the workbench or on a sheet.', () => {
  const labels = [...guide.matchAll(/\*\*([^*]+)\*\*/g)].map(([, label]) => label!)
  expect(labels.length).toBeGreaterThan(30)
  // One label of a sheet is made by a formula.
  const made = /^In \d+% of draws it costs at most$/
  expect(
    labels.filter(
      (label) =>
        !onSheets.has(label) &&
        !made.test(label) &&
        !["'", '"', '>'].some((quote) => said.includes(`${quote}${label}${quote === '>' ? '<' : quote}`)),
    ),
  ).toEqual([])
})

test('Each picture of the guide exists and says what it shows, and none lies about unused.', () => {
  const pictures = [...guide.matchAll(/!\[([^\]]*)\]\(([^)]+)\)/g)].map(([, words, file]) => ({
    words: words!,
    file: file!,
  }))
  expect(pictures.filter(({ words, file }) => words.length < 20 || !existsSync(join(folder, file)))).toEqual([])
  expect(
    readdirSync(folder)
      .filter((file) => file.endsWith('.png'))
      .sort(),
  ).toEqual(pictures.map(({ file }) => file).sort())
})

test('The guide says that its nursery and prices are invented, and leaves tax and safety to those who answer for them.', () => {
  for (const words of [
    'its prices and all figures here are invented',
    'no tax advice',
    'follow the label, your local codes',
  ])
    expect(guide).toContain(words)
})
