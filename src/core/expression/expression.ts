/**
 * Excel expressions over parameter names: "finishedLitres / (1 - mixShrink)".
 *
 * One text gives a function's value, its working and its plain Excel formula, so the three cannot disagree.
 * The language is a strict subset of Excel: + - * / ^ with Excel's precedence (a leading minus binds before
 * ^, so -2^2 is 4), comparisons, and the functions listed below. Two things are finer than in Excel: numbers
 * are decimals of 34 digits, and ROUNDUP ignores binary dust.
 */
import { parse, tokenize, type AstExpression } from '@borgar/fx'
import { Decimal, one, zero } from '../quantity/decimal'
import { roundUpToWhole } from '../quantity/rounding'

/** A number, or the numbers of a row or column of cells. */
export type Value = Decimal | readonly Decimal[]

export type Environment = Record<string, Value>

export interface Expression {
  readonly source: string
  readonly tree: AstExpression
  readonly evaluate: (environment: Environment) => Value
}

type Part = Value | boolean
type Compiled = (environment: Environment) => Part

/** The tree of a formula without its "="; throws on a text that is no formula. */
export function parseFormula(source: string): AstExpression {
  return parse(tokenize(source, { withLocation: false }))
}

/**
 * Compiled when it is first used: to compile the steps of all functions took longer than all else until Excel knew them.
 * A name that is not among `known` is a programmer's mistake.
 */
export function compile(source: string, known: ReadonlySet<string>): Expression {
  let compiled: { readonly tree: AstExpression; readonly run: Compiled } | undefined
  const inUse = () => (compiled ??= compileTree(parseFormula(source), known, source))
  return {
    source,
    get tree() {
      return inUse().tree
    },
    evaluate: (environment) => {
      const result = inUse().run(environment)
      if (typeof result === 'boolean') throw new Error(`"${source}" is a comparison, not a number`)
      return result
    },
  }
}

/** Whether an expression reads a parameter or an earlier step of that name. */
export function readsName(tree: AstExpression, name: string): boolean {
  if (tree.type === 'ReferenceIdentifier') return tree.value === name
  return 'arguments' in tree && tree.arguments.some((one) => one !== null && readsName(one, name))
}

function compileTree(tree: AstExpression, known: ReadonlySet<string>, source: string) {
  return { tree, run: compileNode(tree, known, source) }
}

function compileNode(node: AstExpression, known: ReadonlySet<string>, source: string): Compiled {
  const inner = (child: AstExpression) => compileNode(child, known, source)
  switch (node.type) {
    case 'Literal': {
      if (typeof node.value !== 'number') break
      const constant = new Decimal(node.raw)
      return () => constant
    }
    case 'ReferenceIdentifier': {
      const name = node.value
      if (!known.has(name))
        throw new Error(`"${source}" uses ${name}, which is neither a parameter nor an earlier step`)
      return (environment) => {
        const value = environment[name]
        if (value === undefined) throw new Error(`"${source}": ${name} has no value`)
        return value
      }
    }
    case 'UnaryExpression': {
      if (node.operator !== '-') break
      const operand = inner(node.arguments[0]!)
      return (environment) => eachNumber(operand(environment), (a) => a.neg())
    }
    case 'BinaryExpression': {
      const [left, right] = node.arguments.map(inner) as [Compiled, Compiled]
      const operate = operators[node.operator]
      if (operate !== undefined) return (environment) => eachPair(left(environment), right(environment), operate)
      const compare = comparisons[node.operator]
      if (compare !== undefined)
        return (environment) => compare(asNumber(left(environment)), asNumber(right(environment)))
      break
    }
    case 'CallExpression': {
      const name = node.callee.type === 'Identifier' ? node.callee.name.toUpperCase() : ''
      const args = node.arguments.map((argument) => {
        if (argument === null) throw new Error(`"${source}": an argument of ${name} is empty`)
        return inner(argument as AstExpression)
      })
      if (name === 'IF') return choice(args, source)
      const compute = functions[name]
      if (compute !== undefined) return (environment) => compute(args.map((argument) => argument(environment)))
      break
    }
  }
  throw new Error(`"${source}" is outside the subset of Excel that a step may use`)
}

const operators: Readonly<Record<string, (a: Decimal, b: Decimal) => Decimal>> = {
  '+': (a, b) => a.add(b),
  '-': (a, b) => a.sub(b),
  '*': (a, b) => a.mul(b),
  '/': (a, b) => a.div(b),
  '^': (a, b) => a.pow(b),
}

const comparisons: Readonly<Record<string, (a: Decimal, b: Decimal) => boolean>> = {
  '=': (a, b) => a.eq(b),
  '<': (a, b) => a.lt(b),
  '>': (a, b) => a.gt(b),
  '<=': (a, b) => a.lte(b),
  '>=': (a, b) => a.gte(b),
  '<>': (a, b) => !a.eq(b),
}

const functions: Readonly<Record<string, (args: readonly Part[]) => Decimal>> = {
  SUM: (args) => numbersOf(args).reduce((total, value) => total.add(value), zero),
  PRODUCT: (args) => numbersOf(args).reduce((total, value) => total.mul(value), one),
  SUMPRODUCT: ([first, second]) => {
    const [a, b] = [asLine(first), asLine(second)]
    return a.reduce((total, value, index) => total.add(value.mul(b[index] ?? zero)), zero)
  },
  MIN: (args) => Decimal.min(...numbersOf(args)),
  MAX: (args) => Decimal.max(...numbersOf(args)),
  PI: () => pi,
  // The digits are always 0: a step rounds counts up, never money.
  ROUNDUP: ([value]) => roundUpToWhole(asNumber(value)),
}

const pi = Decimal.acos(-1)

/** Only the branch that is taken is computed, as in Excel: the other may divide by zero. */
function choice(args: readonly Compiled[], source: string): Compiled {
  if (args.length !== 3) throw new Error(`"${source}": IF takes three arguments`)
  const [test, whenTrue, whenFalse] = args as [Compiled, Compiled, Compiled]
  return (environment) => (test(environment) === true ? whenTrue : whenFalse)(environment)
}

function numbersOf(args: readonly Part[]): Decimal[] {
  return args.flatMap((argument) => (isLine(argument) ? argument : [asNumber(argument)]))
}

function isLine(part: Part | undefined): part is readonly Decimal[] {
  return Array.isArray(part)
}

function asNumber(part: Part | undefined): Decimal {
  if (part instanceof Decimal) return part
  throw new Error('a step needs one number here')
}

function asLine(part: Part | undefined): readonly Decimal[] {
  if (isLine(part)) return part
  throw new Error('a step needs a range here')
}

function eachNumber(part: Part, operate: (a: Decimal) => Decimal): Value {
  return isLine(part) ? part.map(operate) : operate(asNumber(part))
}

/** A range and a number are combined cell by cell, as spreadsheets do. */
function eachPair(left: Part, right: Part, operate: (a: Decimal, b: Decimal) => Decimal): Value {
  if (isLine(left)) {
    const other = right
    if (!isLine(other)) return left.map((a) => operate(a, asNumber(other)))
    return left.map((a, index) => operate(a, other[index] ?? zero))
  }
  const a = asNumber(left)
  return isLine(right) ? right.map((b) => operate(a, b)) : operate(a, asNumber(right))
}
