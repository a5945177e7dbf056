/** What Office asks of a server: issue 3970 of office-js tells of a pane without functions where the header is missing. */
import { readFileSync } from 'node:fs'
import { request } from 'node:http'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { officeHeaders, serve, type Served } from '../../src/start/server.mjs'
import { root } from '../architecture/sourceTree'
import { dist } from '../bundle/loadBundle'

let served: Served
beforeAll(async () => {
  served = await serve({ folder: dist, port: 0, headers: officeHeaders })
})
afterAll(() => served.close())

test('Every address of the manifest and every help page is answered, and may be read from pages of other origins.', async () => {
  const manifest = readFileSync(join(root, 'manifest.xml'), 'utf8')
  const { functions } = JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as {
    functions: { helpUrl: string }[]
  }
  const addresses = [
    ...[...manifest.matchAll(/DefaultValue="(https:[^"]+)"/g)].map(([, address]) => address!),
    ...functions.map(({ helpUrl }) => helpUrl),
  ]
  expect(addresses.length).toBeGreaterThan(10 + 30)
  for (const address of new Set(addresses)) {
    const response = await fetch(served.address + new URL(address).pathname, {
      headers: { Origin: 'https://excel.officeapps.live.com' },
    })
    expect([response.status, response.headers.get('access-control-allow-origin')], address).toEqual([200, '*'])
    await response.arrayBuffer()
  }
})

test('The workbench may be read by its own pages alone.', async () => {
  const workbench = await serve({ folder: dist, port: 0 })
  const response = await fetch(`${workbench.address}/functions.json`, { headers: { Origin: 'https://example.com' } })
  expect(response.headers.has('access-control-allow-origin')).toBe(false)
  await workbench.close()
})

test.each([
  ['127.0.0.1', 200],
  ['localhost', 200],
  ['LocalHost:3000', 200],
  ['example.com', 421],
  ['localhost.example.com', 421],
  ['127.0.0.1.example.com:3000', 421],
])(
  'A request for the name %s is answered with %i: a page elsewhere can lead its own name here.',
  async (host, status) => {
    const answer = await new Promise<number | undefined>((resolve, reject) => {
      const asked = request(`${served.address}/functions.json`, { headers: { Host: host } }, (response) => {
        response.resume()
        resolve(response.statusCode)
      })
      asked.once('error', reject)
      asked.end()
    })
    expect(answer).toBe(status)
  },
)
