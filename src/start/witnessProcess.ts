/** The second engine in a process of its own: where it breaks down, or never ends, nothing else does. */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { takeSecondEngine } from '../workbench/witness/secondEngine'
import { testimonyOf } from '../workbench/witness/witness'
import type { OpenBook } from '../workbook/openBook'

process.once('message', (book: OpenBook) => {
  takeSecondEngine(readFileSync(fileURLToPath(import.meta.resolve('@ironcalc/wasm/wasm_bg.wasm'))))
  process.send!(testimonyOf(book), () => process.disconnect())
})
