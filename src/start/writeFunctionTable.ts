/** npm run readme: writes the table of the cell functions into README.md. A test says when it must be run again. */
import { readFile, writeFile } from 'node:fs/promises'
import { withFunctionTable } from '../derived/functionTable'
import { catalogue } from '../functions/catalogue'

const readme = new URL('../../README.md', import.meta.url)
await writeFile(readme, withFunctionTable(await readFile(readme, 'utf8'), catalogue))
