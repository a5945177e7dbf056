/** Runs a command that is written in TypeScript: node src/start/typescript.mjs FILE.ts [arguments] */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { command, installMissing, root } from './prepare.mjs'

await command(() => {
  installMissing()
  const [script, ...rest] = process.argv.slice(2)
  const { status } = spawnSync(
    process.execPath,
    [
      '--import',
      import.meta.resolve('./plainFieldsInNode.mjs'),
      '--import',
      import.meta.resolve('tsx'),
      join(root, script),
      ...rest,
    ],
    // npm moves to the project's folder; a file name on the command line is meant from where it was typed.
    { stdio: 'inherit', cwd: process.env.INIT_CWD ?? process.cwd() },
  )
  process.exitCode = status ?? 1
})
