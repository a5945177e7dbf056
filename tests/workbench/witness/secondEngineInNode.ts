/** Loads the second engine once for all tests of a process. */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { takeSecondEngine } from '../../../src/workbench/witness/secondEngine'

takeSecondEngine(readFileSync(fileURLToPath(import.meta.resolve('@ironcalc/wasm/wasm_bg.wasm'))))
