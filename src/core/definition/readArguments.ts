/**
 * The argument reader: from what a host hands over to decimals in each parameter's unit, or to all problems at
 * once. Hosts differ in three ways that end here: a blank cell arrives as null, as "" or as 0; an omitted argument
 * as null or undefined; a single cell as a value or, where any argument is a range, as [[value]].
 *
 * A 0 is read as a blank cell where none can be meant: for an argument that may be left out and takes no 0, and in a
 * row of several ranges that holds nothing but blanks and zeros and would be refused for them.
 */
import { asShown, Decimal, fitsCell } from '../quantity/decimal'
import { daySerial } from '../quantity/day'
import { convert, readUnit, unit as unitOf } from '../quantity/units'
import type { Environment, Value } from '../expression/expression'
import type { Parameters, RefusalWithoutKind } from './definition'
import { dayUnit, type Parameter } from './parameter'
import { isCellError, type CellError, type Limit, type Refusal } from './problem'
import { readNumberText } from './readNumber'

/** The ranges of the first list of a call: which of their places count, and how they lay in the sheet. */
export interface Layout {
  readonly places: number
  /** Places, from 0, that are not blank. */
  readonly kept: readonly number[]
  readonly lies: 'row' | 'column'
}

/** A value of a range, or nothing where its cell may be blank and is. */
type ReadCells = readonly (Decimal | undefined)[] | readonly (string | undefined)[]

/** The arguments as they were read: in each parameter's unit, defaults filled in. */
export type ReadValues = Readonly<Record<string, Decimal | string | ReadCells | undefined>>

type Reading = Record<string, Decimal | string | ReadCells | undefined>

export type ReadArguments =
  | { readonly args: ReadValues; readonly layout: Layout | undefined }
  | { readonly problems: readonly Refusal[] }
  | { readonly cellError: CellError }

/** A refusal before it is known which parameter it is about. */
type Fault = RefusalWithoutKind

export function readArguments(parameters: Parameters, given: readonly unknown[]): ReadArguments {
  const names = Object.keys(parameters)
  const raw = names.map((_, index) => withoutBox(given[index]))
  // Of values, of lists, and of rows of cells.
  const error = raw.flat(2).find(isCellError)
  if (error !== undefined) return { cellError: error }

  const problems: Refusal[] = []
  const refuse: Refuse = (fault, parameter, row) => {
    problems.push({
      ...fault,
      kind: 'refused',
      ...(parameter === undefined ? {} : { parameter }),
      ...(row === undefined ? {} : { row }),
    } as Refusal)
  }
  const extra = given.slice(names.length).filter((value) => !isBlank(value))
  if (extra.length > 0) refuse({ code: 'tooManyArguments', given: names.length + extra.length, most: names.length })

  const args: Reading = {}
  const lines = new Map<string, Line>()
  names.forEach((name, index) => {
    const parameter = parameters[name]!
    const value = raw[index]
    if (parameter.shape === 'line') {
      if (isBlank(value)) {
        if (!parameter.optional) refuse({ code: 'missing' }, name)
        return
      }
      const line = asLine(value)
      if ('code' in line) refuse(line, name)
      else lines.set(name, line)
      return
    }
    if (Array.isArray(value)) {
      refuse({ code: 'notOneCell', rows: value.length, columns: Array.isArray(value[0]) ? value[0].length : 1 }, name)
      return
    }
    if (isLeftOut(parameter, value)) {
      if (!parameter.optional) refuse({ code: 'missing' }, name)
      else args[name] = defaultOf(parameter, args)
      return
    }
    const read = readValue(parameter, value)
    if (isFault(read)) refuse(read, name)
    else args[name] = read
  })
  const [layout] = listsOf(parameters).map((names) => readLines(parameters, names, lines, args, refuse))
  return problems.length > 0 ? { problems } : { args, layout }
}

type Refuse = (fault: Fault, parameter?: string, row?: number) => void

/** The names of the ranges, list by list, in the order in which the lists begin. */
function listsOf(parameters: Parameters): readonly (readonly string[])[] {
  const lists = new Map<string | undefined, string[]>()
  for (const [name, { shape, list }] of Object.entries(parameters))
    if (shape === 'line') lists.set(list, [...(lists.get(list) ?? []), name])
  return [...lists.values()]
}

/** Reads the ranges of a list place by place; they belong together, so they must be of one length. */
function readLines(
  parameters: Parameters,
  names: readonly string[],
  given: ReadonlyMap<string, Line>,
  args: Reading,
  refuse: Refuse,
): Layout | undefined {
  const lines = new Map([...given].filter(([name]) => names.includes(name)))
  const standsForAll = (name: string, { cells }: Line) => parameters[name]!.oneForAll === true && cells.length === 1
  const several = new Map([...lines].filter(([name, line]) => !standsForAll(name, line)))
  const aligned = withoutZerosForBlanks(parameters, several.size > 0 ? several : lines)
  const [first] = aligned.values()
  if (first === undefined) {
    for (const name of names) args[name] = []
    return undefined
  }
  if (!areOfOneLength(aligned, refuse)) return undefined
  const kept = keptPlaces(parameters, aligned, first.cells.length, refuse)
  for (const name of names) {
    const parameter = parameters[name]!
    const line = aligned.get(name) ?? lines.get(name)
    if (line === undefined) args[name] = kept.map(() => defaultOf(parameter, args)) as ReadCells
    else if (aligned.has(name)) args[name] = readLine(parameter, name, line.cells, kept, refuse)
    else args[name] = kept.map(constantly(readLine(parameter, name, line.cells, [0], refuse)[0])) as ReadCells
  }
  return { places: first.cells.length, kept, lies: first.lies }
}

/** In a range that stands alone a 0 may have been typed, so it keeps its zeros, which are then refused in a sentence. */
function withoutZerosForBlanks(parameters: Parameters, lines: ReadonlyMap<string, Line>): ReadonlyMap<string, Line> {
  if (lines.size < 2) return lines
  const isBlankRow = (place: number) =>
    [...lines].every(([, { cells }]) => cells[place] === 0 || isBlank(cells[place])) &&
    [...lines].some(([name, { cells }]) =>
      isBlank(cells[place]) ? !parameters[name]!.optional : !takesZero(parameters[name]!),
    )
  // Of a list without a default a 0 may be meant: 0 bags available are not as many as one likes.
  const isBlankZero = (parameter: Parameter, place: number) =>
    (parameter.default !== undefined && !takesZero(parameter)) || isBlankRow(place)
  return new Map(
    [...lines].map(([name, { cells, lies }]) => [
      name,
      { cells: cells.map((cell, place) => (cell === 0 && isBlankZero(parameters[name]!, place) ? null : cell)), lies },
    ]),
  )
}

function constantly<T>(value: T): () => T {
  return () => value
}

function areOfOneLength(lines: ReadonlyMap<string, Line>, refuse: Refuse): boolean {
  const [[other, { cells: otherCells }] = ['', { cells: [] }], ...others] = [...lines] as [
    [string, Line],
    ...[string, Line][],
  ]
  const strangers = others.filter(([, { cells }]) => cells.length !== otherCells.length)
  for (const [name, { cells }] of strangers)
    refuse({ code: 'lengthsDiffer', length: cells.length, other, otherLength: otherCells.length }, name)
  return strangers.length === 0
}

/**
 * A place that is blank in every range is skipped. One that is blank in some of them only is refused, unless the
 * range may be left out: then its blank cell stands for what the whole range would stand for. A range of which one cell
 * may stand for all has no such holes: a period without its price would be taken as one in which the goods are free.
 */
function keptPlaces(
  parameters: Parameters,
  lines: ReadonlyMap<string, Line>,
  places: number,
  refuse: Refuse,
): readonly number[] {
  const kept: number[] = []
  for (let place = 0; place < places; place++) {
    const blankIn = [...lines].filter(([, { cells }]) => isBlank(cells[place]))
    if (blankIn.length === lines.size) continue
    kept.push(place)
    for (const [name, { cells }] of blankIn) {
      const { optional, oneForAll } = parameters[name]!
      if (!optional || (oneForAll === true && !cells.every(isBlank))) refuse({ code: 'blankInRow' }, name, place + 1)
    }
  }
  return kept
}

function readLine(
  parameter: Parameter,
  name: string,
  cells: readonly unknown[],
  kept: readonly number[],
  refuse: Refuse,
): ReadCells {
  if (kept.length === 0 && !parameter.optional) refuse({ code: 'emptyRange' }, name)
  const values: (Decimal | string | undefined)[] = []
  for (const place of kept) {
    if (isBlank(cells[place])) {
      values.push(defaultOf(parameter, {}) as Decimal | undefined)
      continue
    }
    const read = readValue(parameter, cells[place])
    if (isFault(read)) refuse(read, name, place + 1)
    else values.push(read)
  }
  const allRead = kept.length > 0 && values.length === kept.length
  const isZero = (value: Decimal | string | undefined) => value instanceof Decimal && value.isZero()
  if (parameter.notAllZero === true && allRead && values.every(isZero)) refuse({ code: 'allZero' }, name)
  return values as ReadCells
}

interface Line {
  readonly cells: readonly unknown[]
  readonly lies: 'row' | 'column'
}

function asLine(value: unknown): Line | Fault {
  if (!Array.isArray(value)) return { cells: [value], lies: 'column' }
  const rows: unknown[][] = value.map((row: unknown) => (Array.isArray(row) ? row : [row]))
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0)
  if (rows.length === 1) return { cells: rows[0]!, lies: 'row' }
  if (columns === 1) return { cells: rows.map((row) => row[0]), lies: 'column' }
  return { code: 'notOneLine', rows: rows.length, columns }
}

function withoutBox(value: unknown): unknown {
  const row: unknown = Array.isArray(value) && value.length === 1 ? value[0] : undefined
  return Array.isArray(row) && row.length === 1 ? row[0] : value
}

export function isBlank(value: unknown): boolean {
  return value === null || value === undefined || (typeof value === 'string' && value.trim() === '')
}

/** Whether an argument stands for nothing: a blank, or the 0 that some hosts hand over for one where none can be meant. */
export function isLeftOut(parameter: Parameter, value: unknown): boolean {
  return isBlank(value) || (parameter.optional && withoutBox(value) === 0 && !takesZero(parameter))
}

export function takesZero(parameter: Parameter): boolean {
  return !isFault(readValue(parameter, 0))
}

function defaultOf(parameter: Parameter, args: ReadValues): ReadValues[string] {
  const value = parameter.default
  if (value === undefined) return undefined
  return typeof value === 'number' ? new Decimal(value) : args[value.sameAs]
}

function isFault(read: Decimal | string | Fault): read is Fault {
  return typeof read === 'object' && !(read instanceof Decimal)
}

/** One value of a cell, or what is wrong with it. */
export function readValue(parameter: Parameter, value: unknown): Decimal | string | Fault {
  if (typeof value === 'number' && !Number.isFinite(value)) return { code: 'outsideCells' }
  if (parameter.takes === 'text') {
    if (typeof value === 'string') return value.trim()
    if (typeof value === 'boolean') return { code: 'notText', value: asLogical(value) }
    // A name that is a number, such as the 60 of a bag, is a name all the same.
    return typeof value === 'number' && parameter.shape === 'line'
      ? String(asShown(value))
      : { code: 'notText', value: String(value) }
  }
  if (typeof value === 'boolean') return { code: 'logical', value: asLogical(value) }
  if (typeof value === 'number') {
    const shown = asShown(value)
    const decimal = new Decimal(shown)
    return faultOf(parameter, decimal, shown) ?? decimal
  }
  if (typeof value !== 'string') return { code: 'notNumber', value: String(value) }
  const read = readText(parameter, value)
  return read instanceof Decimal ? (faultOf(parameter, read, read.toNumber()) ?? read) : read
}

/** As the cell shows it. */
function asLogical(value: boolean): string {
  return value ? 'TRUE' : 'FALSE'
}

function readText(parameter: Parameter, value: string): Decimal | Fault {
  if (parameter.unit === dayUnit) return readDay(value)
  const text = readNumberText(value)
  if (text === undefined) return { code: 'notNumber', value }
  if ('unclear' in text) return { code: text.unclear, value }
  if (text.rest === '') return text.value
  if (parameter.share === true) return text.rest === '%' ? text.value.div(100) : { code: 'unitNotTaken', value }
  if (parameter.dimension === undefined) return { code: 'unitNotTaken', value }
  const unit = readUnit(text.rest)
  if ('code' in unit) return unit
  if (unit.dimension !== parameter.dimension) {
    return { code: 'unitOfOtherKind', value, got: unit.dimension, takes: parameter.dimension }
  }
  return convert(text.value, unit, unitOf(parameter.unit))
}

/** A date that came as a text: as 2026-02-09, or as the number of the day. */
function readDay(value: string): Decimal | Fault {
  const serial = daySerial(value.trim())
  if (serial !== undefined) return new Decimal(serial)
  const text = readNumberText(value)
  return text !== undefined && 'value' in text && text.rest === '' ? text.value : { code: 'notDay', value }
}

/** @param shown The value as a double, which is compared faster and, at 15 digits, just as exactly. */
function faultOf(parameter: Parameter, value: Decimal, shown: number): Fault | undefined {
  if (!fitsCell(value)) return { code: 'outsideCells' }
  const broken = brokenLimit(parameter, shown)
  if (broken === undefined) return undefined
  if (shown === 0 && (broken.is === 'above' || broken.is === 'atLeast')) return { code: 'zeroOrBlank' }
  if (parameter.share === true && shown > 1 && shown <= 100) return { code: 'percentTyped', value: value.toString() }
  return { code: 'outOfRange', value: value.toString(), limit: broken }
}

function brokenLimit({ atLeast, above, atMost, below, whole }: Parameter, shown: number): Limit | undefined {
  if (atLeast !== undefined && shown < atLeast) return { is: 'atLeast', value: atLeast }
  if (above !== undefined && shown <= above) return { is: 'above', value: above }
  if (atMost !== undefined && shown > atMost) return { is: 'atMost', value: atMost }
  if (below !== undefined && shown >= below) return { is: 'below', value: below }
  if (whole === true && !Number.isInteger(shown)) return { is: 'whole' }
  return undefined
}

/** What the steps compute with: the arguments that are numbers. */
export function environmentOf(args: ReadValues): Environment {
  const environment: Environment = {}
  for (const name in args) {
    const value = args[name]
    if (value instanceof Decimal || (Array.isArray(value) && value.every((one) => one instanceof Decimal)))
      environment[name] = value as Value
  }
  return environment
}
