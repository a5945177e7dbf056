import { tokenize, tokenTypes } from '@borgar/fx'
import { beforeAll, describe, expect, it } from 'vitest'
import { addressOf } from '../../../src/formula/address'
import { catalogue } from '../../../src/functions/catalogue'
import type { Book, Cell } from '../../../src/workbook/book'
import type { OpenBook } from '../../../src/workbook/openBook'
import { thornmere } from '../../../src/workbook/season/data/thornmere'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { emptySeason } from '../../../src/workbook/season/emptySeason'
import { season } from '../../../src/workbook/season/season'
import { methodKinds } from '../../../src/workbook/season/tables/methods'
import { cautionSentences, hazardsOf, type Caution } from '../../../src/wording/cautions'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { errorOf } from '../errorOf'
import { figureOf, overviewOf, valuesOf } from './figuresOf'

interface Placed {
  readonly cell: Cell
  readonly sheet: string
  readonly place: string
}

function placedIn({ sheets }: Book): readonly Placed[] {
  return sheets.flatMap(({ name, rows }) =>
    rows.flatMap((row, rowIndex) =>
      Array.from(row).flatMap((cell, column) =>
        cell === undefined ? [] : [{ cell, sheet: name, place: `${name}!${addressOf(rowIndex, column)}` }],
      ),
    ),
  )
}

const book = demoSeason()
const cells = placedIn(book)
const formulas = cells.flatMap(({ cell, ...placed }) =>
  cell.formula === undefined ? [] : [{ ...placed, formula: cell.formula }],
)

interface Call {
  readonly id: string
  readonly arguments: number
}

/** Calls of the add-in in a formula, each with the number of arguments it is given. */
function callsIn(formula: string): readonly Call[] {
  const calls: { id: string; arguments: number }[] = []
  const open: ({ id: string; arguments: number } | undefined)[] = []
  const tokens = tokenize(formula).filter(({ type }) => type !== tokenTypes.WHITESPACE)
  tokens.forEach(({ type, value }, index) => {
    if (value === '(') {
      const before = tokens[index - 1]
      const isOurs = before?.type === tokenTypes.FUNCTION && before.value.startsWith('STICK.')
      const started = isOurs ? { id: before.value.slice('STICK.'.length), arguments: 1 } : undefined
      if (started !== undefined) calls.push(started)
      open.push(started)
    }
    if (value === ',' && type === tokenTypes.OPERATOR) {
      const inside = open.at(-1)
      if (inside !== undefined) inside.arguments += 1
    }
    if (value === '{') open.push(undefined)
    if (value === ')' || value === '}') open.pop()
  })
  return calls
}

/** Where a number stands in a formula that is none of a nursery's own figures; the states of rows count letters. */
const conventions: Readonly<Record<string, readonly RegExp[]>> = {
  // Cents. Fewer than two batches or methods. A row and a column of a table.
  '2': [/ROUND\(.*,2\)/, /<2/, /,2\)/, /,2,[23]\)/, /COUNT\(SetupWage,SetupOnCosts\)=2/],
  // Weeks begin on Monday and belong to the year of their Thursday (ISO 8601). Three figures. A row and a column.
  '3': [/WEEKDAY\([^)]*,3\)/, /\+3\)/, /,3,2\)/, /,[24],3\)/, /<3/, /COUNT\(SetupHeat,SetupMist,SetupOverheads\)/],
  '4': [/,4,[23]\)/],
  // Days of a week.
  '7': [/7\*/, /[+-]7/, /\/7\)/],
  // The weeks that the calendar shows.
  '61': [/SEQUENCE\(61\)/, /,61\)/],
  // Binary dust is rounded off before whole packs and loads are counted.
  '9': [/ROUND\(.*,9\)/],
  // Litres of a cubic metre.
  '1000': [/\/1000/],
}

describe('The demo season as it is written', () => {
  it('has no typed number outside the cells that are marked as boxes', () => {
    expect(cells.length).toBeGreaterThan(3000)
    expect(
      cells.filter(({ cell }) => typeof cell.value === 'number' && cell.look !== 'input').map(({ place }) => place),
    ).toEqual([])
  })

  it('has no formula in a box, and no cell with both a value and a formula', () => {
    const wrong = ({ look, formula, value }: Cell) => formula !== undefined && (look === 'input' || value !== undefined)
    expect(cells.filter(({ cell }) => wrong(cell)).map(({ place }) => place)).toEqual([])
  })

  it('hides no assumption in a formula: besides 0 and 1 only conventions stand there as numbers', () => {
    const odd = formulas.flatMap(({ formula, place }) =>
      tokenize(formula)
        .filter(({ type }) => type === tokenTypes.NUMBER)
        .filter(({ value }) => !['0', '1'].includes(value) && !conventions[value]?.some((one) => one.test(formula)))
        .map(({ value }) => `${place}: ${value}`),
    )
    expect(odd).toEqual([])
  })

  it('calls functions of the catalogue only, each with as many arguments as it takes', () => {
    const calls = formulas.flatMap(({ formula, place }) => callsIn(formula).map((call) => ({ ...call, place })))
    expect(calls.length).toBeGreaterThan(200)
    const wrong = calls.filter((call) => {
      const parameters = Object.values(catalogue.find(({ id }) => id === call.id)?.parameters ?? {})
      return (
        call.arguments < parameters.filter(({ optional }) => !optional).length || call.arguments > parameters.length
      )
    })
    expect(wrong).toEqual([])
  })

  it('uses every function of the catalogue but two', () => {
    // Containers is told the blocks of a sheet, and Mixing asks MIXLOADS.
    const notUsed = ['BLOCKS', 'BLENDPARTS']
    const used = new Set(formulas.flatMap(({ formula }) => callsIn(formula).map(({ id }) => id)))
    expect(catalogue.length).toBeGreaterThan(35)
    expect(
      catalogue
        .map(({ id }) => id)
        .filter((id) => !used.has(id))
        .sort(),
    ).toEqual([...notUsed].sort())
  })

  it('leaves the cells below a table of a function empty, since a table may grow', () => {
    const tables = book.sheets.flatMap(({ name, rows }) =>
      rows.flatMap((row, rowIndex) =>
        Array.from(row).flatMap((cell, column) => (cell?.spills === true ? [{ name, rows, rowIndex, column }] : [])),
      ),
    )
    expect(tables.filter(({ name }) => name !== 'Calendar').map(({ name }) => name)).toEqual([
      'Monday',
      'Monday',
      'Mixing',
      'Compare',
      'Reuse',
      'Risk',
      'Risk',
      'Quote',
      'Cheapest',
      'Timing',
    ])
    const blocked = tables.filter(({ rows, rowIndex, column }) =>
      rows.slice(rowIndex + 1).some((row) => row[column]?.value !== undefined || row[column]?.formula !== undefined),
    )
    expect(blocked.map(({ name }) => name)).toEqual([])
  })

  it('leaves the sheet of a growing table empty below its rows', () => {
    for (const { name, rows, tables = [] } of book.sheets)
      for (const { range } of tables) expect(Number(/\d+$/.exec(range)![0]), name).toBe(rows.length)
  })

  /** All that any way of rooting handles. */
  const rooting: readonly Caution[] = [
    'dust',
    'vermiculite',
    'sand',
    'bed',
    'fibres',
    'acid',
    'water',
    'hormone',
    'mist',
    'electricity',
    'disinfectant',
    'steam',
  ]

  /** Every sheet that somebody handles something by, and what. */
  const handledBy: Readonly<Record<string, readonly Caution[]>> = {
    Monday: rooting,
    Containers: ['fibres', 'acid'],
    Media: ['dust', 'vermiculite', 'sand', 'bags', 'moss', 'weight'],
    Blends: ['dust', 'vermiculite', 'sand', 'weight', 'lime'],
    Components: ['dust', 'vermiculite', 'sand', 'lime'],
    Methods: rooting,
    Mixing: ['dust', 'vermiculite', 'sand', 'weight', 'lime', 'mixer'],
    Compare: ['hormone', 'mist', 'electricity', 'disinfectant', 'steam'],
    Reuse: ['disinfectant', 'steam'],
    Quote: ['dust', 'vermiculite', 'electricity', 'disinfectant', 'steam'],
    Offers: ['dust', 'vermiculite', 'bags', 'moss', 'weight'],
    Cheapest: ['dust', 'vermiculite', 'bags', 'moss', 'weight'],
  }

  it('shows on every sheet the cautions of what is handled by it, each once, and defers to the label and the codes last', () => {
    const shown = book.sheets.map(({ name, rows }) => [
      name,
      rows.slice(2).flatMap((row) => row.flatMap((cell) => (cell?.look === 'caution' ? [String(cell.value)] : []))),
    ])
    expect(shown).toEqual(book.sheets.map(({ name }) => [name, cautionSentences(handledBy[name] ?? [])]))
  })

  it('shows on every sheet the cautions of the functions that it calls', () => {
    // Containers calls BAGS to count trays.
    const handlesNothing = (sheet: string, id: string) => sheet === 'Containers' && id === 'BAGS'
    const missing = formulas.flatMap(({ sheet, formula }) =>
      [...formula.matchAll(/STICK\.([A-Z]+)\(/g)].flatMap(([, id]) =>
        handlesNothing(sheet, id!)
          ? []
          : hazardsOf([{ id: id! }])
              .filter((hazard) => !handledBy[sheet]?.includes(hazard))
              .map((hazard) => `${sheet}: ${id} ${hazard}`),
      ),
    )
    expect(missing).toEqual([])
  })

  it('says at the top of every sheet with figures that nursery and prices are invented', () => {
    const mark = 'Invented nursery, invented prices: for demonstration only'
    const unmarked = book.sheets.filter(
      ({ rows }) =>
        !rows.slice(0, 3).some((row) => row.some((cell) => cell?.look === 'caution' && cell.value === mark)),
    )
    // Lists holds the words of the trade alone.
    expect(unmarked.map(({ name }) => name)).toEqual(['Lists'])
    expect(
      placedIn({ ...book, sheets: unmarked }).filter(({ cell }) => typeof cell.value === 'number' || cell.formula),
    ).toEqual([])
  })

  it('gives each name once, and none that a spreadsheet could take for a function or a cell', () => {
    const names = book.names.map(({ name }) => name.toLowerCase())
    expect(new Set(names).size).toBe(names.length)
    const functions = formulas.flatMap(({ formula }) =>
      tokenize(formula)
        .filter(({ type }) => type === tokenTypes.FUNCTION)
        .map(({ value }) => value.toLowerCase()),
    )
    expect(names.filter((name) => functions.includes(name) || /^[a-z]{1,3}\d+$/.test(name))).toEqual([])
  })

  it('has a width for every column that is used', () => {
    const narrow = book.sheets.filter(({ rows, widths }) => Math.max(...rows.map((row) => row.length)) > widths.length)
    expect(narrow.map(({ name }) => name)).toEqual([])
  })

  it('shows all six kinds of methods, and mixes of the nursery in two sizes of trays', () => {
    const { methods, containers } = vellimoor
    expect(new Set(methods.map(({ kind }) => kind))).toEqual(new Set(methodKinds.words))
    const placesOf = (name: unknown) => containers.find((one) => one.name === name)!.places
    const sizes = methods
      .filter(({ kind }) => kind === 'peat or coir with perlite')
      .map(({ container }) => placesOf(container))
    expect(new Set(sizes).size).toBeGreaterThan(1)
  })

  it('shows a line over the end of the year, one with a confidence, and one in two batches', () => {
    const yearOf = (serial: number) => new Date(Date.UTC(1899, 11, 30) + serial * 86_400_000).getUTCFullYear()
    const over = vellimoor.orders.filter(
      ({ delivery, weeks }) => yearOf(Number(delivery)) > yearOf(Number(delivery) - 7 * Number(weeks)),
    )
    expect(over.length).toBeGreaterThan(0)
    expect(vellimoor.orders.some(({ confidence }) => confidence !== undefined)).toBe(true)
    const linesOfBatches = vellimoor.batches.map(({ line }) => line)
    expect(linesOfBatches.some((line, index) => linesOfBatches.indexOf(line) < index)).toBe(true)
  })
})

const showsError = ({ sheets }: OpenBook) =>
  sheets.flatMap(({ name, cells: held }) =>
    [...held].filter(([, cell]) => errorOf(cell) !== undefined).map(([address]) => `${name}!${address}`),
  )

/** Every first column of rows, and what it says where something was typed. */
function statesOf(open: OpenBook): readonly string[] {
  return open.names
    .filter(({ name, refersTo }) => name.endsWith('State') && refersTo.includes(':'))
    .flatMap(({ name }) => valuesOf(open, name).map(String))
    .filter((state) => state !== '')
}

describe('The demo season as it is calculated', () => {
  let open: OpenBook
  beforeAll(async () => {
    open = await calculateBook(book)
  }, 120_000)

  it('shows no error anywhere, and every row and every sheet is ready', () => {
    expect(showsError(open)).toEqual([])
    const states = statesOf(open)
    expect(states.length).toBeGreaterThan(80)
    expect(states.filter((state) => state !== 'ready')).toEqual([])
    const ofSheets = open.names.filter(({ name, refersTo }) => name.endsWith('State') && !refersTo.includes(':'))
    expect(ofSheets.map(({ name }) => figureOf(open, name))).toEqual(ofSheets.map(() => 'ready'))
    expect(overviewOf(open).get('Complete')).toBe('Every sheet is complete.')
  })

  it('has weeks that are too full, and says at the top of Season which is the first', () => {
    expect(overviewOf(open).get('Weeks that do not fit')).toBeGreaterThan(0)
    expect(overviewOf(open).get('The first of them')).toMatch(/^20\d\d-W\d\d: (Bench|Ground|Hours): /)
  })

  it('has every line in time and every cutting within the calendar', () => {
    expect(overviewOf(open).get('Lines not in time')).toBe(0)
    expect(overviewOf(open).get('Cuttings outside the calendar')).toBe(0)
  })
})

describe('The empty season', () => {
  let open: OpenBook
  beforeAll(async () => {
    open = await calculateBook(emptySeason('CHF'))
  }, 120_000)

  it('shows no error, says of no row but the doubts that something lacks, and first what to fill in first', () => {
    expect(showsError(open)).toEqual([])
    const begun = open.names
      .filter(({ name, refersTo }) => name.endsWith('State') && refersTo.includes(':') && name !== 'DoubtState')
      .flatMap(({ name }) => valuesOf(open, name).filter((state) => state !== ''))
    expect(begun).toEqual([])
    expect([...overviewOf(open)].find(([label]) => label === 'Complete')![1]).toBe(
      'Not complete: Setup. Nursery: type text',
    )
  })

  it('shows no day where nothing is to be stuck: a 0 would be one of 1899', () => {
    expect(overviewOf(open).get('First sticking day')).toBe('–')
    expect(overviewOf(open).get('Last sticking day')).toBe('–')
  })
})

describe('The second invented nursery', () => {
  let open: OpenBook
  beforeAll(async () => {
    open = await calculateBook(season(thornmere))
  }, 120_000)

  it('shows no error, and every row of it but the doubts, whose shares are not typed, is ready', () => {
    expect(showsError(open)).toEqual([])
    const notReady = open.names
      .filter(({ name, refersTo }) => name.endsWith('State') && refersTo.includes(':') && name !== 'DoubtState')
      .flatMap(({ name }) => valuesOf(open, name).filter((state) => state !== '' && state !== 'ready'))
    expect(notReady).toEqual([])
    expect(overviewOf(open).get('Order lines')).toBe(thornmere.orders.length)
    expect(overviewOf(open).get('Rooting cost of the season')).toBeGreaterThan(0)
  })

  it('names its own currency beside its money, and no other', () => {
    const units = open.sheets.flatMap(({ cells: held }) =>
      [...held.values()].flatMap(({ value, isHeading }) => (isHeading && typeof value === 'string' ? [value] : [])),
    )
    expect(units.filter((unit) => unit.startsWith('GBP')).length).toBeGreaterThan(50)
    expect(units.filter((unit) => /^(EUR|USD|CHF)\b/.test(unit))).toEqual([])
  })
})
