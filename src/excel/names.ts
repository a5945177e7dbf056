/** The names of a workbook in Excel, and those that one sheet has for itself. */
import { quotedSheet } from '../formula/reference'
import { withoutTableReferences } from '../formula/tableReferences'
import { withNamesReplaced } from '../formula/withNamesReplaced'
import type { DefinedName } from '../workbook/book'
import type { Tables } from './tables'

export function loadNames(names: Excel.NamedItemCollection): void {
  names.load(['items/name', 'items/formula', 'items/type', 'items/visible'])
}

/**
 * Of names that were loaded: those that stand for cells, for the column of a table too, which is what Excel writes where
 * a user points at one. Hidden names Excel makes for itself, such as that of a filter.
 */
export function namesOfCells({ items }: Excel.NamedItemCollection, tables: Tables): Promise<readonly DefinedName[]> {
  return Promise.all(
    items
      .filter(({ type, visible }) => type === 'Range' && visible)
      .map(async ({ name, formula: given }) => {
        const formula = String(given)
        const plain = formula.includes('[')
          ? withoutTableReferences(formula, { sheet: '', address: 'A1' }, await tables())
          : formula
        return { name, refersTo: plain.replace(/^=/, '') }
      }),
  )
}

/** The names that a sheet has for itself, to be there after the next answer. */
export function namesOfSheet({ names }: Excel.Worksheet): Excel.NamedItemCollection {
  loadNames(names)
  return names
}

/**
 * A formula with what the names of its own sheet refer to in their place: such a name goes before one of the workbook
 * that is called the same, and all that reads formulas here knows the names of the workbook alone.
 *
 * @param names Of the sheet, and loaded.
 */
export function withoutNamesOfSheet(formula: string, sheet: string, { items }: Excel.NamedItemCollection): string {
  if (items.length === 0) return formula
  const meant = items.flatMap(({ name, formula: given, type }) => {
    const text = String(given).replace(/^=/, '')
    const refersTo = type === 'Range' ? text : `(${text})`
    return [name, `${quotedSheet(sheet)}!${name}`].map((spelled) => [spelled.toLowerCase(), refersTo] as const)
  })
  return withNamesReplaced(formula, new Map(meant))
}
