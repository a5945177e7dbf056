/** What may be typed into a cell, as a file says it (data validation), and back. */
import type { Cell as FileCell, Worksheet } from '@cj-tech-master/excelts'
import { addressOf, blockIn, positionsIn } from '../../formula/address'
import type { Allowed } from '../../workbook/book'
import { dateOf, serialOf } from '../../core/quantity/day'

type Rule = NonNullable<FileCell['dataValidation']>

export function ruleOf(allowed: Allowed): Rule {
  const said = {
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: 'stop',
    errorTitle: 'Sticksheet',
    error: allowed.sentence,
  }
  if ('list' in allowed) return { type: 'list', formulae: [allowed.list], ...said }
  const type = allowed.day ? 'date' : allowed.whole ? 'whole' : 'decimal'
  const limit = (number: number) => (allowed.day ? dateOf(number) : number)
  if (allowed.to === undefined)
    return { type, operator: 'greaterThanOrEqual', formulae: [limit(allowed.from)], ...said }
  return { type, operator: 'between', formulae: [limit(allowed.from), limit(allowed.to)], ...said }
}

/** By address, what a book can hold; `others` is true where the sheet has rules of another kind too. */
export function allowedIn(worksheet: Worksheet): {
  readonly byAddress: ReadonlyMap<string, Allowed>
  readonly others: boolean
} {
  const byAddress = new Map<string, Allowed>()
  let others = false
  for (const [key, rule] of Object.entries(worksheet.model.dataValidations ?? {})) {
    if (rule === undefined) continue
    const allowed = allowedOf(rule)
    const range = key.replace(/^range:/, '')
    if (allowed === undefined || cellCount(range) > mostCells) others = true
    else for (const { row, column } of positionsIn(blockIn(range))) byAddress.set(addressOf(row, column), allowed)
  }
  return { byAddress, others }
}

/** A rule for whole columns would fill a book with cells. */
const mostCells = 10_000

function cellCount(range: string): number {
  const { top, left, bottom, right } = blockIn(range)
  return (bottom - top + 1) * (right - left + 1)
}

const kinds: Readonly<Partial<Record<Rule['type'], { readonly whole?: true; readonly day?: true }>>> = {
  decimal: {},
  whole: { whole: true },
  date: { day: true },
}

function allowedOf(rule: Rule): Allowed | undefined {
  if (
    rule.type === 'any' ||
    rule.showErrorMessage !== true ||
    !rule.error ||
    rule.showInputMessage ||
    (rule.errorStyle ?? 'stop') !== 'stop'
  )
    return undefined
  const [from, to] = rule.formulae.map((limit) => (limit instanceof Date ? serialOf(limit) : limit))
  const sentence = rule.error
  // Entries that are written out in the rule itself have quotation marks around them.
  if (rule.type === 'list')
    return typeof from === 'string' && !from.startsWith('"') ? { list: from, sentence } : undefined
  const kind = kinds[rule.type]
  if (kind === undefined || typeof from !== 'number') return undefined
  if (rule.operator === 'greaterThanOrEqual') return { from, ...kind, sentence }
  return (rule.operator ?? 'between') === 'between' && typeof to === 'number'
    ? { from, to, ...kind, sentence }
    : undefined
}
