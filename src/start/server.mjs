/** A server of one folder's files, on the loopback address alone. */
import { createServer } from 'node:http'
import { createServer as createSecureServer } from 'node:https'
import sirv from 'sirv'

const loopback = '127.0.0.1'

/**
 * What the workbench may do: run its own scripts and reach nothing but this server.
 * The grid and the pane write style elements while they run, so inline styles are allowed.
 */
export const workbenchPolicy = [
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

/** The one script that may compile WebAssembly: the second engine, in a worker beside the page. */
const witnessScript = '/witnessWorker.js'
const forWebAssembly = (policy) => policy.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'")

/** Resolves to the server's address and the way to stop it. Port 0 takes any free one. */
export async function serve({ folder, port, policy, certificate }) {
  const files = sirv(folder, {
    // The files are read afresh for every request, so a rebuilt page shows without a restart.
    dev: true,
    setHeaders(response, path) {
      const own = path === witnessScript ? policy && forWebAssembly(policy) : policy
      if (own !== undefined) response.setHeader('Content-Security-Policy', own)
      response.setHeader('X-Content-Type-Options', 'nosniff')
      response.setHeader('Referrer-Policy', 'no-referrer')
    },
  })
  const server = certificate === undefined ? createServer(files) : createSecureServer(certificate, files)
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
