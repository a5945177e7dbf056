/**
 * Spells a formula so that the second engine calculates it as Excel does, and on its own: each reference leads to a
 * sheet that holds the values which the first engine gave, names are written out, and calls of our functions are
 * replaced by what they gave. Where the second engine is known to do otherwise than Excel (IronCalc 0.8.4), nothing is
 * spelled, and the reason is given.
 */
import { tokenize, tokenTypes, type Token } from '@borgar/fx'
import { isCellError } from '../../core/definition/problem'
import { addressOf, type Block, blockAddress, blockOf } from '../../formula/address'
import { argumentsFrom } from '../../formula/callArguments'
import { constantText } from '../../formula/constantText'
import { type NamedRanges, type RangeRead, rangesRead } from '../../formula/rangesRead'
import type { NotJudged } from '../../workbook/check/testimony'
import type { OpenSheet, ReadCell } from '../../workbook/openBook'
import { isCriterionTaken, placesOfCriteria } from './criteria'
import type { KnownCall, Rows } from './knownCalls'
import { type Extent, extentOfCall, widest } from './takesMany'

/** Where a formula stands, and what is known there. */
export interface Surroundings {
  readonly sheet: string
  readonly names: NamedRanges
  /** By name in lower case, each with the name of the sheet that holds its values for the second engine. */
  readonly sheets: ReadonlyMap<string, { readonly open: OpenSheet; readonly values: string }>
  /** Those of our functions in the formula, in the order in which they were made. */
  readonly calls: readonly KnownCall[]
  /** Puts rows of values where the second engine can read them, and gives their reference. */
  readonly put: (rows: Rows) => string
  /** Whether the second engine has a function of that name. */
  readonly knows: (name: string) => boolean
}

export interface SpelledFormula {
  readonly formula: string
  /** Nothing but one call of a function of ours: what it gave is not the second engine's to judge. */
  readonly isOwn: boolean
  /** What is calculated for arguments of our functions, with what they were given. */
  readonly parts: readonly { readonly formula: string; readonly given: unknown }[]
}

interface Spelled {
  readonly text: string
  readonly extent: Extent
  /** A reference or a constant alone, or nothing. */
  readonly isPlain?: true
}

/** Ends the spelling of a formula. */
class Unspelled extends Error {
  constructor(readonly why: NotJudged) {
    super(why)
  }
}

export function formulaForSecond(formula: string, around: Surroundings): SpelledFormula | NotJudged {
  const tokens = tokenize(formula, { mergeRefs: true, negativeNumbers: false, withLocation: false })
  try {
    return new Spelling(around).whole(tokens.filter(({ type }) => type !== tokenTypes.FX_PREFIX))
  } catch (unspelled) {
    if (unspelled instanceof Unspelled) return unspelled.why
    throw unspelled
  }
}

const own = /^STICK\./i

/** Their result is another one each time, or each day. */
const changing = new Set(['TODAY', 'NOW', 'RAND', 'RANDBETWEEN', 'RANDARRAY'])

/**
 * TEXT, FIXED and DOLLAR round 1.005 to 1.00; TEXTJOIN takes empty texts for words; SUBTOTAL and AGGREGATE leave out what is hidden and what other cells
 * total; the others read formulas and places, which are other ones for the second engine.
 */
const otherwise = new Set(
  'TEXT FIXED DOLLAR TEXTJOIN SUBTOTAL AGGREGATE INDIRECT CELL INFO SHEET SHEETS FORMULATEXT ISFORMULA HYPERLINK'.split(
    ' ',
  ),
)

/** What these say of a number depends on its digits: the second engine writes sixteen of 1/3, Excel fifteen. */
const countingSigns = new Set(['LEN', 'RIGHT', 'MID', 'FIND', 'SEARCH', 'SUBSTITUTE', 'EXACT'])

const ofTexts = new Set(['TRIM', 'CLEAN', 'UPPER', 'LOWER', 'PROPER', 'LEFT', ...countingSigns])

/**
 * A blank that is looked up is 0 to Excel, and no blank key is found; the second engine finds one for either. So it is
 * given what no cell holds, which is the same but where a key is 0. The argument that asks for what is equal, by name.
 */
const lookingUp: ReadonlyMap<string, number> = new Map([
  ['MATCH', 2],
  ['VLOOKUP', 3],
  ['HLOOKUP', 3],
])

const heldByNoCell = '"held by no cell"'

const addingUp = new Set(['SUMIF', 'AVERAGEIF'])

class Spelling {
  private readonly parts: { readonly formula: string; readonly given: unknown }[] = []
  private called = 0

  constructor(private readonly around: Surroundings) {}

  whole(tokens: readonly Token[]): SpelledFormula {
    const { text } = this.expression(tokens)
    if (this.called !== this.around.calls.length) throw new Unspelled('unseenCall')
    const signs = tokens.filter((token) => isNoSpace(token) && token.value !== '@')
    const isOwn = own.test(signs[0]?.value ?? '') && argumentsFrom(signs, 1).end === signs.length - 1
    return { formula: `=${text}`, isOwn, parts: this.parts }
  }

  private expression(all: readonly Token[]): Spelled {
    const tokens = withoutSpace(all)
    const texts: string[] = []
    const extents: Extent[] = []
    for (let at = 0; at < tokens.length; at++) {
      const [before, token, after] = [tokens[at - 1], tokens[at]!, tokens[at + 1]]
      if (token.type === tokenTypes.FUNCTION) {
        const { args, end } = argumentsFrom(tokens, at + 1)
        const { text, extent } = this.call(token.value.toUpperCase(), args, asksForNothing(tokens.slice(end + 1)))
        texts.push(text)
        extents.push(extent)
        at = end
      } else if (isReference(token)) {
        const { text, extent } = this.reference(token.value, after?.value === '#')
        texts.push(text)
        extents.push(extent)
        if (after?.value === '#') at += 1
      } else if (token.value === '-' && after?.value === '-' && isPrefixAfter(before)) {
        // The second engine leaves both signs out, and with them what makes a number of TRUE or of a text.
        if (before?.value === '^') throw new Unspelled('otherwise')
        texts.push(before?.value === '/' ? '1/' : '1*')
        at += 1
      } else if (token.value === '{') {
        const end = tokens.findIndex(({ value }, place) => place > at && value === '}')
        texts.push(...tokens.slice(at, end + 1).map(({ value }) => value))
        extents.push('array')
        at = end
      } else if (!(token.value === '@' && own.test(after?.value ?? ''))) {
        if (!isKnown(token)) throw new Unspelled('unknown')
        texts.push(token.value)
      }
    }
    const isPlain = tokens.length === 0 || (tokens.length === 1 && tokens[0]!.type !== tokenTypes.FUNCTION)
    const extent = isPlain || extents.length === tokens.length ? (extents[0] ?? 'one') : widest(extents)
    return { text: texts.join(''), extent, ...(isPlain && { isPlain }) }
  }

  private call(name: string, tokens: readonly (readonly Token[])[], asksForNothing: boolean): Spelled {
    const isEmpty = tokens.length === 1 && withoutSpace(tokens[0]!).length === 0
    const args = isEmpty ? [] : tokens.map((argument) => this.expression(argument))
    if (own.test(name)) return this.ownCall(name.replace(own, ''), args)
    if (changing.has(name)) throw new Unspelled('changing')
    if (otherwise.has(name) || this.isUnlike(name, tokens)) throw new Unspelled('otherwise')
    const texts = args.map(({ text }) => text)
    const extent = extentOfCall(
      name,
      args.map((argument) => argument.extent),
    )
    if (
      countingSigns.has(name) &&
      !(name === 'LEN' && asksForNothing) &&
      !tokens.every((argument) => this.hasFewDigits(argument))
    )
      throw new Unspelled('otherwise')
    if (!this.around.knows(name)) throw new Unspelled('unknown')
    if (extent === undefined) throw new Unspelled('otherwise')
    return {
      text: called(name, this.looksUpBlank(name, tokens, texts) ? [heldByNoCell, ...texts.slice(1)] : texts),
      extent,
    }
  }

  private ownCall(id: string, args: readonly Spelled[]): Spelled {
    const made = this.around.calls[this.called++]
    if (made?.id !== id) throw new Unspelled('unseenCall')
    args.forEach(({ text, isPlain }, place) => {
      if (!isPlain) this.parts.push({ formula: `=${text}`, given: made.args[place] })
    })
    const { gave } = made
    return isRows(gave) ? { text: this.around.put(gave), extent: 'cells' } : { text: writtenValue(gave), extent: 'one' }
  }

  private reference(written: string, isSpill: boolean): Spelled {
    const { names, sheet, sheets } = this.around
    const [range] = rangesRead(`=${written}`, sheet, names)
    // A name that the workbook does not have stands for a value within LET or LAMBDA.
    if (range === undefined && !names.has(written.toLowerCase()) && !written.includes('!'))
      return { text: written, extent: 'array' }
    const found = range && sheets.get(range.sheet.toLowerCase())
    const spill = isSpill && found?.open.cells.get(addressOf(range!.top, range!.left))?.spill
    if (found === undefined || spill === undefined) throw new Unspelled('unknown')
    const block = spill ? blockOf(spill)! : range!
    return { text: `${found.values}!${blockAddress(block)}`, extent: isOneCell(block) ? 'one' : 'cells' }
  }

  /** Texts and cells without fractions, and what is put together of them. */
  private hasFewDigits(tokens: readonly Token[]): boolean {
    return tokens.every((token) => {
      if (token.type === tokenTypes.FUNCTION) return ofTexts.has(token.value.toUpperCase())
      if (isReference(token)) return !hasFraction(this.valueOf(token.value))
      return token.type !== tokenTypes.OPERATOR || '&(),'.includes(token.value)
    })
  }

  private looksUpBlank(name: string, tokens: readonly (readonly Token[])[], texts: readonly string[]): boolean {
    const asksForEqual = lookingUp.get(name)
    if (asksForEqual === undefined && name !== 'XLOOKUP') return false
    const [only, ...more] = withoutSpace(tokens[0]!)
    if (only === undefined || more.length > 0 || this.valueOf(only.value) !== null) return false
    if (asksForEqual !== undefined && !/^(0|FALSE)$/i.test(texts[asksForEqual] ?? '')) throw new Unspelled('otherwise')
    return true
  }

  /** Of one cell, or of the first of several; undefined where no cells are named. */
  private valueOf(written: string): ReadCell | undefined {
    const range = this.rangeOf(written)
    const cells = range && this.around.sheets.get(range.sheet.toLowerCase())?.open.cells
    return range && (cells?.get(addressOf(range.top, range.left))?.value ?? null)
  }

  private rangeOf(written: string): RangeRead | undefined {
    const [range, ...more] = rangesRead(`=${written}`, this.around.sheet, this.around.names)
    return more.length === 0 ? range : undefined
  }

  private isUnlike(name: string, args: readonly (readonly Token[])[]): boolean {
    const written = args.map((argument) =>
      withoutSpace(argument)
        .map(({ value }) => value)
        .join(''),
    )
    const valueAt = (place: number) => this.valueOf(written[place]!)
    const [within, , added] = written
    return (
      placesOfCriteria(name, args.length).some((place) => !isCriterionTaken(written[place]!, valueAt(place))) ||
      // Excel takes as many cells as there are criteria.
      (addingUp.has(name) && added !== undefined && !sameSize(this.rangeOf(within!), this.rangeOf(added)))
    )
  }
}

/** The second engine rounds the double as it is, so that of 1.005 or 617.3 a cent is lost; Excel rounds what it shows. */
const nudged: ReadonlyMap<string, string> = new Map([
  ['ROUND', '(1+1E-13)'],
  ['ROUNDDOWN', '(1+1E-13)'],
  ['TRUNC', '(1+1E-13)'],
  ['ROUNDUP', '(1-1E-13)'],
])

function called(name: string, args: readonly string[]): string {
  const [first = '', ...rest] = args
  const nudge = nudged.get(name)
  if (nudge !== undefined) return `${name}(${[`(${first})*${nudge}`, ...rest].join(',')})`
  if (name === 'INT') return `INT(ROUND(${first},9))`
  return `${name}(${args.join(',')})`
}

function isKnown({ type, value }: Token): boolean {
  const known: readonly string[] = [tokenTypes.NUMBER, tokenTypes.STRING, tokenTypes.BOOLEAN, tokenTypes.ERROR]
  // A colon beside a function, a comma between areas, a single cell of many.
  return known.includes(type) || (type === tokenTypes.OPERATOR && !/^[:,@#\s]$/.test(value))
}

function isReference({ type }: Token): boolean {
  return type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_NAMED
}

function isPrefixAfter(before: Token | undefined): boolean {
  return before === undefined || (before.type === tokenTypes.OPERATOR && !/^[)}%#]$/.test(before.value))
}

function isNoSpace({ type }: Token): boolean {
  return type !== tokenTypes.WHITESPACE
}

/** But for a space between two operands, which asks where two ranges meet. */
function withoutSpace(tokens: readonly Token[]): readonly Token[] {
  return tokens.filter((token, at) => isNoSpace(token) || meets(tokens[at - 1], tokens[at + 1]))
}

function meets(before: Token | undefined, after: Token | undefined): boolean {
  if (before === undefined || after === undefined) return false
  const isEnd = isReference(before) || before.value === ')'
  return isEnd && (isReference(after) || after.value === '(' || after.type === tokenTypes.FUNCTION)
}

function sameSize(one: Block | undefined, other: Block | undefined): boolean {
  if (one === undefined || other === undefined) return false
  const [size, otherSize] = [one, other].map(({ top, left, bottom, right }) => [bottom - top, right - left])
  return size![0] === otherSize![0] && size![1] === otherSize![1]
}

function isOneCell({ top, left, bottom, right }: Block): boolean {
  return top === bottom && left === right
}

/** Whether what stands before is only compared with 0. */
function asksForNothing([sign, zero, next]: readonly Token[]): boolean {
  return (sign?.value === '=' || sign?.value === '>') && zero?.value === '0' && !/^[%^*/+-]$/.test(next?.value ?? '')
}

function hasFraction(value: ReadCell | undefined): boolean {
  return typeof value === 'number' && !Number.isInteger(value)
}

/** An error too: it may stand in a branch that is not taken. */
function writtenValue(value: ReadCell): string {
  if (isCellError(value)) return value.code
  return typeof value === 'boolean' ? String(value).toUpperCase() : `(${constantText(value ?? '')})`
}

function isRows(gave: KnownCall['gave']): gave is Rows {
  return Array.isArray(gave)
}
