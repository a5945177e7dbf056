/** `npm run build`, and with `-- --address https://…/` a folder that a company puts on its own server. */
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { buildHosted } from './buildHosted.mjs'
import { build, command, Failure, installMissing, root } from './prepare.mjs'

await command(async () => {
  const address = readAddress()
  installMissing()
  if (address === undefined) return build()
  const folder = join(root, 'hosted')
  await buildHosted(address, folder)
  console.log(
    `The add-in and the workbench for ${address}/ are in ${folder}. Put its files there; assets/guide/hosting.md says how, and what comes then.`,
  )
})

/** Without the slash at its end. */
function readAddress() {
  let text
  try {
    text = parseArgs({ options: { address: { type: 'string' } } }).values.address
  } catch {
    throw new Failure(
      'npm run build takes one option: npm run build -- --address https://addins.example.com/sticksheet/',
    )
  }
  if (text === undefined) return undefined
  const url = URL.canParse(text) ? new URL(text) : undefined
  if (url?.protocol !== 'https:' || url.search !== '' || url.hash !== '' || url.username !== '')
    throw new Failure(
      `--address takes an https address of a folder, such as https://addins.example.com/sticksheet/; it is "${text}".`,
    )
  return url.href.replace(/\/+$/, '')
}
