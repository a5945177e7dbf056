/** Where the demo season has its cells: by a name, by the label of a figure, or by the heading and the key of a row. */
import type { Locator, Page } from 'playwright-core'
import { demoSeason } from '../../src/workbook/season/demoSeason'
import { addressOf } from '../../src/formula/address'
import { namedRanges, rangesRead } from '../../src/formula/rangesRead'
import type { Cell } from '../../src/workbook/book'
import type { CellPlace } from '../../src/workbook/cellPlace'

export const { sheets, names } = demoSeason()

/** The first cell of a name, or one so many rows below it. */
export function named(name: string, rowsBelow = 0): CellPlace {
  const [range] = rangesRead(`=${name}`, '', namedRanges(names))
  if (range === undefined) throw new Error(`The season has no name ${name}.`)
  return { sheet: range.sheet, address: addressOf(range.top + rowsBelow, range.left) }
}

/** Right of the label of a figure. */
export function beside(sheet: string, label: string): CellPlace {
  return {
    sheet,
    address: addressOf(
      rowWhere(sheet, label, (cells) => cells[0]?.value === label),
      1,
    ),
  }
}

/** Below a heading, in the row whose first typed cell holds the key. */
export function inRow(sheet: string, key: string, heading: string): CellPlace {
  const isHeaded = (cells: Cells) => cells[0]?.value === 'State' && cells.some((cell) => cell?.value === heading)
  const headings = rowsOf(sheet)[rowWhere(sheet, heading, isHeaded)]!
  const row = rowWhere(sheet, key, (cells) => cells[1]?.look === 'input' && String(cells[1].value) === key)
  return {
    sheet,
    address: addressOf(
      row,
      headings.findIndex((cell) => cell?.value === heading),
    ),
  }
}

/** The total above a heading. */
export function above(sheet: string, heading: string): CellPlace {
  const isHeaded = (cells: Cells) => cells[0]?.value === 'State' && cells.some((cell) => cell?.value === heading)
  const column = rowsOf(sheet)[rowWhere(sheet, heading, isHeaded)]!.findIndex((cell) => cell?.value === heading)
  return {
    sheet,
    address: addressOf(
      rowWhere(sheet, 'All rows', (cells) => cells[0]?.value === 'All rows'),
      column,
    ),
  }
}

type Cells = readonly (Cell | undefined)[]

function rowsOf(sheet: string): readonly Cells[] {
  const found = sheets.find(({ name }) => name === sheet)
  if (found === undefined) throw new Error(`The season has no sheet ${sheet}.`)
  return found.rows
}

function rowWhere(sheet: string, what: string, isIt: (cells: Cells) => boolean): number {
  const row = rowsOf(sheet).findIndex(isIt)
  if (row < 0) throw new Error(`No row of ${sheet} has "${what}".`)
  return row
}

/** What the page says of the selected cell. */
export const selectedCell = (page: Page): Locator => page.getByRole('status', { name: 'Selected cell' })

/** By the grid's box of names, from another sheet by a name of the wanted one; the keyboard is in the cell then. */
export async function goTo(page: Page, { sheet, address }: CellPlace): Promise<void> {
  if (!(await selectedCell(page).textContent())!.startsWith(`${sheet}, `)) {
    const door = names.find(({ refersTo }) => refersTo.startsWith(`${sheet}!`))
    if (door === undefined) throw new Error(`No name leads to ${sheet}.`)
    await jump(page, door.name, new RegExp(`^${sheet}, ${named(door.name).address}:`))
  }
  await jump(page, address, new RegExp(`^${sheet}, ${address}:`))
}

async function jump(page: Page, to: string, reached: RegExp): Promise<void> {
  const box = page.locator('.sheet [data-u-comp="defined-name"] input')
  await box.fill(to)
  await box.press('Enter')
  await selectedCell(page).filter({ hasText: reached }).waitFor()
}

/** What the selected cell shows: behind "gives", or behind the place of what is typed. */
export async function shown(page: Page): Promise<string> {
  const line = (await selectedCell(page).textContent())!
  const from = line.lastIndexOf(' gives ')
  return from < 0 ? /^[^:]*: ([^]*)$/.exec(line)![1]! : line.slice(from + ' gives '.length)
}

export async function shownAt(page: Page, place: CellPlace): Promise<string> {
  await goTo(page, place)
  return shown(page)
}

export async function numberAt(page: Page, place: CellPlace): Promise<number> {
  return Number((await shownAt(page, place)).replaceAll(',', ''))
}

/** Into a cell, as a hand does; the keyboard is in the cell below then. */
export async function typeInto(page: Page, place: CellPlace, content: string): Promise<void> {
  await goTo(page, place)
  await page.keyboard.type(content)
  await page.keyboard.press('Enter')
}
