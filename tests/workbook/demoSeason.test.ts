import { tokenize, tokenTypes } from '@borgar/fx'
import binomialCdf from '@stdlib/stats-base-dists-binomial-cdf'
import { beforeAll, describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import type { Cell } from '../../src/workbook/book'
import type { CalculatedBook } from '../../src/workbook/calculated'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { orderBook } from '../../src/workbook/season/orderBook'
import { priceList } from '../../src/workbook/season/priceList'
import { calculateBook } from '../../src/workbench/engine/calculate'

const book = demoSeason()
const cells = book.sheets.flatMap((sheet) => sheet.rows.flatMap((row, rowIndex) => row.flatMap((cell, column) => (
  cell === undefined ? [] : [{ cell, place: `${sheet.name}!${String.fromCharCode(65 + column)}${rowIndex + 1}` }]
))))
const formulas = cells.flatMap(({ cell, place }) => (cell.formula === undefined ? [] : [{ formula: cell.formula, place }]))

interface Call { readonly id: string; readonly arguments: number }

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
    expect(cells.filter(({ cell }) => typeof cell.value === 'number' && cell.look !== 'input').map(({ place }) => place)).toEqual([])
  })

  it('has no formula in a cell that is marked as an input, and no cell with both a value and a formula', () => {
    const wrong = ({ look, formula, value }: Cell) => formula !== undefined && (look === 'input' || value !== undefined)
    expect(cells.filter(({ cell }) => wrong(cell)).map(({ place }) => place)).toEqual([])
  })

  it('hides no assumption in a formula: the only numbers there are 0, 1 and the 2 places of a cent', () => {
    const numbers = formulas.flatMap(({ formula, place }) => tokenize(formula)
      .filter(({ type }) => type === tokenTypes.NUMBER).map(({ value }) => ({ value, place, rounds: formula.startsWith('=ROUND(') })))
    expect(numbers.length).toBeGreaterThan(0)
    expect(numbers.filter(({ value, rounds }) => !['0', '1', ...(rounds ? ['2'] : [])].includes(value))).toEqual([])
  })

  it('calls functions of the catalogue only, each with as many arguments as it takes', () => {
    const calls = formulas.flatMap(({ formula, place }) => callsIn(formula).map((call) => ({ ...call, place })))
    expect(calls.length).toBeGreaterThan(100)
    const wrong = calls.filter((call) => {
      const parameters = Object.values(catalogue.find(({ id }) => id === call.id)?.parameters ?? {})
      return call.arguments < parameters.filter(({ optional }) => !optional).length || call.arguments > parameters.length
    })
    expect(wrong).toEqual([])
  })

  it('uses every function of the first season', () => {
    const used = new Set(formulas.flatMap(({ formula }) => callsIn(formula).map(({ id }) => id)))
    const first = ['UNITS', 'CELLVOLUME', 'ROUNDCELL', 'FILL', 'BEDFILL', 'BLOCKS', 'WATER', 'WEIGHTTOLITRES', 'BLENDCOST', 'BLENDPARTS', 'BLENDWEIGHT', 'PACKPRICE', 'BAGS', 'TRAYS', 'CUTTINGS', 'MEDIUMCOST', 'PERLINER', 'REUSECOST', 'BREAKEVEN']
    expect(first.filter((id) => !used.has(id))).toEqual([])
  })

  it('says at the top of every sheet that nursery and prices are invented', () => {
    const marks = book.sheets.map(({ rows }) => rows.slice(0, 3).some((row) => row.some((cell) => (
      cell?.look === 'caution' && cell.value === 'Invented nursery, invented prices: for demonstration only'
    ))))
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
    const functions = formulas.flatMap(({ formula }) => tokenize(formula).filter(({ type }) => type === tokenTypes.FUNCTION).map(({ value }) => value.toLowerCase()))
    expect(names.filter((name) => functions.includes(name) || /^[a-z]{1,3}\d+$/.test(name))).toEqual([])
  })

  it('gives every used column a width', () => {
    expect(book.sheets.filter(({ rows, widths }) => rows.some((row) => row.length > widths.length)).map(({ name }) => name)).toEqual([])
  })
})

describe('the demo season as it calculates', () => {
  let calculated: CalculatedBook

  beforeAll(async () => {
    calculated = await calculateBook(book)
  })

  const columnOf: Readonly<Record<string, string>> = { Water: 'C', 'Peat, coir and perlite': 'D', Vermiculite: 'E', 'Sand bed': 'F', Premix: 'G', Rockwool: 'H' }

  function sheetOf(name: string) {
    return calculated.sheets.find((sheet) => sheet.name === name)!.cells
  }

  /** Reads the line whose first cell says `label`, and, where two do, the one with that unit in its second cell. */
  function at(sheet: string, label: string, column: string, unit?: string): number {
    const lines = sheetOf(sheet)
    const found = [...lines].filter(([address, { value }]) => /^A\d+$/.test(address) && value === label)
      .map(([address]) => address.slice(1)).filter((row) => unit === undefined || lines.get(`B${row}`)?.value === unit)
    expect(found, `${sheet}, ${label}`).toHaveLength(1)
    const { value } = lines.get(`${column}${found[0]}`)!
    expect(typeof value, `${sheet}, ${label}, ${column}`).toBe('number')
    return value as number
  }

  /** The same for a figure that was typed, so that an oracle never leans on a result. */
  function typed(sheet: string, label: string, column: string, unit?: string): number {
    const value = at(sheet, label, column, unit)
    const written = book.sheets.find(({ name }) => name === sheet)!.rows
      .filter((row) => row[0]?.value === label && (unit === undefined || row[1]?.value === unit))
      .map((row) => row[column.charCodeAt(0) - 65])
    expect(written.map((cell) => cell?.look), `${sheet}, ${label}, ${column}`).toEqual(['input'])
    return value
  }

  const ofSpecies = (species: string, column: string) => at('Orders', species, column)
  const relative = (found: number, expected: number) => Math.abs(found - expected) / Math.abs(expected)
  const overall = (way: string) => ['Strike rate', 'Potting-on rate', 'Grade-out rate'].reduce((rate, stage) => rate * typed('Ways', stage, columnOf[way]!), 1)
  const waysOf = (label: string, way: string) => typed('Ways', label, columnOf[way]!)

  /** Price of a usable loose litre, by hand from the price list. */
  function litrePrice(product: string): number {
    const { price, delivery, size, unit, measured, litresPerKg, density, waterShare, expansion, waste } = priceList.find((medium) => medium.product === product)!
    const litresIn: Readonly<Record<string, number>> = { L: 1, ft3: 28.316846592 }
    const declared = measured === 'by volume' ? size * litresIn[unit]!
      : measured === 'by litres per kg' ? size * litresPerKg!
        : (size * (1 - waterShare!)) / (density / 1000)
    return (price + delivery) / (declared * expansion * (1 - waste))
  }

  /** Level cost by summing the flows of every round one by one, without the closed form of the function. */
  function levelCost(first: number, rounds: number, later: number, lost: number, endValue: number): number {
    const interest = typed('Season', 'Interest', 'B')
    const roundsPerYear = typed('Season', 'Rounds of cuttings', 'B')
    let paid = first
    let uses = 1
    let seen = 1
    for (let round = 2; round <= rounds; round++) {
      seen *= (1 - lost) / (1 + interest) ** (1 / roundsPerYear)
      paid += later * seen
      uses += seen
    }
    return (paid - endValue * seen * ((1 - lost) / (1 + interest) ** (1 / roundsPerYear))) / uses
  }

  const tray = () => levelCost(typed('Reuse', 'First cost', 'C'), typed('Reuse', 'Rounds it serves', 'C'), typed('Reuse', 'Washing or steaming', 'C'), typed('Reuse', 'Broken in a round', 'C'), typed('Reuse', 'Worth at the end', 'C'))

  function blendCost(column: string): number {
    const [main, other] = column === 'D' ? ['Peat', 'Perlite'] as const : ['Coir', 'Perlite'] as const
    const parts = [typed('Blends', main, column), typed('Blends', other, column)] as const
    const kept = typed('Blends', 'Test mix: finished mix', column) / typed('Blends', 'Test mix: components before mixing', column)
    const components = (parts[0] * litrePrice(main) + parts[1] * litrePrice(other)) / (parts[0] + parts[1])
    const added = typed('Blends', 'Lime, wetting agent, starter feed', column) + typed('Blends', 'Mixing labour', column) * typed('Season', 'Wage with on-costs', 'B')
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

  function inTrays(way: string, cell: number, price: number): number {
    const used = waysOf('Places in one', way) * (1 - waysOf('Places left empty', way))
    const looseLitres = cell / 1000 / (1 - waysOf('Settling', way)) / (1 - waysOf('Spilt while filling', way))
    return (looseLitres * price) / (1 - waysOf('Places left empty', way)) + tray() / used + waysOf('Labour that differs between the ways', way)
  }

  /** Sand and frame of one square metre of bed: first cost, and what each later round pays. */
  function bed() {
    const litres = (1000 * waysOf('Bed, depth once settled', 'Sand bed')) / (1 - waysOf('Settling', 'Sand bed')) / (1 - waysOf('Spilt while filling', 'Sand bed'))
    const sand = litres * litrePrice('Sharp sand')
    return {
      first: sand + typed('Reuse', 'First cost', 'E'),
      later: typed('Reuse', 'Washing or steaming', 'F') + typed('Reuse', 'Topped up', 'F') * sand,
      endValue: typed('Reuse', 'Worth at the end', 'E'),
      rounds: typed('Reuse', 'Rounds it serves', 'E'),
      places: waysOf('Bed, cuttings stuck', 'Sand bed') * (1 - waysOf('Places left empty', 'Sand bed')),
    }
  }

  function costPerCutting(way: string): number {
    const labour = waysOf('Labour that differs between the ways', way)
    const used = (places: number) => places * (1 - waysOf('Places left empty', way))
    switch (way) {
      case 'Water': {
        const fillings = Math.ceil(waysOf('Days until rooted', way) / waysOf('Days between changes of the water', way))
        const water = (waysOf('Vessel, water in it', way) * fillings * typed('Prices', 'Mains water', 'D')) / 1000
        const vessel = levelCost(typed('Reuse', 'First cost', 'D'), typed('Reuse', 'Rounds it serves', 'D'), typed('Reuse', 'Washing or steaming', 'D'), typed('Reuse', 'Broken in a round', 'D'), 0)
        return (water + vessel) / used(waysOf('Places in one', way)) + labour
      }
      case 'Peat, coir and perlite': return inTrays(way, squareCell(way), (1 - coirShare()) * blendCost('D') + coirShare() * blendCost('E'))
      case 'Vermiculite': return inTrays(way, squareCell(way), litrePrice('Vermiculite'))
      case 'Sand bed': {
        const { first, later, endValue, rounds, places } = bed()
        return levelCost(first, rounds, later, 0, endValue) / places + labour
      }
      case 'Premix': return inTrays(way, roundCell(way), litrePrice('Premix'))
      default: {
        const sheet = (typed('Prices', 'Rockwool blocks, price of a carton', 'D') + typed('Prices', 'Rockwool blocks, delivery', 'D')) / typed('Prices', 'Rockwool blocks, sheets in a carton', 'D')
        return sheet / used(waysOf('Places in one', way)) + labour
      }
    }
  }

  it('has no error in any cell and no refusal', () => {
    const errors = calculated.sheets.flatMap(({ name, cells }) => [...cells].filter(([, { error }]) => error !== undefined).map(([address]) => `${name}!${address}`))
    expect(errors).toEqual([])
    expect(calculated.refusals).toEqual([])
    for (const { place } of formulas) {
      const [sheet, address] = place.split('!') as [string, string]
      expect(sheetOf(sheet).has(address), place).toBe(true)
    }
  })

  it('sticks liners over rate, rounded up, where no confidence is asked for', () => {
    const lines = orderBook.filter(({ confidence }) => confidence === undefined)
    expect(lines.length).toBeGreaterThan(3)
    for (const { species, liners, strike, pottingOn, gradeOut } of lines) {
      expect(ofSpecies(species, 'M'), species).toBe(Math.ceil(liners / strike / pottingOn / gradeOut))
    }
  })

  it('sticks the least number with the confidence asked for, by the binomial tables of a statistics library', () => {
    const lines = orderBook.filter(({ confidence, batchSpread }) => confidence !== undefined && batchSpread === undefined)
    expect(lines.length).toBeGreaterThan(3)
    for (const { species, liners, strike, pottingOn, gradeOut, confidence } of lines) {
      const chance = (stuck: number) => 1 - binomialCdf(liners - 1, stuck, strike * pottingOn * gradeOut)
      const stuck = ofSpecies(species, 'M')
      expect(chance(stuck), species).toBeGreaterThanOrEqual(confidence! - 1e-9)
      expect(chance(stuck - 1), species).toBeLessThan(confidence!)
    }
  })

  it('adds the cuttings of the lines up, and the ways add up to the same', () => {
    const sum = orderBook.reduce((all, { species }) => all + ofSpecies(species, 'M'), 0)
    expect(at('Season', 'Cuttings to stick', 'B')).toBe(sum)
    expect(Object.values(columnOf).reduce((all, column) => all + at('Ways', 'Cuttings to stick', column), 0)).toBe(sum)
  })

  it('starts a new tray for every order line', () => {
    const traysOf = (way: string) => orderBook.filter((line) => line.way === way).reduce((all, { species }) => (
      all + Math.ceil(ofSpecies(species, 'M') / (waysOf('Places in one', way) * (1 - waysOf('Places left empty', way))))
    ), 0)
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
      expect(relative(at('Ways', 'Rooting cost', column, 'EUR a saleable liner'), costPerCutting(way) / overall(way)), way).toBeLessThan(1e-9)
      expect(at('Season', way, 'B')).toBe(at('Ways', 'Rooting cost', column, 'EUR a saleable liner'))
    }
  })

  it('spreads the sand over the rounds of the bed without interest, and shows the interest by itself', () => {
    const { first, later, rounds, places } = bed()
    const sand = first - typed('Reuse', 'First cost', 'E')
    const medium = (sand + later * (rounds - 1)) / rounds / places
    expect(relative(at('Ways', 'Medium', 'F', 'EUR a cutting'), medium)).toBeLessThan(1e-9)
    expect(relative(at('Ways', 'Interest on the sand', 'F'), levelCost(sand, rounds, later, 0, 0) / places - medium)).toBeLessThan(1e-9)
  })

  it('charges every order line its cuttings at the cost of its way', () => {
    const sum = orderBook.reduce((all, { species, way }) => all + ofSpecies(species, 'M') * costPerCutting(way), 0)
    expect(relative(at('Season', 'Rooting cost of the season', 'B'), sum)).toBeLessThan(1e-9)
  })

  it('names the way that is cheapest and the one that is dearest for each saleable liner', () => {
    const ranked = Object.keys(columnOf).sort((one, other) => costPerCutting(one) / overall(one) - costPerCutting(other) / overall(other))
    const shown = (label: string) => {
      const season = sheetOf('Season')
      const address = [...season.keys()].find((key) => season.get(key)?.value === label)!
      return season.get(address.replace('A', 'B'))?.value
    }
    expect([shown('Cheapest way'), shown('Dearest way')]).toEqual([ranked[0], ranked.at(-1)])
  })

  it('says the first round from which the bed is no dearer than premix, as trying every round by hand says', () => {
    const { first, later, endValue, rounds, places } = bed()
    const labour = waysOf('Labour that differs between the ways', 'Sand bed')
    const cutting = typed('Season', 'The cutting itself', 'B')
    const premix = (costPerCutting('Premix') + cutting) / overall('Premix')
    const pays = (tried: number) => (levelCost(first, tried, later, 0, endValue) / places + labour + cutting) / overall('Sand bed') <= premix
    const tries = Array.from({ length: rounds }, (_, index) => index + 1)
    expect(at('Season', 'Sand bed instead of premix in trays', 'B')).toBe(tries.find(pays))
  })

  it('says the first round from which a washed tray is no dearer than a thin one, as trying every round by hand says', () => {
    const pays = (tried: number) => levelCost(typed('Reuse', 'First cost', 'C'), tried, typed('Reuse', 'Washing or steaming', 'C'), typed('Reuse', 'Broken in a round', 'C'), typed('Reuse', 'Worth at the end', 'C')) <= typed('Reuse', 'Single use costs', 'C')
    const tries = Array.from({ length: 200 }, (_, index) => index + 1)
    expect(at('Season', 'Washed tray instead of a thin single-use tray', 'B')).toBe(tries.find(pays))
  })

  it('shows the same level cost of bed and vessel on Reuse as on Ways', () => {
    const cutting = typed('Season', 'The cutting itself', 'B')
    expect(relative(at('Reuse', 'Level cost over its whole life', 'D'), at('Ways', 'Rooting cost', 'F', 'EUR a cutting') + cutting)).toBeLessThan(1e-9)
    expect(relative(at('Reuse', 'Level cost over its whole life', 'E'), at('Ways', 'Rooting cost', 'C', 'EUR a cutting') + cutting)).toBeLessThan(1e-9)
  })

  it('counts the cutting itself, failures included, where it names the cheapest way a second time', () => {
    const cutting = typed('Season', 'The cutting itself', 'B')
    const costs = Object.entries(columnOf).map(([way, column]) => ({ way, column, cost: (costPerCutting(way) + cutting) / overall(way) }))
    for (const { way, column, cost } of costs) expect(relative(at('Ways', 'Rooting cost and the cutting itself', column), cost), way).toBeLessThan(1e-9)
    const cheapest = costs.reduce((best, one) => one.cost < best.cost ? one : best)
    const season = sheetOf('Season')
    const [address] = [...season].find(([, { value }]) => value === 'Cheapest way, the cutting itself counted')!
    expect(season.get(address.replace('A', 'B'))?.value).toBe(cheapest.way)
    expect(at('Season', 'Rates left blank', 'B')).toBe(0)
  })

  /** Loose litres that the season takes of a medium, from the pieces set up and the typed measures. */
  function litresOf(product: string): number {
    const filled = (way: string, settledLitres: number) => (
      at('Ways', 'Vessels, trays, beds, sheets', columnOf[way]!) * settledLitres / (1 - waysOf('Settling', way)) / (1 - waysOf('Spilt while filling', way))
    )
    if (product === 'Vermiculite') return filled(product, waysOf('Places in one', product) * squareCell(product) / 1000)
    if (product === 'Premix') return filled(product, waysOf('Places in one', product) * roundCell(product) / 1000)
    if (product === 'Sharp sand') return filled('Sand bed', 1000 * waysOf('Bed, inside length', 'Sand bed') * waysOf('Bed, inside width', 'Sand bed') * waysOf('Bed, depth once settled', 'Sand bed'))
    const way = 'Peat, coir and perlite'
    const finished = filled(way, waysOf('Places in one', way) * squareCell(way) / 1000)
    const inBlend = (column: string, share: number) => {
      const components = finished * share * typed('Blends', 'Test mix: components before mixing', column) / typed('Blends', 'Test mix: finished mix', column)
      const parts = ['Peat', 'Coir', 'Perlite', 'Sharp sand'].reduce((sum, other) => sum + typed('Blends', other, column), 0)
      return components * typed('Blends', product, column) / parts
    }
    return inBlend('D', 1 - coirShare()) + inBlend('E', coirShare())
  }

  it('buys of every medium the whole packs that ways and blends take together, less the stock', () => {
    for (const { product, expansion, waste, onHand, orderMultiple, leastOrder, size, unit, measured, litresPerKg, density, waterShare } of priceList) {
      const litresInSize = measured === 'by weight' ? (1 - waterShare!) / (density / 1000) : litresPerKg ?? (unit === 'ft3' ? 28.316846592 : 1)
      const need = litresOf(product) / (1 - waste)
      const packs = Math.ceil((need - onHand) / (size * litresInSize * expansion))
      expect(relative(at('Buying', product, 'E'), need), product).toBeLessThan(1e-9)
      expect(at('Buying', product, 'K'), product).toBe(Math.ceil(Math.max(packs, leastOrder) / orderMultiple) * orderMultiple)
    }
  })

  it('leaves no medium short and buys no whole order unit too many', () => {
    for (const { product, orderMultiple, leastOrder } of priceList) {
      const bought = at('Buying', product, 'K')
      const leftOver = at('Buying', product, 'M')
      expect(leftOver, product).toBeGreaterThanOrEqual(0)
      expect(bought === leastOrder || leftOver < (at('Buying', product, 'L') / bought) * orderMultiple, product).toBe(true)
    }
  })

  it('adds the buying list up from costs that are rounded to the cent', () => {
    const pieces = ['Rockwool blocks, sheets', 'Trays, washed and used again', 'Vessels for water', 'Bed frames, m2']
    const sum = [...priceList.map(({ product }) => product), ...pieces]
      .reduce((all, line) => all + Math.round(at('Buying', line, 'K') * at('Buying', line, 'N') * 100), 0)
    expect(at('Season', 'Buying list, everything', 'B')).toBeCloseTo(sum / 100, 9)
  })

  it('sends a bed of wet sand that no usual bench bears to the ground', () => {
    expect(at('Ways', 'Load of the bed', 'F')).toBeGreaterThan(at('Ways', 'Bench limit', 'F', 'kg a m2'))
    expect([...sheetOf('Ways').values()].some(({ value }) => value === 'on the ground')).toBe(true)
  })
})
