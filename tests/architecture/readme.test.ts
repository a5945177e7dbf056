/** Holds README.md, DEVELOPERS.md and the pages of the guide to what the project does: their links, commands, functions and folders. */
import { spawnSync } from 'node:child_process'
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { withFunctionTable } from '../../src/derived/functionTable'
import { catalogue } from '../../src/functions/catalogue'
import { recalc } from '../../src/start/recalcCommand'
import { root } from './sourceTree'

const documents = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(join(root, 'assets', 'guide'))
    .filter((file) => file.endsWith('.md'))
    .map((file) => `assets/guide/${file}`),
]

function read(file: string): string {
  return readFileSync(join(root, file), 'utf8')
}

const { scripts } = JSON.parse(read('package.json')) as { readonly scripts: Readonly<Record<string, string>> }

/** What a pattern finds in the pages: at least so much that the pattern cannot have missed it all. */
function foundInPages(pattern: RegExp, atLeast: number): readonly (readonly string[])[] {
  const found = documents.flatMap((document) =>
    [...read(document).matchAll(pattern)].map((match) => [document, ...match.slice(1)]),
  )
  expect(found.length).toBeGreaterThanOrEqual(atLeast)
  return found
}

/** "## What was tried instead" is linked to as #what-was-tried-instead. */
const anchorsOf = (file: string): readonly string[] =>
  [...read(file).matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
    heading!
      .toLowerCase()
      .replace(/[^\p{L}\p{N} -]/gu, '')
      .replaceAll(' ', '-'),
  )

describe('The pages', () => {
  test('name only npm commands that package.json has.', () => {
    const named = foundInPages(/npm (?:run (?:--silent )?)?([a-z]+(?::[a-z]+)?)/g, 15)
    expect(named.filter(([, name]) => !(name! in scripts) && name !== 'ci')).toEqual([])
  })

  test('link only to files and headings that exist, and have no picture without a description.', () => {
    const links = foundInPages(/!?\[([^\]]*)\]\((?!https:)([^)#]*)(?:#([^)]+))?\)/g, 30)
    const broken = links.filter(([document, words, target, anchor]) => {
      const file = target === '' ? document! : join(dirname(document!), target!)
      return words === '' || !existsSync(join(root, file)) || (anchor && !anchorsOf(file).includes(anchor))
    })
    expect(broken).toEqual([])
  })

  test('name only files and folders of the project that exist.', () => {
    const named = foundInPages(/`((?:src|tests|assets|\.ci)\/[\w./-]*)`/g, 15)
    expect(named.filter(([, path]) => !existsSync(join(root, path!)))).toEqual([])
  })

  test('name only cell functions that are in the catalogue.', () => {
    const ids = catalogue.map(({ id }) => id)
    const named = foundInPages(/STICK\.([A-Z]+)/g, ids.length)
    expect(named.filter(([, id]) => !ids.includes(id!))).toEqual([])
  })
})

describe('README.md', () => {
  const readme = read('README.md')

  test('begins with one paragraph that states the job: who does it, the six rooting methods and the season.', () => {
    const [title, job = ''] = readme.split('\n\n')
    expect(title).toBe('# Sticksheet')
    for (const word of [
      'accountant',
      'sales',
      'manager',
      'season',
      'water',
      'peat or coir',
      'perlite',
      'vermiculite',
      'sand bed',
      'premix',
      'rockwool',
      'Today',
    ]) {
      expect(job).toContain(word)
    }
  })

  test('is short enough to be read at once, and links to every page of the guide.', () => {
    expect(Buffer.byteLength(readme)).toBeLessThan(7000)
    expect(
      documents.filter((document) => document.startsWith('assets/guide/') && !readme.includes(`](${document})`)),
    ).toEqual([])
  })

  test('shows pictures of the workbench that are 1440 pixels wide and under 400 kB.', () => {
    const pictures = [...readme.matchAll(/\((assets\/[\w-]+\.png)\)/g)].map(([, file]) => join(root, file!))
    expect(pictures.length).toBeGreaterThan(0)
    for (const picture of pictures) {
      // A PNG says its width in the four bytes from the 16th.
      expect(readFileSync(picture).readUInt32BE(16)).toBe(1440)
      expect(statSync(picture).size).toBeLessThan(400_000)
    }
  })
})

describe('assets/guide/pane.md', () => {
  describe('its recalc commands', () => {
    const commands = [...read('assets/guide/pane.md').matchAll(/^npm run (?:--silent )?recalc -- (.+)$/gm)].map(
      ([, words]) => words!,
    )
    let folder: string

    beforeAll(() => {
      folder = mkdtempSync(join(tmpdir(), 'sticksheet-readme-'))
      mkdirSync(join(folder, 'assets'))
      copyFileSync(join(root, 'assets', 'demo-season.xlsx'), join(folder, 'assets', 'demo-season.xlsx'))
    })

    afterAll(() => rmSync(folder, { recursive: true, force: true }))

    test('are there.', () => expect(commands.length).toBeGreaterThan(2))

    /** As npm runs it, which tells a script by INIT_CWD from where it was called. */
    function recalcByItself(words: readonly string[]) {
      const [program, ...script] = scripts['recalc']!.split(' ')
      expect(program).toBe('node')
      const env = { ...process.env, INIT_CWD: folder }
      return spawnSync(process.execPath, [...script, ...words], { cwd: root, env, encoding: 'utf8' })
    }

    /** Without a process of its own, which takes three times as long. */
    async function recalcHere(words: string[]) {
      let [stdout, stderr] = ['', '']
      const print = (text: string) => (stdout += text)
      const complain = (text: string) => (stderr += text)
      return { status: await recalc(words, { folder, print, complain }), stdout, stderr }
    }

    test.each(commands.map((words, place) => [words, place === 0 ? recalcByItself : recalcHere] as const))(
      'end well: %s',
      { timeout: 120_000 },
      async (words, run) => {
        const { status, stdout, stderr } = await run(words.split(' '))
        expect(status, stderr).toBe(0)
        if (words.includes('--json')) expect(JSON.parse(stdout)).toHaveProperty('sheets')
        else expect(stdout).toContain('Liners ordered')
        const out = /--out (\S+)/.exec(words)?.[1]
        if (out !== undefined) expect(existsSync(join(folder, out))).toBe(true)
      },
    )
  })
})

describe('assets/guide/functions.md', () => {
  test('has the table of functions that the catalogue gives now; if not, npm run functions:page writes it anew.', () => {
    const page = read('assets/guide/functions.md')
    expect(page).toBe(withFunctionTable(page, catalogue))
  })
})

describe('DEVELOPERS.md', () => {
  test('has a line for every folder of src.', () => {
    const folders = readdirSync(join(root, 'src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => `| \`src/${name}\` |`)
    const text = read('DEVELOPERS.md')
    expect(folders.filter((line) => !text.includes(line))).toEqual([])
  })
})
