/**
 * The expressions of the steps in doubles, for functions that compute another one many thousand times: about a
 * hundred times as fast as in decimals. What is computed once, such as money in a cell, stays decimal.
 *
 * Sums, products, quotients and square roots of doubles are the same on every machine (IEEE 754); Math.pow, exp and
 * log are not, so powers are built from the former alone.
 */
import type { AstExpression } from '@borgar/fx'

/** The values of the arguments and steps, each in its slot. */
export type Slots = (number | number[])[]

type Part = number | number[] | boolean
export type InDoubles = (slots: Slots) => number | number[]
type Compiled = (slots: Slots) => Part

/** @param slotOf In which slot the value of each name stands. The tree is one that a step was compiled from. */
export function compileInDoubles(tree: AstExpression, slotOf: ReadonlyMap<string, number>): InDoubles {
  const run = compileNode(tree, slotOf)
  return (slots) => withoutComparison(run(slots))
}

function compileNode(node: AstExpression, slotOf: ReadonlyMap<string, number>): Compiled {
  const inner = (child: unknown) => compileNode(child as AstExpression, slotOf)
  switch (node.type) {
    case 'Literal': {
      const constant = Number(node.raw)
      return () => constant
    }
    case 'ReferenceIdentifier': {
      const slot = slotOf.get(node.value)
      if (slot === undefined) throw new Error(`${node.value} has no slot`)
      return (slots) => slots[slot]!
    }
    case 'UnaryExpression': {
      const operand = inner(node.arguments[0])
      return (slots) => eachNumber(operand(slots), (a) => -a)
    }
    case 'BinaryExpression': {
      const [left, right] = [inner(node.arguments[0]), inner(node.arguments[1])]
      const operate = operators[node.operator]
      if (operate !== undefined) {
        return (slots) => {
          const a = left(slots)
          const b = right(slots)
          return typeof a === 'number' && typeof b === 'number' ? operate(a, b) : eachPair(a, b, operate)
        }
      }
      const compare = comparisons[node.operator]
      if (compare !== undefined) return (slots) => compare(left(slots) as number, right(slots) as number)
      break
    }
    case 'CallExpression': {
      const name = node.callee.type === 'Identifier' ? node.callee.name.toUpperCase() : ''
      const args = node.arguments.map(inner)
      if (name === 'IF') {
        const [test, whenTrue, whenFalse] = args as [Compiled, Compiled, Compiled]
        return (slots) => (test(slots) === true ? whenTrue : whenFalse)(slots)
      }
      const compute = functions[name]
      if (compute !== undefined) return (slots) => compute(args.map((argument) => argument(slots)))
      break
    }
  }
  throw new Error(`a step with ${node.type} cannot be computed in doubles`)
}

function withoutComparison(part: Part): number | number[] {
  if (typeof part === 'boolean') throw new Error('a step is a comparison, not a number')
  return part
}

const operators: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': power,
}

const comparisons: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  '=': (a, b) => a === b,
  '<': (a, b) => a < b,
  '>': (a, b) => a > b,
  '<=': (a, b) => a <= b,
  '>=': (a, b) => a >= b,
  '<>': (a, b) => a !== b,
}

const functions: Readonly<Record<string, (args: readonly Part[]) => number>> = {
  SUM: (args) => numbersOf(args).reduce((total, value) => total + value, 0),
  PRODUCT: (args) => numbersOf(args).reduce((product, value) => product * value, 1),
  SUMPRODUCT: ([first, second]) => {
    const [a, b] = [first as number[], second as number[]]
    return a.reduce((total, value, index) => total + value * (b[index] ?? 0), 0)
  },
  MIN: (args) => Math.min(...numbersOf(args)),
  MAX: (args) => Math.max(...numbersOf(args)),
  PI: () => Math.PI,
  ROUNDUP: ([value]) => roundUpToWhole(value as number),
}

/** As in quantity/rounding.ts, whose comments say why by so much. */
function roundUpToWhole(value: number): number {
  return Math.ceil(value - Math.max(Math.min(Math.abs(value) * 1e-12, 1e-6), 5e-10))
}

function numbersOf(args: readonly Part[]): readonly number[] {
  return args.flat() as number[]
}

function eachNumber(part: Part, operate: (a: number) => number): number | number[] {
  return Array.isArray(part) ? part.map(operate) : operate(part as number)
}

function eachPair(left: Part, right: Part, operate: (a: number, b: number) => number): number | number[] {
  if (!Array.isArray(left)) return eachNumber(right, (b) => operate(left as number, b))
  if (!Array.isArray(right)) return left.map((a) => operate(a, right as number))
  return left.map((a, index) => operate(a, right[index] ?? 0))
}

/** `base` to the power of `exponent`, from sums, products and quotients alone. */
export function power(base: number, exponent: number): number {
  if (exponent < 0) return 1 / power(base, -exponent)
  const whole = Math.floor(exponent)
  const part = exponent - whole
  return part === 0 ? wholePower(base, whole) : wholePower(base, whole) * exponential(part * logarithm(base))
}

function wholePower(base: number, exponent: number): number {
  let result = 1
  let square = base
  for (let left = exponent; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result *= square
    square *= square
  }
  return result
}

/** Of a number m x 2^k with m near 1 it is k ln 2 and the series 2 (z + z^3/3 + z^5/5 + ...) with z = (m - 1) / (m + 1). */
function logarithm(value: number): number {
  if (!(value > 0 && value < Infinity)) return value === 0 ? -Infinity : NaN
  let near = value
  let doublings = 0
  for (; near > Math.SQRT2; doublings++) near /= 2
  for (; near < Math.SQRT1_2; doublings--) near *= 2
  const z = (near - 1) / (near + 1)
  let sum = 0
  for (let odd = 27; odd >= 1; odd -= 2) sum = sum * z * z + 1 / odd
  return 2 * z * sum + doublings * Math.LN2
}

/** Of k ln 2 + r with a small r it is 2^k and the series 1 + r + r^2/2 + r^3/6 + ... */
function exponential(value: number): number {
  if (value === -Infinity) return 0
  const doublings = Math.round(value / Math.LN2)
  const rest = value - doublings * Math.LN2
  let sum = 1
  for (let term = 18; term > 0; term--) sum = 1 + (sum * rest) / term
  return doublings < 0 ? sum / wholePower(2, -doublings) : sum * wholePower(2, doublings)
}
