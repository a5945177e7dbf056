/** Writes a formula tree as Excel text. */
import type { AstExpression } from '@borgar/fx'

/** How tightly each operator binds in Excel; a leading minus binds before ^. */
const bindings: Readonly<Record<string, number>> = {
  '=': 1, '<': 1, '>': 1, '<=': 1, '>=': 1, '<>': 1, '&': 2, '+': 3, '-': 3, '*': 4, '/': 4, '^': 5,
}
const minusBinding = 6
const tightest = 9

interface Written { readonly text: string; readonly binding: number }

export function writeFormula(tree: AstExpression): string {
  return write(tree).text
}

function write(node: AstExpression): Written {
  switch (node.type) {
    case 'Literal':
      return { text: node.raw, binding: node.raw.startsWith('-') ? minusBinding : tightest }
    case 'ReferenceIdentifier':
      return { text: node.value, binding: tightest }
    case 'UnaryExpression': {
      const [operand] = node.arguments
      if (operand === undefined) break
      if (node.operator === '%') return { text: `${enclosed(write(operand), tightest)}%`, binding: tightest }
      return { text: `${node.operator}${enclosed(write(operand), minusBinding)}`, binding: minusBinding }
    }
    case 'BinaryExpression': {
      const [left, right] = node.arguments
      const binding = bindings[node.operator]
      if (left === undefined || right === undefined || binding === undefined) break
      return { text: `${enclosed(write(left), binding)}${node.operator}${enclosed(write(right), binding + 1)}`, binding }
    }
    case 'CallExpression': {
      if (node.callee.type !== 'Identifier') break
      const args = node.arguments.map((argument) => write(argument).text)
      return { text: `${node.callee.name}(${args.join(',')})`, binding: tightest }
    }
    case 'LetExpression': {
      const parts = node.declarations.flatMap(({ id, init }) => (init === null ? [] : [id.name, write(init).text]))
      if (node.body === null) break
      return { text: `LET(${[...parts, write(node.body).text].join(',')})`, binding: tightest }
    }
    case 'LambdaExpression': {
      if (node.body === null) break
      return { text: `LAMBDA(${[...node.params.map(({ name }) => name), write(node.body).text].join(',')})`, binding: tightest }
    }
    case 'ArrayExpression':
      return { text: `{${node.elements.map((row) => row.map((element) => write(element).text).join(',')).join(';')}}`, binding: tightest }
  }
  throw new Error(`a formula with ${node.type} cannot be written`)
}

function enclosed({ text, binding }: Written, least: number): string {
  return binding < least ? `(${text})` : text
}
