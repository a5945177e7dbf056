/** Writes a formula tree as Excel text. */
import type { AstExpression, Identifier } from '@borgar/fx'

/** How tightly each operator binds in Excel; a leading minus binds before ^, and what joins references before that. */
const bindings: Readonly<Record<string, number>> = {
  '=': 1,
  '<': 1,
  '>': 1,
  '<=': 1,
  '>=': 1,
  '<>': 1,
  '&': 2,
  '+': 3,
  '-': 3,
  '*': 4,
  '/': 4,
  '^': 5,
  ' ': 7,
  ':': 8,
}
const minusBinding = 6
const tightest = 9

/** Per cent, and all cells that a formula spills over. */
const behindOperand: ReadonlySet<string> = new Set(['%', '#'])

interface Written {
  readonly text: string
  readonly binding: number
}

export function writeFormula(tree: AstExpression): string {
  return write(tree).text
}

/** An argument may be left empty. */
function write(node: AstExpression | Identifier | null | undefined): Written {
  switch (node?.type) {
    case undefined:
      return { text: '', binding: tightest }
    case 'Literal':
    case 'ErrorLiteral':
      return { text: node.raw, binding: node.raw.startsWith('-') ? minusBinding : tightest }
    case 'ReferenceIdentifier':
      return { text: node.value, binding: tightest }
    case 'Identifier':
      return { text: node.name, binding: tightest }
    case 'UnaryExpression': {
      const operand = write(node.arguments[0])
      if (behindOperand.has(node.operator))
        return { text: `${enclosed(operand, tightest)}${node.operator}`, binding: tightest }
      return { text: `${node.operator}${enclosed(operand, minusBinding)}`, binding: minusBinding }
    }
    case 'BinaryExpression': {
      const [left, right] = node.arguments.map(write) as [Written, Written]
      // Between two areas a comma joins them, and without brackets it would part two arguments.
      if (node.operator === ',') return { text: `(${left.text},${right.text})`, binding: tightest }
      const binding = bindings[node.operator]!
      return { text: `${enclosed(left, binding)}${node.operator}${enclosed(right, binding + 1)}`, binding }
    }
    case 'CallExpression':
      return call(write(node.callee).text, node.arguments)
    case 'LetExpression':
      return call('LET', [...node.declarations.flatMap(({ id, init }) => [id, init]), node.body])
    case 'LambdaExpression':
      return call('LAMBDA', [...node.params, node.body])
    case 'ArrayExpression':
      return {
        text: `{${node.elements.map((row) => row.map((element) => write(element).text).join(',')).join(';')}}`,
        binding: tightest,
      }
  }
}

function call(callee: string, args: readonly (AstExpression | Identifier | null)[]): Written {
  return { text: `${callee}(${args.map((argument) => write(argument).text).join(',')})`, binding: tightest }
}

function enclosed({ text, binding }: Written, least: number): string {
  return binding < least ? `(${text})` : text
}
