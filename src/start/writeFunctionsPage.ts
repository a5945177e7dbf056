/** npm run functions:page: writes the table of the cell functions into their page. A test says when it must be run again. */
import { readFile, writeFile } from 'node:fs/promises'
import { withFunctionTable } from '../derived/functionTable'
import { catalogue } from '../functions/catalogue'

const page = new URL('../../assets/guide/functions.md', import.meta.url)
await writeFile(page, withFunctionTable(await readFile(page, 'utf8'), catalogue))
