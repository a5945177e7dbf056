import { JSDOM } from 'jsdom'
import { expect, test } from 'vitest'
import { notStarted } from '../../src/start/notStarted'
import { german } from '../../src/wording/de/words'
import { english } from '../../src/wording/en/words'
import { officeScript } from '../browser/excelStandIn'

interface Page {
  readonly text: () => string
  /** The times in milliseconds after which the page looks again. */
  readonly waits: readonly number[]
  /** As if the times were over. */
  readonly wait: () => void
}

/** The page of the pane as it is while its first script runs. */
function page(language: string, { office, pane = '' }: { readonly office: boolean; readonly pane?: string }): Page {
  const { window } = new JSDOM(`<script src="${officeScript}"></script><main id="pane">${pane}</main>`, {
    runScripts: 'outside-only',
  })
  Object.defineProperty(window.navigator, 'language', { value: language })
  if (office) Object.assign(window, { Office: {} })
  const later: (() => void)[] = []
  const waits: number[] = []
  Object.assign(window, { setTimeout: (call: () => void, time: number) => (later.push(call), waits.push(time)) })
  window.eval(notStarted)
  return {
    text: () => window.document.getElementById('pane')!.textContent ?? '',
    waits,
    wait: () => later.forEach((call) => call()),
  }
}

test('Where Excel’s script does not come within ten seconds, the page says so, in the language of the browser.', () => {
  const shown = page('en-GB', { office: false })
  expect(shown.waits).toEqual([10_000])
  expect(shown.text()).toBe('')
  shown.wait()
  expect(shown.text()).toBe(english.frame.noOffice)
  const inGerman = page('de-AT', { office: false })
  inGerman.wait()
  expect(inGerman.text()).toBe(german.frame.noOffice)
})

test('Where it has come, or the pane is drawn, nothing is said after that time.', () => {
  const there = page('en', { office: true })
  there.wait()
  expect(there.text()).toBe('')
  const drawn = page('en', { office: false, pane: '<section>Functions</section>' })
  drawn.wait()
  expect(drawn.text()).toBe('Functions')
})
