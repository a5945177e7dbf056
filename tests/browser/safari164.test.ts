/**
 * The pages in a browser without what came after Safari 16.4, the oldest that they are meant for: Excel on the Mac shows
 * its pane in the Safari of the system. What came when is told by MDN's browser-compat-data.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { parse } from 'acorn'
import { describe, expect, it } from 'vitest'
import { sections } from '../../src/pane/sections'
import { frame } from '../../src/wording/en/frame'
import { dist } from '../bundle/loadBundle'
import { browserWindows } from './browserWindows'

const oldest = 16.4

interface Feature {
  readonly __compat?: { readonly support: { readonly safari?: Support | readonly Support[] } }
  readonly [part: string]: unknown
}

interface Support {
  readonly version_added: string | false
  readonly flags?: unknown
  readonly alternative_name?: unknown
  readonly version_removed?: unknown
}

const compat = JSON.parse(readFileSync(createRequire(import.meta.url).resolve('@mdn/browser-compat-data'), 'utf8')) as {
  readonly api: Readonly<Record<string, Feature>>
  readonly javascript: { readonly builtins: Readonly<Record<string, Feature>> }
}

function isThere({ __compat }: Feature): boolean {
  if (__compat === undefined) return true
  const support = [__compat.support.safari ?? []].flat()
  return support.some(
    ({ version_added, flags, alternative_name, version_removed }) =>
      version_added !== false &&
      (flags ?? alternative_name ?? version_removed) === undefined &&
      Number(version_added.replace('≤', '')) <= oldest,
  )
}

type Path = readonly [object: string, member?: string]

/** What the oldest browser lacks: globals, and members of those that it has. */
function lacking(): readonly Path[] {
  return [compat.javascript.builtins, compat.api].flatMap((objects) =>
    Object.entries(objects).flatMap(([name, feature]): readonly Path[] => {
      if (!isThere(feature)) return [[name]]
      const members = Object.entries(feature).filter(
        ([member, of]) =>
          member !== '__compat' && member !== name && !member.endsWith('_event') && !isThere(of as Feature),
      )
      return members.map(([member]) => [name, member.replace(/_static$/, '')] as const)
    }),
  )
}

/** Runs in the page before its own scripts. */
function takeAway(names: readonly Path[]): void {
  const page = globalThis as unknown as Record<string, { prototype?: object } | undefined>
  for (const [name, member] of names) {
    if (member === undefined) delete page[name]
    else {
      const holders = [page[name], page[name]?.prototype, name === 'Window' ? page : undefined]
      for (const holder of holders)
        if (holder !== undefined && Object(holder) === holder) Reflect.deleteProperty(holder, member)
    }
  }
}

const windows = browserWindows()

describe('what came after Safari 16.4', () => {
  it('is known: among it is what a browser of today has.', () => {
    const names = lacking().map((path) => path.join('.'))
    // Set operations came in Safari 17, requestIdleCallback in none so far; toSorted came in 16.
    for (const name of ['Set.union', 'Object.groupBy', 'Promise.withResolvers', 'Window.requestIdleCallback'])
      expect(names).toContain(name)
    expect(names).not.toContain('Array.toSorted')
  })

  it('is not needed to open the season, change it, and show each section.', async () => {
    const page = await windows.blank({ viewport: { width: 1440, height: 900 } })
    await page.addInitScript(takeAway, lacking())
    await page.goto(windows.address)
    expect(
      await page.evaluate(() => ['union' in Set.prototype, 'groupBy' in Object, 'withResolvers' in Promise]),
    ).toEqual([false, false, false])
    const cell = page.getByRole('status', { name: 'Selected cell' })
    await cell.filter({ hasText: 'Season, A1' }).waitFor()
    await page.keyboard.press('Alt+PageDown')
    await cell.filter({ hasText: 'Calendar, A1' }).waitFor()
    await page.keyboard.type('=STICK.BAGS(300,60)')
    await page.keyboard.press('Enter')
    await page.keyboard.press('ArrowUp')
    await expect.poll(() => cell.textContent()).toContain('=STICK.BAGS(300,60) gives 5')
    for (const name of sections) {
      const section = frame.sections[name]
      await page.locator('aside.functions').getByRole('tab', { name: section }).click()
      await page
        .locator('aside.functions')
        .getByRole('tabpanel', { name: section })
        .getByRole('heading', { name: section })
        .first()
        .waitFor()
    }
  })

  it('is in none of the built scripts, as far as the language goes.', () => {
    const scripts = ['.', 'chunks'].flatMap((folder) =>
      readdirSync(join(dist, folder))
        .filter((name) => name.endsWith('.js'))
        .map((name) => join(dist, folder, name)),
    )
    expect(scripts.length).toBeGreaterThan(10)
    // Safari 16.4 was the first to know all of ES2022, and of later editions it knows parts.
    for (const script of scripts)
      expect(() => parse(readFileSync(script, 'utf8'), { ecmaVersion: 2022 }), script).not.toThrow()
  })
})

it.each([
  ['en-US', 'Sticksheet did not start. It needs a browser of 2023 or newer'],
  ['de-AT', 'Sticksheet ist nicht gestartet. Es braucht einen Browser von 2023 oder neuer'],
])('A browser that does not know the language of our scripts shows a sentence, in %s.', async (locale, sentence) => {
  const page = await windows.blank({ locale })
  windows.expectFault(/unexpected token/i)
  // A sign that no browser knows yet stands for one that an older browser does not know.
  await page.route('**/workbench.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'const newer = @@' }),
  )
  await page.goto(windows.address)
  await page.getByRole('alert').filter({ hasText: sentence }).waitFor()
})
