/** The thread in which recalc.ts has a workbook calculated. It posts what is to be printed, and in the end the exit code. */
import './plainFieldsInNode.mjs'
import { parentPort, workerData } from 'node:worker_threads'
import { tsImport } from 'tsx/esm/api'

const { recalc } = await tsImport('./recalcCommand.ts', import.meta.url)
const { words, folder } = workerData
const end = await recalc(words, {
  folder,
  print: (text) => parentPort.postMessage({ print: text }),
  complain: (text) => parentPort.postMessage({ complain: text }),
  progress: (text) => parentPort.postMessage({ progress: text }),
})
parentPort.postMessage({ end })
