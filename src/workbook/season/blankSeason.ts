/** The season without the figures of the demo's nursery: the same sheets and formulas, whose inputs wait to be typed. */
import { holds, rangesRead } from '../../formula/rangesRead'
import type { Book, Cell, DefinedName } from '../book'
import { inventedMark } from './cells'
import { demoSeason } from './demoSeason'
import { pastBatches, spreadName } from './pastBatches'
import { nursery } from './seasonSheet'
import { mapCells, withWaitingFormulas, type Place } from './waitingFormulas'

export function blankSeason(): Book {
  const demo = demoSeason()
  const optional = optionalInputs(demo)
  const mayStayEmpty = ({ sheet, row, column }: Place) => optional.has(lineOf(sheet, row, column))
  return withWaitingFormulas(withZeros(withoutFigures(withoutSpecies(demo)), mayStayEmpty), mayStayEmpty)
}

/** Two species of the demo have past batches, and with them a name and headings of their own. */
const places = ['First', 'Second'] as const

function withoutSpecies({ sheets, names }: Book): Book {
  const renamed = new Map(pastBatches.map(({ species }, index) => [spreadName(species), `${places[index]}Spread`]))
  const headings = new Map(pastBatches.map(({ species }, index) => [species, `${places[index]} species`]))
  return {
    names: names.map(({ name, refersTo }) => ({ name: renamed.get(name) ?? name, refersTo })),
    sheets: mapCells(sheets, (cell) => {
      // Which species an order line takes its spread from is for the user to say.
      if (cell.formula !== undefined && renamed.has(cell.formula.slice(1))) return { ...cellLike(cell), look: 'input' }
      if (cell.look === 'heading' && typeof cell.value === 'string')
        return { ...cell, value: headings.get(cell.value) ?? cell.value }
      return cell
    }),
  }
}

function withoutFigures({ sheets, names }: Book): Book {
  const holdsOwnWords = inRanges(names.filter(({ name }) => name.endsWith('Supplier')))
  const holdsConvention = inRanges(names.filter(({ name }) => name === 'LongestPriceAge'))
  return {
    names,
    sheets: mapCells(sheets, (cell, place) => {
      if (holdsConvention(place)) return cell
      const kept = cellLike(cell)
      if (cell.value === inventedMark)
        return {
          look: 'text',
          value: 'Type into the boxed cells. What reads them shows nothing until they are filled.',
        }
      if (cell.look === 'input')
        return typeof cell.value === 'string' && !withOwnWords.has(place.sheet) && !holdsOwnWords(place)
          ? { ...kept, value: cell.value }
          : kept
      if (typeof cell.value === 'string')
        return { ...kept, value: withoutInvented(cell.value.replace(nursery, 'Your nursery')) }
      return {
        ...kept,
        ...(cell.value !== undefined && { value: cell.value }),
        ...(cell.formula !== undefined && { formula: cell.formula }),
      }
    }),
  }
}

function inRanges(names: readonly DefinedName[]): (place: Place) => boolean {
  const ranges = names.flatMap(({ refersTo }) => rangesRead(`=${refersTo}`, '', new Map()))
  return ({ sheet, row, column }) => ranges.some((range) => holds(range, sheet, row, column))
}

/** Costs and shares that a way may not have begin with none; in the order book an empty cell itself says that nothing is asked. */
function withZeros({ sheets, names }: Book, mayStayEmpty: (place: Place) => boolean): Book {
  return {
    names,
    sheets: mapCells(sheets, (cell, place) =>
      cell.look === 'input' && mayStayEmpty(place) && !inColumns.has(place.sheet) ? { ...cell, value: 0 } : cell,
    ),
  }
}

/** What a cell is apart from its content. */
function cellLike({ look, format, spills, allowed, note }: Cell): Cell {
  const words = note === undefined ? '' : withoutInvented(note)
  return {
    ...(look && { look }),
    ...(format !== undefined && { format }),
    ...(spills && { spills }),
    ...(allowed && { allowed }),
    ...(words !== '' && { note: words }),
  }
}

/** The sheets on which texts in boxes are the nursery's own: species, suppliers. On the others they name a medium or a way. */
const withOwnWords = new Set(['Orders', 'Batches', 'Offers'])

/** "Invented: what the employer pays on top" is still worth reading without its first word. */
function withoutInvented(text: string): string {
  return text
    .replace(/[,;] invented\b/g, '')
    .split(/(?<=\.) /)
    .map((sentence) => sentence.replace(/^Invented[^:;]*[:;] (.)/, (_all, first: string) => first.toUpperCase()))
    .filter((sentence) => !/invented/i.test(sentence))
    .join(' ')
}

/** On these sheets each column is one kind of input; on the others each row. */
const inColumns = new Set(['Orders', 'Batches', 'Offers'])

function lineOf(sheet: string, row: number, column: number): string {
  return inColumns.has(sheet) ? `${sheet} column ${column}` : `${sheet} row ${row}`
}

/** The lines in which the demo leaves an input open: what is not typed there counts as none. */
function optionalInputs({ sheets }: Book): ReadonlySet<string> {
  const lines = new Set<string>()
  mapCells(sheets, (cell, { sheet, row, column }) => {
    if (cell.look === 'input' && cell.value === undefined) lines.add(lineOf(sheet, row, column))
    return cell
  })
  return lines
}
