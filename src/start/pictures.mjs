/** `npm run pictures`: takes the pictures of the guide and of the README anew, while the walks of the guide are tested. */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { buildWhereStale, command, Failure, installMissing, root } from './prepare.mjs'

await command(async () => {
  installMissing()
  await buildWhereStale()
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs')
  const { status } = spawnSync(
    process.execPath,
    [vitest, 'run', '--project', 'browser', 'tests/browser/walks.test.ts'],
    {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, PICTURES: join(root, 'assets') },
    },
  )
  if (status !== 0) throw new Failure('A walk failed, so some pictures are missing or old.')
})
