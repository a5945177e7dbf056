/**
 * Makes a step's formula one for Excel. It replaces names, and drops what the replacement made idle: (1 - 0), x * 1,
 * IF(0 < 1, a, b). Excel computes in binary, so a count that is rounded up is first rounded to nine decimals: a
 * need of 0.1 + 0.2 m3 must not become a sixth bag of 60 L for the dust in its seventeenth digit.
 */
import type { AstExpression } from '@borgar/fx'

export type Replacements = ReadonlyMap<string, AstExpression>

/** The trees put in are not searched again, so a user's cell name may equal a parameter's. */
export function substitute(node: AstExpression, replacements: Replacements): AstExpression {
  // An argument, and what a LET names, may be left empty.
  const inner = (child: AstExpression | null) =>
    (child === null ? null : substitute(child, replacements)) as AstExpression
  switch (node.type) {
    case 'ReferenceIdentifier':
      return replacements.get(node.value) ?? node
    case 'UnaryExpression':
      return { ...node, arguments: node.arguments.map(inner) }
    case 'BinaryExpression': {
      const [left, right] = node.arguments.map(inner)
      return withoutIdle(node.operator, left!, right!) ?? { ...node, arguments: [left!, right!] }
    }
    case 'CallExpression': {
      const args = node.arguments.map(inner)
      return (
        chosen(node, args) ?? {
          ...node,
          arguments: isCallOf('ROUNDUP', node) ? [withoutDust(args[0]!), literal(0)] : args,
        }
      )
    }
    case 'LetExpression':
      return {
        ...node,
        declarations: node.declarations.map((declaration) => ({ ...declaration, init: inner(declaration.init) })),
        body: inner(node.body),
      }
    case 'LambdaExpression':
      return { ...node, body: inner(node.body) }
    default:
      return node
  }
}

function isCallOf(name: string, { callee }: AstExpression & { type: 'CallExpression' }): boolean {
  return callee.type === 'Identifier' && callee.name === name
}

const decimalsOfCount = 9

function withoutDust(value: AstExpression): AstExpression {
  return {
    type: 'CallExpression',
    callee: { type: 'Identifier', name: 'ROUND' },
    arguments: [value, literal(decimalsOfCount)],
  }
}

function numberOf(node: AstExpression): number | undefined {
  return node.type === 'Literal' && typeof node.value === 'number' ? node.value : undefined
}

function literal(value: number): AstExpression {
  return { type: 'Literal', value, raw: String(value) }
}

/** The simpler tree where one side is 0 or 1 and changes nothing. */
function withoutIdle(operator: string, left: AstExpression, right: AstExpression): AstExpression | undefined {
  const [a, b] = [numberOf(left), numberOf(right)]
  switch (operator) {
    case '+':
      return a === 0 ? right : b === 0 ? left : undefined
    case '-':
      return b === 0 ? left : a === 1 && b === 1 ? literal(0) : undefined
    case '*':
      return a === 0 || b === 0 ? literal(0) : a === 1 ? right : b === 1 ? left : undefined
    case '/':
      return a === 0 || b === 1 ? left : undefined
    case '^':
      return b === 1 ? left : a === 1 ? literal(1) : undefined
  }
}

/** The branch of an IF whose test is between two numbers that are known by now. */
function chosen(
  node: AstExpression & { type: 'CallExpression' },
  args: readonly AstExpression[],
): AstExpression | undefined {
  if (!isCallOf('IF', node)) return undefined
  const [test, whenTrue, whenFalse] = args
  if (test?.type !== 'BinaryExpression' || test.operator !== '<') return undefined
  const [a, b] = test.arguments.map(numberOf)
  if (a === undefined || b === undefined) return undefined
  return a < b ? whenTrue : whenFalse
}
