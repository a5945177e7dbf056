/**
 * A sheet to begin with for a rooting method or a material: what its functions take as empty boxes, each with what
 * may be typed and what is usual, and their results, which wait for the figures. Bands limit nothing: they stand there to be read.
 */
import type { Definition } from '../../core/definition/definition'
import { fillsOneCell } from '../../core/definition/definition'
import type { Parameter } from '../../core/definition/parameter'
import { catalogue } from '../../functions/catalogue'
import { bibliography } from '../../sources/bibliography'
import { cautionSentences } from '../../wording/cautions'
import { library } from '../../wording/en/library'
import { parameters } from '../../wording/en/parameters'
import { sheets } from '../../wording/en/sheets'
import type { Allowed, Book, Cell } from '../book'
import {
  caution,
  formats,
  heading,
  headings,
  openInput,
  result,
  spilledOver,
  text,
  title,
  total,
  type Row,
} from '../season/cells'
import { withWaitingFormulas } from './waitingFormulas'
import type { Band, LibraryEntry } from './library'

const words = sheets.library

/** Cells that one range of a function takes here: the components of a mix. */
const components = 3
const figures = 'C'

/** @param sheet The name that the sheet is to have. */
export function startingRows(entry: LibraryEntry, sheet: string): Book {
  const { name, text: about, bands, functions, cautions } = entry
  const rows: Row[] = [[title(words.title(name))], [text(about)], [text(words.about)], [], headings(...words.headings)]
  /** Where what a parameter takes, or a function gives, stands: the row of its first cell, from 1, and how many. */
  const placed = new Map<string, { readonly row: number; readonly height: number }>()
  const place = (key: string, added: readonly Row[]) => {
    placed.set(key, { row: rows.length + 1, height: added.length })
    rows.push(...added)
  }
  const reference = (key: string) => {
    const { row, height } = placed.get(key)!
    return height === 1 ? `${figures}${row}` : `${figures}${row}:${figures}${row + height - 1}`
  }
  const asked = new Set<Band>()
  for (const definition of functions.flatMap(sheetFunction)) {
    rows.push([
      heading(definition.summary),
      heading(''),
      heading(''),
      heading(`STICK.${definition.id}`),
      heading(''),
      heading(''),
    ])
    for (const [key, parameter] of Object.entries(definition.parameters)) {
      if (placed.has(key)) continue
      const band = bands.find(({ parameter: of }) => of === key)
      if (band !== undefined) asked.add(band)
      place(key, inputRows(parameter, band))
    }
    const formula = `=STICK.${definition.id}(${Object.keys(definition.parameters).map(reference).join(',')})`
    place(definition.result.name, resultRows(definition, formula))
  }
  for (const band of bands)
    if (!asked.has(band)) rows.push([text(capital(band.of)), text(''), text('–'), text(''), ...bandCells(band)])
  rows.push([], ...cautionSentences(cautions).map((sentence) => [caution(sentence)]))
  return withWaitingFormulas(
    {
      names: [],
      sheets: [{ name: sheet, widths: [64, 24, 14, 52, 18, 60], frozenRows: headingRow, frozenColumns: 0, rows }],
    },
    () => false,
  )
}

const headingRow = 5

/** A sheet has no room for tables, and no use for what changes one typed unit into another. */
function sheetFunction(id: string): readonly Definition[] {
  const definition = catalogue.find((one) => one.id === id)
  if (definition === undefined) throw new Error(`The catalogue holds no ${id}`)
  const takesText = Object.values(definition.parameters).some(({ takes }) => takes === 'text')
  return takesText || definition.result.columns !== undefined ? [] : [definition]
}

function inputRows(parameter: Parameter, band: Band | undefined): readonly Row[] {
  const { text: label, unit, shape } = parameter
  const count = shape === 'cell' ? 1 : components
  return Array.from({ length: count }, (_, index) => [
    text(capital(count === 1 ? label : words.component(label, index + 1))),
    text(unit),
    inputCell(parameter, band),
    text(wanted(parameter)),
    ...(index === 0 ? bandCells(band) : []),
  ])
}

/** What stands for an argument that is left out is typed in, to be seen; where a band says what is usual, nothing is. */
function inputCell(parameter: Parameter, band: Band | undefined): Cell {
  const fallback = band === undefined && typeof parameter.default === 'number' ? parameter.default : undefined
  const allowed = allowedFor(parameter)
  return {
    ...openInput(formatOf(parameter)),
    ...(fallback !== undefined && { value: fallback }),
    ...(allowed && { allowed }),
  }
}

/** The limits of the function, which hold whatever the material. */
function allowedFor(parameter: Parameter): Allowed | undefined {
  const { atLeast, above, atMost, below, whole } = parameter
  const from = atLeast ?? above
  if (from === undefined) return undefined
  const to = atMost ?? below
  return {
    from,
    ...(to !== undefined && { to }),
    ...(whole && { whole }),
    sentence: words.typeThat(wanted(parameter), parameter.unit),
  }
}

/** A cell is checked as a number, so no text with a unit is asked for. */
function wanted(parameter: Parameter): string {
  return words.wanted(parameters.rangeText({ ...parameter, shape: 'cell' }), parameter.unit)
}

function resultRows({ result: given }: Definition, formula: string): readonly Row[] {
  const row = (cell: Cell): Row => [text(capital(given.text)), text(given.unit), cell]
  if (fillsOneCell(given)) return [row(total(formula, formats.mixed))]
  return [
    row({ ...result(formula, formats.mixed), spills: true }),
    ...Array.from({ length: components - 1 }, () => row(spilledOver(formats.mixed))),
  ]
}

function formatOf({ share, whole }: Parameter): string {
  if (share === true) return formats.share
  return whole === true ? formats.count : formats.mixed
}

function bandCells(band: Band | undefined): readonly Cell[] {
  if (band === undefined) return []
  const from = band.sources?.map((key) => `${bibliography[key].title}. ${bibliography[key].detail}.`).join(' ')
  return [text(band.range), text(from ?? library.noSource)]
}

/** Not of pH. */
function capital(words: string): string {
  return /^\p{Ll}{2}/u.test(words) ? words.charAt(0).toUpperCase() + words.slice(1) : words
}
