/**
 * The formulas of a file as the grid's engine calculates them, or why it cannot: then the cell keeps the result that
 * the file stores, and so does all that reads it.
 */
import { isFunction, isOperator, isWhitespace, type Token, tokenTypes } from '@borgar/fx'
import { ALL_IMPLEMENTED_FUNCTIONS_SET } from '@univerjs/engine-formula'
import { positionOf } from '../../formula/address'
import { holds, namedRanges, rangesRead, type NamedRanges, type RangeRead } from '../../formula/rangesRead'
import { outsideTexts } from '../../formula/outsideTexts'
import { quotedSheet } from '../../formula/reference'
import { catalogue } from '../../functions/catalogue'
import type { Words } from '../../wording/words'
import type { FileNames, Home } from './fileNames'
import { letAndLambdaParameters, tokensOf } from './formulaSpelling'
import { withOneCells } from './oneCell'

export type Why = keyof Words['files']['kept']

export interface FileFormula {
  readonly formula: string
  readonly why?: Why
}

export interface WholeFile {
  readonly names: FileNames
  readonly sheets: readonly FileSheet[]
  readonly countsFrom1904: boolean
  /** Where numbers are rounded to what their cells show ("precision as displayed"). */
  readonly roundsToShown: boolean
}

export interface FileSheet {
  readonly name: string
  /** From 0. */
  readonly hiddenRows: readonly number[]
  /** The cells with a format of days. */
  readonly dayCells: ReadonlySet<string>
}

export interface FormulaHome extends Home {
  /** Stored as an array, of fixed size or one that spills. */
  readonly isArray: boolean
}

/** What is the same of formulas that differ in the cells they read. */
interface Kind {
  readonly why: Why | undefined
  readonly calls: readonly string[]
  /** Read as from before dynamic arrays, it may take one cell of several. */
  readonly mayTakeOne: boolean
}

export class FileFormulas {
  private readonly named: NamedRanges
  private readonly kinds = new Map<string, Kind>()

  constructor(private readonly file: WholeFile) {
    this.named = namedRanges(file.names.names())
  }

  read(stored: string, home: FormulaHome): FileFormula {
    const formula = this.withSingles(acrossSheets(this.file.names.respelled(stored, home), this.file.sheets))
    const kind = this.kindOf(formula)
    const why = this.file.roundsToShown ? 'shownPrecision' : (kind.why ?? this.whyThere(formula, kind, home))
    if (why !== undefined) return { formula, why }
    if (home.isArray || !kind.mayTakeOne) return { formula }
    const withCells = this.withOneCells(formula)
    return withCells === undefined ? { formula, why: 'oldArray' } : { formula: withCells }
  }

  private withOneCells(formula: string): string | undefined {
    return withOneCells(formula, (name) => this.cellsOf(name), this.namesOneCell)
  }

  /** A file stores @A1:A9 as a call of SINGLE. The engine takes no name after the sign. */
  private withSingles(formula: string): string {
    return outsideTexts(formula, (part) => {
      const signs = part.replace(/\bSINGLE\(((?:'[^']*'|[\w.$:!])+)\)/g, '@$1')
      return signs.replace(/@([\w.]+)(?![\w.$:!(])/g, (whole, name: string) => {
        const cells = this.cellsOf(name)
        return cells === undefined ? (this.named.has(name.toLowerCase()) ? name : whole) : `@${cells}`
      })
    })
  }

  private readonly namesOneCell = (name: string): boolean => isOneCell(this.named.get(name.toLowerCase()) ?? '')

  /** Of a name that stands for nothing but cells. */
  private cellsOf(name: string): string | undefined {
    const reference = this.named.get(name.toLowerCase())
    const [, only, ...more] = reference === undefined ? [] : tokensOf(`=${reference}`)
    return only !== undefined && more.length === 0 && isRange(only.type) ? reference : undefined
  }

  private kindOf(formula: string): Kind {
    const likeness = formula.replace(/(?<![\w.])\$?[A-Z]{1,3}\$?\d{1,6}(?![\w(.])/g, 'A1')
    const known = this.kinds.get(likeness)
    if (known !== undefined) return known
    const texts = this.withNames(formula)
    const tokens = texts.flat()
    const calls = tokens.filter((token) => isFunction(token)).map(({ value }) => value.toUpperCase())
    const mayTakeOne = this.withOneCells(formula) !== formula
    const kind = { why: this.whyOf(texts, tokens, calls), calls, mayTakeOne }
    this.kinds.set(likeness, kind)
    return kind
  }

  private whyOf(
    texts: readonly (readonly Token[])[],
    tokens: readonly Token[],
    calls: readonly string[],
  ): Why | undefined {
    if (tokens.some(isOutside)) return 'otherWorkbook'
    // Of a table only what there is not is still read by its name.
    const isUnknown = ({ type, value }: Token) =>
      type === tokenTypes.REF_STRUCT ||
      (type === tokenTypes.REF_NAMED && !this.isNamed(value)) ||
      (isRange(type) && !isAcrossSheets(value) && !this.isOnSheet(value))
    if (tokens.some(isUnknown)) return 'unknownName'
    if (calls.some((name) => !isKnownFunction(name) && !this.isNamed(name))) return 'unknownFunction'
    if (tokens.some(({ type, value }) => isRange(type) && isAcrossSheets(value))) return 'acrossSheets'
    if (tokens.some((token) => isOperator(token) && token.value === '#')) return 'wholeSpill'
    if (texts.some(joinsRanges)) return 'joinedRanges'
    return undefined
  }

  private whyThere(formula: string, { calls }: Kind, home: Home): Why | undefined {
    const minds = calls.some((name) => name === 'SUBTOTAL' || name === 'AGGREGATE')
    if (minds && this.readsHiddenRows(formula, calls, home)) return 'hiddenRows'
    return this.file.countsFrom1904 && this.readsDays(formula, home, calls) ? 'daysFrom1904' : undefined
  }

  /** The formula, and what each of its names stands for. */
  private withNames(formula: string, depth = 0): readonly (readonly Token[])[] {
    const tokens = withoutParameters(tokensOf(formula))
    const named = tokens.flatMap(({ type, value }) =>
      type === tokenTypes.REF_NAMED ? (this.named.get(value.toLowerCase()) ?? []) : [],
    )
    const within = depth < deepest ? named.flatMap((text) => this.withNames(`=${text}`, depth + 1)) : []
    return [tokens, ...within]
  }

  private isOnSheet(reference: string): boolean {
    const end = reference.lastIndexOf('!')
    const sheet = reference.slice(0, Math.max(0, end)).replace(/^'|'$/g, '').replaceAll("''", "'").toLowerCase()
    return end < 0 || this.file.sheets.some(({ name }) => name.toLowerCase() === sheet)
  }

  private isNamed(name: string): boolean {
    return this.named.has(name.toLowerCase())
  }

  private ranges(formula: string, home: Home): readonly RangeRead[] {
    const texts = this.withNames(formula).map((tokens) => tokens.map(({ value }) => value).join(''))
    return texts.flatMap((text) => rangesRead(text, home.sheet, this.named))
  }

  private readsHiddenRows(formula: string, calls: readonly string[], home: Home): boolean {
    // What these read, they find by calculating.
    if (calls.some((name) => name === 'OFFSET' || name === 'INDIRECT'))
      return this.file.sheets.some(({ hiddenRows }) => hiddenRows.length > 0)
    const ranges = this.ranges(formula, home)
    const named = (sheet: string) => this.file.sheets.find(({ name }) => name.toLowerCase() === sheet.toLowerCase())
    return ranges.some((range) => named(range.sheet)?.hiddenRows.some((row) => row >= range.top && row <= range.bottom))
  }

  private readsDays(formula: string, home: Home, called: readonly string[]): boolean {
    const own = this.file.sheets.find(({ name }) => name === home.sheet)
    if (own?.dayCells.has(home.address) || called.some((name) => ofDays.has(name) || name.startsWith('STICK.')))
      return true
    return this.ranges(formula, home).some((range) =>
      this.file.sheets.some(({ name, dayCells }) =>
        [...dayCells].some((address) => {
          const { row, column } = positionOf(address)
          return holds(range, name, row, column)
        }),
      ),
    )
  }
}

/** So many names may lead to each other. */
const deepest = 20

/** Functions that take or give a day by its number. */
const ofDays = new Set(
  `DATE DATEVALUE TODAY NOW YEAR MONTH DAY EDATE EOMONTH WEEKDAY WEEKNUM ISOWEEKNUM WORKDAY WORKDAY.INTL NETWORKDAYS
  NETWORKDAYS.INTL DAYS DAYS360 YEARFRAC DATEDIF TEXT XNPV XIRR CELL`
    .trim()
    .split(/\s+/),
)

const ours: ReadonlySet<string> = new Set(catalogue.map(({ id }) => `STICK.${id}`))

function isKnownFunction(name: string): boolean {
  return ours.has(name) || (ALL_IMPLEMENTED_FUNCTIONS_SET as ReadonlySet<string>).has(name)
}

/** The ranges of both sides, SUM((A1,B1)), or what is common to them, A1:A9 A3:C3. */
function joinsRanges(tokens: readonly Token[]): boolean {
  const open: boolean[] = []
  return tokens.some((token, index) => {
    const [before, after] = [tokens[index - 1], tokens[index + 1]]
    if (isWhitespace(token))
      return before !== undefined && after !== undefined && endsRange(before) && beginsRange(after)
    if (!isOperator(token)) return false
    if (token.value === '(' || token.value === '{')
      open.push(token.value === '{' || (before !== undefined && isFunction(before)))
    if (token.value === ')' || token.value === '}') open.pop()
    return token.value === ',' && open.at(-1) !== true
  })
}

function endsRange(token: Token): boolean {
  return isRange(token.type) || token.type === tokenTypes.REF_NAMED || token.value === ')'
}

function beginsRange(token: Token): boolean {
  return isRange(token.type) || token.type === tokenTypes.REF_NAMED || token.value === '(' || isFunction(token)
}

/** Without what LET and LAMBDA name. */
function withoutParameters(tokens: readonly Token[]): readonly Token[] {
  const parameters = letAndLambdaParameters(tokens)
  return parameters.size === 0 ? tokens : tokens.filter((_token, index) => !parameters.has(index))
}

function isRange(type: string): boolean {
  return type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_TERNARY
}

/** Of another workbook, [1]Sheet1!A1, or of another program, Prog|topic!item. */
function isOutside({ type, value }: Token): boolean {
  if (type === tokenTypes.REF_STRUCT || type === tokenTypes.STRING) return false
  return value.includes('[') || (type === tokenTypes.UNKNOWN && value.includes('|'))
}

const acrossPattern = /^(?:'((?:[^']|'')+):((?:[^']|'')+)'|([^'!:]+):([^'!:]+))!/

function isAcrossSheets(reference: string): boolean {
  return acrossPattern.test(reference)
}

/** Microsoft, "Create a 3-D reference": these take any number of ranges, and so one of each sheet. */
const ofAnyRanges = new Set(
  `SUM AVERAGE AVERAGEA COUNT COUNTA MAX MAXA MIN MINA PRODUCT STDEV STDEV.S STDEV.P STDEVP STDEVA STDEVPA VAR VAR.S
  VAR.P VARP VARA VARPA`
    .trim()
    .split(/\s+/),
)

/** SUM(One:Three!A1) as SUM(One!A1,Two!A1,Three!A1). */
function acrossSheets(formula: string, sheets: readonly FileSheet[]): string {
  if (!/:[^!]*!/.test(formula)) return formula
  const tokens = tokensOf(formula)
  const open: (string | undefined)[] = []
  return tokens
    .map(({ type, value }, index) => {
      if (value === '(') open.push(tokens[index - 1]?.value.toUpperCase())
      if (value === ')') open.pop()
      const [before, after] = [tokens[index - 1]?.value ?? '', tokens[index + 1]?.value ?? '']
      const isAlone = /^[(,]$/.test(before) && /^[),]$/.test(after) && ofAnyRanges.has(open.at(-1) ?? '')
      return (isRange(type) && isAlone && onEachSheet(value, sheets)) || value
    })
    .join('')
}

function onEachSheet(reference: string, sheets: readonly FileSheet[]): string | undefined {
  const [whole = '', ...ends] = acrossPattern.exec(reference) ?? []
  const [first, last] = ends
    .filter((end) => end !== undefined)
    .map((end) => sheets.findIndex(({ name }) => name.toLowerCase() === end.replaceAll("''", "'").toLowerCase()))
  if (first === undefined || last === undefined || first < 0 || last < first) return undefined
  const address = reference.slice(whole.length)
  return sheets
    .slice(first, last + 1)
    .map(({ name }) => `${quotedSheet(name)}!${address}`)
    .join(',')
}

function isOneCell(refersTo: string): boolean {
  const tokens = tokensOf(`=${refersTo}`)
  return tokens.length === 2 && tokens[1]?.type === tokenTypes.REF_RANGE && !refersTo.includes(':')
}
