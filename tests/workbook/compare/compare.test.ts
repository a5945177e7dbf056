import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { catalogue } from '../../../src/functions/catalogue'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { Book, Cell } from '../../../src/workbook/book'
import { chartedCells, type ChartedCell, type ChartedId } from '../../../src/workbook/compare/chartedCells'
import type { NoChart } from '../../../src/workbook/compare/evaluated'
import { oddsOf } from '../../../src/workbook/compare/odds'
import { costParts } from '../../../src/workbook/compare/rooted'
import { roundsOf } from '../../../src/workbook/compare/rounds'
import { sheetChartOf } from '../../../src/workbook/compare/sheetChartOf'
import { swingsOf } from '../../../src/workbook/compare/swings'
import { rootingCostRuns, waysOfCompare, waysOfRootingCosts, type WayCost } from '../../../src/workbook/compare/ways'
import type { OpenBook } from '../../../src/workbook/openBook'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { methods } from '../../../src/workbook/season/tables/methods'
import { figureOf } from '../season/figuresOf'
import { addressOf, positionOf } from '../../../src/formula/address'

function cellWith(id: ChartedId, args: readonly unknown[], address = 'A1'): ChartedCell {
  return { sheet: 'Sheet', address, row: 0, column: 0, id, args, alone: true }
}

function exampleOf(id: ChartedId, index = 0): ChartedCell {
  const { given } = catalogue.find((definition) => definition.id === id)!.examples[index]!
  return cellWith(
    id,
    given.map((value) => (Array.isArray(value) ? value.map((cell) => [cell]) : value)),
  )
}

function drawn<T extends object>(data: T | NoChart): T {
  if ('noChart' in data) throw new Error(data.noChart.kind)
  return data as T
}

function sumOf({ parts }: WayCost): number {
  return costParts.reduce((sum, part) => sum + (parts[part] ?? 0), 0)
}

const noBook: OpenBook = { sheets: [], names: [] }

let demo: OpenBook
let cells: readonly ChartedCell[]

const timeToCalculate = 180_000

beforeAll(async () => {
  demo = await calculateBook(demoSeason())
  cells = chartedCells(demo).cells
}, timeToCalculate)

function cellsOf(id: ChartedId): readonly ChartedCell[] {
  return cells.filter((cell) => cell.id === id)
}

/** The number of the demo that stands so many rows below and columns beside a cell. */
function shownAt({ sheet, row, column }: ChartedCell, below: number, beside: number): unknown {
  const values = demo.sheets.find(({ name }) => name === sheet)!.cells.values()
  return [...values].find((cell) => cell.row === row + below && cell.column === column + beside)?.value
}

describe('the cells of a workbook that can be drawn', () => {
  it('are found in the demo for every kind of chart, each with its place', () => {
    expect(cellsOf('COMPARE').map(({ sheet }) => sheet)).toEqual(['Compare'])
    for (const id of ['ROOTINGCOST', 'BREAKEVEN', 'REUSELEDGER', 'SWINGS', 'ODDS'] as const)
      expect(cellsOf(id).length, id).toBeGreaterThan(0)
  })

  it('are found inside a larger formula, which is then known not to be the call alone', () => {
    expect(cellsOf('BREAKEVEN').every(({ alone }) => !alone)).toBe(true)
    expect(cellsOf('COMPARE').every(({ alone }) => alone)).toBe(true)
  })

  it('are said to be incomplete only where a charted function has not been seen calculated', () => {
    const unseen = (formula: string): OpenBook => ({
      names: [],
      sheets: [{ name: 'Sheet', cells: new Map([['A1', { row: 0, column: 0, formula, value: 1, calls: undefined }]]) }],
    })
    expect(chartedCells(unseen('=1+stick.breakeven(B1,B2)')).someUnseen).toBe(true)
    expect(chartedCells(unseen('=STICK.BAGS(B1,B2)')).someUnseen).toBe(false)
    expect(chartedCells(demo).someUnseen).toBe(false)
  })
})

describe('rooting methods in parts', () => {
  it('show the names and figures that the cells of the demo show, in their order', () => {
    const [cell] = cellsOf('COMPARE')
    const ways = drawn(waysOfCompare(cell!, demo))
    expect(ways.map(({ name }) => name).sort()).toEqual(vellimoor.methods.map(({ name }) => name).sort())
    ways.forEach((way, index) => {
      expect(way.name).toBe(shownAt(cell!, index + 1, 0))
      expect(way.perLiner).toBe(shownAt(cell!, index + 1, 3))
      expect(sumOf(way)).toBeCloseTo(way.perLiner, 14)
    })
  })

  it('take the plug and tray of the example apart as one can by hand', () => {
    const [tray, plug] = drawn(waysOfCompare(exampleOf('COMPARE'), noBook))
    // The tray: 15 over 6 rounds of 50; five washings of 1.50 over the same; 0.0285; and 0.1035 (1/0.75 - 1).
    expect(tray).toEqual({
      name: 'Tray',
      perLiner: 0.138,
      parts: { medium: 0.05, reuse: 0.025, other: 0.0285, losses: 0.0345 },
    })
    expect(plug).toEqual({ name: 'Plug', perLiner: 0.15, parts: { medium: 0.08, reuse: 0, other: 0.04, losses: 0.03 } })
  })

  it('keep two ways of the same name apart', () => {
    const ways = drawn(
      waysOfCompare(
        cellWith('COMPARE', [
          [['Tray'], ['Tray']],
          [[20], [10]],
          [[1], [1]],
          [[100], [100]],
          [[1], [0.5]],
        ]),
        noBook,
      ),
    )
    expect(ways.map(({ parts }) => parts.losses)).toEqual([0, 0.1])
    expect(
      drawn(
        waysOfCompare(
          cellWith('COMPARE', [
            [['Tray'], ['Tray']],
            [[30], [10]],
            [[1], [1]],
            [[100], [100]],
            [[1], [0.5]],
          ]),
          noBook,
        ),
      ).map(({ parts }) => parts.losses),
    ).toEqual([0.1, 0])
  })

  it('add up to the figure of ROOTINGCOST, whatever the way', () => {
    const share = (most: number) => fc.integer({ min: 0, max: most * 1000 }).map((thousandths) => thousandths / 1000)
    const way = fc.tuple(
      fc.integer({ min: 0, max: 100_000 }).map((cents) => cents / 100),
      fc.integer({ min: 1, max: 80 }),
      fc.integer({ min: 1, max: 5000 }),
      share(1).map((value) => Math.max(value, 0.01)),
      share(5),
      share(1),
      share(0.9),
      share(2),
      fc.integer({ min: -500, max: 500 }),
      share(1),
      fc.integer({ min: 1, max: 12 }),
    )
    fc.assert(
      fc.property(way, (args) => {
        const [cost] = drawn(waysOfRootingCosts([cellWith('ROOTINGCOST', args)], noBook))
        const size = costParts.reduce((sum, part) => sum + Math.abs(cost!.parts[part] ?? 0), 0)
        expect(Math.abs(sumOf(cost!) - cost!.perLiner)).toBeLessThanOrEqual(1e-14 * Math.max(1, size))
      }),
      { numRuns: 200 },
    )
  })

  it('take cells of ROOTINGCOST that lie below one another as one comparison, with the names of Methods beside them', () => {
    const runs = rootingCostRuns(cells)
    expect(runs.map((run) => run.length)).toEqual([vellimoor.methods.length])
    const ways = drawn(waysOfRootingCosts(runs[0]!, demo))
    expect(new Set(ways.map(({ name }) => name))).toEqual(
      new Set(drawn(waysOfCompare(cellsOf('COMPARE')[0]!, demo)).map(({ name }) => name)),
    )
    ways.forEach((way, index) => expect(way.perLiner).toBe(shownAt(runs[0]![index]!, 0, 0)))
  })

  it(
    'take cells below one another so too, with the names beside them',
    async () => {
      const way = (name: string, yielded: number): Cell[] => [
        { value: name },
        { value: yielded },
        { formula: `=STICK.ROOTINGCOST(40,1,1000,${yielded})` },
      ]
      const book: Book = {
        names: [],
        sheets: [
          { name: 'Mine', widths: [], frozenRows: 0, frozenColumns: 0, rows: [way('Plug', 0.8), way('Block', 0.5)] },
        ],
      }
      const opened = await calculateBook(book)
      const runs = rootingCostRuns(chartedCells(opened).cells)
      expect(runs.map((run) => run.map(({ address }) => address))).toEqual([['C1', 'C2']])
      expect(drawn(waysOfRootingCosts(runs[0]!, opened)).map(({ name, perLiner }) => [name, perLiner])).toEqual([
        ['Plug', 0.05],
        ['Block', 0.08],
      ])
    },
    timeToCalculate,
  )

  it('of the demo tell medium, reuse, bench, labour, other costs and losses apart, as the columns of Methods have them', () => {
    const ways = drawn(waysOfCompare(cellsOf('COMPARE')[0]!, demo))
    const columns = { ...methods.typed, ...methods.results }
    const held = [...demo.sheets.find(({ name }) => name === 'Methods')!.cells.values()]
    const headings = held.find(({ column, value }) => column === 0 && value === 'State')!.row
    const valueOf = (key: keyof typeof columns, name: string) => {
      const { row } = held.find((cell) => cell.row > headings && cell.column === 1 && cell.value === name)!
      const { column } = held.find((cell) => cell.row === headings && cell.value === columns[key].heading)!
      return Number(held.find((cell) => cell.row === row && cell.column === column)?.value) || 0
    }
    for (const { name, parts } of ways) {
      expect(parts.bench, name).toBeCloseTo(valueOf('bench', name), 14)
      expect(parts.labour, name).toBeCloseTo(valueOf('labour', name), 14)
      expect(parts.other, name).toBeCloseTo(
        valueOf('hormone', name) + valueOf('cutting', name) + valueOf('other', name),
        14,
      )
      // COMPARE takes a container for what is bought, so its first cost stands with the medium.
      expect(parts.medium! + parts.reuse!, name).toBeCloseTo(valueOf('mediumCost', name) + valueOf('piece', name), 13)
      const isUsedAgain = valueOf('rounds', name) > 1
      expect([parts.medium! > 0, parts.reuse! > 0, parts.losses! > 0], name).toEqual([true, isUsedAgain, true])
    }
    expect(
      drawn(waysOfRootingCosts(rootingCostRuns(cells)[0]!, demo)).map(({ name, parts }) => [name, parts.bench]),
    ).toEqual(expect.arrayContaining(ways.map(({ name, parts }) => [name, parts.bench])))
  })

  it(
    'are the same numbers in the cells that a chart of the sheet draws',
    async () => {
      const [cell] = cellsOf('COMPARE')
      const { table, series } = sheetChartOf(cell!, demo)!
      expect(series.map(({ name }) => name)).toEqual(['Medium', 'Reuse', 'Bench', 'Labour', 'Other costs', 'Losses'])
      const at = positionOf(table!.place.split(':')[0]!)
      const book = demoSeason()
      const sheets = book.sheets.map((sheet) =>
        sheet.name !== cell!.sheet
          ? sheet
          : {
              ...sheet,
              rows: sheet.rows.map((row, index) => [
                ...Array.from({ length: at.column }, (_, column) => row[column]),
                ...(table!.rows[index - at.row] ?? []).map((formula) => ({ formula })),
              ]),
            },
      )
      const calculated = (await calculateBook({ ...book, sheets })).sheets.find(({ name }) => name === cell!.sheet)!
      const shown = table!.rows
        .slice(1)
        .map((row, below) =>
          row.map((_formula, beside) => calculated.cells.get(addressOf(at.row + 1 + below, at.column + beside))?.value),
        )
      for (const [index, { name, parts }] of drawn(waysOfCompare(cell!, demo)).entries()) {
        expect(shown[index]![0]).toBe(name)
        costParts.forEach((part, place) =>
          expect(shown[index]![place + 1], `${part} of ${name}`).toBeCloseTo(parts[part]!, 13),
        )
      }
    },
    timeToCalculate,
  )

  /** Two lines of a sheet, from row 2 on, each with the other costs of a cutting in its last cell. */
  async function otherOf(
    headings: readonly string[],
    ...lines: readonly (readonly (number | string)[])[]
  ): Promise<WayCost> {
    const cell = (content: number | string): Cell =>
      typeof content === 'string' && content.startsWith('=') ? { formula: content } : { value: content }
    const rows = [
      [...headings].map(cell),
      ...lines.map((line) => line.map(cell)),
      [cell(`=STICK.ROOTINGCOST(10,1,100,0.8,0,0,0,${headings.includes('All') ? 'F2' : 'B5'})`)],
    ]
    const opened = await calculateBook({
      names: [{ name: 'Rent', refersTo: 'Mine!$B$3' }],
      sheets: [{ name: 'Mine', widths: [], frozenRows: 0, frozenColumns: 0, rows }],
    })
    const run = rootingCostRuns(chartedCells(opened).cells)[0]!
    return drawn(waysOfRootingCosts(run, opened))[0]!
  }

  const toldByName = ['Way', 'Sand for the tray', 'Sticking', 'Bench', 'Hormone', 'All'] as const

  it.each([
    [
      'a sum of cells, a name and a range',
      '=B2+Rent+SUM(B4:B4)',
      { medium: 0.1, reuse: 0, bench: 0.02, labour: 0.03, other: 0.005, losses: 0.03875 },
    ],
    [
      'a sum that waits for its cells',
      '=IF(LEN(B2)=0,"",SUM(B2:B4))',
      { medium: 0.1, reuse: 0, bench: 0.02, labour: 0.03, other: 0.005, losses: 0.03875 },
    ],
    ['anything but a sum', '=(B2+B3+B4)*1', { medium: 0.1, reuse: 0, other: 0.055, losses: 0.03875 }],
    ['a sum with a number that was typed', '=B2+B3+0.005', { medium: 0.1, reuse: 0, other: 0.055, losses: 0.03875 }],
  ])(
    'names the cells of %s by what stands beside them',
    async (_what, sum, parts) => {
      expect(
        (await otherOf(['', ''], ['Labour', 0.03], ['Heat and rent', 0.02], ['Hormone', 0.005], ['All else', sum]))
          .parts,
      ).toEqual(parts)
    },
    timeToCalculate,
  )

  it(
    'names cells that lie in a row by what stands above them, and takes a medium among them as medium',
    async () => {
      const { parts, calledIn } = await otherOf(toldByName, ['Sand bed', 0.01, 0.02, 0.03, 0.04, '=SUM(B2:E2)'])
      expect(parts).toEqual({ medium: 0.11, reuse: 0, bench: 0.03, labour: 0.02, other: 0.04, losses: 0.05 })
      expect(calledIn).toEqual({
        medium: ['Sand for the tray'],
        bench: ['Bench'],
        labour: ['Sticking'],
        other: ['Hormone'],
      })
    },
    timeToCalculate,
  )

  it(
    'lets a function decide before a heading does, and leaves what names two kinds with the other costs',
    async () => {
      const labour = '=STICK.LABOURCOST(1000,20)'
      expect(
        (
          await otherOf(
            ['', ''],
            ['Filling the beds of the bench with sand', labour],
            ['Bench and labour', 0.02],
            ['Bench', 0.005],
            ['All else', '=SUM(B2:B4)'],
          )
        ).parts,
      ).toEqual({ medium: 0.1, reuse: 0, bench: 0.005, labour: 0.02, other: 0.02, losses: 0.03625 })
    },
    timeToCalculate,
  )

  it('say why there is no chart where the cell has no figure', () => {
    expect(waysOfCompare(cellWith('COMPARE', [[['Tray']], [[1]], [[0]], [[1]], [[1]]]), noBook)).toMatchObject({
      noChart: { kind: 'problems' },
    })
    expect(waysOfCompare(cellWith('COMPARE', [{ kind: 'cellError', code: '#DIV/0!' }]), noBook)).toEqual({
      noChart: { kind: 'cellError', code: '#DIV/0!' },
    })
  })
})

describe('the cost with every further round', () => {
  it('ends at the figures of the cells of COMPARE and marks their break-even rounds', () => {
    const [cell] = cellsOf('COMPARE')
    const { lines, singleUse } = drawn(roundsOf(cell!, demo))
    const rows = vellimoor.methods
      .map((_, index) => index + 1)
      .map((row) => [0, 3, 5].map((column) => shownAt(cell!, row, column)))
    const reused = rows.filter(([, , beats]) => beats !== 'single use')
    expect(
      lines.map(({ name, points, breakEven, neverIn }) => [
        name,
        points.at(-1)!.cost,
        breakEven?.round ?? `not in ${neverIn} rounds`,
      ]),
    ).toEqual(reused)
    expect([singleUse?.name, singleUse?.cost]).toEqual(rows.find(([, , beats]) => beats === 'single use')!.slice(0, 2))
  })

  it('reaches single use at the marked round and is dearer in the round before', () => {
    const {
      lines: [tray],
      singleUse,
    } = drawn(roundsOf(exampleOf('COMPARE'), noBook))
    expect(tray!.breakEven).toEqual({ round: 5, cost: 0.15 })
    expect(singleUse).toEqual({ name: 'Plug', cost: 0.15, isCheapest: true })
    expect(tray!.points[3]!.cost).toBeGreaterThan(0.15)
    expect(tray!.points.map(({ round }) => round)).toEqual([1, 2, 3, 4, 5, 6])
  })

  it('is compared with another single use where that is asked for, as the sheet Reuse compares it', () => {
    const [cell] = cellsOf('COMPARE')
    const { singleUses } = drawn(roundsOf(cell!, demo))
    expect(singleUses.map(({ name, isCheapest }) => [name, isCheapest])).toEqual([
      ['Premix in thin trays', true],
      ['Rockwool', false],
    ])
    const { singleUse } = drawn(roundsOf(cell!, demo, 1))
    expect(singleUse).toEqual(singleUses[1])
    const [onReuse] = cellsOf('BREAKEVEN')
    const reused = drawn(roundsOf(onReuse!, demo)).lines[0]!.name
    const { lines } = drawn(roundsOf(cell!, demo))
    expect(lines.find(({ name }) => name === reused)!.breakEven!.round).toBe(shownAt(onReuse!, 0, 0))
  })

  it('of BREAKEVEN has the names by which its costs are looked up, where there are any', () => {
    const named = cellsOf('BREAKEVEN')
      .map((cell) => drawn(roundsOf(cell, demo)))
      .map(({ lines: [line], singleUse }) => [line!.name, singleUse!.name])
    expect(named).toEqual([[vellimoor.reuse.reused, vellimoor.reuse.single]])
  })

  it('of BREAKEVEN crosses at the round of the cell', () => {
    for (const index of [0, 1, 2]) {
      const { gives } = catalogue.find(({ id }) => id === 'BREAKEVEN')!.examples[index]!
      const {
        lines: [line],
        singleUse,
      } = drawn(roundsOf(exampleOf('BREAKEVEN', index), noBook))
      expect(line!.breakEven!.round).toBe(gives)
      const before = line!.points.find(({ round }) => round === (gives as number) - 1)!
      expect(before.cost).toBeGreaterThan(singleUse!.cost)
      expect(line!.breakEven!.cost).toBeLessThanOrEqual(singleUse!.cost * (1 + 1e-12))
    }
  })

  it('says why there is no such round', () => {
    expect(roundsOf(cellWith('BREAKEVEN', [0.1, 2.4, 0.12]), noBook)).toMatchObject({ noChart: { kind: 'problems' } })
    const { lines } = drawn(roundsOf(exampleOf('COMPARE', 1), noBook))
    expect(lines.map(({ neverIn }) => neverIn)).toEqual([3])
  })

  it('of the ledger is its last column', () => {
    const [cell] = cellsOf('REUSELEDGER')
    const {
      lines: [line],
      singleUse,
    } = drawn(roundsOf(cell!, demo))
    expect(singleUse).toBeUndefined()
    expect(line!.points).toHaveLength(Number(figureOf(demo, 'ReuseRounds')))
    line!.points.forEach(({ round, cost }) => expect(cost).toBe(shownAt(cell!, round, 5)))
  })

  it('shows a long life in steps, with its first, its last and its marked round among them', () => {
    const {
      lines: [line],
    } = drawn(
      roundsOf(
        cellWith('COMPARE', [
          [['Bed'], ['Plug']],
          [[1000], [4.3]],
          [[9999], [1]],
          [[1], [1]],
          [[1], [1]],
        ]),
        noBook,
      ),
    )
    const rounds = line!.points.map(({ round }) => round)
    expect(rounds.length).toBeLessThan(70)
    expect([rounds[0], rounds.at(-1)]).toEqual([1, 9999])
    expect(line!.breakEven?.round).toBe(233)
    expect(rounds).toContain(233)
  })
})

describe('the tornado and the odds', () => {
  it('hold the numbers that the cells of the demo show', () => {
    const [cell] = cellsOf('SWINGS')
    const { of, unit, likely, bars } = drawn(swingsOf(cell!, demo))
    expect([of, unit]).toEqual(['ROOTINGCOST', 'money per saleable liner'])
    expect(likely).toBe(shownAt(cell!, 1, 4))
    bars.forEach((bar, index) =>
      expect([bar.argument, bar.low, bar.high, bar.atLow, bar.atHigh, bar.swing]).toEqual(
        [0, 1, 2, 3, 5, 6].map((column) => shownAt(cell!, index + 1, column)),
      ),
    )
  })

  it(
    'call each argument what the sheet calls it beside its name, several cells of one argument too',
    async () => {
      const row = (...values: readonly (string | number)[]): Cell[] => values.map((value) => ({ value }))
      const calledIn = async (...lines: readonly Cell[][]) => {
        const named = 'AB'[lines[0]!.findIndex(({ value }) => value === 'costPerCutting')]
        const formula = `=STICK.SWINGS("PERLINER",${[named, 'D', 'E', 'F'].map((letter) => `${letter}1:${letter}${lines.length}`).join(',')})`
        const opened = await calculateBook({
          names: [],
          sheets: [{ name: 'Mine', widths: [], frozenRows: 0, frozenColumns: 0, rows: [...lines, [], [{ formula }]] }],
        })
        const bars = drawn(swingsOf(chartedCells(opened).cells[0]!, opened)).bars
        return Object.fromEntries(bars.map(({ argument, called }) => [argument, called]))
      }
      expect(
        await calledIn(
          row('Spent on it', 'costPerCutting', 0, 0.4, 0.4, 0.6),
          row('Rooting', 'stageRates', 0, 0.8, 0.8, 1),
          row('Growing on', 'stageRates', 0, 0.9, 1, 1),
        ),
      ).toEqual({ costPerCutting: 'Spent on it', 'stageRates 1': 'Rooting', 'stageRates 2': 'Growing on' })
      expect(
        await calledIn(
          row('costPerCutting', 1, 2, 0.4, 0.4, 0.6),
          row('stageRates', 1, 2, 0.8, 0.8, 1),
          row('stageRates', 1, 2, 0.9, 1, 1),
        ),
      ).toEqual({ costPerCutting: undefined, 'stageRates 1': undefined, 'stageRates 2': undefined })
    },
    timeToCalculate,
  )

  it('are read from the sheet where the odds stand there, and drawn anew where they do not', () => {
    const [cell] = cellsOf('ODDS')
    const spilled = drawn(oddsOf(cell!, demo))
    expect(spilled.percentiles).toHaveLength(11)
    spilled.percentiles.forEach(({ share, result }, index) =>
      expect([share, result]).toEqual([shownAt(cell!, index + 1, 0), shownAt(cell!, index + 1, 1)]),
    )
    expect([spilled.mean, spilled.likely, spilled.drawsWithoutAnswer]).toEqual(
      [12, 13, 14].map((row) => shownAt(cell!, row, 1)),
    )
    expect(drawn(oddsOf({ ...cell!, alone: false }, demo))).toEqual(spilled)
  })

  it('are what the sheet shows, not what it would show if it were calculated', () => {
    const [cell] = cellsOf('ODDS')
    const sheets = demo.sheets.map((sheet) =>
      sheet.name !== cell!.sheet
        ? sheet
        : {
            ...sheet,
            cells: new Map(
              [...sheet.cells].map(([address, one]) => [
                address,
                one.row === cell!.row + 1 && one.column === cell!.column + 1 ? { ...one, value: 0.05 } : one,
              ]),
            ),
          },
    )
    expect(drawn(oddsOf(cell!, { ...demo, sheets })).percentiles[0]).toEqual({ share: 0, result: 0.05 })
  })
})
