import { spawnSync } from 'node:child_process'
import { pathToFileURL } from 'node:url'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from '../architecture/sourceTree'

const start = (file: string) => JSON.stringify(pathToFileURL(join(root, 'src', 'start', file)).href)

/** What a command says and how it ends that asks for the certificate so. */
function commandThatAsks(ask: string) {
  const script = `
    import { command } from ${start('prepare.mjs')}
    import { certificateFrom } from ${start('certificate.mjs')}
    await command(async () => console.log(JSON.stringify(await certificateFrom(async () => { ${ask} }))))`
  return spawnSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' })
}

const sentence =
  'There is no trusted certificate for localhost, and Excel loads nothing without one: run npm run excel again and agree to it.'

test('A certificate that the user declines ends npm run excel with one sentence and no stack.', () => {
  // As office-addin-dev-certs has it: its sentence, and then what a program of the computer printed.
  const { status, stderr } = commandThatAsks(
    String.raw`throw new Error('Unable to install the CA certificate. The operation was canceled by the user.\n    at Install-Certificate, line 3\n')`,
  )
  expect(stderr).toBe(`${sentence} (Unable to install the CA certificate. The operation was canceled by the user.)\n`)
  expect(status).toBe(1)
})

test('A refusal without an error of its own ends with the same sentence.', () => {
  const { status, stderr } = commandThatAsks(`throw 'declined'`)
  expect(stderr).toBe(`${sentence} (declined)\n`)
  expect(status).toBe(1)
})

test('A certificate that is trusted is given on.', () => {
  const { status, stdout } = commandThatAsks(`return { key: 'k', cert: 'c' }`)
  expect(JSON.parse(stdout)).toEqual({ key: 'k', cert: 'c' })
  expect(status).toBe(0)
})
