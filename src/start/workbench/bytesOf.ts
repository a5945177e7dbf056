import type { Book } from '../../workbook/book'

let worker: Worker | undefined

/** The .xlsx file of a book, without results. One at a time. */
export function bytesOf(book: Book): Promise<Uint8Array> {
  const writer = (worker ??= new Worker(new URL('./xlsxWorker.ts', import.meta.url)))
  return new Promise((resolve, reject) => {
    writer.onmessage = ({ data }: MessageEvent<Uint8Array>) => resolve(data)
    writer.onerror = ({ message }) => {
      // The next one begins anew: this one may not have been fetched.
      worker = undefined
      reject(new Error(message))
    }
    writer.postMessage(book)
  })
}
