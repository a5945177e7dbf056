import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { NoTestimony, Testimony } from '../workbook/check/testimony'
import type { OpenBook } from '../workbook/openBook'

/** In milliseconds: a hundred times what a season takes. */
const longest = 60_000

/** What the second engine says of a calculated workbook, in a process of its own. */
export function askWitness(book: OpenBook, limit = longest): Promise<Testimony | NoTestimony> {
  return new Promise((resolve) => {
    const witness = fork(fileURLToPath(new URL('./witnessProcess.ts', import.meta.url)), [], {
      execArgv: ['--import', import.meta.resolve('tsx')],
      serialization: 'advanced',
      // What it would print of its own end is told in a sentence.
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    })
    const end = (said: Testimony | NoTestimony) => {
      clearTimeout(timer)
      witness.kill('SIGKILL')
      resolve(said)
    }
    const timer = setTimeout(() => end('tookTooLong'), limit)
    witness.once('message', (said: Testimony) => end(said))
    witness.once('error', () => end('crashed'))
    witness.once('exit', () => end('crashed'))
    witness.send(book, (failed) => failed && end('crashed'))
  })
}
