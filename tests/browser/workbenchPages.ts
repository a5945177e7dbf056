/** The built pages served, and a browser to open them in, for all tests of a file. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import type { Served } from '../../src/start/server.mjs'
import { launch } from './launch'
import { serveDist } from './serveDist'

export interface WorkbenchPages {
  /** The workbench in a window of its own, which has loaded but may still be drawing. */
  open(options: BrowserContextOptions): Promise<Page>
  /** A window without a page, to listen before the workbench is opened at `address`. */
  blank(options: BrowserContextOptions): Promise<Page>
  readonly address: string
}

export function workbenchPages(): WorkbenchPages {
  let served: Served
  let browser: Browser

  beforeAll(async () => {
    served = await serveDist()
    browser = await launch()
  })

  afterAll(async () => {
    await browser?.close()
    await served?.close()
  })

  const blank = async (options: BrowserContextOptions) => (await browser.newContext(options)).newPage()
  return {
    blank,
    async open(options) {
      const page = await blank(options)
      await page.goto(served.address)
      return page
    },
    get address() {
      return served.address
    },
  }
}
