/** Formulas as all that reads them here knows them: without references to Excel's tables and names of one sheet. */
import { addressOf } from '../formula/address'
import { withoutTableReferences } from '../formula/tableReferences'
import { withoutNamesOfSheet } from './names'
import { isFormula } from './readCell'
import type { Tables } from './tables'

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
      if (!isFormula(content)) return content
      const home = { sheet, address: addressOf(rowIndex + down, columnIndex + across) }
      const known = mayReadTable(content) ? withoutTableReferences(content, home, placed) : content
      return withoutNamesOfSheet(known, sheet, own)
    }),
  )
}

/** The bare name of a table reads it too, but is not told from other names, and Excel writes it nowhere by itself. */
function mayReadTable(content: unknown): content is string {
  return isFormula(content) && content.includes('[')
}
