/** The folder of `npm run build -- --address` on a server of somebody else: another address, a path, and its headers alone. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { buildHosted } from '../../src/start/buildHosted.mjs'
import { catalogue } from '../../src/functions/catalogue'
import { browserWindows } from './browserWindows'
import { officeScript, standInForExcel } from './excelStandIn'
import { visitSections } from './visitSections'

const windows = browserWindows()
const path = '/nursery/sticksheet'
const folder = mkdtempSync(join(tmpdir(), 'sticksheet-hosted-'))
let server: Server
let address: string

/** What stands below each path of the file for Netlify and Cloudflare Pages. */
function rulesOf(text: string): readonly { readonly path: RegExp; readonly headers: readonly [string, string][] }[] {
  return text
    .trim()
    .split(/\n(?=\S)/)
    .map((rule) => {
      const [at, ...lines] = rule.split('\n')
      const pattern = at!.replace(/[.]/g, '\\.').replace('*', '.*')
      return {
        path: new RegExp(`^${pattern}$`),
        headers: lines.map((line) => line.trim().split(/: (.*)/, 2) as [string, string]),
      }
    })
}

const types: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  json: 'application/json',
  png: 'image/png',
  xml: 'text/xml',
}

beforeAll(async () => {
  server = createServer((request, response) => {
    const { pathname } = new URL(request.url!, address)
    try {
      const bytes = readFileSync(join(folder, pathname.slice(path.length)))
      for (const rule of rulesOf(readFileSync(join(folder, '_headers'), 'utf8')))
        if (rule.path.test(pathname)) for (const [name, value] of rule.headers) response.setHeader(name, value)
      response.setHeader('Content-Type', types[pathname.split('.').at(-1)!] ?? 'text/plain')
      response.end(bytes)
    } catch {
      response.writeHead(404).end()
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`
  await buildHosted(address, folder)
})
afterAll(async () => {
  server.closeAllConnections()
  await new Promise((resolve) => server.close(resolve))
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
  const [script] = /chunks\/\w+\.js/.exec(readFileSync(join(folder, 'taskpane.html'), 'utf8'))!
  expect(await cache(script)).toBe('public, max-age=31536000, immutable')
  expect(await cache('icons/icon-32.png')).toBe('public, max-age=86400')
  for (const file of ['taskpane.html', 'functions.js', 'functions.json', 'manifest.xml', 'help/BAGS.html'])
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
