/**
 * Cells of a named column that hold no formula where most of the column has one and the same: what was typed or pasted
 * over a result goes on being added up, and what was emptied is left out, while the state of the row stays "ready".
 */
import { addressOf } from '../../formula/address'
import { rangesRead } from '../../formula/rangesRead'
import { relativeFormula } from '../../formula/relativeFormula'
import type { Words } from '../../wording/words'
import type { OpenBook } from '../openBook'
import { sheetNamed } from '../sheetNamed'
import type { Finding } from './finding'

/** Of fewer rows nobody can tell what is usual. */
const fewestRows = 3

export function checkNamedColumns(book: OpenBook, found: Words['found']): readonly Finding[] {
  return book.names.flatMap(({ refersTo }): readonly Finding[] => {
    const [range] = rangesRead(`=${refersTo}`, '', new Map())
    const rows = range === undefined ? 0 : range.bottom - range.top + 1
    const sheet = range && sheetNamed(book, range.sheet)
    if (!sheet || range.left !== range.right || rows < fewestRows || !Number.isFinite(rows)) return []
    const column = Array.from({ length: rows }, (_row, below) => {
      const address = addressOf(range.top + below, range.left)
      const cell = sheet.cells.get(address)
      return { address, cell, relative: cell?.formula ? relativeFormula(cell.formula, address) : '' }
    })
    const usual = mostFrequent(column.map(({ relative }) => relative))
    if (usual === undefined) return []
    return column.flatMap(({ address, cell, relative }, below): readonly Finding[] => {
      // A column that goes on from the row above begins with a value of its own.
      const isBeginning = below === 0 && usual.includes('R[-1]')
      if (relative !== '' || isBeginning) return []
      const sentence = cell === undefined ? found.emptyForFormula() : found.valueForFormula()
      return [{ sheet: sheet.name, address, kind: 'warning', sentence }]
    })
  })
}

/** The formula that more than half of the cells hold. */
function mostFrequent(formulas: readonly string[]): string | undefined {
  return [...new Set(formulas)].find(
    (one) => one !== '' && formulas.filter((other) => other === one).length > formulas.length / 2,
  )
}
