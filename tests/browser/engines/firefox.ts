/** Firefox, by the protocol WebDriver BiDi, which it speaks by itself. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import puppeteer, { type KeyInput, type Page } from 'puppeteer-core'
import { downloadedInto } from './downloadedInto'
import { firstInstalled, inWindows } from './installed'
import type { Engine, Tab } from './tab'

const usualPlaces: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: ['firefox', 'firefox-esr'],
  darwin: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
  win32: inWindows('Mozilla Firefox', 'firefox.exe'),
}

const installed = firstInstalled(usualPlaces[process.platform] ?? [])

export const firefox: Engine = {
  name: 'Firefox',
  version: installed?.version,
  missing: 'Install Firefox (in Debian the package firefox-esr).',
  async visit(address, act) {
    const folder = mkdtempSync(join(tmpdir(), 'sticksheet-firefox-'))
    const browser = await puppeteer.launch({
      browser: 'firefox',
      executablePath: installed!.program,
      headless: true,
      extraPrefsFirefox: {
        'browser.download.folderList': 2,
        'browser.download.dir': folder,
        'browser.download.alwaysOpenPanel': false,
      },
    })
    try {
      const page = await browser.newPage()
      await page.goto(address)
      await act(tabOf(page, folder))
    } finally {
      await browser.close()
      rmSync(folder, { recursive: true, force: true })
    }
  },
}

function tabOf(page: Page, folder: string): Tab {
  return {
    evaluate: (expression) => page.evaluate(expression) as Promise<never>,
    click: (x, y) => page.mouse.click(x, y),
    type: (text) => page.keyboard.type(text),
    async press(key) {
      const keys = key.split('+') as KeyInput[]
      for (const held of keys.slice(0, -1)) await page.keyboard.down(held)
      await page.keyboard.press(keys.at(-1)!)
      for (const held of keys.slice(0, -1).reverse()) await page.keyboard.up(held)
    },
    resize: (width, height) => page.setViewport({ width, height }),
    download: (cause) => downloadedInto(folder, cause),
  }
}
