/** `npm start` as a user runs it, on the files that this test run has built. */
import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'

const script = join(import.meta.dirname, '..', '..', 'src', 'start', 'serve.mjs')
const started: ChildProcess[] = []

afterAll(() => {
  for (const child of started) child.kill()
})

/** Resolves to the address that the command prints. Its output is read on: a closed pipe would end the command. */
function start(...args: string[]): Promise<string> {
  const child = spawn(process.execPath, [script, ...args])
  started.push(child)
  return new Promise((resolve, reject) => {
    let printed = ''
    child.stdout.on('data', (chunk) => {
      printed += String(chunk)
      const address = /http:\S+(?=\s)/.exec(printed)
      if (address !== null) resolve(address[0])
    })
    child.once('close', () => reject(new Error(`npm start ended without an address. It printed: ${printed}`)))
  })
}

async function refusal(...args: string[]): Promise<{ code: unknown; sentence: string }> {
  const child = spawn(process.execPath, [script, ...args])
  started.push(child)
  let sentence = ''
  child.stderr.on('data', (chunk) => {
    sentence += String(chunk)
  })
  const [code] = (await once(child, 'close')) as [unknown]
  return { code, sentence: sentence.trim() }
}

test('npm start prints the address of the workbench, and a second one takes the next free port.', async () => {
  const first = await start()
  const second = await start()
  expect(second).not.toBe(first)
  for (const address of [first, second]) expect(await (await fetch(address)).text()).toContain('Sticksheet workbench')
})

test('A port that was asked for and is taken is refused in one sentence.', async () => {
  const port = new URL(await start('--port', '0')).port
  const { code, sentence } = await refusal('--port', port)
  expect(code).toBe(1)
  expect(sentence).toMatch(new RegExp(`^Port ${port} is in use by another program\\. .*--port \\d+$`))
})

test.each([
  [['--port', 'many'], '--port takes a whole number from 0 to 65535; it is "many".'],
  [['--prot', '3000'], 'npm start takes one option: npm start -- --port 3100'],
])('npm start refuses %s with a sentence and no stack.', async (args, expected) => {
  expect(await refusal(...args)).toEqual({ code: 1, sentence: expected })
})

test('The server ends where the npm that started it is killed, and leaves its port free.', async () => {
  // In the place of npm: it starts the command as npm does, and tells it so.
  const npm = spawn(
    process.execPath,
    ['-e', `require('child_process').spawn(process.execPath, [${JSON.stringify(script)}], { stdio: 'inherit' })`],
    { env: { ...process.env, npm_lifecycle_event: 'start' } },
  )
  started.push(npm)
  const address = await new Promise<string>((resolve) => {
    npm.stdout.on('data', (chunk) => {
      const [found] = /http:\S+(?=\s)/.exec(String(chunk)) ?? []
      if (found !== undefined) resolve(found)
    })
  })
  const answers = () =>
    fetch(address).then(
      ({ ok }) => ok,
      () => false,
    )
  expect(await answers()).toBe(true)
  npm.kill('SIGKILL')
  await expect.poll(answers, { timeout: 30_000 }).toBe(false)
})
