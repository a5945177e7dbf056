/** The table of the cell functions, and their page with that table put between its two marks. */
import type { Definition } from '../core/definition/definition'
import { subjectNames } from '../wording/en/subjects'
import { signature } from './signature'

const start = '<!-- Function table, written by npm run functions:page: start -->'
const end = '<!-- Function table: end -->'

function functionTable(catalogue: readonly Definition[]): string {
  const rows = catalogue.map((definition) => [
    subjectNames[definition.subject],
    `\`=${signature(definition)}\``,
    definition.summary,
  ])
  return [['Subject', 'Function', 'What it gives'], ['---', '---', '---'], ...rows]
    .map((cells) => `| ${cells.map(withoutBars).join(' | ')} |`)
    .join('\n')
}

export function withFunctionTable(page: string, catalogue: readonly Definition[]): string {
  const [before, table, ...more] = page.split(start)
  const after = table?.split(end)[1]
  if (before === undefined || after === undefined || more.length > 0)
    throw new Error(`The page of the functions needs "${start}" once, and "${end}" after it.`)
  return `${before}${start}\n\n${functionTable(catalogue)}\n\n${end}${after}`
}

/** A bar would end the cell of the table. */
function withoutBars(text: string): string {
  return text.replaceAll('|', '\\|')
}
