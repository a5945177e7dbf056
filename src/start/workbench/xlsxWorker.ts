/** Writes books as .xlsx files beside the page's thread, so that nobody who types waits for it. */
import { writeXlsx } from '../../workbench/xlsx/writeXlsx'
import type { Book } from '../../workbook/book'

self.addEventListener('message', ({ data }: MessageEvent<Book>) => {
  // What it throws reaches the page as an error of the worker.
  void writeXlsx(data).then(
    (bytes) => self.postMessage(bytes),
    (error: unknown) => self.reportError(error),
  )
})
