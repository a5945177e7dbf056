/** The parts of the cost of a saleable liner as formulas over the cells that COMPARE reads, for a sheet's own chart. */
import { placeOf } from '../../core/definition/definition'
import { onlyCall } from '../../formula/onlyCall'
import { quotedSheet } from '../../formula/reference'
import { compare } from '../../functions/review/compare'
import { english } from '../../wording/en/words'
import type { OpenBook } from '../openBook'
import type { ChartedCell } from './chartedCells'
import { evaluated } from './evaluated'
import { otherCosts, waysGiven, type OtherCosts, type OtherPart } from './otherCosts'
import { costParts, rootedOfCompare, type CostPart } from './rooted'
import { orderOf } from './ways'

export interface PartsTable {
  readonly headings: readonly string[]
  /** A row for each way, the cheapest first: its name, its parts, and the parts together. */
  readonly rows: readonly (readonly string[])[]
}

/** Undefined where the arguments are not written as ranges of one row or column, which a formula could take a place of. */
export function partsTable(cell: ChartedCell, book: OpenBook): PartsTable | undefined {
  const comparison = evaluated(compare, cell.args)
  const { formula = '' } = book.sheets.find(({ name }) => name === cell.sheet)?.cells.get(cell.address) ?? {}
  const written = onlyCall(formula, compare.id)
  const areLines = cell.args.every(
    (given) =>
      !Array.isArray(given) || given.length === 1 || given.every((row) => !Array.isArray(row) || row.length === 1),
  )
  if ('noChart' in comparison || written === undefined || !areLines) return undefined
  const given = rootedOfCompare(comparison.args)
  const places = waysGiven(cell)
  const others = otherCosts(
    cell,
    given.map(({ other }) => other),
    book,
  )
  const shown = costParts.filter(
    (part) => (part !== 'bench' && part !== 'labour') || others.some((one) => one !== undefined),
  )
  const rows = orderOf(given).map((way) => {
    const parts = formulasOf(argumentsAt(written, places[way]! + 1), others[way], cell.sheet)
    return [`=${argumentsAt(written, places[way]! + 1)('names')}`, ...shown.map((part) => parts[part] ?? '')]
  })
  return { headings: ['Rooting method', ...shown.map((part) => english.compare.ways.parts[part].name)], rows }
}

type ArgumentAt = (parameter: keyof typeof compare.parameters) => string

/** The arguments of one way, as a formula reads them; what was left out as COMPARE takes it. */
function argumentsAt(written: readonly string[], place: number): ArgumentAt {
  return (name) => {
    const text = written[placeOf(compare, name)] ?? ''
    if (name === 'yearlyInterest' || name === 'roundsPerYear') {
      return text === '' ? String(compare.parameters[name].default) : text
    }
    return text === '' ? '0' : `INDEX(${text},${place})`
  }
}

/** The formulas of the same sums as in partsPerLiner. */
function formulasOf(
  at: ArgumentAt,
  others: OtherCosts | undefined,
  sheet: string,
): Readonly<Partial<Record<CostPart, string>>> {
  const cells = (part: OtherPart) =>
    part.cells
      .map((one) => (one.sheet === sheet ? one.address : `${quotedSheet(one.sheet)}!${one.address}`))
      .join('+') || '0'
  const level = (first: string, wash: string, endValue: string) =>
    `STICK.REUSECOST(${first},${at('rounds')},${wash},0,${at('lossShares')},${endValue},${at('yearlyInterest')},${at('roundsPerYear')})/${at('cuttingsPerRound')}`
  const bought = level(at('firstCosts'), '0', at('endValues'))
  const upkeep = level('0', `${at('washCosts')}+${at('topUpShares')}*${at('firstCosts')}`, '0')
  const perCutting = `${bought}+${upkeep}+${at('otherCostsPerCutting')}`
  return {
    medium: others === undefined ? `=${bought}` : `=${bought}+${cells(others.medium)}`,
    reuse: `=${upkeep}`,
    ...(others && { bench: `=${cells(others.bench)}`, labour: `=${cells(others.labour)}` }),
    other: others === undefined ? `=${at('otherCostsPerCutting')}` : `=${cells(others.other)}`,
    losses: `=(${perCutting})*(1/${at('yields')}-1)`,
  }
}
