/** Serves the built workbench with a script before its own that keeps what goes wrong, which not every engine tells a test. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { serve, workbenchHeaders, type Served } from '../../../src/start/server.mjs'
import { dist } from '../../bundle/loadBundle'

const listener = `
  window.faults = []
  addEventListener('error', ({ message, error }) => faults.push(String(error && error.stack || message)))
  addEventListener('unhandledrejection', ({ reason }) => faults.push(String(reason && reason.stack || reason)))
  const complain = console.error
  console.error = (...words) => { faults.push(words.map(String).join(' ')); complain(...words) }
`

export async function serveListening(): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), 'sticksheet-listening-'))
  cpSync(dist, folder, { recursive: true })
  writeFileSync(join(folder, 'listener.js'), listener)
  const page = join(folder, 'workbench.html')
  const html = readFileSync(page, 'utf8')
  if (!html.includes('<head>')) throw new Error('workbench.html has no <head> to put the script into')
  writeFileSync(page, html.replace('<head>', '<head><script src="listener.js"></script>'))
  const served = await serve({ folder, port: 0, headers: workbenchHeaders })
  return {
    address: `${served.address}/workbench.html`,
    async close() {
      await served.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
