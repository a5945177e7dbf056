/** `npm run build` where its option is not taken; with a good one it is tested by tests/browser/hosted.test.ts. */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from '../architecture/sourceTree'

test.each([
  ['http://addins.example.com/', /^--address takes an https address of a folder, such as .*; it is "http:/],
  ['addins.example.com', /^--address takes an https address/],
  ['https://addins.example.com/?a=1', /^--address takes an https address/],
])('npm run build refuses the address %s in one sentence.', (address, sentence) => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'src/start/build.mjs'), '--address', address], {
    encoding: 'utf8',
  })
  expect(status).toBe(1)
  expect(stderr.trim()).toMatch(sentence)
  expect(stderr.trim().split('\n')).toHaveLength(1)
})
