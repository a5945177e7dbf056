import { build, command, installMissing } from './prepare.mjs'

await command(async () => {
  installMissing()
  await build()
})
