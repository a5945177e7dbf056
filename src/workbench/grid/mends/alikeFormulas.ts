/**
 * Reads formulas that differ in their references alone once. The grid's engine takes each formula of a column apart
 * sign by sign, and puts the texts of names into each, which took a third of the time that a season is calculated in.
 * Here the second formula of a kind is read with marks in the places of its references, and what comes of that is
 * copied for each later one, with the references in it. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { IDefinedNamesService, IFormulaDependencyGenerator, Lexer, LexerNode } from '@univerjs/engine-formula'

/**
 * Beside texts and quoted sheets, in capitals, up to column XFD, and not what is called, a sheet or part of a longer
 * word.
 */
const references =
  /"[^"]*"|'[^']*'|(?<![\p{L}\p{N}_.$\\?])\$?(?:[A-Z]{1,2}|[A-W][A-Z]{2}|X[A-E][A-Z]|XF[A-D])\$?[1-9]\d{0,6}(?![\p{L}\p{N}_.\\?(!])/gu

/** References that no formula has: cells in the last column but two, each in a row of its own. */
const marks = /(\$?)XFB(\$?)(10\d{5})/g
const firstMark = 1_000_000
const mostMarks = 40_000

/** Columns of tables and variables are names of their own. */
const notTaken = /\[|\b(?:LET|LAMBDA)\(|XFB/i

/** Excel takes no such name, and the engine would take it before the cell. */
const likeReference = /^[A-Z]{1,3}\d+$/i

const mostKinds = 5000

/** A formula with marks, as it was read; or that one has been met so far, or that this kind is read one by one. */
type Kind = LexerNode | 'met' | 'not shared'

export function readAlikeOnce(injector: Injector): void {
  const lexer = injector.get(Lexer)
  const names = injector.get(IDefinedNamesService)
  const generator = injector.get(IFormulaDependencyGenerator)
  const kinds = new Map<string, Kind>()

  // What names stand for is part of what was read.
  names.update$.subscribe(() => kinds.clear())
  let isShared = false
  const generate = generator.generate.bind(generator)
  generator.generate = (...given) => {
    kinds.clear()
    isShared = !Object.values(names.getAllDefinedNames()).some((ofBook) =>
      Object.values(ofBook).some(({ name }) => likeReference.test(name)),
    )
    return generate(...given)
  }

  const read = lexer.treeBuilder.bind(lexer)
  lexer.treeBuilder = (formula, ...rest) => {
    // In other ways than this the engine reads for the list of functions.
    if (rest.length > 0 || !isShared || notTaken.test(formula)) return read(formula, ...rest)
    const found: string[] = []
    const marked = formula.replace(references, (text) => (/^["']/.test(text) ? text : markFor(text, found)))
    const kind = kinds.get(marked)
    if (kind === 'not shared' || found.length === 0 || found.length > mostMarks) return read(formula)
    if (typeof kind === 'object') return withReferences(kind, found)
    if (kinds.size >= mostKinds) kinds.clear()
    if (kind === undefined) {
      kinds.set(marked, 'met')
      return read(formula)
    }
    const tree = read(marked)
    if (!(tree instanceof LexerNode) || marksOf(tree).length !== found.length || hasVariables(tree)) {
      kinds.set(marked, 'not shared')
      return read(formula)
    }
    kinds.set(marked, tree)
    return withReferences(tree, found)
  }
}

/** Notes the reference, and puts the mark of its place in its stead. */
function markFor(reference: string, found: string[]): string {
  found.push(reference)
  const [, column, row] = /^(\$?)[A-Z]+(\$?)/.exec(reference)!
  return `${column}XFB${row}${firstMark + found.length - 1}`
}

function marksOf(tree: LexerNode): readonly string[] {
  return [tree.getToken(), ...tree.getChildren()].flatMap((one) =>
    typeof one === 'string' ? (one.match(marks) ?? []) : marksOf(one),
  )
}

/** Those of a name that stands for a LAMBDA. */
function hasVariables(tree: LexerNode): boolean {
  return (
    /^(?:LET|LAMBDA)$/i.test(tree.getToken().trim()) ||
    tree.getLambdaId() !== undefined ||
    tree.getChildren().some((child) => typeof child === 'object' && hasVariables(child))
  )
}

function withReferences(tree: LexerNode, found: readonly string[]): LexerNode {
  const filled = (text: string) =>
    text.includes('XFB')
      ? text.replace(marks, (_mark, _column, _row, place: string) => found[Number(place) - firstMark]!)
      : text
  const copy = new LexerNode()
  copy.setToken(filled(tree.getToken()))
  copy.setDefinedNames(tree.getDefinedNames())
  copy.setLambdaParameter(tree.getLambdaParameter())
  copy.setChildren(
    tree.getChildren().map((child) => {
      if (typeof child === 'string') return filled(child)
      const copied = withReferences(child, found)
      copied.setParent(copy)
      return copied
    }),
  )
  return copy
}
