/**
 * npm run recalc -- FILE.xlsx
 *
 * The work is done in a process of its own, so that a workbook too large for the memory ends with a sentence: a process
 * that runs out of it can only crash, and so can a thread take its process along.
 */
import { fork } from 'node:child_process'
import { totalmem } from 'node:os'
import { fileURLToPath } from 'node:url'
import { getHeapStatistics } from 'node:v8'
import type { RecalcMessage } from './recalcProcess'

const megabyte = 2 ** 20

/** Half of the computer's, or what was given to Node.js: NODE_OPTIONS=--max-old-space-size=8000. */
const isGiven = /--max[-_]old[-_]space[-_]size/.test([process.env.NODE_OPTIONS, ...process.execArgv].join(' '))
const memory = Math.floor((isGiven ? getHeapStatistics().heap_size_limit : totalmem() / 2) / megabyte)

/** In megabytes; there are three of them. */
const semiSpace = 64

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

const work = fork(fileURLToPath(new URL('./recalcProcess.ts', import.meta.url)), process.argv.slice(2), {
  // Most of what is made while a file is read and calculated does not last: with room for it there is less to collect.
  execArgv: [...process.execArgv, `--max-old-space-size=${memory}`, `--max-semi-space-size=${semiSpace}`],
  stdio: ['ignore', 'inherit', 'pipe', 'ipc'],
})
/** What the process prints of itself, most of all of how it broke down. */
let trace = ''
work.stderr?.setEncoding('utf8').on('data', (text: string) => (trace += text))
// Until the process says how it ended: one that goes without a word has not done its work.
process.exitCode = 2
work.on('message', (message: RecalcMessage) => {
  if ('progress' in message) return show(message.progress)
  endLine()
  if ('print' in message) process.stdout.write(message.print)
  else if ('complain' in message) process.stderr.write(message.complain)
  else process.exitCode = message.end
})
/** Why there was no result, where the process itself could not say it. */
function reasonOf(signal: NodeJS.Signals | null): string {
  if (trace.includes('heap out of memory'))
    return `The workbook needs more memory than the ${memory} MB that may be used here, so nothing is written. Let Excel calculate it, split it, or allow more: NODE_OPTIONS=--max-old-space-size=${2 * memory}\n`
  if (signal !== null)
    return `${trace}The calculation was broken off (${signal}), so nothing is written. Where the computer's memory is short, close other programs, let Excel calculate the workbook, or split it.\n`
  return trace
}
work.on('close', (_code, signal) => {
  endLine()
  process.stderr.write(reasonOf(signal))
})
