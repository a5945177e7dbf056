/** The working of a cell as a sheet for an auditor: what stands in the pane, the cells read, and a recalculation that is live. */
import type { Definition } from '../../core/definition/definition'
import { isCellError } from '../../core/definition/problem'
import { callArguments } from '../../formula/callArguments'
import { addressOf, blockAddress, blockOf } from '../../formula/address'
import { quotedSheet } from '../../formula/reference'
import { fromOtherSheet } from '../../formula/fromOtherSheet'
import { waitedFor } from '../../formula/waiting'
import type { PlainCell } from '../../derived/plainCell'
import type { Working } from '../../derived/working'
import { frame } from '../../wording/en/frame'
import { sheets } from '../../wording/en/sheets'
import { working as pane } from '../../wording/en/working'
import type { Book, Cell, CellContent, Sheet } from '../book'
import type { ReadCell } from '../openBook'
import type { CellPlace } from '../cellPlace'
import type { FilledCells } from './cellsRead'

export interface WorkedCell extends CellPlace {
  readonly formula: string
  readonly value: ReadCell
  /** The whole range that the formula fills, where it fills more than its own cell. */
  readonly spill?: string
  readonly calls: readonly WorkedCall[]
  readonly read: readonly FilledCells[]
  readonly plain: PlainCell
}

export interface WorkedCall {
  readonly definition: Definition
  readonly args: readonly unknown[]
  readonly working: Working
}

const words = sheets.working

type Row = Sheet['rows'][number]

/** @param name Of the new sheet. */
export function workingBook(name: string, cell: WorkedCell): Book {
  const place = `${quotedSheet(cell.sheet)}!${cell.address}`
  const rows: Row[] = [
    [{ value: words.title(cell), look: 'title' }],
    [{ value: words.formula }, text(cell.formula)],
    [{ value: words.result }, { value: contentOf(cell.value), look: 'result' }],
    ...cell.calls.flatMap((call) => callRows(call)),
    ...readRows(cell.read),
    [],
    heading(words.recalculated),
  ]
  rows.push(...recalculation(cell, place, rows.length))
  return { names: [], sheets: [{ name, widths: [30, 20, 26, 44, 60], frozenRows: 0, frozenColumns: 0, rows }] }
}

function callRows({ definition: { id, summary, parameters }, args, working }: WorkedCall): readonly Row[] {
  const top: readonly Row[] = [[], [{ value: `STICK.${id}`, look: 'total' }, text(summary)]]
  if ('cellError' in working) return [...top, [undefined, text(frame.inputShows(working.cellError))]]
  if ('refused' in working) return [...top, ...working.refused.map((sentence): Row => [undefined, text(sentence)])]
  const given = new Map(Object.keys(parameters).map((name, index) => [name, args[index]]))
  return [
    ...top,
    heading(words.argument, words.readAs, words.unit, words.given, words.meaning),
    ...working.inputs.flatMap((input) =>
      listed(
        [input.value].flat(),
        text(unitText(input.unit)),
        input.given ? givenContents(given.get(input.name)) : [words.leftOut],
        input.name,
        input.text,
      ),
    ),
    heading(words.step, words.quantity, words.unit, words.expression, words.meaning),
    ...working.steps.flatMap((step) =>
      listed([step.value].flat(), text(unitText(step.unit)), [step.formula], step.name, step.text),
    ),
    [{ value: words.convention }, text(working.convention)],
  ]
}

function readRows(read: readonly FilledCells[]): readonly Row[] {
  if (read.length === 0) return []
  return [
    [],
    heading(words.cellRead, words.quantity, '', words.place, words.name),
    ...read.flatMap(({ sheet, address, name, label, values, count }): readonly Row[] => {
      const called = text(name ?? '')
      if (count === 1)
        return [
          [text(label), { value: contentOf(values[0]?.value ?? null) }, undefined, text(`${sheet}!${address}`), called],
        ]
      return [
        [text(label), undefined, undefined, text(`${sheet}!${address}`), called],
        ...values.map((one): Row => [
          undefined,
          { value: contentOf(one.value) },
          undefined,
          text(`${sheet}!${one.address}`),
        ]),
        ...(count > values.length ? [[undefined, text(words.more(count - values.length))]] : []),
      ]
    }),
  ]
}

/** Below everything else, so that what a plain formula fills has room. @param above How many rows stand above. */
function recalculation(cell: WorkedCell, place: string, above: number): readonly Row[] {
  const { plain, sheet, spill } = cell
  const filled = spill === undefined ? undefined : blockOf(spill)
  const filledPlace = spill === undefined ? place : `${quotedSheet(sheet)}!${spill}`
  if ('without' in plain) return plain.without.flatMap((without) => withoutPlain(without, cell, filledPlace))
  const formula = fromOtherSheet(plain.formula, sheet)
  const [first, second] = [addressOf(above + 1, 1), addressOf(above + 2, 1)]
  if (filled === undefined) {
    const difference =
      typeof cell.value === 'number' ? `=ROUND(ABS(${first}-${second}),9)` : `=IF(${first}=${second},0,1)`
    return [
      [{ value: words.plainFormula }, text(plain.formula)],
      [{ value: words.plainGives }, { formula, look: 'result' }],
      [{ value: words.cellShows }, { formula: `=${place}`, look: 'result' }],
      [{ value: words.difference }, { formula: difference, look: 'total' }],
    ]
  }
  const top = above + 5
  const copy = blockAddress({
    top,
    left: 0,
    bottom: top + filled.bottom - filled.top,
    right: filled.right - filled.left,
  })
  return [
    [{ value: words.plainFormula }, text(plain.formula)],
    [{ value: words.cellShows }, text(`${sheet}!${spill}`)],
    [
      { value: words.cellsThatDiffer },
      {
        formula: `=SUMPRODUCT(--IF(ISNUMBER(${filledPlace}),ABS(${filledPlace}-${copy})>0.000000001,${filledPlace}<>${copy}))`,
        look: 'total',
      },
    ],
    [],
    [{ value: words.plainGives }],
    [{ formula, spills: true }],
  ]
}

/** Where the whole cell is one call, or waits for one, the check of its answer can be live too: it calls the answer by the name of the result. */
function withoutPlain(
  { id, reason, check }: { readonly id: string; readonly reason?: string; readonly check?: string },
  { formula, sheet, calls }: WorkedCell,
  answer: string,
): readonly Row[] {
  const definition = calls.find((call) => call.definition.id === id)?.definition
  const isWhole = definition !== undefined && callArguments(waitedFor(formula), id) !== undefined
  return [
    [text(words.noPlainFormula(id)), text(reason ?? pane.unreadArgument)],
    ...(check === undefined ? [] : [[{ value: words.check }, text(check)]]),
    ...(check === undefined || !isWhole
      ? []
      : [
          [
            { value: words.answerHolds },
            {
              formula: fromOtherSheet(check, sheet, new Map([[definition.result.name.toLowerCase(), answer]])),
              look: 'total' as const,
            },
          ],
        ]),
  ]
}

function heading(...texts: readonly string[]): Row {
  return texts.map((value): Cell => ({ value, look: 'heading' }))
}

function text(value: string): Cell | undefined {
  return value === '' ? undefined : { value }
}

function contentOf(value: ReadCell): CellContent {
  return isCellError(value) ? value.code : (value ?? '')
}

/** A list takes a row for each of its values, so that none is hidden and all can be added up. */
function listed(
  values: readonly CellContent[],
  unit: Cell | undefined,
  besides: readonly CellContent[],
  name: string,
  meaning: string,
): readonly Row[] {
  const cell = (value: CellContent | undefined): Cell | undefined => (value === undefined ? undefined : { value })
  return Array.from({ length: Math.max(values.length, besides.length, 1) }, (_, index): Row =>
    index === 0
      ? [text(name), cell(values[0]), unit, cell(besides[0]), text(meaning)]
      : [undefined, cell(values[index]), undefined, cell(besides[index])],
  )
}

function givenContents(argument: unknown): readonly CellContent[] {
  return ([argument].flat(2) as readonly ReadCell[]).map(contentOf)
}

/** A name is no measure. */
function unitText(unit: string): string {
  return unit === 'text' ? '' : unit
}
