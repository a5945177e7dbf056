/** The process in which recalc.ts has a workbook calculated. It sends what is to be printed, and in the end the exit code. */
import { recalc } from './recalcCommand'

export type RecalcMessage =
  { readonly print: string } | { readonly complain: string } | { readonly progress: string } | { readonly end: number }

const send = (message: RecalcMessage, sent?: () => void) => process.send?.(message, undefined, undefined, sent)

// Nobody would hear how it ends, so nothing is written either.
process.once('disconnect', () => process.exit(2))
const end = await recalc(process.argv.slice(2), {
  folder: process.cwd(),
  print: (print) => send({ print }),
  complain: (complain) => send({ complain }),
  progress: (progress) => send({ progress }),
})
send({ end }, () => process.exit(end))
