import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { serve, workbenchHeaders, type Served } from '../../src/start/server.mjs'

const parent = mkdtempSync(join(tmpdir(), 'sticksheet-served-'))
const folder = mkdtempSync(join(parent, 'folder-'))
let served: Served

beforeAll(async () => {
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>A page</title>')
  for (const script of ['workbench.witnessWorker.js', 'other.js']) writeFileSync(join(folder, script), '')
  writeFileSync(join(parent, 'secret.txt'), 'not served')
  served = await serve({ folder, port: 0, headers: workbenchHeaders })
})

afterAll(async () => {
  await served.close()
  rmSync(parent, { recursive: true })
})

test('The server listens on the loopback address alone.', () => {
  expect(served.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/)
})

test('A page comes with a policy that lets it reach this server alone and evaluate no text as code.', async () => {
  const response = await fetch(`${served.address}/`)
  expect(await response.text()).toContain('A page')
  const policy = response.headers.get('content-security-policy') ?? ''
  expect(policy).toContain("default-src 'self'")
  expect(policy).toContain("connect-src 'self'")
  expect(policy).not.toMatch(/unsafe-eval|https?:|\*/)
})

test('The script of the second engine alone comes with a policy that lets it compile WebAssembly.', async () => {
  const policyOf = async (path: string) =>
    (await fetch(`${served.address}/${path}`)).headers.get('content-security-policy')
  expect(await policyOf('workbench.witnessWorker.js')).toContain("script-src 'self' 'wasm-unsafe-eval';")
  expect(await policyOf('other.js')).toContain("script-src 'self';")
})

test.each(['/secret.txt', '/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/..%5csecret.txt'])(
  'A file outside the folder is not found by way of %s.',
  async (path) => {
    expect((await fetch(`${served.address}${path}`)).status).toBe(404)
  },
)

test('A port that is taken is refused, so that the caller can try another.', async () => {
  const port = Number(new URL(served.address).port)
  await expect(serve({ folder, port })).rejects.toMatchObject({ code: 'EADDRINUSE' })
})
