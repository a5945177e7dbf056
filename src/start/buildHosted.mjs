/** Builds add-in and workbench for an address: their files, the manifest, and the headers they need, for common servers. */
import { Buffer } from 'node:buffer'
import { createHash } from 'node:crypto'
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { headerFiles } from './headerFiles.mjs'
import { compile, root } from './prepare.mjs'
import { serviceWorkerText } from './serviceWorkerText.mjs'

/** A page of its own: the service worker keeps that of the workbench alone. */
const toWorkbench = `<!doctype html>
<html lang="en">
  <meta charset="utf-8" />
  <title>Sticksheet</title>
  <meta http-equiv="refresh" content="0; url=workbench.html" />
</html>
`

const addressOfDeveloper = 'https://localhost:3000'

/** @param address Without a slash at its end. */
export async function buildHosted(address, folder) {
  const { hostedAt } = await import('../../webpack.config.js')
  await compile(hostedAt(address, folder))
  writeFileSync(join(folder, 'manifest.xml'), manifestFor(address))
  writeFileSync(join(folder, 'index.html'), toWorkbench)
  copyFileSync(join(root, 'assets', 'manifest.webmanifest'), join(folder, 'manifest.webmanifest'))
  writeFileSync(join(folder, 'serviceWorker.js'), serviceWorkerText(folder))
  for (const [name, text] of Object.entries(headerFiles(new URL(address).pathname.replace(/\/$/, ''))))
    writeFileSync(join(folder, name), text)
}

/** Elsewhere it is another add-in to Excel, so that one does not take the place of the other on a developer's computer. */
function manifestFor(address) {
  return readFileSync(join(root, 'manifest.xml'), 'utf8')
    .replaceAll(addressOfDeveloper, () => address)
    .replace(/<Id>[^<]*<\/Id>/, `<Id>${idOf(address)}</Id>`)
}

/** The same for the same address: with another one an update would come as a second add-in. By name, RFC 9562, version 5. */
function idOf(address) {
  const namespaceOfAddresses = Buffer.from('6ba7b8119dad11d180b400c04fd430c8', 'hex')
  const bytes = createHash('sha1').update(namespaceOfAddresses).update(address).digest().subarray(0, 16)
  bytes[6] = (bytes[6] & 0x0f) | 0x50
  bytes[8] = (bytes[8] & 0x3f) | 0x80
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-')
}
