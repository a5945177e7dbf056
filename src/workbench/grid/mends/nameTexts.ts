/**
 * Reads names as what they stand for. The grid's engine puts the text of a name in its place before it reads the
 * formula: with a name Date, =DATE(2024,1,1) became the cell of that name, and RATE, SUM and MAX likewise; where a name
 * stood for A1+A2, twice the name was A1+A2*2; and signs in the text of a name were read as signs.ts tells. A
 * call of a function stays one, as in Excel, and the text gets brackets. Seen with univer 0.25.1.
 */
import { tokenize, tokenTypes } from '@borgar/fx'
import type { Injector } from '@univerjs/core'
import { IFunctionService, LexerTreeBuilder } from '@univerjs/engine-formula'
import { withPlainSigns } from './signs'

type SequenceNode = string | { readonly nodeType: number; readonly token: string }

interface WithNames {
  readonly sequenceString: string
  readonly hasDefinedName: boolean
  readonly definedNames: readonly string[]
}

/** A cell or a block of a sheet whose name needs no quotes, or has none within. */
const cells = /^=?(?:[A-Za-z_][\w.]*|'[^'=]+')!\$[A-Z]{1,3}\$\d+(?::\$[A-Z]{1,3}\$\d+)?$/

/** The private parts of the engine that are repaired here. */
interface Builder {
  getSequenceNode(sequence: readonly unknown[]): readonly SequenceNode[]
  _handleDefinedName(sequence: readonly unknown[], asked: object): WithNames
  /** An error in the place of a text that cannot be read. */
  _handleNestedDefinedName(text: string, asked: object): WithNames | string
}

export function readNameTexts(injector: Injector): void {
  const builder = injector.get(LexerTreeBuilder) as unknown as Builder
  const functions = injector.get(IFunctionService)
  let isReplacing = false

  const nodesOf = builder.getSequenceNode.bind(builder)
  builder.getSequenceNode = (sequence) => {
    const nodes = nodesOf(sequence)
    if (!isReplacing) return nodes
    const isCall = (node: SequenceNode, index: number) =>
      typeof node !== 'string' && nodes[index + 1] === '(' && functions.hasExecutor(node.token.trim().toUpperCase())
    return nodes.map((node, index) => (typeof node !== 'string' && isCall(node, index) ? node.token : node))
  }

  const replace = builder._handleDefinedName.bind(builder)
  builder._handleDefinedName = (sequence, asked) => {
    isReplacing = true
    try {
      return replace(sequence, asked)
    } finally {
      isReplacing = false
    }
  }

  const textOf = builder._handleNestedDefinedName.bind(builder)
  builder._handleNestedDefinedName = (text, asked) => {
    // What nearly all names stand for, and the same whatever other names there are.
    if (cells.test(text)) return { sequenceString: text.replace('=', ''), hasDefinedName: false, definedNames: [] }
    const read = textOf(withPlainSigns(text), asked)
    if (typeof read !== 'object' || !isCalculation(read.sequenceString)) return read
    return { ...read, sequenceString: `(${read.sequenceString})` }
  }
}

/** Where an operator stands outside of all brackets. */
function isCalculation(text: string): boolean {
  let depth = 0
  return tokenize(text, { withLocation: false }).some(({ type, value }) => {
    if (type !== tokenTypes.OPERATOR) return false
    if (value === '(' || value === '{') depth += 1
    else if (value === ')' || value === '}') depth -= 1
    else return depth === 0 && value !== ':' && value !== '!' && value !== '#'
    return false
  })
}
