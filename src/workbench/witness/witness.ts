/**
 * Calculates each plain formula of a workbook once more, with the second engine, from the values that the first gave
 * to the cells which it reads. So a disagreement shows where it begins and nowhere else, and neither long chains of
 * formulas nor circles reach the second engine.
 */
import { isCellError } from '../../core/definition/problem'
import { addressOf, blockOf, type Position } from '../../formula/address'
import { idsCalled } from '../../formula/idsCalled'
import { type NamedRanges, namedRanges, rangesRead } from '../../formula/rangesRead'
import type { Disagreement, NotJudged, Testimony } from '../../workbook/check/testimony'
import type { OpenBook, OpenCell, OpenSheet, ReadCell } from '../../workbook/openBook'
import { formulaForSecond, type Surroundings } from './formulaForSecond'
import { knownCalls, type Rows } from './knownCalls'
import { sameResult } from './sameResult'
import { knowsFunction, type SecondEngine, secondEngine } from './secondEngine'

/** The code of the second engine must be loaded before. */
export function testimonyOf(book: OpenBook): Testimony {
  const sheets = book.sheets.flatMap((_sheet, index) => [`Values${index}`, `Formulas${index}`])
  const cells = book.sheets.flatMap((sheet) => [...sheet.cells.values()])
  const formulas = cells.filter(({ formula }) => formula !== '')
  const engine = secondEngine([...sheets, 'Tables', 'Parts'], cells.length + formulas.length)
  try {
    const hearing = new Hearing(book, engine)
    const questions = hearing.questions()
    engine.calculate()
    return hearing.testimony(questions)
  } finally {
    engine.close()
  }
}

/** Of one formula: what it gave, and what was calculated for arguments within it; or why it is not asked about. */
interface Question {
  readonly sheet: OpenSheet
  readonly address: string
  readonly asked: readonly Asked[] | NotJudged
}

interface Asked {
  /** Where the second engine calculates it. */
  readonly sheet: number
  readonly at: Position
  readonly given: Rows
}

/** A question that both engines answered, or not. */
type Answer = 'same' | NotJudged | Pick<Disagreement, 'first' | 'second'>

class Hearing {
  private readonly names: NamedRanges
  private readonly sheets: Surroundings['sheets']
  private readonly tables: number
  private readonly parts: number
  /** How many rows of the helping sheets are taken. */
  private rowsOfTables = 0
  private rowsOfParts = 0

  constructor(
    private readonly book: OpenBook,
    private readonly engine: SecondEngine,
  ) {
    this.names = namedRanges(book.names)
    this.sheets = new Map(
      book.sheets.map((open, index) => [open.name.toLowerCase(), { open, values: `Values${index}` }]),
    )
    this.tables = 2 * book.sheets.length
    this.parts = this.tables + 1
  }

  questions(): readonly Question[] {
    return this.book.sheets.flatMap((sheet, index) =>
      [...sheet.cells].flatMap(([address, cell]): readonly Question[] => {
        this.engine.put(2 * index, cell, cell.value)
        return cell.formula === '' ? [] : [{ sheet, address, asked: this.ask(sheet, 2 * index + 1, cell) }]
      }),
    )
  }

  testimony(questions: readonly Question[]): Testimony {
    const disagreements: Disagreement[] = []
    const notJudged: Partial<Record<NotJudged, number>> = {}
    let judged = 0
    for (const { sheet, address, asked } of questions) {
      const answers = typeof asked === 'string' ? [asked] : asked.map((one) => this.answer(one, sheet, address))
      const differing = answers.find((answer) => typeof answer === 'object')
      const why = answers.find((answer) => typeof answer === 'string' && answer !== 'same')
      if (differing) disagreements.push({ sheet: sheet.name, address, ...differing })
      if (differing || why === undefined) judged += 1
      else notJudged[why] = (notJudged[why] ?? 0) + 1
    }
    return { disagreements, judged, notJudged }
  }

  private ask(sheet: OpenSheet, place: number, cell: OpenCell): Question['asked'] {
    if (cell.calls === undefined && idsCalled(cell.formula).length > 0) return 'unseenCall'
    const spelled = formulaForSecond(cell.formula, {
      sheet: sheet.name,
      sheets: this.sheets,
      names: this.names,
      calls: knownCalls(cell.calls ?? []),
      put: (rows) => this.putTable(rows),
      knows: knowsFunction,
    })
    if (typeof spelled === 'string') return spelled
    const asked = spelled.parts.map(({ formula, given }) => this.putPart(formula, rowsOf(given)))
    if (!spelled.isOwn) {
      if (!this.engine.putFormula(place, cell, spelled.formula)) return 'unknown'
      asked.push({ sheet: place, at: cell, given: shownBy(sheet, cell) })
    }
    return asked.length === 0 ? 'ownFunction' : asked
  }

  private putTable(rows: Rows): string {
    const top = this.rowsOfTables
    rows.forEach((row, down) =>
      row.forEach((value, column) => this.engine.put(this.tables, { row: top + down, column }, value)),
    )
    this.rowsOfTables += rows.length
    return `Tables!${addressOf(top, 0)}:${addressOf(top + rows.length - 1, rows[0]!.length - 1)}`
  }

  private putPart(formula: string, given: Rows): Asked {
    const at = { row: this.rowsOfParts, column: 0 }
    this.rowsOfParts += given.length
    this.engine.putFormula(this.parts, at, formula)
    return { sheet: this.parts, at, given }
  }

  private answer({ sheet, at, given }: Asked, { name, cells }: OpenSheet, address: string): Answer {
    const results = this.engine.results(sheet, at)
    const height = Math.max(given.length, results.length)
    const width = Math.max(given[0]!.length, results[0]!.length)
    for (let cell = 0; cell < height * width; cell++) {
      const [row, column] = [Math.floor(cell / width), cell % width]
      const [first, second] = [given[row]?.[column] ?? null, results[row]?.[column] ?? null]
      // An argument may be handed over blank; as a result that is 0.
      if (sameResult(first, second) || (sheet === this.parts && first === null && second === 0)) continue
      return whyNot(first, second, () => this.readsError(cells.get(address)!.formula, name)) ?? { first, second }
    }
    return 'same'
  }

  private readsError(formula: string, sheet: string): boolean {
    return rangesRead(formula, sheet, this.names).some((range) => {
      const cells = this.sheets.get(range.sheet.toLowerCase())?.open.cells ?? new Map<string, OpenCell>()
      return [...cells.values()].some(
        ({ row, column, value }) =>
          isCellError(value) &&
          row >= range.top &&
          row <= range.bottom &&
          column >= range.left &&
          column <= range.right,
      )
    })
  }
}

/** Only the second engine writes these, where it does not know what it is asked. */
const ofUnknown = new Set(['#N/IMPL!', '#ERROR!', '#NAME?', '#CIRC!', '#CALC!'])

/** Why a difference is no disagreement. */
function whyNot(first: ReadCell, second: ReadCell, readsError: () => boolean): NotJudged | undefined {
  if (isCellError(second) && ofUnknown.has(second.code)) return 'unknown'
  if ([first, second].some((one) => isCellError(one) && one.code === '#SPILL!')) return 'error'
  // It formats no number of a hundred digits rightly.
  if (typeof second === 'number' && !(Math.abs(second) < 1e99)) return 'otherwise'
  return (isCellError(first) || isCellError(second)) && readsError() ? 'error' : undefined
}

function shownBy({ cells }: OpenSheet, cell: OpenCell): Rows {
  const block = cell.spill === undefined ? undefined : blockOf(cell.spill)
  if (block === undefined) return [[cell.value]]
  return Array.from({ length: block.bottom - block.top + 1 }, (_row, down) =>
    Array.from(
      { length: block.right - block.left + 1 },
      (_cell, right) => cells.get(addressOf(block.top + down, block.left + right))?.value ?? null,
    ),
  )
}

/** An argument as a function was given it: a value, or rows of cells. */
function rowsOf(given: unknown): Rows {
  return Array.isArray(given) ? (given as Rows) : [[(given ?? null) as ReadCell]]
}
