/** The help page of each cell function, and the list of all: what Excel opens from its function dialogue. */
import type { Definition, DescribedColumns, Example } from '../core/definition/definition'
import { bibliography } from '../sources/bibliography'
import { cautionFor } from '../wording/cautions'
import { subjectNames } from '../wording/en/subjects'
import { argumentText, exampleFormula } from './exampleFormula'
import { takesText } from '../wording/en/parameters'
import { signature } from './signature'
import { plainFormula } from './plainFormula'
import { workingOf, type Working } from './working'

export function helpPage(definition: Definition): string {
  const { id, summary, parameters, result, convention, examples } = definition
  const caution = cautionFor(definition)
  const [example] = examples
  return page(
    `STICK.${id}`,
    `
<p><a href="index.html">All functions</a></p>
<h1>STICK.${id}</h1>
<p>${escaped(summary)}</p>
<p><code>=${escaped(signature(definition))}</code></p>
<h2>What it takes</h2>
${table(
  ['Argument', 'What it is', 'What may be typed'],
  Object.entries(parameters).map(([name, parameter]) => [
    code(name),
    escaped(parameter.text),
    escaped(takesText(parameter)),
  ]),
)}
<h2>What it gives</h2>
<p>${escaped(result.text)} (${escaped(result.unit)}).</p>
${columnsSection(result.columns)}
<p>${escaped(convention)}</p>
${caution === undefined ? '' : `<h2>Take care</h2>\n<p>${escaped(caution)}</p>`}
<h2>Examples</h2>
${table(
  ['Formula', 'Gives', 'What it shows', 'Source'],
  examples.map((one) => exampleRow(definition, one)),
)}
${example === undefined ? '' : workingSection(workingOf(definition, example.given))}
<h2>Without the add-in</h2>
${plainSection(definition, example)}
`,
  )
}

export function helpIndex(catalogue: readonly Definition[]): string {
  return page(
    'Sticksheet functions',
    `
<h1>Sticksheet functions</h1>
<p>Shares are typed as 0.15 or 15%. A number with a unit in its name is in that unit, or text with its own, such as "3.8 cu ft".</p>
${table(
  ['Function', 'Subject', 'What it gives'],
  catalogue.map((definition) => [
    `<a href="${definition.id}.html">STICK.${definition.id}</a>`,
    subjectNames[definition.subject],
    escaped(definition.summary),
  ]),
)}
`,
  )
}

function exampleRow(definition: Definition, example: Example): readonly string[] {
  const { title, detail } = bibliography[example.source]
  return [
    code(exampleFormula(definition, example)),
    givesText(definition, example),
    escaped(example.text),
    escaped(`${title}: ${detail}`),
  ]
}

function givesText({ result }: Definition, { gives }: Example): string {
  if (typeof gives === 'number') return String(gives)
  if (result.columns === undefined) return escaped(gives.map((row) => row.join(' ')).join('; '))
  return table(
    Object.values(result.columns).map(({ heading }) => escaped(heading)),
    gives.map((row) => row.map((cell) => escaped(String(cell)))),
  )
}

function columnsSection(columns: DescribedColumns | undefined): string {
  if (columns === undefined) return ''
  return table(
    ['Column', 'What it is', 'Unit'],
    Object.values(columns).map(({ heading, text, unit }) => [escaped(heading), escaped(text), escaped(unit)]),
  )
}

function workingSection(working: Working): string {
  if (!('steps' in working)) return ''
  const rows = working.steps.map(({ name, formula, value, unit, text }) => [
    code(name),
    code(formula),
    escaped(`${Array.isArray(value) ? value.join('; ') : String(value)} ${unit}`),
    escaped(text),
  ])
  return `<h2>How the first example is worked out</h2>\n${table(['Step', 'Rule', 'Result', 'What it is'], rows)}`
}

function plainSection(definition: Definition, example: Example | undefined): string {
  const plain = plainFormula(definition, example?.given.map(argumentText) ?? [])
  if ('formula' in plain) return `<p>The first example in plain Excel:</p>\n<p>${code(plain.formula)}</p>`
  const check = plain.check === undefined ? '' : `<p>A formula that checks the answer: ${code(plain.check)}</p>`
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

function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
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
