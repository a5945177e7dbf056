import type { NoTestimony, Testimony } from '../../workbook/check/testimony'
import type { OpenBook } from '../../workbook/openBook'

/** In milliseconds: some hundred times what a season takes. */
const longest = 60_000

let endFormer = () => {}

/** What the second engine says of a workbook; one at a time, because a later question makes the former one idle. */
export function hearWitness(book: OpenBook): Promise<Testimony | NoTestimony> {
  endFormer()
  // Beside the page: from another folder it would not find the chunks that it shares with it.
  const witness = new Worker(
    /* webpackEntryOptions: { filename: 'workbench.witnessWorker.js' } */ new URL(
      './witnessWorker.ts',
      import.meta.url,
    ),
  )
  return new Promise((resolve) => {
    const end = (said: Testimony | NoTestimony) => {
      clearTimeout(timer)
      witness.terminate()
      resolve(said)
    }
    const timer = setTimeout(() => end('tookTooLong'), longest)
    endFormer = () => end('crashed')
    witness.onmessage = ({ data }: MessageEvent<Testimony | NoTestimony>) => end(data)
    witness.onerror = (event) => {
      event.preventDefault()
      end('crashed')
    }
    witness.postMessage(book)
  })
}
