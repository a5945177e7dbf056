/** Puts a chart of cells into their sheet in Excel: all of it, or none. */
import { PortProblem } from '../workbook/port'
import type { ChartCells, SheetChart } from '../workbook/sheetChart'
import { asOneUndo, run } from './run'

export async function addChart(chart: SheetChart): Promise<void> {
  let before: ReadonlySet<string> | undefined
  let begun = false
  try {
    await run(async (context) => {
      const worksheet = context.workbook.worksheets.getItem(chart.sheet)
      before = await namesOfCharts(context, chart.sheet)
      if (chart.table !== undefined) await refuseWhereSomethingStands(worksheet, chart, chart.table)
      begun = true
      if (chart.table !== undefined) write(worksheet, chart.table)
      draw(worksheet, chart, before.size)
      await context.sync()
    }, asOneUndo())
  } catch (problem) {
    if (begun) await takeBack(chart, before!)
    throw problem
  }
}

async function namesOfCharts(context: Excel.RequestContext, sheet: string): Promise<ReadonlySet<string>> {
  const { charts } = context.workbook.worksheets.getItem(sheet)
  charts.load('items/name')
  await context.sync()
  return new Set(charts.items.map(({ name }) => name))
}

/** Something may have been typed there since the workbook was read. */
async function refuseWhereSomethingStands(
  worksheet: Excel.Worksheet,
  { sheet }: SheetChart,
  { place }: ChartCells,
): Promise<void> {
  const standing = worksheet.getRange(place)
  standing.load(['formulas'])
  await worksheet.context.sync()
  if (standing.formulas.flat().some((content) => content !== ''))
    throw new PortProblem('cellChanged', `${place} on ${sheet}`)
}

function write(worksheet: Excel.Worksheet, { place, rows, format }: ChartCells): void {
  const cells = worksheet.getRange(place)
  cells.numberFormat = rows.map((row, index) =>
    row.map((_cell, column) => (index === 0 || column === 0 ? 'General' : format)),
  )
  cells.formulas = rows.map((row) => [...row])
}

const typeOf: Readonly<Record<SheetChart['kind'], 'BarClustered' | 'BarStacked' | 'Line' | 'XYScatterLines'>> = {
  bars: 'BarClustered',
  stack: 'BarStacked',
  line: 'Line',
  tornado: 'BarClustered',
  curve: 'XYScatterLines',
}

/** In cells of the usual size, which hold the labels too. */
const [rowsOfChart, columnsOfChart] = [20, 9]

/** @param others How many charts the sheet holds: the new one is put below the place of as many. */
function draw(
  worksheet: Excel.Worksheet,
  { kind, title, along, series, alongTitle, valueTitle, from, free }: SheetChart,
  others: number,
): void {
  const alongCells = worksheet.getRange(along)
  const [first, ...more] = series
  const chart = worksheet.charts.add(typeOf[kind], worksheet.getRange(first!.values), 'Columns')
  const drawn = [chart.series.getItemAt(0), ...more.map(({ name }) => chart.series.add(name))]
  series.forEach(({ name, values }, index) => {
    const one = drawn[index]!
    one.name = name
    one.setValues(worksheet.getRange(values))
    one.setXAxisValues(alongCells)
    // Both ends, or all parts, of a bar lie on one line.
    if (kind === 'tornado' || kind === 'stack') one.set({ overlap: 100, gapWidth: 40 })
  })
  const { categoryAxis, valueAxis } = chart.axes
  chart.title.text = title
  chart.legend.visible = series.length > 1
  nameAxis(valueAxis, valueTitle)
  nameAxis(categoryAxis, alongTitle)
  if (kind === 'bars' || kind === 'stack' || kind === 'tornado') {
    // Excel draws bars from below; the table's first row belongs at the top.
    categoryAxis.reversePlotOrder = true
    categoryAxis.tickLabelPosition = 'Low'
  }
  if (from !== undefined) valueAxis.setPositionAt(from)
  if (kind === 'curve') valueAxis.maximum = 1
  const start = worksheet.getRange(free).getOffsetRange(others * (rowsOfChart + 1), 0)
  chart.setPosition(start, start.getOffsetRange(rowsOfChart - 1, columnsOfChart - 1))
  worksheet.activate()
  chart.activate()
}

function nameAxis(axis: Excel.ChartAxis, name: string): void {
  if (name === '') axis.title.visible = false
  else axis.title.text = name
}

/** What was not there before is ours, and not whole. */
async function takeBack({ sheet, table }: SheetChart, before: ReadonlySet<string>): Promise<void> {
  await run(
    async (context) => {
      for (const name of await namesOfCharts(context, sheet)) {
        if (!before.has(name)) context.workbook.worksheets.getItem(sheet).charts.getItem(name).delete()
      }
      if (table !== undefined) {
        const blank = (content: string) => table.rows.map((row) => row.map(() => content))
        const cells = context.workbook.worksheets.getItem(sheet).getRange(table.place)
        cells.formulas = blank('')
        cells.numberFormat = blank('General')
      }
      await context.sync()
    },
    { delayForCellEdit: true },
  )
}
