/**
 * A webpack loader for functions.js. Excel loads that script before it can calculate, and no call reads what the pane
 * and the help pages show: summary, convention and plain formula, the texts of results and columns, and of an
 * example all but what was given, which the sentences quote. The pages have all of it from scripts of their own.
 */
import ts from 'typescript'

/** What is left of a property, by the object it stands in. */
const left = {
  definition: { summary: "''", convention: "''", plain: "{ reason: '' }" },
  result: { text: "''", unit: "''" },
  column: { text: "''", unit: "''" },
  example: { text: "''", gives: '0', source: "''" },
}

export default function withoutTexts(source) {
  const file = ts.createSourceFile(this.resourcePath, source, ts.ScriptTarget.ESNext, true)
  const cuts = []
  const visit = (node) => {
    const kind = ts.isObjectLiteralExpression(node) ? kindOf(node) : undefined
    const cutHere =
      kind === undefined
        ? []
        : node.properties.filter(
            (property) => ts.isPropertyAssignment(property) && property.name.getText() in left[kind],
          )
    cuts.push(
      ...cutHere.map((property) => ({
        from: property.initializer.getStart(),
        to: property.initializer.getEnd(),
        by: left[kind][property.name.getText()],
      })),
    )
    ts.forEachChild(node, (child) => {
      if (!cutHere.includes(child)) visit(child)
    })
  }
  visit(file)
  return cuts
    .sort((a, b) => b.from - a.from)
    .reduce((text, { from, to, by }) => text.slice(0, from) + by + text.slice(to), source)
}

function kindOf(object) {
  const has = (name) => object.properties.some((property) => property.name?.getText() === name)
  const call = ts.isCallExpression(object.parent) ? object.parent.expression.getText() : ''
  if (/^define(BySteps|ByMethod|Table)$/.test(call)) return 'definition'
  if (ts.isPropertyAssignment(object.parent) && object.parent.name.getText() === 'result') return 'result'
  if (has('heading')) return 'column'
  return has('given') && has('gives') ? 'example' : undefined
}
