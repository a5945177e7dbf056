/** Formulas as all that reads them here knows them: without references to Excel's tables and names of one sheet. */
import { addressOf, blockIn } from '../formula/address'
import { withoutTableReferences, type PlacedTable } from '../formula/tableReferences'
import { withoutNamesOfSheet } from './names'
import { withoutSheet } from './withoutSheet'

/** The tables of the workbook, asked for once, and only where a formula needs them. */
export type Tables = () => Promise<readonly PlacedTable[]>

export function tablesOf(context: Excel.RequestContext): Tables {
  let asked: Promise<readonly PlacedTable[]> | undefined
  return () => (asked ??= ask(context))
}

interface Placed {
  readonly formulas: readonly (readonly unknown[])[]
  readonly rowIndex: number
  readonly columnIndex: number
}

/** @param own The names of the sheet, loaded. */
export async function plainFormulas(
  { formulas, rowIndex, columnIndex }: Placed,
  sheet: string,
  own: Excel.NamedItemCollection,
  tables: Tables,
): Promise<readonly (readonly unknown[])[]> {
  const readTables = formulas.some((row) => row.some(mayReadTable))
  if (!readTables && own.items.length === 0) return formulas
  const placed = readTables ? await tables() : []
  return formulas.map((row, down) =>
    row.map((content, across) => {
      if (typeof content !== 'string' || !content.startsWith('=')) return content
      const home = { sheet, address: addressOf(rowIndex + down, columnIndex + across) }
      const known = mayReadTable(content) ? withoutTableReferences(content, home, placed) : content
      return withoutNamesOfSheet(known, sheet, own)
    }),
  )
}

/** The bare name of a table reads it too, but is not told from other names, and Excel writes it nowhere by itself. */
function mayReadTable(content: unknown): content is string {
  return typeof content === 'string' && content.startsWith('=') && content.includes('[')
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
