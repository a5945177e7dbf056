/** The tables of a workbook in Excel, and where they are. */
import { blockIn } from '../formula/address'
import type { PlacedTable } from '../formula/tableReferences'
import { withoutSheet } from './withoutSheet'

/** The tables of the workbook, asked for once, and only where a formula needs them. */
export type Tables = () => Promise<readonly PlacedTable[]>

export function tablesOf(context: Excel.RequestContext): Tables {
  let asked: Promise<readonly PlacedTable[]> | undefined
  return () => (asked ??= ask(context))
}

async function ask(context: Excel.RequestContext): Promise<readonly PlacedTable[]> {
  const { tables } = context.workbook
  tables.load(['items/name', 'items/showHeaders', 'items/showTotals'])
  await context.sync()
  const asked = tables.items.map((table) => {
    const range = table.getRange()
    range.load(['address'])
    table.worksheet.load(['name'])
    table.columns.load(['items/name'])
    return { table, range }
  })
  await context.sync()
  return asked.map(({ table, range }) => ({
    name: table.name,
    sheet: table.worksheet.name,
    ...blockIn(withoutSheet(range.address)),
    hasHeader: table.showHeaders,
    hasTotals: table.showTotals,
    columns: table.columns.items.map(({ name }) => name),
  }))
}
