import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { root } from './sourceTree'

const paths = ['src', 'tests', 'assets'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map(
    (path) => `${folder}/${path.replaceAll('\\', '/')}`,
  ),
)

test('No file or folder has a name that says nothing: utils, helpers, common, manager, misc.', () => {
  expect(paths.filter((path) => /(^|\/)[^/]*(util|helper|common|manager|misc)s?[^/]*$/i.test(path))).toEqual([])
})

test('Folders of src have names of lower-case letters.', () => {
  const folders = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  )
  expect(folders.map((folder) => folder.name).filter((name) => !/^[a-z]+$/.test(name))).toEqual([])
})

test('Every function is held against a published or derived value in tests/golden.', () => {
  const golden = paths
    .filter((path) => /^tests\/golden\/.*\.test\.ts$/.test(path))
    .map((path) => readFileSync(join(root, path), 'utf8'))
    .join('\n')
  expect(catalogue.map(({ id }) => id).filter((id) => !golden.includes(`'${id}'`))).toEqual([])
})

test('The top level holds the documents, the manifest, the sources and what tools demand, and nothing else.', () => {
  const allowed = new Set([
    'README.md',
    'DEVELOPERS.md',
    'LICENSE',
    'package.json',
    'package-lock.json',
    'manifest.xml',
    'webpack.config.js',
    'eslint.config.js',
    'vitest.config.ts',
    'tsconfig.json',
    'tsconfig.pure.json',
    'src',
    'tests',
    'assets',
    'node_modules',
    'dist',
  ])
  const visible = readdirSync(root).filter((name) => !name.startsWith('.'))
  expect(visible.filter((name) => !allowed.has(name))).toEqual([])
})

test('The lock file names no registry, so that everyone installs from the one they have.', () => {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { resolved?: string }>
  }
  expect(Object.values(lock.packages).filter((entry) => entry.resolved?.startsWith('http'))).toEqual([])
})
