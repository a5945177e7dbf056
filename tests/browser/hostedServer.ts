/** A server of somebody else: it knows of the hosted folder what `_headers` says, the file for Netlify and Cloudflare Pages. */
import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'

interface HostedServer {
  /** With the path, without a slash at its end. */
  readonly address: string
  /** The files asked for since it was last called. */
  asked(): readonly string[]
  /** Whether it answers at all. */
  isReached: boolean
  close(): Promise<void>
}

const types: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  json: 'application/json',
  webmanifest: 'application/manifest+json',
  wasm: 'application/wasm',
  svg: 'image/svg+xml',
  png: 'image/png',
  xml: 'text/xml',
}

/** @param path Below the root of the site, without a slash at its end. */
export async function hostedServer(folder: string, path: string): Promise<HostedServer> {
  let asked: string[] = []
  const server = createServer((request, response) => {
    if (!served.isReached) return request.socket.destroy()
    const { pathname } = new URL(request.url!, served.address)
    const file = pathname.slice(path.length + 1) || 'index.html'
    asked.push(file)
    try {
      const bytes = readFileSync(join(folder, file))
      for (const rule of rulesOf(readFileSync(join(folder, '_headers'), 'utf8')))
        if (rule.path.test(pathname)) for (const [name, value] of rule.headers) response.setHeader(name, value)
      response.setHeader('Content-Type', types[file.split('.').at(-1)!] ?? 'text/plain')
      response.end(bytes)
    } catch {
      response.writeHead(404).end()
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const served: HostedServer = {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    asked() {
      const files = asked
      asked = []
      return files
    },
    isReached: true,
    close() {
      server.closeAllConnections()
      return new Promise((resolve) => server.close(() => resolve()))
    },
  }
  return served
}

/** What stands below each path. */
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
