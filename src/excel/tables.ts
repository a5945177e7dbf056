/** Formulas as all that reads them here knows them: with addresses in place of references to Excel's tables. */
import { addressOf, blockIn } from '../formula/address'
import { withoutTableReferences, type PlacedTable } from '../formula/tableReferences'
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

export async function plainFormulas(
  { formulas, rowIndex, columnIndex }: Placed,
  sheet: string,
  tables: Tables,
): Promise<readonly (readonly unknown[])[]> {
  if (!formulas.some((row) => row.some(mayReadTable))) return formulas
  const placed = await tables()
  return formulas.map((row, down) =>
    row.map((content, across) =>
      mayReadTable(content)
        ? withoutTableReferences(content, { sheet, address: addressOf(rowIndex + down, columnIndex + across) }, placed)
        : content,
    ),
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
