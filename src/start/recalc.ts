/**
 * npm run recalc -- FILE.xlsx
 *
 * The work is done in a thread of its own, so that a workbook too large for the memory ends with a sentence: a process
 * that runs out of it can only crash.
 */
import { totalmem } from 'node:os'
import { getHeapStatistics } from 'node:v8'
import { Worker } from 'node:worker_threads'

const megabyte = 2 ** 20

/** Half of the computer's, or what was given to Node.js: NODE_OPTIONS=--max-old-space-size=8000. */
const isGiven = /--max[-_]old[-_]space[-_]size/.test([process.env.NODE_OPTIONS, ...process.execArgv].join(' '))
const memory = Math.floor((isGiven ? getHeapStatistics().heap_size_limit : totalmem() / 2) / megabyte)

const youngMemory = 192

const started = Date.now()
let said = started
let isLineOpen = false

/** On one line of a terminal, from the second second on. */
function show(progress: string): void {
  const now = Date.now()
  if (!process.stderr.isTTY || now - started < 1000 || now - said < 250) return
  process.stderr.write(`\r${progress}`)
  said = now
  isLineOpen = true
}

/** What else is said begins on a line of its own. */
function endLine(): void {
  if (isLineOpen) process.stderr.write('\n')
  isLineOpen = false
}

type Message =
  { readonly print: string } | { readonly complain: string } | { readonly progress: string } | { readonly end: number }

const thread = new Worker(new URL('./recalcThread.mjs', import.meta.url), {
  workerData: { words: process.argv.slice(2), folder: process.cwd() },
  // Most of what is made while a file is read and calculated does not last: with room for it there is less to collect.
  resourceLimits: { maxOldGenerationSizeMb: memory, maxYoungGenerationSizeMb: youngMemory },
})
// Until the thread says how it ended: a thread that goes without a word has not done its work.
process.exitCode = 2
thread.on('message', (message: Message) => {
  if ('progress' in message) return show(message.progress)
  endLine()
  if ('print' in message) process.stdout.write(message.print)
  else if ('complain' in message) process.stderr.write(message.complain)
  else process.exitCode = message.end
})
thread.on('error', (problem: NodeJS.ErrnoException) => {
  if (problem.code !== 'ERR_WORKER_OUT_OF_MEMORY') throw problem
  endLine()
  process.stderr.write(
    `The workbook needs more memory than the ${memory} MB that may be used here, so nothing is written. Let Excel calculate it, split it, or allow more: NODE_OPTIONS=--max-old-space-size=${2 * memory}\n`,
  )
})
