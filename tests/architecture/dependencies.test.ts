import { expect, test } from 'vitest'
import { readSourceTree } from './sourceTree'

const tree = readSourceTree()

/** What each folder of src may import besides itself. */
const below: Readonly<Record<string, readonly string[]>> = {
  start: ['pane', 'excel', 'workbench', 'workbook', 'derived', 'formula', 'functions', 'core', 'wording', 'sources'],
  pane: ['workbook', 'derived', 'formula', 'functions', 'core', 'wording', 'sources'],
  excel: ['workbook', 'derived', 'formula', 'functions', 'core', 'wording', 'sources'],
  workbench: ['workbook', 'derived', 'formula', 'functions', 'core', 'wording', 'sources'],
  workbook: ['derived', 'formula', 'functions', 'core', 'wording', 'sources'],
  derived: ['formula', 'functions', 'core', 'wording', 'sources'],
  functions: ['core', 'sources'],
  core: ['sources'],
  wording: ['core'],
  formula: [],
  sources: [],
}

/** Where alone a package may be imported: a folder or the beginning of a path below src. */
const homes: readonly (readonly [packages: RegExp, homes: readonly string[]])[] = [
  [/^(react|react-dom|@fluentui)(\/|$)/, ['pane/', 'start/']],
  [/^d3-/, ['pane/charts/']],
  [/^@univerjs\//, ['workbench/']],
  [/^@cj-tech-master\/excelts(\/|$)/, ['workbench/']],
  [/^@ironcalc\//, ['workbench/witness/']],
  [/^decimal\.js(\/|$)/, ['core/quantity/']],
  [/^idb-keyval$/, ['start/workbench/keptWork.ts']],
  [/^@borgar\/fx(\/|$)/, ['core/expression/', 'formula/', 'derived/', 'workbench/', 'pane/typedArgument.ts']],
  [/^node:/, ['start/', 'workbench/xlsx/']],
]

const shown = (path: string, imported: string) => `${path} imports ${imported}`

test('Every folder of src has its place in the dependency rule.', () => {
  expect([...new Set(tree.map((file) => file.folder))].filter((folder) => below[folder] === undefined)).toEqual([])
  expect(tree.length).toBeGreaterThan(20)
})

test('Imports between the folders of src point down only.', () => {
  const upward = tree.flatMap((file) =>
    file.files
      .filter((imported) => {
        const folder = imported.split('/')[0]!
        return folder !== file.folder && !below[file.folder]?.includes(folder)
      })
      .map((imported) => shown(file.path, imported)),
  )
  expect(upward).toEqual([])
})

test('No file of src imports itself by way of others.', () => {
  expect(findCycle(new Map(tree.map((file) => [file.path, file.files])))).toBeUndefined()
})

test('The search for cycles finds one where there is one.', () => {
  expect(
    findCycle(
      new Map([
        ['a', ['b']],
        ['b', ['c']],
        ['c', ['b']],
      ]),
    ),
  ).toEqual(['b', 'c', 'b'])
})

test('React, the charts, the grid, the reader of .xlsx files, decimal.js and the formula parser are imported in their own folders alone.', () => {
  const strays = tree.flatMap((file) =>
    file.packages
      .filter((imported) =>
        homes.some(
          ([packages, places]) => packages.test(imported) && !places.some((place) => file.path.startsWith(place)),
        ),
      )
      .map((imported) => shown(file.path, imported)),
  )
  expect(strays).toEqual([])
})

test('Office.js is spoken to in src/excel and by the entry points alone.', () => {
  const globals = ['Office', 'Excel', 'OfficeExtension', 'CustomFunctions']
  const strays = tree
    .filter((file) => !['excel', 'start'].includes(file.folder) && globals.some((name) => file.owners.has(name)))
    .map((file) => file.path)
  expect(strays).toEqual([])
})

test('Relative imports lead to a file of src and name no extension of TypeScript.', () => {
  expect(tree.flatMap((file) => file.misspelt.map((imported) => shown(file.path, imported)))).toEqual([])
})

function findCycle(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>()
  const visit = (node: string, path: readonly string[]): readonly string[] | undefined => {
    const start = path.indexOf(node)
    if (start >= 0) return [...path.slice(start), node]
    if (done.has(node)) return undefined
    for (const next of graph.get(node) ?? []) {
      const cycle = visit(next, [...path, node])
      if (cycle !== undefined) return cycle
    }
    done.add(node)
    return undefined
  }
  for (const node of graph.keys()) {
    const cycle = visit(node, [])
    if (cycle !== undefined) return cycle
  }
  return undefined
}
