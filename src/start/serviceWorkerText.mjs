/** The service worker with the list of what it keeps. */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** What the workbench may ask for; the rest of the folder is Excel's or documents. */
const ofWorkbench =
  /^(workbench\.|notStarted\.js$|demo-results\.json$|manifest\.webmanifest$|icons\/|chunks\/(?!taskpane\.))/

/** @param folder That of the hosted files, already written. */
export function serviceWorkerText(folder) {
  const names = readdirSync(folder, { recursive: true }).map((name) => name.replaceAll('\\', '/'))
  const files = names
    .filter((name) => ofWorkbench.test(name))
    .sort()
    .map((name) => [name, `sha256-${digest(readFileSync(join(folder, name)), 'base64')}`])
  return keeping(files)
}

/** Keeps nothing. Where `npm start` serves in the place of a hosted folder, the one of that gives way to it. */
export const emptyServiceWorkerText = () => keeping([])

function keeping(files) {
  const kept = { version: digest(JSON.stringify(files), 'hex'), files }
  return `const kept = ${JSON.stringify(kept)}\n${readFileSync(join(import.meta.dirname, 'serviceWorker.mjs'), 'utf8')}`
}

function digest(content, encoding) {
  return createHash('sha256').update(content).digest(encoding)
}
