/** The folder of `npm run build -- --address` on a server of somebody else: another address, a path, and its headers alone. */
import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest'
import { buildHosted } from '../../src/start/buildHosted.mjs'
import { workbenchHeaders } from '../../src/start/server.mjs'
import { serviceWorkerText } from '../../src/start/serviceWorkerText.mjs'
import { catalogue } from '../../src/functions/catalogue'
import { browserWindows } from './browserWindows'
import { downloaded } from './downloaded'
import { expectNoViolationsInAnyLook } from './expectNoViolations'
import { officeScript, standInForExcel } from './excelStandIn'
import { hostedServer } from './hostedServer'
import { ready } from './ready'
import { beside, named, numberAt, typeInto } from './seasonPlaces'
import { visitSections } from './visitSections'

const windows = browserWindows()
const path = '/nursery/sticksheet'
const folder = mkdtempSync(join(tmpdir(), 'sticksheet-hosted-'))
let server: Awaited<ReturnType<typeof hostedServer>>
let address: string

beforeAll(async () => {
  server = await hostedServer(folder, path)
  address = server.address
  await buildHosted(address, folder)
})
afterEach(() => {
  server.isReached = true
})
afterAll(async () => {
  await server.close()
  rmSync(folder, { recursive: true })
})

const manifest = () => readFileSync(join(folder, 'manifest.xml'), 'utf8')
const addresses = () => [...manifest().matchAll(/DefaultValue="(https?:[^"]+)"/g)].map(([, one]) => one!)

test('The manifest names that address alone, and has an id of its own that stays the same.', () => {
  expect(addresses().filter((one) => !one.startsWith(`${address}/`))).toEqual([])
  expect(addresses().length).toBeGreaterThan(8)
  expect(manifest()).toMatch(/<Id>[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}<\/Id>/)
  expect(manifest()).not.toContain('f8e8b6a8-d7d0-48ce-ac5d-c41e260cf0d5')
})

test('A page of another origin, as Excel on the web is one, reads every file that the manifest and the functions name.', async () => {
  const page = await windows.blank({})
  await page.route('**/favicon.ico', (route) => route.fulfill({ status: 204 }))
  await page.goto(`${inject('addIn')}/help/index.html`)
  const answers = await page.evaluate(
    async ([base, named]) => {
      const read = (one: string) => fetch(one).then((response) => response.status)
      const { functions } = (await (await fetch(`${base}/functions.json`)).json()) as {
        functions: { helpUrl: string }[]
      }
      return Promise.all([...named, ...functions.map(({ helpUrl }) => helpUrl)].map(read))
    },
    [address, addresses()] as const,
  )
  expect(answers).toEqual(Array(addresses().length + catalogue.length).fill(200))
})

test('Pane and functions open from there, every section too, and nothing but the script of Microsoft is asked of elsewhere.', async () => {
  const page = await windows.blank({})
  windows.expectFault(/^Excel does not tell which cell is selected/)
  const outside = await standInForExcel(page, new URL(address).origin)
  await page.goto(`${address}/taskpane.html`)
  await page.locator(`[data-function="${catalogue[0]!.id}"]`).waitFor()
  expect(await page.evaluate(() => (window as unknown as { associated: string[] }).associated)).toHaveLength(
    catalogue.length,
  )
  await visitSections(page)
  expect(outside).toEqual([officeScript])
})

test('Scripts with the hash of their content in their name are kept for ever, icons for a day, all else is asked for anew.', async () => {
  const cache = async (file: string) => (await fetch(`${address}/${file}`)).headers.get('cache-control')
  const [script] = /chunks\/[\w.]+\.js/.exec(readFileSync(join(folder, 'taskpane.html'), 'utf8'))!
  expect(await cache(script)).toBe('public, max-age=31536000, immutable')
  expect(await cache('icons/icon-32.png')).toBe('public, max-age=86400')
  for (const file of [
    'taskpane.html',
    'functions.js',
    'functions.json',
    'manifest.xml',
    'help/BAGS.html',
    'workbench.html',
    'serviceWorker.js',
  ])
    expect(await cache(file), file).toBe('no-cache')
})

test('The files for Apache, IIS and nginx say the same of who may read, and of what is kept.', () => {
  for (const file of ['.htaccess', 'web.config', 'nginx.conf']) {
    const text = readFileSync(join(folder, file), 'utf8')
    expect(text, file).toMatch(/Access-Control-Allow-Origin"?( value=)? ?"\*"/)
    expect(text, file).toMatch(/chunks[\s\S]*?public, max-age=31536000, immutable/)
    expect(text, file).toMatch(/icons[\s\S]*?public, max-age=86400/)
  }
})

test('The workbench and its workers come with their policy, the second engine alone may compile WebAssembly, and Excel has none.', async () => {
  const policyOf = async (file: string) =>
    (await fetch(`${address}/${file}`)).headers.get('content-security-policy') ?? 'none'
  const policy = workbenchHeaders['Content-Security-Policy']!
  const withWasm = policy.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'")
  expect(await policyOf('workbench.html')).toBe(policy)
  expect(await policyOf('workbench.xlsxWorker.js')).toBe(policy)
  expect(await policyOf('serviceWorker.js')).toBe(policy)
  expect(await policyOf('workbench.witnessWorker.js')).toBe(withWasm)
  expect(await policyOf('taskpane.html')).toBe('none')
  for (const file of ['.htaccess', 'web.config', 'nginx.conf']) {
    const text = readFileSync(join(folder, file), 'utf8')
    expect(text.split(policy).length - 1, file).toBe(3)
    expect(text.split(withWasm).length - 1, file).toBe(1)
  }
})

test('The workbench can be installed: its manifest opens it within the scope of what is kept, with icons of the sizes that browsers ask for.', async () => {
  const read = async (file: string) => Buffer.from(await (await fetch(`${address}/${file}`)).arrayBuffer())
  const [, link] = /<link rel="manifest" href="([^"]+)"/.exec(String(await read('workbench.html')))!
  const app = JSON.parse(String(await read(link!))) as {
    readonly start_url: string
    readonly scope: string
    readonly shortcuts: readonly { readonly url: string }[]
    readonly icons: readonly { readonly src: string; readonly sizes: string }[]
  }
  expect([app.start_url, app.scope]).toEqual(['workbench.html', 'workbench'])
  expect(app.shortcuts.map(({ url }) => url)).toEqual(['workbench.html#empty'])
  const pictures = app.icons.filter(({ src }) => src.endsWith('.png'))
  expect(pictures.map(({ sizes }) => sizes)).toEqual(['192x192', '512x512'])
  for (const { src, sizes } of pictures) {
    const picture = await read(src)
    // A PNG says its width and height in the bytes from the 16th.
    expect(`${picture.readUInt32BE(16)}x${picture.readUInt32BE(20)}`, src).toBe(sizes)
  }
})

test('What npm start serves is kept by no browser, and gives back an address at which a hosted workbench was kept.', async () => {
  const read = async (file: string) => (await fetch(`${inject('workbench')}/${file}`)).text()
  expect(await read('workbench.html')).not.toContain('rel="manifest"')
  expect(await read('serviceWorker.js')).toMatch(/^const kept = .*"files":\[\]/)
})

const wide = { viewport: { width: 1440, height: 900 }, acceptDownloads: true }

/** Until the browser has all files of the workbench. */
const isKept = (page: Page) => page.evaluate(() => navigator.serviceWorker.ready.then(() => true))

test('Opened once, the workbench opens again without a network: it calculates, shows every section, hears its second engine, saves and opens; Excel is left to the network.', async () => {
  windows.expectFault(/^Excel does not tell which cell is selected/)
  const page = await windows.blank(wide)
  await page.goto(`${address}/`)
  await ready(page)
  expect(new URL(page.url()).pathname).toBe(`${path}/workbench.html`)
  await isKept(page)
  const { scope } = await page.evaluate(() => navigator.serviceWorker.ready.then(({ scope }) => ({ scope })))
  expect(scope).toBe(`${address}/workbench`)

  server.asked()
  const excel = await page.context().newPage()
  await standInForExcel(excel, new URL(address).origin)
  await excel.goto(`${address}/taskpane.html`)
  await excel.getByRole('tab').first().waitFor()
  expect(server.asked()).toEqual(expect.arrayContaining(['taskpane.html', 'functions.js']))
  expect(await excel.evaluate(() => navigator.serviceWorker.controller)).toBe(null)
  await excel.close()

  server.isReached = false
  await page.reload()
  await ready(page)
  const liners = named('OrderLiners')
  const total = beside('Season', 'Liners ordered')
  const before = await numberAt(page, total)
  const order = await numberAt(page, liners)
  await typeInto(page, liners, String(order + 1000))
  expect(await numberAt(page, total)).toBe(before + 1000)
  await visitSections(page.locator('aside.functions'))
  await page.getByRole('tab', { name: 'Check' }).click()
  await page.getByText(/^A second engine calculated \d+ formulas once more/).waitFor()
  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save .xlsx' }).click())
  await page.getByLabel('Excel file to open').setInputFiles({ name: 'again.xlsx', mimeType: '', buffer: bytes })
  await page
    .getByRole('status', { name: 'Open workbook' })
    .filter({ hasText: /^again\.xlsx$/ })
    .waitFor()
  expect(await numberAt(page, total)).toBe(before + 1000)
  expect(server.asked()).toEqual([])
})

/** As a build after a change would, but for one file, which the result puts there. */
function publishSecondVersion(): () => void {
  const worker = join(folder, 'workbench.witnessWorker.js')
  const first = readFileSync(worker, 'utf8')
  const second = `${first}\n// second`
  appendFileSync(join(folder, 'workbench.html'), '<meta name="version" content="second">')
  writeFileSync(worker, second)
  writeFileSync(join(folder, 'serviceWorker.js'), serviceWorkerText(folder))
  writeFileSync(worker, first)
  return () => writeFileSync(worker, second)
}

/** What becomes of a version that is found. */
const found = (page: Page) =>
  page.evaluate(async () => {
    const { installing } = await (await navigator.serviceWorker.ready).update()
    await new Promise((resolve) => installing!.addEventListener('statechange', resolve))
    return installing!.state
  })

/** As a browser without room. Returns the way to end that. */
async function refuseToKeep(page: Page): Promise<() => Promise<void>> {
  const put = await page.evaluateHandle(() => {
    const { put } = IDBObjectStore.prototype
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('No room', 'QuotaExceededError')
    }
    return put
  })
  return () =>
    put.evaluate((own) => {
      IDBObjectStore.prototype.put = own
    })
}

test('A newer version is told in the bar once all of it is there, is fetched beside the open page, waits for other tabs, and opens with an offer of what was not saved.', async () => {
  const page = await windows.blank(wide)
  const asked: string[] = []
  page.on('dialog', (dialog) => {
    asked.push(dialog.type())
    void dialog.accept()
  })
  // The browser has the first version since it was opened another time.
  await page.goto(`${address}/help/index.html`)
  await page.evaluate(() => navigator.serviceWorker.register('../serviceWorker.js', { scope: '../workbench' }))
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations())[0]!.active?.state))
    .toBe('activated')
  await page.goto(`${address}/workbench.html`)
  await ready(page)
  const notice = page.getByRole('status', { name: 'Notice' })
  expect(await notice.count()).toBe(0)

  const publishRest = publishSecondVersion()
  expect(await found(page)).toBe('redundant')
  expect(await notice.count()).toBe(0)
  publishRest()
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')))
  await notice.filter({ hasText: 'There is a newer version' }).waitFor()
  await expectNoViolationsInAnyLook(page, { widths: [320], place: '.bar' })
  const hasSecondWorker = () =>
    page.evaluate(async () => (await (await fetch('workbench.witnessWorker.js')).text()).includes('// second'))
  expect(await hasSecondWorker()).toBe(false)

  const other = await page.context().newPage()
  await other.goto(`${address}/workbench.html`, { waitUntil: 'commit' })
  const load = page.getByRole('button', { name: 'Load it' })
  await load.click()
  await notice.filter({ hasText: 'Close the other tabs' }).waitFor()
  await other.close()

  // Not even entered yet.
  await typeInto(page, named('OrderLiners'), '4321')
  await page.keyboard.type('1234')
  const letKeep = await refuseToKeep(page)
  await load.click()
  await notice.filter({ hasText: 'This browser cannot keep what you have not saved' }).waitFor()
  await letKeep()
  await load.click()
  await page.locator('meta[name="version"]').waitFor({ state: 'attached' })
  const offer = page.getByRole('dialog', { name: 'season.xlsx was not saved' })
  await offer.getByRole('button', { name: 'Open it' }).click()
  await page.getByRole('status', { name: 'Open workbook' }).filter({ hasText: 'not saved' }).waitFor()
  expect(await numberAt(page, named('OrderLiners'))).toBe(4321)
  expect(await numberAt(page, named('OrderLiners', 1))).toBe(1234)
  expect(asked).toEqual([])
  expect(await notice.count()).toBe(0)
  expect(await hasSecondWorker()).toBe(true)
  expect(await page.evaluate(() => caches.keys())).toHaveLength(1)
})
