/** A server of one folder's files, on the loopback address alone. */
import { createServer } from 'node:http'
import { createServer as createSecureServer } from 'node:https'
import sirv from 'sirv'

const loopback = '127.0.0.1'

/**
 * What the workbench may do: run its own scripts and reach nothing but this server.
 * The grid and the pane write style elements while they run, so inline styles are allowed.
 */
const workbenchPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "connect-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

export const workbenchHeaders = { 'Content-Security-Policy': workbenchPolicy }

/** The one script that may compile WebAssembly: the second engine, in a worker beside the page. */
export const witnessScript = 'workbench.witnessWorker.js'

export const witnessHeaders = forWebAssembly(workbenchHeaders)

/**
 * What Office needs. It reads functions.json from a page of Microsoft's, so a server that does not let other pages read
 * its files gives Excel on the web a pane and no functions.
 */
export const officeHeaders = { 'Access-Control-Allow-Origin': '*' }

export const always = { 'X-Content-Type-Options': 'nosniff', 'Referrer-Policy': 'no-referrer' }

/**
 * A page elsewhere can give its own name the address of this computer and would then read what is served here; its
 * requests still carry that name.
 */
function isReachedBy(host = '') {
  return [loopback, 'localhost'].includes(host.replace(/:\d+$/, '').toLowerCase())
}

function forWebAssembly(headers) {
  return Object.fromEntries(
    Object.entries(headers).map(([name, value]) => [
      name,
      value.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"),
    ]),
  )
}

/** Resolves to the server's address and the way to stop it. Port 0 takes any free one. */
export async function serve({ folder, port, headers = {}, certificate }) {
  const files = sirv(folder, {
    // The files are read afresh for every request, so a rebuilt page shows without a restart. What is as the browser has
    // it stays there, also as it has compiled it.
    dev: true,
    etag: true,
    setHeaders(response, path) {
      const own = path === `/${witnessScript}` ? forWebAssembly(headers) : headers
      for (const [name, value] of Object.entries({ ...always, ...own })) response.setHeader(name, value)
    },
  })
  const answer = (request, response) => {
    if (isReachedBy(request.headers.host)) return files(request, response)
    response.writeHead(421, { 'Content-Type': 'text/plain' })
    response.end('This server answers to 127.0.0.1 and localhost alone.')
  }
  const server = certificate === undefined ? createServer(answer) : createSecureServer(certificate, answer)
  await new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, loopback, resolve)
  })
  const host = certificate === undefined ? `http://${loopback}` : 'https://localhost'
  return {
    address: `${host}:${server.address().port}`,
    close() {
      server.closeAllConnections()
      return new Promise((resolve) => server.close(resolve))
    },
  }
}
