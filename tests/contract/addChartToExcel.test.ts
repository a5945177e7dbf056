/** Native charts through Microsoft's own client: bound to the cells, and whole or not there. */
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { CallLog } from '../../src/excel/callLog'
import { excelPort } from '../../src/excel/excelPort'
import type { ChartedCell, ChartedId } from '../../src/workbook/compare/chartedCells'
import { sheetChartOf } from '../../src/workbook/compare/sheetChartOf'
import type { OpenBook } from '../../src/workbook/openBook'
import type { SheetChart } from '../../src/workbook/sheetChart'
import { ExcelHost } from './ExcelHost'

let host: ExcelHost

beforeEach(() => {
  host = new ExcelHost('Season', 'My ways')
  Object.assign(globalThis, host.start())
})

afterAll(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name)
})

/** Its table begins in C5, and the furthest cell to the right of that height or below it is in H7. */
const book: OpenBook = {
  names: [],
  sheets: [
    {
      name: 'My ways',
      cells: new Map(
        (
          [
            ['C5', 4, 2],
            ['H7', 6, 7],
            ['M2', 1, 12],
          ] as const
        ).map(([address, row, column]) => [address, { row, column, formula: '', value: 1, calls: [] }]),
      ),
    },
  ],
}

function cellOf(id: ChartedId, alone = true): ChartedCell {
  const { given } = catalogue.find((definition) => definition.id === id)!.examples[0]!
  const args = given.map((value) => (Array.isArray(value) ? value.map((cell: unknown) => [cell]) : value))
  return { sheet: 'My ways', address: 'C5', row: 4, column: 2, id, args, alone }
}

/** The example of COMPARE with its arguments in columns from Z on. */
function chartOfParts(): SheetChart {
  const formula = '=STICK.COMPARE(Z1:Z2,AA1:AA2,AB1:AB2,AC1:AC2,AD1:AD2,AE1:AE2,,,AF1:AF2)'
  const cells = new Map([
    ...book.sheets[0]!.cells,
    ['C5', { row: 4, column: 2, formula, value: 'name', calls: [] }] as const,
  ])
  return sheetChartOf(cellOf('COMPARE'), { names: [], sheets: [{ name: 'My ways', cells }] })!
}

function chartOf(id: ChartedId): SheetChart {
  return sheetChartOf(cellOf(id), book)!
}

function add(chart: SheetChart): Promise<void> {
  return excelPort(new CallLog()).addChart!(chart)
}

function settings(): Record<string, unknown> {
  return Object.fromEntries(host.sheet('My ways').charts.at(-1)!.settings)
}

describe('a chart in an Excel sheet', () => {
  it('draws the cells of the comparison, the cheapest at the top, right of what stands there', async () => {
    await add(chartOf('COMPARE'))
    expect(settings()).toMatchObject({
      type: 'BarClustered',
      source: 'F6:F7',
      'Series.GetItemAt0.SetValues': 'F6:F7',
      'Series.GetItemAt0.SetXAxisValues': 'C6:C7',
      'Title.Text': 'Cost of a saleable liner',
      'Axes.CategoryAxis.ReversePlotOrder': true,
      'Legend.Visible': false,
      SetPosition: ['J5', 'R24'],
    })
    expect((await excelPort(new CallLog()).selectedCell()).sheet).toBe('My ways')
  })

  it('draws the last column of the ledger over its rounds', async () => {
    await add(chartOf('REUSELEDGER'))
    expect(settings()).toMatchObject({
      type: 'Line',
      'Series.GetItemAt0.SetValues': 'H6:H8',
      'Series.GetItemAt0.SetXAxisValues': 'C6:C8',
    })
  })

  it('draws both ends of each argument from the likely result on', async () => {
    await add(chartOf('SWINGS'))
    expect(settings()).toMatchObject({
      type: 'BarClustered',
      'Series.GetItemAt0.SetValues': 'F6:F7',
      'Series.GetItemAt1.SetValues': 'H6:H7',
      'Series.GetItemAt1.SetXAxisValues': 'C6:C7',
      'Series.GetItemAt1.Name': 'with the argument at its high',
      'Series.GetItemAt1.Overlap': 100,
      'Axes.ValueAxis.SetPositionAt': 0.00975,
      'Legend.Visible': true,
    })
  })

  it('draws the shares over the results, and neither the mean nor the other last rows', async () => {
    await add(chartOf('ODDS'))
    expect(settings()).toMatchObject({
      type: 'XYScatterLines',
      'Series.GetItemAt0.SetValues': 'C6:C16',
      'Series.GetItemAt0.SetXAxisValues': 'D6:D16',
      'Axes.ValueAxis.Maximum': 1,
    })
  })

  it('is put below the place of those that are there', async () => {
    await add(chartOf('COMPARE'))
    await add(chartOf('COMPARE'))
    expect(settings()['SetPosition']).toEqual(['J26', 'R45'])
  })

  it('draws a way part by part from cells that come with it, each a formula over those of the comparison', async () => {
    await add(chartOfParts())
    expect(settings()).toMatchObject({
      type: 'BarStacked',
      'Series.GetItemAt0.SetValues': 'K6:K7',
      'Series.GetItemAt0.SetXAxisValues': 'J6:J7',
      'Series.GetItemAt0.Name': 'Medium',
      'Series.GetItemAt3.SetValues': 'N6:N7',
      'Series.GetItemAt3.Name': 'Losses',
      SetPosition: ['P5', 'X24'],
    })
    const cells = host.sheet('My ways').cells
    expect(['J5', 'K5', 'L5', 'M5', 'N5'].map((address) => cells.get(address)?.value)).toEqual([
      'Rooting method',
      'Medium',
      'Reuse',
      'Other costs',
      'Losses',
    ])
    // The tray, the second as given, is the cheaper of the two.
    expect(['J6', 'K6', 'M6'].map((address) => cells.get(address)?.formula)).toEqual([
      '=INDEX(Z1:Z2,2)',
      '=STICK.REUSECOST(INDEX(AA1:AA2,2),INDEX(AB1:AB2,2),0,0,0,0,0,1)/INDEX(AC1:AC2,2)',
      '=INDEX(AF1:AF2,2)',
    ])
  })

  it('writes its cells nowhere where something stands by now', async () => {
    host.sheet('My ways').cells.set('L6', { value: 12, formula: 12 })
    await expect(add(chartOfParts())).rejects.toMatchObject({ code: 'cellChanged', detail: 'J5:N7 on My ways' })
    expect([...host.sheet('My ways').cells.keys()]).toEqual(['L6'])
    expect(host.sheet('My ways').charts).toEqual([])
  })

  it('takes its cells back too where Excel fails half-way', async () => {
    let failures = 0
    for (let after = 1; after < 60; after += 1) {
      host.failingAfter = after
      const added = await add(chartOfParts()).then(
        () => true,
        () => false,
      )
      host.failingAfter = Infinity
      if (added) break
      failures += 1
      expect([[...host.sheet('My ways').cells.keys()], host.sheet('My ways').charts], `after ${after} actions`).toEqual(
        [[], []],
      )
    }
    expect(failures).toBeGreaterThan(20)
  })

  it('is not there at all where Excel fails half-way, and those of the user stay', async () => {
    await add(chartOf('COMPARE'))
    const actions = 40
    let failures = 0
    for (let after = 3; after < actions; after += 1) {
      host.failingAfter = after
      await add(chartOf('SWINGS')).then(
        () => host.sheet('My ways').charts.pop(),
        () => {
          failures += 1
        },
      )
      host.failingAfter = Infinity
      expect(
        host.sheet('My ways').charts.map(({ name }) => name),
        `after ${after} actions`,
      ).toEqual(['Chart 1'])
    }
    expect(failures).toBeGreaterThan(20)
  })

  it('is refused while the user types in a cell or the sheet is protected, and says so', async () => {
    host.editing = true
    await expect(add(chartOf('COMPARE'))).rejects.toMatchObject({ code: 'cellEditMode' })
    host.editing = false
    host.select('A1', 'My ways')
    host.protect()
    await expect(add(chartOf('COMPARE'))).rejects.toMatchObject({ code: 'protectedSheet' })
    expect(host.sheet('My ways').charts).toEqual([])
  })

  it('is offered only where the cells hold a table', () => {
    expect(sheetChartOf(cellOf('COMPARE', false), book)).toBeUndefined()
    expect(sheetChartOf(cellOf('BREAKEVEN'), book)).toBeUndefined()
    expect(sheetChartOf(cellOf('ROOTINGCOST'), book)).toBeUndefined()
  })
})
