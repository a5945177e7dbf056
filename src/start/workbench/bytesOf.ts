import type { Book } from '../../workbook/book'

let worker: Worker | undefined

/** The .xlsx file of a book, without results. One at a time. */
export function bytesOf(book: Book): Promise<Uint8Array> {
  // Beside the page: from another folder it would not find the chunks that it shares with it.
  worker ??= new Worker(
    /* webpackEntryOptions: { filename: 'workbench.xlsxWorker.js' } */ new URL('./xlsxWorker.ts', import.meta.url),
  )
  const writer = worker
  return new Promise((resolve, reject) => {
    writer.onmessage = ({ data }: MessageEvent<Uint8Array>) => resolve(data)
    writer.onerror = ({ message }) => {
      // The next one begins anew: this one may not have been fetched.
      writer.terminate()
      worker = undefined
      reject(new Error(message))
    }
    writer.postMessage(book)
  })
}
