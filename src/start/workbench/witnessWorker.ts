/** The second engine beside the page's thread, and thrown away after one workbook: where it breaks down, it does so for good. */
import { fetchSecondEngine } from '../../workbench/witness/secondEngine'
import { testimonyOf } from '../../workbench/witness/witness'
import type { NoTestimony, Testimony } from '../../workbook/check/testimony'
import type { OpenBook } from '../../workbook/openBook'

self.addEventListener('message', ({ data }: MessageEvent<OpenBook>) => {
  void testify(data).then((said) => self.postMessage(said))
})

async function testify(book: OpenBook): Promise<Testimony | NoTestimony> {
  try {
    await fetchSecondEngine()
    return testimonyOf(book)
  } catch {
    return 'crashed'
  }
}
