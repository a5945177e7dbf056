/** npm run recalc -- FILE.xlsx */
import { recalc } from './recalcCommand'

process.exitCode = await recalc(process.argv.slice(2), {
  folder: process.cwd(),
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
})
