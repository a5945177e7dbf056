/** The help page of each cell function, and the list of all: what Excel opens from its function dialogue. */
import type { Definition, DescribedColumns, Example } from '../core/definition/definition'
import { bibliography } from '../sources/bibliography'
import { cautionFor } from '../wording/cautions'
import type { Help } from '../wording/en/help'
import type { Words } from '../wording/words'
import { definitionIn } from './definitionIn'
import { argumentText, exampleFormula } from './exampleFormula'
import { signature } from './signature'
import { plainFormula } from './plainFormula'
import { workingOf, type Working } from './working'

/** A language, and what the help pages alone say in it. */
export interface HelpIn {
  readonly words: Words
  readonly help: Help
}

export function helpPage(inEnglish: Definition, { words, help }: HelpIn): string {
  const definition = definitionIn(inEnglish, words)
  const { id, summary, parameters, result, convention, examples } = definition
  const caution = cautionFor(definition, words.cautions)
  const [example] = examples
  return page(
    words.language,
    `STICK.${id}`,
    `
<p><a href="index.html">${help.allFunctions}</a></p>
<h1>STICK.${id}</h1>
<p>${escaped(summary)}</p>
<p><code>=${escaped(signature(definition))}</code></p>
<h2>${help.takes.heading}</h2>
${table(
  help.takes.columns,
  Object.entries(parameters).map(([name, parameter]) => [
    code(name),
    escaped(parameter.text),
    escaped(words.parameters.takesText(parameter)),
  ]),
)}
<h2>${help.gives.heading}</h2>
<p>${escaped(result.text)} (${escaped(words.ofUnit(result.unit))}).</p>
${columnsSection(result.columns, { words, help })}
<p>${escaped(convention)}</p>
${caution === undefined ? '' : `<h2>${help.care}</h2>\n<p>${escaped(caution)}</p>`}
<h2>${help.examples.heading}</h2>
${table(
  help.examples.columns,
  examples.map((one) => exampleRow(definition, one, help)),
)}
${example === undefined ? '' : workingSection(workingOf(definition, example.given), { words, help })}
<h2>${help.without}</h2>
${plainSection(definition, example, help)}
`,
  )
}

export function helpIndex(catalogue: readonly Definition[], { words, help }: HelpIn): string {
  return page(
    words.language,
    help.index.title,
    `
<h1>${help.index.title}</h1>
<p>${help.index.text}</p>
${table(
  help.index.columns,
  catalogue.map((definition) => [
    `<a href="${definition.id}.html">STICK.${definition.id}</a>`,
    words.subjectNames[definition.subject],
    escaped(words.ofDefinition(definition.summary)),
  ]),
)}
`,
  )
}

function exampleRow(definition: Definition, example: Example, help: Help): readonly string[] {
  const { title, detail } = bibliography[example.source]
  return [
    code(exampleFormula(definition, example)),
    givesText(definition, example, help),
    escaped(example.text),
    escaped(`${title}: ${detail}`),
  ]
}

function givesText({ result }: Definition, { gives }: Example, help: Help): string {
  const shown = (cell: string | number) => (typeof cell === 'number' ? help.number(cell) : cell)
  if (typeof gives === 'number') return shown(gives)
  if (result.columns === undefined) return escaped(gives.map((row) => row.map(shown).join(' ')).join('; '))
  return table(
    Object.values(result.columns).map(({ heading }) => escaped(heading)),
    gives.map((row) => row.map((cell) => escaped(shown(cell)))),
  )
}

function columnsSection(columns: DescribedColumns | undefined, { words, help }: HelpIn): string {
  if (columns === undefined) return ''
  return table(
    help.gives.columns,
    Object.values(columns).map(({ heading, text, unit }) => [
      escaped(heading),
      escaped(text),
      escaped(words.ofUnit(unit)),
    ]),
  )
}

function workingSection(working: Working, { words, help }: HelpIn): string {
  if (!('steps' in working)) return ''
  const shown = (value: number | string) => (typeof value === 'number' ? help.number(value) : value)
  const rows = working.steps.map(({ name, formula, value, unit, text }) => [
    code(name),
    code(formula),
    escaped(`${typeof value === 'object' ? value.map(shown).join('; ') : shown(value)} ${words.ofUnit(unit)}`),
    escaped(text),
  ])
  return `<h2>${help.working.heading}</h2>\n${table(help.working.columns, rows)}`
}

function plainSection(definition: Definition, example: Example | undefined, help: Help): string {
  const plain = plainFormula(definition, example?.given.map(argumentText) ?? [])
  if ('formula' in plain) return `<p>${help.plain}</p>\n<p>${code(plain.formula)}</p>`
  const check = plain.check === undefined ? '' : `<p>${help.check} ${code(plain.check)}</p>`
  return `<p>${escaped(plain.reason)}</p>\n${check}`
}

function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const head = headings.map((heading) => `<th scope="col">${heading}</th>`).join('')
  const body = rows.map((cells) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`).join('\n')
  return `<div class="wide"><table><thead><tr>${head}</tr></thead>\n<tbody>${body}</tbody></table></div>`
}

function code(text: string): string {
  return `<code>${escaped(text)}</code>`
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}

function page(language: string, title: string, body: string): string {
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
<style>
body { font: 15px/1.5 system-ui, sans-serif; margin: 0 auto; max-width: 60rem; padding: 1rem; overflow-wrap: break-word; }
h1 { font-size: 1.5rem; } h2 { font-size: 1.1rem; margin-top: 1.6rem; }
.wide { overflow-x: auto; } table { border-collapse: collapse; } th, td { text-align: left; vertical-align: top; padding: .3rem .8rem .3rem 0; border-bottom: 1px solid color-mix(in srgb, currentColor 20%, transparent); }
code { font-family: ui-monospace, monospace; font-size: .92em; }
</style>
</head>
<body><main>${body}</main></body>
</html>
`
}
