import { tokenize, tokenTypes } from '@borgar/fx'
import binomialCdf from '@stdlib/stats-base-dists-binomial-cdf'
import { beforeAll, describe, expect, it } from 'vitest'
import { catalogue } from '../../../src/functions/catalogue'
import type { Cell } from '../../../src/workbook/book'
import { refusalsIn } from '../../../src/workbook/check/refusalsIn'
import type { OpenBook, ReadCell } from '../../../src/workbook/openBook'
import { errorOf } from '../errorOf'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { orderBook } from '../../../src/workbook/season/orderBook'
import { pastBatches } from '../../../src/workbook/season/pastBatches'
import { priceList } from '../../../src/workbook/season/priceList'
import { calculateBook } from '../../../src/workbench/engine/calculate'

const book = demoSeason()
const cells = book.sheets.flatMap((sheet) =>
  sheet.rows.flatMap((row, rowIndex) =>
    row.flatMap((cell, column) =>
      cell === undefined ? [] : [{ cell, place: `${sheet.name}!${String.fromCharCode(65 + column)}${rowIndex + 1}` }],
    ),
  ),
)
const formulas = cells.flatMap(({ cell, place }) =>
  cell.formula === undefined ? [] : [{ formula: cell.formula, place }],
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
    if (value === ')') open.pop()
  })
  return calls
}

describe('the demo season as it is written', () => {
  it('has no typed number outside the cells that are marked as inputs', () => {
    expect(cells.length).toBeGreaterThan(500)
    expect(
      cells.filter(({ cell }) => typeof cell.value === 'number' && cell.look !== 'input').map(({ place }) => place),
    ).toEqual([])
  })

  it('has no formula in a cell that is marked as an input, and no cell with both a value and a formula', () => {
    const wrong = ({ look, formula, value }: Cell) => formula !== undefined && (look === 'input' || value !== undefined)
    expect(cells.filter(({ cell }) => wrong(cell)).map(({ place }) => place)).toEqual([])
  })

  it('hides no assumption in a formula: the only numbers there are 0, 1 and the 2 places of a cent', () => {
    const numbers = formulas.flatMap(({ formula, place }) =>
      tokenize(formula)
        .filter(({ type }) => type === tokenTypes.NUMBER)
        .map(({ value }) => ({ value, place, rounds: formula.startsWith('=ROUND(') })),
    )
    expect(numbers.length).toBeGreaterThan(0)
    expect(numbers.filter(({ value, rounds }) => !['0', '1', ...(rounds ? ['2'] : [])].includes(value))).toEqual([])
  })

  it('calls functions of the catalogue only, each with as many arguments as it takes', () => {
    const calls = formulas.flatMap(({ formula, place }) => callsIn(formula).map((call) => ({ ...call, place })))
    expect(calls.length).toBeGreaterThan(100)
    const wrong = calls.filter((call) => {
      const parameters = Object.values(catalogue.find(({ id }) => id === call.id)?.parameters ?? {})
      return (
        call.arguments < parameters.filter(({ optional }) => !optional).length || call.arguments > parameters.length
      )
    })
    expect(wrong).toEqual([])
  })

  it('uses every function of the catalogue but those that are not yet in the season', () => {
    const notYet = ['MOTHERPLANTS', 'STICKDAY', 'STANDING', 'PEAK', 'MIXLOADS', 'ONTRACK']
    const used = new Set(formulas.flatMap(({ formula }) => callsIn(formula).map(({ id }) => id)))
    expect(catalogue.length).toBeGreaterThan(30)
    expect(catalogue.map(({ id }) => id).filter((id) => !used.has(id))).toEqual(notYet)
  })

  it('leaves the cells below a table of a function empty, since a table may grow', () => {
    const tables = book.sheets.flatMap(({ name, rows }) =>
      rows.flatMap((row, rowIndex) =>
        row.flatMap((cell, column) =>
          cell?.spills === true && cell.look === 'heading' ? [{ name, rows, rowIndex, column }] : [],
        ),
      ),
    )
    // REUSELEDGER, COMPARE, BUYPLAN, STOCKPLAN, QUOTE, SWINGS, ODDS; a table of VARIANCE always has three rows.
    expect(tables.filter(({ name }) => name !== 'Review')).toHaveLength(7)
    const blocked = tables
      .filter(({ name }) => name !== 'Review')
      .filter(({ rows, rowIndex, column }) =>
        rows.slice(rowIndex + 1).some((row) => row[column]?.value !== undefined || row[column]?.formula !== undefined),
      )
    expect(blocked.map(({ name }) => name)).toEqual([])
  })

  it('says each caution of a sheet once, and defers to the label and the local rules wherever something is handled', () => {
    const deferring = 'Follow the label and your local rules.'
    const cautions = book.sheets.map(({ name, rows }) => ({
      name,
      lines: rows
        .slice(2)
        .flatMap((row) => row.flatMap((cell) => (cell?.look === 'caution' ? [String(cell.value)] : []))),
    }))
    expect(
      cautions
        .filter(({ lines }) => new Set(lines).size < lines.length || (lines.length > 0 && lines.at(-1) !== deferring))
        .map(({ name }) => name),
    ).toEqual([])
    expect(cautions.filter(({ lines }) => lines.length > 0).map(({ name }) => name)).toEqual([
      'Ways',
      'Blends',
      'Reuse',
      'Prices',
      'Buying',
      'Offers',
      'Timing',
      'Quote',
    ])
  })

  it('says at the top of every sheet that nursery and prices are invented', () => {
    const marks = book.sheets.map(({ rows }) =>
      rows
        .slice(0, 3)
        .some((row) =>
          row.some(
            (cell) =>
              cell?.look === 'caution' && cell.value === 'Invented nursery, invented prices: for demonstration only',
          ),
        ),
    )
    expect(marks.length).toBeGreaterThan(0)
    expect(marks.every(Boolean)).toBe(true)
  })

  it('has at least twelve order lines, spread over six ways of rooting', () => {
    expect(orderBook.length).toBeGreaterThanOrEqual(12)
    expect(new Set(orderBook.map(({ way }) => way)).size).toBe(6)
    expect(orderBook.some(({ confidence }) => confidence !== undefined)).toBe(true)
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

  it('gives every used column a width', () => {
    expect(
      book.sheets.filter(({ rows, widths }) => rows.some((row) => row.length > widths.length)).map(({ name }) => name),
    ).toEqual([])
  })
})

describe('the demo season as it calculates', () => {
  let calculated: OpenBook

  beforeAll(async () => {
    calculated = await calculateBook(book)
  }, 60_000)

  const columnOf: Readonly<Record<string, string>> = {
    Water: 'C',
    'Peat, coir and perlite': 'D',
    Vermiculite: 'E',
    'Sand bed': 'F',
    Premix: 'G',
    Rockwool: 'H',
  }
  const ways = Object.keys(columnOf)
  /** The columns of Orders that the tests read. */
  const toStick = 'E'

  function sheetOf(name: string) {
    return calculated.sheets.find((sheet) => sheet.name === name)!.cells
  }

  /** The row whose first cell says `label`, and, where two do, the one with that unit in its second cell. */
  function rowOf(sheet: string, label: string, unit?: string): string {
    const lines = sheetOf(sheet)
    const found = [...lines]
      .filter(([address, { value }]) => /^A\d+$/.test(address) && value === label)
      .map(([address]) => address.slice(1))
      .filter((row) => unit === undefined || lines.get(`B${row}`)?.value === unit)
    expect(found, `${sheet}, ${label}`).toHaveLength(1)
    return found[0]!
  }

  function shown(sheet: string, label: string, column = 'B') {
    return sheetOf(sheet).get(`${column}${rowOf(sheet, label)}`)?.value
  }

  function at(sheet: string, label: string, column: string, unit?: string): number {
    const { value } = sheetOf(sheet).get(`${column}${rowOf(sheet, label, unit)}`)!
    expect(typeof value, `${sheet}, ${label}, ${column}`).toBe('number')
    return value as number
  }

  /** The same for a figure that was typed, so that an oracle never leans on a result. */
  function typed(sheet: string, label: string, column: string, unit?: string): number {
    const value = at(sheet, label, column, unit)
    const written = book.sheets
      .find(({ name }) => name === sheet)!
      .rows.filter((row) => row[0]?.value === label && (unit === undefined || row[1]?.value === unit))
      .map((row) => row[column.charCodeAt(0) - 65])
    expect(
      written.map((cell) => cell?.look),
      `${sheet}, ${label}, ${column}`,
    ).toEqual(['input'])
    return value
  }

  /** The rows below the headings of the table whose first heading is `heading`. */
  function tableOf(sheet: string, heading: string, columns: string): readonly ReadCell[][] {
    const lines = sheetOf(sheet)
    const [, first] = /^\D+(\d+)$/.exec(
      [...lines].find(
        ([address, { value, spill }]) => address.startsWith(columns[0]!) && value === heading && spill !== undefined,
      )![0],
    )!
    const rows: ReadCell[][] = []
    for (let row = Number(first) + 1; lines.has(`${columns[0]}${row}`); row++)
      rows.push([...columns].map((column) => lines.get(`${column}${row}`)?.value ?? null))
    return rows
  }

  const ofSpecies = (species: string, column: string) => at('Orders', species, column)
  const relative = (found: number, expected: number) => Math.abs(found - expected) / Math.abs(expected)
  const waysOf = (label: string, way: string) => typed('Ways', label, columnOf[way]!)
  const overall = (way: string) =>
    ['Strike rate', 'Potting-on rate', 'Grade-out rate'].reduce((rate, stage) => rate * waysOf(stage, way), 1)
  const hour = () => typed('Season', 'Wage', 'B') * (1 + typed('Season', 'On-costs', 'B'))

  /** Price of a usable loose litre, by hand from the price list. */
  function litrePrice(product: string): number {
    const { price, delivery, size, unit, measured, litresPerKg, density, waterShare, expansion, waste } =
      priceList.find((medium) => medium.product === product)!
    const litresIn: Readonly<Record<string, number>> = { L: 1, ft3: 28.316846592 }
    const declared =
      measured === 'by volume'
        ? size * litresIn[unit]!
        : measured === 'by litres per kg'
          ? size * litresPerKg!
          : (size * (1 - waterShare!)) / (density / 1000)
    return (price + delivery) / (declared * expansion * (1 - waste))
  }

  interface Piece {
    readonly first: number
    readonly rounds: number
    /** Paid in each later round. */
    readonly later: number
    readonly lost: number
    readonly endValue: number
    /** Cuttings in one. */
    readonly places: number
  }

  /** Level cost by summing the flows of every round one by one, without the closed form of the function. */
  function levelCost({ first, later, lost, endValue }: Piece, rounds: number): number {
    const kept = (1 - lost) / (1 + typed('Season', 'Interest', 'B')) ** (1 / typed('Season', 'Rounds of cuttings', 'B'))
    let paid = first
    let uses = 1
    let seen = 1
    for (let round = 2; round <= rounds; round++) {
      seen *= kept
      paid += later * seen
      uses += seen
    }
    return (paid - endValue * seen * kept) / uses
  }

  const reuse = (label: string, column: string) => typed('Reuse', label, column)
  const places = (way: string) => waysOf('Places in one', way) * (1 - waysOf('Places left empty', way))
  const price = (label: string) => typed('Prices', label, 'D')

  const washedTray = (way: string): Piece => ({
    first: reuse('First cost', 'C'),
    rounds: reuse('Rounds it serves', 'C'),
    later: reuse('Washing or steaming', 'C'),
    lost: reuse('Broken in a round', 'C'),
    endValue: reuse('Worth at the end', 'C'),
    places: places(way),
  })

  const bedArea = () => waysOf('Bed, inside length', 'Sand bed') * waysOf('Bed, inside width', 'Sand bed')
  const bedPlaces = () =>
    Math.round(bedArea() * waysOf('Bed, cuttings stuck', 'Sand bed')) * (1 - waysOf('Places left empty', 'Sand bed'))

  function sheetPrice(): number {
    return (
      (price('Rockwool blocks, price of a carton') + price('Rockwool blocks, delivery')) /
      price('Rockwool blocks, sheets in a carton')
    )
  }

  function pieceOf(way: string): Piece {
    const once = { rounds: 1, later: 0, lost: 0 }
    switch (way) {
      case 'Water':
        return {
          first: reuse('First cost', 'D'),
          rounds: reuse('Rounds it serves', 'D'),
          later: reuse('Washing or steaming', 'D'),
          lost: reuse('Broken in a round', 'D'),
          endValue: 0,
          places: places(way),
        }
      case 'Sand bed': {
        const litres =
          (1000 * bedArea() * waysOf('Bed, depth once settled', way)) /
          (1 - waysOf('Settling', way)) /
          (1 - waysOf('Spilt while filling', way))
        const sand = litres * litrePrice('Sharp sand')
        return {
          first: sand + reuse('First cost', 'E') * bedArea(),
          rounds: reuse('Rounds it serves', 'E'),
          later: reuse('Washing or steaming', 'F') * bedArea() + reuse('Topped up', 'F') * sand,
          lost: 0,
          endValue: reuse('Worth at the end', 'E') * bedArea(),
          places: bedPlaces(),
        }
      }
      case 'Premix':
        return {
          ...once,
          first: price('Thin tray, single use'),
          endValue: -price('Thin tray, disposal'),
          places: places(way),
        }
      case 'Rockwool':
        return { ...once, first: sheetPrice(), endValue: -price('Rockwool blocks, disposal'), places: places(way) }
      default:
        return washedTray(way)
    }
  }

  function blendCost(column: string): number {
    const [main, other] = column === 'D' ? (['Peat', 'Perlite'] as const) : (['Coir', 'Perlite'] as const)
    const parts = [typed('Blends', main, column), typed('Blends', other, column)] as const
    const kept =
      typed('Blends', 'Test mix: finished mix', column) / typed('Blends', 'Test mix: components before mixing', column)
    const components = (parts[0] * litrePrice(main) + parts[1] * litrePrice(other)) / (parts[0] + parts[1])
    const added =
      typed('Blends', 'Lime, wetting agent, starter feed', column) +
      hour() / typed('Blends', 'Mixed in an hour', column)
    return components / kept + added / 1000
  }

  const coirShare = () => typed('Blends', 'Share of the litres of that way', 'E')

  function squareCell(way: string): number {
    const top = waysOf('Cell, top length or diameter', way)
    const bottom = waysOf('Cell, bottom length or diameter', way)
    expect([waysOf('Cell, top width', way), waysOf('Cell, bottom width', way)]).toEqual([top, bottom])
    // The frustum of a square pyramid.
    return (waysOf('Cell, depth', way) * (top ** 2 + top * bottom + bottom ** 2)) / 3 / 1000
  }

  function roundCell(way: string): number {
    const top = waysOf('Cell, top length or diameter', way) / 2
    const bottom = waysOf('Cell, bottom length or diameter', way) / 2
    return (Math.PI * waysOf('Cell, depth', way) * (top ** 2 + top * bottom + bottom ** 2)) / 3 / 1000
  }

  function mediumIn(way: string): number {
    const inCells = (cell: number, litre: number) =>
      (cell /
        1000 /
        (1 - waysOf('Settling', way)) /
        (1 - waysOf('Spilt while filling', way)) /
        (1 - waysOf('Places left empty', way))) *
      litre
    switch (way) {
      case 'Water':
        return (fillings() * waysOf('Vessel, water in it', way) * price('Mains water')) / 1000 / places(way)
      case 'Peat, coir and perlite':
        return inCells(squareCell(way), (1 - coirShare()) * blendCost('D') + coirShare() * blendCost('E'))
      case 'Vermiculite':
        return inCells(squareCell(way), litrePrice('Vermiculite'))
      case 'Premix':
        return inCells(roundCell(way), litrePrice('Premix'))
      default:
        return 0
    }
  }

  function fillings(): number {
    return Math.ceil(waysOf('Days until rooted', 'Water') / waysOf('Days between water changes', 'Water'))
  }

  /** The work that only one way has. */
  function ownWork(way: string): number {
    switch (way) {
      case 'Water':
        return ((fillings() - 1) * hour()) / waysOf('Water changed in an hour', way) / places(way)
      case 'Sand bed':
        return (waysOf('Strike rate', way) * hour()) / waysOf('Roots washed in an hour', way)
      case 'Rockwool':
        return (
          (hour() / waysOf('Soaked in an hour', way) +
            (waysOf('Sheet, water to soak it', way) * (price('Mains water') + price('Acid to soak rockwool'))) / 1000) /
          places(way)
        )
      default:
        return 0
    }
  }

  /** What is paid for a cutting in every round. */
  function everyRound(way: string): number {
    const { places: inPiece } = pieceOf(way)
    const ground = way === 'Sand bed' ? bedArea() : waysOf('Ground that one takes', way)
    const rate = typed('Season', way === 'Sand bed' ? 'Floor' : 'Bench', 'B')
    return (
      mediumIn(way) +
      waysOf('Rooting hormone', way) +
      typed('Season', 'The cutting itself', 'B') +
      hour() / waysOf('Stuck in an hour', way) +
      hour() / waysOf('Filled and set out in an hour', way) / inPiece +
      ownWork(way) +
      (((waysOf('On the bench until rooted', way) * rate) / typed('Season', 'Bench or floor in use', 'B')) * ground) /
        inPiece
    )
  }

  function costPerCutting(way: string, rounds = pieceOf(way).rounds): number {
    const piece = pieceOf(way)
    return levelCost(piece, rounds) / piece.places + everyRound(way)
  }

  const costPerLiner = (way: string, rounds?: number) => costPerCutting(way, rounds) / overall(way)

  /** The first round of its life from which the reusable way is no dearer, by trying every one. */
  function firstRound(life: number, pays: (rounds: number) => boolean): number | undefined {
    return Array.from({ length: life }, (_, index) => index + 1).find(pays)
  }

  it('has no error in any cell and no refusal', () => {
    const errors = calculated.sheets.flatMap(({ name, cells }) =>
      [...cells].filter(([, cell]) => errorOf(cell) !== undefined).map(([address]) => `${name}!${address}`),
    )
    expect(errors).toEqual([])
    expect(refusalsIn(calculated)).toEqual([])
    for (const { place } of formulas) {
      const [sheet, address] = place.split('!') as [string, string]
      expect(sheetOf(sheet).has(address), place).toBe(true)
    }
  })

  it('sticks liners over rate, rounded up, where no confidence is asked for', () => {
    const lines = orderBook.filter(({ confidence }) => confidence === undefined)
    expect(lines.length).toBeGreaterThan(3)
    for (const { species, liners, strike, pottingOn, gradeOut } of lines) {
      expect(ofSpecies(species, toStick), species).toBe(Math.ceil(liners / strike / pottingOn / gradeOut))
    }
  })

  it('sticks the least number with the confidence asked for, by the binomial tables of a statistics library', () => {
    const lines = orderBook.filter(
      ({ species, confidence, batchSpread }) =>
        confidence !== undefined && batchSpread === undefined && !pastBatches.some((past) => past.species === species),
    )
    expect(lines.length).toBeGreaterThan(3)
    for (const { species, liners, strike, pottingOn, gradeOut, confidence } of lines) {
      const chance = (stuck: number) => 1 - binomialCdf(liners - 1, stuck, strike * pottingOn * gradeOut)
      const stuck = ofSpecies(species, toStick)
      expect(chance(stuck), species).toBeGreaterThanOrEqual(confidence! - 1e-9)
      expect(chance(stuck - 1), species).toBeLessThan(confidence!)
    }
  })

  it('adds the cuttings of the lines up, and the ways add up to the same', () => {
    const sum = orderBook.reduce((all, { species }) => all + ofSpecies(species, toStick), 0)
    expect(at('Season', 'Cuttings to stick', 'B')).toBe(sum)
    expect(Object.values(columnOf).reduce((all, column) => all + at('Ways', 'Cuttings to stick', column), 0)).toBe(sum)
  })

  it('starts a new tray for every order line', () => {
    const traysOf = (way: string) =>
      orderBook
        .filter((line) => line.way === way)
        .reduce(
          (all, { species }) =>
            all +
            Math.ceil(
              ofSpecies(species, toStick) / (waysOf('Places in one', way) * (1 - waysOf('Places left empty', way))),
            ),
          0,
        )
    for (const way of ['Peat, coir and perlite', 'Vermiculite', 'Premix']) {
      expect(at('Ways', 'Vessels, trays, beds, sheets', columnOf[way]!), way).toBe(traysOf(way))
    }
  })

  it('costs a litre of each own blend as by hand', () => {
    for (const column of ['D', 'E']) {
      expect(relative(at('Blends', 'Cost of a finished litre', column), blendCost(column))).toBeLessThan(1e-9)
    }
  })

  it('costs a cutting and a saleable liner of each way as by hand', () => {
    for (const [way, column] of Object.entries(columnOf)) {
      expect(relative(at('Ways', 'Rooting cost', column, 'EUR a cutting'), costPerCutting(way)), way).toBeLessThan(1e-9)
      expect(relative(at('Ways', 'Rooting cost', column, 'EUR a saleable liner'), costPerLiner(way)), way).toBeLessThan(
        1e-9,
      )
    }
  })

  it('shows what the medium alone costs a saleable liner, the sand over the rounds of its bed without interest', () => {
    const piece = pieceOf('Sand bed')
    const sand = piece.first - reuse('First cost', 'E') * bedArea()
    const ofBed = (sand + piece.later * (piece.rounds - 1)) / piece.rounds / piece.places
    const medium = (way: string) =>
      way === 'Sand bed' ? ofBed : way === 'Rockwool' ? sheetPrice() / places(way) : mediumIn(way)
    for (const [way, column] of Object.entries(columnOf)) {
      expect(relative(at('Ways', 'Of that, the medium', column), medium(way) / overall(way)), way).toBeLessThan(1e-9)
    }
  })

  it('charges every order line its cuttings at the cost of its way, to the cent, so that the total is the sum of what is shown', () => {
    const cents = orderBook.reduce(
      (all, { species, way }) => all + Math.round(ofSpecies(species, toStick) * costPerCutting(way) * 100),
      0,
    )
    expect(at('Season', 'Rooting cost of the season', 'B')).toBeCloseTo(cents / 100, 9)
  })

  it('says beside the species that water suits easy plants only', () => {
    const inWater = orderBook.filter(({ way }) => way === 'Water')
    expect(inWater.length).toBeGreaterThan(0)
    for (const { species } of inWater) expect(shown('Orders', species, 'D'), species).toBe('Easy plants only')
  })

  it('ranks all six ways on one footing, each with its cash and the round from which it beats the cheapest single use', () => {
    const cuttings = typed('Compare', 'Cuttings in a round', 'B')
    const singleUse = Math.min(...ways.filter((way) => pieceOf(way).rounds === 1).map((way) => costPerLiner(way)))
    const expected = [...ways]
      .sort((one, other) => costPerLiner(one) - costPerLiner(other))
      .map((way) => {
        const piece = pieceOf(way)
        const from = firstRound(piece.rounds, (rounds) => costPerLiner(way, rounds) <= singleUse)
        return {
          way,
          figures: [
            (levelCost(piece, piece.rounds) * cuttings) / piece.places,
            costPerCutting(way),
            costPerLiner(way),
            (piece.first / piece.places + everyRound(way)) * cuttings,
          ],
          from: piece.rounds === 1 ? 'single use' : (from ?? `not in ${piece.rounds} rounds`),
        }
      })
    const found = tableOf('Compare', 'name', 'ABCDEF').map(([way, ...rest]) => ({
      way,
      figures: rest.slice(0, 4) as number[],
      from: rest[4],
    }))
    expect(found.map(({ way, from }) => ({ way, from }))).toEqual(expected.map(({ way, from }) => ({ way, from })))
    found.forEach(({ way, figures }, row) =>
      figures.forEach((figure, column) => {
        expect(relative(figure, expected[row]!.figures[column]!), `${way}, figure ${column + 1}`).toBeLessThan(1e-9)
      }),
    )
    expect(shown('Season', 'Cheapest way of rooting')).toBe(expected[0]!.way)
    expect(shown('Compare', 'Single use compared with')).toBe(expected.find(({ from }) => from === 'single use')!.way)
    expect(at('Season', 'It beats single use from round', 'B')).toBe(expected[0]!.from)
    expect(relative(at('Season', 'Dearer by', 'B'), expected[1]!.figures[2]! - expected[0]!.figures[2]!)).toBeLessThan(
      1e-6,
    )
  })

  it('says the first round from which reuse is no dearer than single use, as trying every round by hand says', () => {
    const tray = washedTray('Vermiculite')
    const thinTray = levelCost(
      { ...tray, first: price('Thin tray, single use'), endValue: -price('Thin tray, disposal'), later: 0, lost: 0 },
      1,
    )
    expect(at('Season', 'Washed tray instead of a thin tray', 'B')).toBe(
      firstRound(tray.rounds, (rounds) => levelCost(tray, rounds) <= thinTray),
    )
    const instead = (reusable: string, single: string) =>
      firstRound(pieceOf(reusable).rounds, (rounds) => costPerLiner(reusable, rounds) <= costPerLiner(single)) ??
      'not in its life'
    expect(shown('Season', 'Own mix instead of premix')).toBe(instead('Peat, coir and perlite', 'Premix'))
    expect(shown('Season', 'Sand bed instead of rockwool')).toBe(instead('Sand bed', 'Rockwool'))
    expect(shown('Season', 'Water in vessels instead of rockwool')).toBe(instead('Water', 'Rockwool'))
  })

  it('shows the same level cost on Reuse as on Ways', () => {
    for (const [column, way] of [
      ['D', 'Peat, coir and perlite'],
      ['E', 'Sand bed'],
      ['F', 'Water'],
    ] as const) {
      expect(relative(at('Reuse', 'Level cost over its whole life', column), costPerCutting(way)), way).toBeLessThan(
        1e-9,
      )
    }
  })

  it('follows a washed tray through its rounds in the ledger', () => {
    const tray = washedTray('Vermiculite')
    const ledger = tableOf('Reuse', 'round', 'ABCDEF')
    expect(ledger.map(([round]) => round)).toEqual(Array.from({ length: tray.rounds }, (_, index) => index + 1))
    for (const [round, inUse, outlay, , , level] of ledger as readonly (readonly number[])[]) {
      expect(relative(inUse!, (1 - tray.lost) ** (round! - 1))).toBeLessThan(1e-9)
      expect(relative(outlay!, round === 1 ? tray.first : tray.later * inUse!)).toBeLessThan(1e-9)
      expect(relative(level!, levelCost(tray, round!))).toBeLessThan(1e-9)
    }
  })

  it('names the species whose way of rooting is misspelt', async () => {
    const misspelt = (cell: Cell | undefined) =>
      cell?.value === 'Vermiculite' && cell.look === 'input' ? { ...cell, value: 'Vermiculit' } : cell
    const sheets = book.sheets.map((sheet) =>
      sheet.name === 'Orders' ? { ...sheet, rows: sheet.rows.map((row) => row.map(misspelt)) } : sheet,
    )
    const orders = (await calculateBook({ ...book, sheets })).sheets.find(({ name }) => name === 'Orders')!
    expect([...orders.cells.values()].map(({ value }) => value)).toContain(
      'The way of rooting of Dahlia is not on Ways: type it as one of the six is written there.',
    )
  })

  it('finds no rate left blank, no cutting, tray or difference uncounted, and every way of rooting known', () => {
    for (const check of [
      'Cuttings that no way counts',
      'Rates left blank',
      'Trays outside the periods',
      'Difference left unexplained',
    ]) {
      expect(at('Season', check, 'B'), check).toBe(0)
    }
    expect(
      [...sheetOf('Orders').values()].some(({ value }) => value === 'Every way of rooting is one of the six on Ways.'),
    ).toBe(true)
  })

  /** Loose litres that the season takes of a medium, from the pieces set up and the typed measures. */
  function litresOf(product: string): number {
    const filled = (way: string, settledLitres: number) =>
      (at('Ways', 'Vessels, trays, beds, sheets', columnOf[way]!) * settledLitres) /
      (1 - waysOf('Settling', way)) /
      (1 - waysOf('Spilt while filling', way))
    if (product === 'Vermiculite')
      return filled(product, (waysOf('Places in one', product) * squareCell(product)) / 1000)
    if (product === 'Premix') return filled(product, (waysOf('Places in one', product) * roundCell(product)) / 1000)
    if (product === 'Sharp sand')
      return filled(
        'Sand bed',
        1000 *
          waysOf('Bed, inside length', 'Sand bed') *
          waysOf('Bed, inside width', 'Sand bed') *
          waysOf('Bed, depth once settled', 'Sand bed'),
      )
    const way = 'Peat, coir and perlite'
    const finished = filled(way, (waysOf('Places in one', way) * squareCell(way)) / 1000)
    const inBlend = (column: string, share: number) => {
      const components =
        (finished * share * typed('Blends', 'Test mix: components before mixing', column)) /
        typed('Blends', 'Test mix: finished mix', column)
      const parts = ['Peat', 'Coir', 'Perlite', 'Sharp sand'].reduce(
        (sum, other) => sum + typed('Blends', other, column),
        0,
      )
      return (components * typed('Blends', product, column)) / parts
    }
    return inBlend('D', 1 - coirShare()) + inBlend('E', coirShare())
  }

  it('buys of every medium the whole packs that ways and blends take together, less the stock', () => {
    for (const {
      product,
      expansion,
      waste,
      onHand,
      orderMultiple,
      leastOrder,
      size,
      unit,
      measured,
      litresPerKg,
      density,
      waterShare,
    } of priceList) {
      const litresInSize =
        measured === 'by weight'
          ? (1 - waterShare!) / (density / 1000)
          : (litresPerKg ?? (unit === 'ft3' ? 28.316846592 : 1))
      const need = litresOf(product) / (1 - waste)
      const packs = Math.ceil((need - onHand) / (size * litresInSize * expansion))
      expect(relative(at('Buying', product, 'H'), need), product).toBeLessThan(1e-9)
      expect(at('Buying', product, 'C'), product).toBe(
        Math.ceil(Math.max(packs, leastOrder) / orderMultiple) * orderMultiple,
      )
    }
  })

  it('leaves no medium short and buys no whole order unit too many', () => {
    for (const { product, orderMultiple, leastOrder } of priceList) {
      const bought = at('Buying', product, 'C')
      const leftOver = at('Buying', product, 'O')
      expect(leftOver, product).toBeGreaterThanOrEqual(0)
      expect(bought === leastOrder || leftOver < (at('Buying', product, 'N') / bought) * orderMultiple, product).toBe(
        true,
      )
    }
  })

  it('adds the buying list up from costs that are rounded to the cent', () => {
    const pieces = [
      'Rockwool blocks, sheets',
      'Trays, washed and used again',
      'Thin trays, single use',
      'Vessels for water',
      'Bed frames, m2',
    ]
    const sum = [...priceList.map(({ product }) => product), ...pieces].reduce(
      (all, line) => all + Math.round(at('Buying', line, 'C') * at('Buying', line, 'D') * 100),
      0,
    )
    expect(at('Season', 'Buying list, everything', 'B')).toBeCloseTo(sum / 100, 9)
  })

  it('orders the cheapest packs that cover the need, as trying every order by hand says', () => {
    const lines = book.sheets
      .find(({ name }) => name === 'Offers')!
      .rows.slice(6, 9)
      .map((row) => row.slice(0, 9).map((cell) => cell?.value))
    const needed = at('Offers', 'Needed', 'B')
    const most = lines.map(([, , litres, , , , available]) =>
      Math.min(Math.ceil(needed / (litres as number)) + 2, (available as number | undefined) ?? Infinity),
    )
    const costOf = (counts: readonly number[]) => {
      const packs = counts.reduce((sum, count, index) => {
        const [, , , each, from, then] = lines[index]! as number[]
        return sum + count * (from !== undefined && count >= from ? then! : each!)
      }, 0)
      const used = new Map(
        counts.flatMap((count, index) => (count > 0 ? [[lines[index]![1], lines[index]![8] as number] as const] : [])),
      )
      return packs + [...used.values()].reduce((sum, delivery) => sum + delivery, 0)
    }
    let least = Infinity
    for (let one = 0; one <= most[0]!; one++)
      for (let two = 0; two <= most[1]!; two++)
        for (let three = 0; three <= most[2]!; three++) {
          const counts = [one, two, three]
          const allowed = counts.every((count, index) => count % (lines[index]![7] as number) === 0)
          const litres = counts.reduce((sum, count, index) => sum + count * (lines[index]![2] as number), 0)
          if (allowed && litres >= needed) least = Math.min(least, costOf(counts))
        }
    expect(at('Offers', 'The order below', 'B')).toBeCloseTo(least, 9)
    expect(at('Season', 'Saved by the cheapest order', 'B')).toBeGreaterThan(0)
  })

  it('orders over the sticking weeks at the least cost, as trying every set of delivery dates by hand says', () => {
    const periods = [1, 2, 3, 4, 5].map((period) => ({
      needed: at('Timing', `Period ${period}`, 'E'),
      price: typed('Timing', `Period ${period}`, 'F'),
    }))
    const [freight, room, stock] = [
      typed('Timing', 'Freight of a delivery', 'B'),
      typed('Timing', 'Room for a pack', 'B'),
      at('Timing', 'Packs in stock', 'B'),
    ]
    let left = stock
    const net = periods.map(({ needed }) => {
      const fromStock = Math.min(left, needed)
      left -= fromStock
      return needed - fromStock
    })
    const inStock = (period: number) =>
      Math.max(stock - periods.slice(0, period + 1).reduce((sum, { needed }) => sum + needed, 0), 0)
    const costOf = (dates: readonly boolean[]) =>
      net.reduce(
        (sum, needed, period) => {
          if (needed === 0) return sum
          // Each need comes with the delivery that is cheapest for it, freight apart.
          const each = dates.flatMap((orders, date) =>
            orders && date <= period ? [periods[date]!.price + room * (period - date)] : [],
          )
          return sum + needed * Math.min(Infinity, ...each)
        },
        dates.filter(Boolean).length * freight + periods.reduce((sum, _, period) => sum + room * inStock(period), 0),
      )
    const sets = Array.from({ length: 2 ** periods.length }, (_, bits) =>
      periods.map((_, period) => (bits >> period) % 2 === 1),
    )
    const least = Math.min(...sets.map(costOf))
    const plan = tableOf('Timing', 'period', 'ABCD')
    const total = plan
      .filter(([period]) => typeof period === 'number')
      .reduce((sum, [, , , cost]) => sum + (cost as number), 0)
    expect(total).toBeCloseTo(least, 9)
  })

  it('counts the delivery of a pack once on Timing: by the order, and not in the price of the pack too', () => {
    const {
      price: listed,
      delivery,
      onHand,
      size,
    } = priceList.find(({ product }) => product === shown('Timing', 'Way of rooting'))!
    expect(delivery).toBeGreaterThan(0)
    expect(typed('Timing', 'Period 1', 'F')).toBe(listed)
    expect(at('Timing', 'Packs in stock', 'B')).toBe(Math.floor(onHand / size))
  })

  it('sticks no more than pays where a missing and a spare liner are both counted', () => {
    expect(at('Batches', 'So stick more, or fewer', 'B')).toBe(
      at('Batches', 'Stick, so that it pays best', 'B') - ofSpecies('Lavandula', toStick),
    )
  })

  /** Cost of a liner over its stages, by carrying what was spent forward through the losses. */
  function floorPrice(): number {
    const way = 'Premix'
    const pot =
      price('Pot, square, 8 cm') +
      (typed('Quote', 'Volume of a pot', 'B') /
        1000 /
        (1 - typed('Quote', 'Settling', 'B')) /
        (1 - typed('Quote', 'Spilt while filling', 'B'))) *
        blendCost('D')
    const growingOn =
      typed('Quote', 'Growing on', 'B') +
      hour() / typed('Quote', 'Growing on', 'C') +
      (typed('Quote', 'Growing on', 'E') * typed('Season', 'Bench', 'B')) /
        typed('Season', 'Bench or floor in use', 'B') /
        typed('Quote', 'Growing on', 'F')
    const alive = typed('Quote', 'Growing on', 'I')
    const stages = [
      { cost: costPerCutting(way), survive: waysOf('Strike rate', way) },
      { cost: pot + hour() / typed('Quote', 'Potting on', 'C'), survive: waysOf('Potting-on rate', way) },
      { cost: growingOn, survive: alive },
      {
        cost: price('Label') + hour() / typed('Quote', 'Grading', 'C'),
        survive: waysOf('Grade-out rate', way) / alive,
      },
    ]
    return stages.reduce((spent, { cost, survive }) => (spent + cost) / survive, 0)
  }

  it('quotes prices that keep the margin over the floor, and names the orders that would cost more than a larger one', () => {
    const floor = floorPrice()
    expect(relative(at('Season', 'Floor: cost of a saleable liner', 'B'), floor)).toBeLessThan(1e-9)
    const cents = (amount: number) => Math.ceil(amount * 100 - 1e-9) / 100
    expect(at('Season', 'Price at the margin wanted', 'B')).toBe(
      cents(floor / (1 - typed('Quote', 'Margin wanted', 'B'))),
    )
    const tiers = [...'BCDEF'].map((column) => {
      const quantity = typed('Quote', 'Order of so many liners', column)
      const own = floor + typed('Quote', 'Paid once an order', 'B') / quantity
      return { quantity, own, each: cents(own / (1 - typed('Quote', 'Margin, share of the price', column))) }
    })
    const found = tableOf('Quote', 'quantity', 'ABCDEFG')
    expect(found).toHaveLength(tiers.length)
    tiers.forEach(({ quantity, own, each }, index) => {
      const [shownQuantity, shownEach, total, margin, markup, least, warning] = found[index]!
      expect([shownQuantity, shownEach]).toEqual([quantity, each])
      expect(total).toBeCloseTo(quantity * each, 9)
      expect(margin).toBeCloseTo(1 - own / each, 9)
      expect(markup).toBeCloseTo(each / own - 1, 9)
      expect(least).toBeCloseTo(own, 9)
      const next = tiers[index + 1]
      const dearer =
        next === undefined
          ? []
          : Array.from({ length: next.quantity - quantity }, (_, more) => quantity + more).filter(
              (order) => order * each > next.quantity * next.each + 1e-9,
            )
      expect(warning).toBe(
        dearer.length === 0 ? 'none' : `${dearer[0]} to ${dearer.at(-1)} cost more than ${next!.quantity}`,
      )
    })
    expect(at('Season', 'Quantities with a warning', 'B')).toBeGreaterThan(0)
  })

  it('tells what is left of an order that asks for less, and what may come off at most', () => {
    const cents = (amount: number) => Math.ceil(amount * 100 - 1e-9) / 100
    const liners = typed('Quote', 'Liners of the order', 'B')
    const breakReached = [...'BCDEF']
      .filter((column) => typed('Quote', 'Order of so many liners', column) <= liners)
      .at(-1)!
    const perOrder = typed('Quote', 'Paid once an order', 'B')
    const listed = cents(
      (floorPrice() + perOrder / typed('Quote', 'Order of so many liners', breakReached)) /
        (1 - typed('Quote', 'Margin, share of the price', breakReached)),
    )
    expect(at('Quote', 'Price listed for so many', 'B')).toBe(listed)
    const asked = cents(listed * (1 - typed('Quote', 'Asked to come off', 'B')))
    expect(at('Quote', 'Price with that off', 'B')).toBe(asked)
    const floor = floorPrice() + perOrder / liners
    expect(at('Season', 'Margin it would leave', 'B')).toBeCloseTo((asked - floor) / asked, 9)
    expect(at('Quote', 'Left of the whole order', 'B')).toBeCloseTo(liners * (asked - floor), 6)
    const least = cents(floor / (1 - typed('Quote', 'Least margin', 'B')))
    expect(at('Quote', 'Most that can come off', 'B')).toBeCloseTo((listed - least) / listed, 9)
    expect(asked).toBeLessThan(least)
    expect(shown('Season', 'The order that asks for less')).toBe(`Offer ${least.toFixed(2)}`)
  })

  it('says what each doubt alone does to a saleable liner, and keeps the odds between the best and the worst of them', () => {
    const way = shown('Risk', 'Way of rooting') as string
    const swings = tableOf('Risk', 'argument', 'ABCDEFG')
    const moved = (argument: string, end: 'atLow' | 'atHigh') =>
      swings.find(([name]) => name === argument)![end === 'atLow' ? 3 : 5] as number
    const doubts = book.sheets.find(({ name }) => name === 'Risk')!.rows
    const doubt = (argument: string, column: number) =>
      doubts.find((row) => row[0]?.value === argument)![column]!.value as number
    const lower = (argument: string) => doubt(argument, 3)
    const higher = (argument: string) => doubt(argument, 4)
    const perCutting = costPerCutting(way)
    expect(relative(moved('yield', 'atLow'), perCutting / overall(way) / (1 - lower('yield')))).toBeLessThan(1e-9)
    expect(
      relative(
        moved('otherCostPerCutting', 'atHigh'),
        (perCutting + everyRound(way) * higher('otherCostPerCutting')) / overall(way),
      ),
    ).toBeLessThan(1e-9)
    expect(
      relative(moved('rounds', 'atLow'), costPerLiner(way, Math.round(pieceOf(way).rounds * (1 - lower('rounds'))))),
    ).toBeLessThan(1e-9)
    const widths = swings.map(([, , , , , , swing]) => swing as number)
    expect(widths).toEqual([...widths].sort((one, other) => other - one))
    const odds = tableOf('Risk', 'share of draws', 'IJ')
      .filter(([share]) => typeof share === 'number')
      .map(([, cost]) => cost as number)
    expect(odds).toEqual([...odds].sort((one, other) => one - other))
    expect(at('Season', 'In 90% of draws it costs at most', 'B')).toBeGreaterThan(costPerLiner(way))
  })

  it('splits what was spent beyond the standard into price and usage, to the cent', () => {
    const packs = (product: string) => {
      const { size, unit, expansion, waste } = priceList.find((medium) => medium.product === product)!
      return Math.ceil(litresOf(product) / (1 - waste) / (size * (unit === 'ft3' ? 28.316846592 : 1) * expansion))
    }
    const listed = (product: string) => {
      const { price: each, delivery } = priceList.find((medium) => medium.product === product)!
      return each + delivery
    }
    const hours = ways.reduce(
      (sum, way) => sum + at('Ways', 'Cuttings to stick', columnOf[way]!) / waysOf('Stuck in an hour', way),
      0,
    )
    const standards: Readonly<Record<string, readonly [quantity: number, price: number]>> = {
      Cuttings: [
        orderBook.reduce((all, { species }) => all + ofSpecies(species, toStick), 0),
        typed('Season', 'The cutting itself', 'B'),
      ],
      'Sticking labour': [Math.ceil(hours), Math.round(hour() * 100) / 100],
      Premix: [packs('Premix'), listed('Premix')],
      Peat: [packs('Peat'), listed('Peat')],
      Vermiculite: [packs('Vermiculite'), listed('Vermiculite')],
    }
    const cents = (amount: number) => Math.round(amount * 100)
    const review = sheetOf('Review')
    let [spent, allowed] = [0, 0]
    for (const [item, [standardQuantity, standardPrice]] of Object.entries(standards)) {
      const [summary, block] = [...review]
        .filter(([address, { value }]) => /^A\d+$/.test(address) && value === item)
        .map(([address]) => Number(address.slice(1)))
      const cell = (column: string, row: number) => review.get(`${column}${row}`)!.value as number
      expect(cell('B', block! + 1), item).toBe(standardQuantity)
      expect(cell('C', block! + 1), item).toBeCloseTo(standardPrice, 9)
      const [quantity, paid] = [cell('B', block! + 2), cell('C', block! + 2)]
      expect(cents(cell('D', summary!)), item).toBe(cents((paid - standardPrice) * quantity))
      expect(cents(cell('E', summary!)), item).toBe(cents((quantity - standardQuantity) * standardPrice))
      expect(cents(cell('F', summary!)), item).toBe(cents(cell('D', summary!)) + cents(cell('E', summary!)))
      spent += cents(quantity * paid)
      allowed += cents(standardQuantity * standardPrice)
    }
    expect(cents(at('Season', 'Spent beyond the standard', 'B'))).toBe(spent - allowed)
  })

  describe('with one input spoilt', () => {
    /** The demo with something else, or nothing, typed into one box. */
    async function withInput(
      sheetName: string,
      label: string,
      column: string,
      value: number | string | undefined,
    ): Promise<OpenBook> {
      let changed = 0
      const sheets = book.sheets.map((sheet) =>
        sheet.name !== sheetName
          ? sheet
          : {
              ...sheet,
              rows: sheet.rows.map((row) =>
                row.map((cell, index) => {
                  if (row[0]?.value !== label || index !== column.charCodeAt(0) - 65 || cell?.look !== 'input')
                    return cell
                  changed += 1
                  const { value: _was, ...box } = cell
                  return value === undefined ? box : { ...box, value }
                }),
              ),
            },
      )
      expect(changed, `${sheetName}, ${label}, ${column}`).toBe(1)
      return await calculateBook({ ...book, sheets })
    }

    function figure({ sheets }: OpenBook, sheetName: string, label: string, column = 'B') {
      return sheets.find(({ name }) => name === sheetName)!.cells.get(`${column}${rowOf(sheetName, label)}`)!
    }

    const notMet = 'Not all checks at the foot of this sheet are met. Until they are, do not trust the figures.'
    const saysNotMet = ({ sheets }: OpenBook) =>
      [...sheets.find(({ name }) => name === 'Season')!.cells.values()].some(({ value }) => value === notMet)

    it('says at the top of Season that all checks are met while nothing is', () => {
      expect([...sheetOf('Season').values()].map(({ value }) => value)).toContain(
        'All checks at the foot of this sheet are met.',
      )
    })

    for (const [sheetName, label, column, value, figures] of [
      [
        'Orders',
        'Pelargonium',
        'B',
        'twelve',
        [
          ['Review', 'All five', 'F'],
          ['Season', 'Spent beyond the standard'],
          ['Season', 'Most of it on'],
        ],
      ],
      [
        'Ways',
        'Grade-out rate',
        'G',
        0,
        [
          ['Season', 'Cheapest way of rooting'],
          ['Season', 'It beats single use from round'],
          ['Season', 'Dearer by'],
          ['Compare', 'Single use compared with'],
        ],
      ],
      [
        'Quote',
        'Margin, share of the price',
        'F',
        1,
        [
          ['Season', 'Price at the largest quantity quoted'],
          ['Season', 'Quantities with a warning'],
        ],
      ],
      [
        'Offers',
        'Bag 70 L, Hillside',
        'D',
        'ask',
        [
          ['Offers', 'The order below'],
          ['Season', 'Saved by the cheapest order'],
        ],
      ],
      [
        'Blends',
        'Share of the litres of that way',
        'E',
        1.2,
        [
          ['Buying', 'Perlite', 'E'],
          ['Season', 'Buying list, everything'],
        ],
      ],
    ] as const) {
      it(`shows the error of a table in every figure that reads it: ${sheetName}, ${label}`, async () => {
        const spoilt = await withInput(sheetName, label, column, value)
        for (const [where, what, which] of figures)
          expect(errorOf(figure(spoilt, where, what, which)), `${where}, ${what}`).toBeDefined()
      })
    }

    for (const [sheetName, label, column, figures] of [
      [
        'Prices',
        'Rockwool blocks, price of a carton',
        'D',
        [
          ['Season', 'Cheapest way of rooting'],
          ['Season', 'Buying list, everything'],
          ['Season', 'Rooting cost of the season'],
        ],
      ],
      [
        'Prices',
        'Thin tray, single use',
        'D',
        [
          ['Season', 'Cheapest way of rooting'],
          ['Season', 'Buying list, everything'],
          ['Season', 'Floor: cost of a saleable liner'],
        ],
      ],
      [
        'Prices',
        'Premix',
        'D',
        [
          ['Season', 'Buying list, everything'],
          ['Season', 'Spent beyond the standard'],
        ],
      ],
      ['Prices', 'Label', 'D', [['Season', 'Floor: cost of a saleable liner']]],
      [
        'Reuse',
        'First cost',
        'C',
        [
          ['Season', 'Cheapest way of rooting'],
          ['Season', 'Buying list, everything'],
          ['Season', 'Rooting cost of the season'],
        ],
      ],
      [
        'Season',
        'The cutting itself',
        'B',
        [
          ['Season', 'Cheapest way of rooting'],
          ['Season', 'Floor: cost of a saleable liner'],
          ['Season', 'Spent beyond the standard'],
        ],
      ],
      [
        'Season',
        'Bench',
        'B',
        [
          ['Season', 'Cheapest way of rooting'],
          ['Season', 'Floor: cost of a saleable liner'],
        ],
      ],
    ] as const) {
      it(`takes nothing as bought for nothing where a price is left blank: ${label}`, async () => {
        const spoilt = await withInput(sheetName, label, column, undefined)
        for (const [where, what] of figures)
          expect(errorOf(figure(spoilt, where, what)), `${where}, ${what}`).toBeDefined()
        expect(figure(spoilt, 'Season', 'Prices left blank').value).toBe(1)
        expect(saysNotMet(spoilt)).toBe(true)
      })
    }

    it('counts a blank rate as missing and not as nothing lost, on Orders and on Ways', async () => {
      const onOrders = await withInput('Orders', 'Pelargonium', 'K', undefined)
      expect(figure(onOrders, 'Orders', 'Pelargonium', toStick).sentence).toContain('rate missing')
      for (const what of ['Cuttings to stick', 'Rooting cost of the season', 'Buying list, everything'])
        expect(errorOf(figure(onOrders, 'Season', what)), what).toBeDefined()
      const onWays = await withInput('Ways', 'Strike rate', 'G', undefined)
      for (const what of ['Cheapest way of rooting', 'Its rooting cost'])
        expect(errorOf(figure(onWays, 'Season', what)), what).toBeDefined()
      expect([onOrders, onWays].map(saysNotMet)).toEqual([true, true])
    })

    it('says so at the top of Season where a check is not met, though every figure has a value', async () => {
      expect(saysNotMet(await withInput('Timing', 'First week', 'B', 12))).toBe(true)
      expect(saysNotMet(await withInput('Season', 'Bench or floor in use', 'B', undefined))).toBe(true)
      expect(saysNotMet(await withInput('Ways', 'Rooting hormone', 'G', undefined))).toBe(true)
    })

    it('takes the price of the quantity that an order reaches, in whatever order the quantities stand, and says where it reaches none', async () => {
      const quantities = [5_000, 500, 1_000, 2_500, 250]
      const margins = [0.28, 0.38, 0.34, 0.31, 0.42]
      const turned = book.sheets.map((sheet) =>
        sheet.name !== 'Quote'
          ? sheet
          : {
              ...sheet,
              rows: sheet.rows.map((row) =>
                row.map((cell, index) => {
                  if (row[0]?.value === 'Order of so many liners' && index > 0)
                    return { ...cell, value: quantities[index - 1]! }
                  return row[0]?.value === 'Margin, share of the price' && index > 0
                    ? { ...cell, value: margins[index - 1]! }
                    : cell
                }),
              ),
            },
      )
      expect(figure(await calculateBook({ ...book, sheets: turned }), 'Quote', 'Price listed for so many').value).toBe(
        at('Quote', 'Price listed for so many', 'B'),
      )
      expect(
        figure(await withInput('Quote', 'Liners of the order', 'B', 100), 'Season', 'The order that asks for less')
          .value,
      ).toBe('Fewer than any quantity above')
    })

    it('says what is wrong where growing on loses more than the grade-out that it is a part of', async () => {
      expect(
        figure(await withInput('Quote', 'Growing on', 'I', 0.9), 'Quote', 'Floor: cost of a liner').sentence,
      ).toContain('growing on loses more than grade-out')
    })

    it('names nothing as most adverse where all was saved', async () => {
      const rows = book.sheets.find(({ name }) => name === 'Review')!.rows
      const saved = rows.map((row) => row.map((cell) => (cell?.look === 'input' ? { ...cell, value: 0 } : cell)))
      const calculatedAnew = await calculateBook({
        ...book,
        sheets: book.sheets.map((sheet) => (sheet.name === 'Review' ? { ...sheet, rows: saved } : sheet)),
      })
      expect(figure(calculatedAnew, 'Season', 'Most of it on').value).toBe('nothing is adverse')
    })
  })

  it('sends a bed of wet sand that no usual bench bears to the ground', () => {
    expect(at('Ways', 'Load of the bed', 'F')).toBeGreaterThan(at('Ways', 'Bench limit', 'F', 'kg a m2'))
    expect([...sheetOf('Ways').values()].some(({ value }) => value === 'on the ground')).toBe(true)
  })
})
