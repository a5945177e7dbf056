/** Opens the grid alone in a page of its own, with what a script of this folder puts within reach of the test. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { chromium, type Page } from 'playwright-core'
import { inject } from 'vitest'
import { serve, workbenchHeaders } from '../../src/start/server.mjs'
import { collectFaults, patience } from './browserWindows'

export interface GridPage {
  readonly page: Page
  /** What the page threw or complained of. */
  readonly faults: string[]
  close(): Promise<void>
}

/** With the keyboard in the grid, once the script has set `port`. */
export async function openGridPage(script: string): Promise<GridPage> {
  const folder = mkdtempSync(join(tmpdir(), 'sticksheet-grid-'))
  const entry = join(import.meta.dirname, script)
  const outfile = join(folder, 'page.js')
  await build({ entryPoints: [entry], outfile, bundle: true, format: 'esm', logLevel: 'error' })
  writeFileSync(
    join(folder, 'index.html'),
    `<!doctype html><link rel="icon" href="data:,">
    <link rel="stylesheet" href="page.css">
    <div id="grid" style="height: 600px"></div><script type="module" src="page.js"></script>`,
  )
  const served = await serve({ folder, port: 0, headers: workbenchHeaders })
  const browser = await chromium.connect(inject('chromium'))
  const context = await browser.newContext()
  context.setDefaultTimeout(patience)
  const faults: string[] = []
  collectFaults(context, faults)
  const page = await context.newPage()
  await page.goto(served.address)
  await page.waitForFunction(() => window.port !== undefined)
  await page.evaluate(() => window.focusGrid!())
  return {
    page,
    faults,
    async close() {
      await browser.close()
      await served.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
