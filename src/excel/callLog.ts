/**
 * What Excel called the cell functions with, by cell, so that the pane can show how a number came about. Excel
 * tells the cell of a call (requiresAddress in functions.json) but keeps no arguments.
 */
import type { CallInCell } from '../workbook/openBook'

/** A large workbook has more; the pane then asks for a calculation, and what is calculated last is kept. */
const mostCells = 20_000
/** Excel does not say when the calculation of a cell begins, so old calls of a cell end here. */
const mostCallsOfCell = 16

export class CallLog {
  private readonly byCell = new Map<string, CallInCell[]>()

  made(address: string, call: CallInCell): void {
    const cell = cellKey(address)
    const calls = this.byCell.get(cell) ?? []
    calls.push(call)
    if (calls.length > mostCallsOfCell) calls.shift()
    this.byCell.delete(cell)
    this.byCell.set(cell, calls)
    const [oldest] = this.byCell.keys()
    if (this.byCell.size > mostCells && oldest !== undefined) this.byCell.delete(oldest)
  }

  /** In the order in which they were made, older calculations of the cell first. */
  of(address: string): readonly CallInCell[] {
    return this.byCell.get(cellKey(address)) ?? []
  }

  /** Cells moved: what was kept belongs to other cells now. */
  forgetAll(): void {
    this.byCell.clear()
  }
}

/** One for the page: functions.js writes it and taskpane.js reads it, and each script has modules of its own. */
const place = Symbol.for('sticksheet.callLog')

export function callLogOfPage(): CallLog {
  const page = globalThis as { [place]?: CallLog }
  return (page[place] ??= new CallLog())
}

/** "'[Book1.xlsx]Order book'!B4" and "Order book!$B$4" are one cell, however Excel spells it. */
function cellKey(address: string): string {
  const end = address.lastIndexOf('!')
  const sheet = address.slice(0, Math.max(end, 0)).replace(/^'|'$/g, '').replaceAll("''", "'").replace(/^.*\]/, '')
  return `${sheet}!${address.slice(end + 1).replaceAll('$', '')}`
}
