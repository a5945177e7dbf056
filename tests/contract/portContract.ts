/** What every implementation of WorkbookPort must do. Each host runs this one suite. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { addressOf, blockIn } from '../../src/formula/address'
import type { Book, Cell } from '../../src/workbook/book'
import { labelsOf } from '../../src/workbook/labels'
import type { WorkbookPort } from '../../src/workbook/port'
import { demoSeason } from '../../src/workbook/season/demoSeason'

/** A workbook with one empty sheet, "Season 1", and the hands of a user in it. */
export interface Scene {
  readonly port: WorkbookPort
  /** A cell, or a block such as "B4:B6". */
  select(address: string): Promise<void>
  /** Selects a cell and leaves this in it. */
  type(address: string, content: string | number): Promise<void>
  /** Begins to type in the selected cell, without pressing Enter. */
  beginTyping(): Promise<void>
  cancelTyping(): Promise<void>
  close(): Promise<void>
}

export function portContract(host: string, open: () => Promise<Scene>): void {
  let scene: Scene

  beforeAll(async () => {
    scene = await open()
  })
  afterAll(() => scene.close())

  test(`${host} knows an empty workbook.`, async () => {
    expect(await scene.port.isEmpty()).toBe(true)
    await scene.type('B4', 1)
    expect(await scene.port.isEmpty()).toBe(false)
  })

  test(`${host} gives sheet, address and value of the selected cell, and no formula where there is none.`, async () => {
    await scene.type('B4', 12.5)
    await scene.select('B4')
    expect(await scene.port.selectedCell()).toEqual({ sheet: 'Season 1', address: 'B4', formula: '', value: 12.5 })
  })

  test(`${host} gives the text of a cell as it was typed.`, async () => {
    await scene.type('C4', '3.8 cu ft')
    await scene.select('C4')
    expect(await scene.port.selectedCell()).toMatchObject({ address: 'C4', value: '3.8 cu ft' })
  })

  test(`${host} gives null for a blank cell.`, async () => {
    await scene.select('H20')
    expect(await scene.port.selectedCell()).toEqual({ sheet: 'Season 1', address: 'H20', formula: '', value: null })
  })

  test(`${host} writes a formula into the selected cell and reads the same one back.`, async () => {
    await scene.select('D4')
    await scene.port.putFormula('=STICK.BAGS(300,60)')
    expect(await scene.port.selectedCell()).toMatchObject({ address: 'D4', formula: '=STICK.BAGS(300,60)' })
  })

  test(`${host} writes a formula into the cell it is told, whichever is selected, and leaves the selection where it is.`, async () => {
    await scene.select('D5')
    await scene.port.putFormula('=1+2', { sheet: 'Season 1', address: 'D6' })
    expect(await scene.port.selectedCell()).toMatchObject({ address: 'D5', formula: '' })
    await scene.select('D6')
    expect(await scene.port.selectedCell()).toMatchObject({ formula: '=1+2' })
  })

  test(`${host} names the selected block as a formula would.`, async () => {
    await scene.select('B4:C6')
    expect(await scene.port.selectedRange()).toEqual({ sheet: 'Season 1', address: 'B4:C6' })
    await scene.select('B4')
    expect(await scene.port.selectedRange()).toEqual({ sheet: 'Season 1', address: 'B4' })
  })

  test(`${host} reads what a reference names: numbers, texts and blanks, on the sheet given or on its own.`, async () => {
    await scene.type('I4', 12.5)
    await scene.type('I5', '65 mL')
    const cells = [[12.5], ['65 mL'], [null]]
    expect(await scene.port.valuesOf('I4:I6', 'Season 1')).toEqual(cells)
    expect(await scene.port.valuesOf("'Season 1'!$I$4:$I$6", 'Season 1')).toEqual(cells)
    expect(await scene.port.valuesOf('i4', 'Season 1')).toEqual([[12.5]])
  })

  test(`${host} gives nothing for a text that names no cells, and for a sheet that is not there.`, async () => {
    expect(await scene.port.valuesOf('plenty', 'Season 1')).toBeUndefined()
    expect(await scene.port.valuesOf('Nowhere!A1', 'Season 1')).toBeUndefined()
  })

  test(`${host} gives the whole workbook as it stands: each cell with its place, formula and value.`, async () => {
    await scene.type('C12', 3)
    await scene.select('C13')
    await scene.port.putFormula('=C12')
    const { sheets } = await scene.port.read()
    const cells = sheets.find(({ name }) => name === 'Season 1')?.cells
    expect(cells?.get('C12')).toMatchObject({ row: 11, column: 2, formula: '', value: 3 })
    expect(cells?.get('C13')).toMatchObject({ row: 12, column: 2, formula: '=C12' })
    expect(cells?.get('C14')).toBeUndefined()
  })

  test(`${host} gives some rows of a sheet as it gives the whole, and nothing of a sheet that is not there.`, async () => {
    const whole = (await scene.port.read()).sheets.find(({ name }) => name === 'Season 1')!
    const rows = await scene.port.readRows('season 1', 11, 12)
    expect([...rows!.cells]).toEqual([...whole.cells].filter(([, { row }]) => row === 11 || row === 12))
    expect(rows!.cells.get('C13')).toMatchObject({ row: 12, column: 2, formula: '=C12' })
    expect((await scene.port.readRows('Season 1', 900, 950))?.cells.size).toBe(0)
    expect(await scene.port.readRows('Nowhere', 0, 5)).toBeUndefined()
  })

  test(`${host} tells the headings of a sheet from its other cells.`, async () => {
    await scene.port.add({
      names: [],
      sheets: [
        {
          name: 'Headed',
          widths: [],
          frozenRows: 0,
          frozenColumns: 0,
          rows: [
            [
              { value: 'Medium', look: 'heading' },
              { value: 'Price', look: 'heading' },
            ],
            [
              { value: 'Peat', look: 'text' },
              { value: 21.8, look: 'input' },
            ],
          ],
        },
      ],
    })
    const { cells } = (await scene.port.readRows('Headed', 0, 1))!
    expect([...cells].filter(([, { isHeading }]) => isHeading).map(([address]) => address)).toEqual(['A1', 'B1'])
    expect(labelsOf(cells).textOf(blockIn('B2'))).toBe('Peat, Price')
  })

  test(`${host} gives the names of cells alone as it gives them with everything else.`, async () => {
    expect(await scene.port.names()).toEqual((await scene.port.read()).names)
  })

  test(`${host} changes several cells at once into formulas and values, empties one, and leaves those between as they are.`, async () => {
    await scene.port.add({
      names: [],
      sheets: [
        {
          name: 'Put',
          widths: [],
          frozenRows: 0,
          frozenColumns: 0,
          rows: [
            [{ value: 7, look: 'input' }, { formula: '=A1+1' }, { formula: '=A1+2' }],
            [{ formula: '=A1+3' }, { value: 'kept' }, { value: 'gone' }],
          ],
        },
      ],
    })
    await scene.port.putCells([
      { sheet: 'Put', address: 'B1', was: '=A1+1', now: { formula: '=A1*2' } },
      { sheet: 'Put', address: 'C1', was: '=A1+2', now: { value: '60' } },
      { sheet: 'Put', address: 'A2', was: '=A1+3', now: { value: 10.5 } },
      { sheet: 'Put', address: 'C2', now: { value: null } },
      { sheet: 'Put', address: 'D3', now: { value: true } },
    ])
    expect((await contents(scene.port)).Put).toEqual({ A1: 7, B1: '=A1*2', C1: '60', A2: 10.5, B2: 'kept', D3: true })
  })

  test(`${host} changes no cell if one holds another formula than it is said to hold, and names it.`, async () => {
    const before = await contents(scene.port)
    await expect(
      scene.port.putCells([
        { sheet: 'Put', address: 'A1', now: { value: 8 } },
        { sheet: 'Put', address: 'B1', was: '=A1+1', now: { value: 14 } },
      ]),
    ).rejects.toMatchObject({ code: 'cellChanged', detail: 'B1' })
    expect(await contents(scene.port)).toEqual(before)
  })

  test(`${host} changes cells of two sheets at once, and none of either if there is no such sheet as the second.`, async () => {
    await scene.port.add({
      names: [],
      sheets: [{ name: 'Put too', widths: [], frozenRows: 0, frozenColumns: 0, rows: [[{ formula: '=1+1' }]] }],
    })
    const first = { sheet: 'Put', address: 'E5', now: { value: 5 } }
    const before = await contents(scene.port)
    await expect(
      scene.port.putCells([first, { sheet: 'Nowhere', address: 'A1', now: { value: 1 } }]),
    ).rejects.toMatchObject({ code: 'hostFailed' })
    expect(await contents(scene.port)).toEqual(before)
    await scene.port.putCells([first, { sheet: 'Put too', address: 'A1', was: '=1+1', now: { value: 2 } }])
    expect(await contents(scene.port)).toEqual({ ...before, Put: { ...before.Put, E5: 5 }, 'Put too': { A1: 2 } })
  })

  test(`${host} changes no cell while a cell is being typed in.`, async () => {
    const before = await contents(scene.port)
    await scene.beginTyping()
    await expect(
      scene.port.putCells([{ sheet: 'Put', address: 'B1', was: '=A1*2', now: { value: 14 } }]),
    ).rejects.toMatchObject({ code: 'cellEditMode' })
    await scene.cancelTyping()
    expect(await contents(scene.port)).toEqual(before)
  })

  test(`${host} shows and selects the cell it is told.`, async () => {
    await scene.select('A1')
    await scene.port.select({ sheet: 'Season 1', address: 'C12' })
    expect(await scene.port.selectedCell()).toMatchObject({ sheet: 'Season 1', address: 'C12', value: 3 })
  })

  test(`${host} tells when another cell is selected.`, async () => {
    const called = nextCall(scene.port)
    await scene.select('E9')
    await called
    expect(await scene.port.selectedCell()).toMatchObject({ address: 'E9' })
  })

  test(`${host} tells when the selected cell's content changed.`, async () => {
    await scene.select('E10')
    const called = nextCall(scene.port)
    await scene.type('E10', 7)
    await called
  })

  test(`${host} calls a listener that has stopped no more.`, async () => {
    let calls = 0
    const stop = scene.port.onSelectionChange(() => {
      calls += 1
    })
    stop()
    const other = nextCall(scene.port)
    await scene.select('F2')
    // Once another listener was told, the stopped one would have been too.
    await other
    expect(calls).toBe(0)
  })

  test(`${host} refuses to write while a cell is being typed in, and leaves the cell as it was.`, async () => {
    await scene.type('G4', 5)
    await scene.select('G4')
    await scene.beginTyping()
    await expect(scene.port.putFormula('=1+1')).rejects.toMatchObject({ code: 'cellEditMode' })
    await scene.cancelTyping()
    expect(await scene.port.selectedCell()).toMatchObject({ address: 'G4', formula: '', value: 5 })
  })

  test(`${host} writes once the typing has ended.`, async () => {
    await scene.select('G5')
    await scene.beginTyping()
    await scene.cancelTyping()
    await scene.port.putFormula('=1+1')
    expect(await scene.port.selectedCell()).toMatchObject({ address: 'G5', formula: '=1+1' })
  })

  test(`${host} adds no book while a cell is being typed in.`, async () => {
    await scene.select('G6')
    await scene.beginTyping()
    await expect(scene.port.add(smallBook)).rejects.toMatchObject({ code: 'cellEditMode' })
    await scene.cancelTyping()
    expect(await contents(scene.port)).not.toHaveProperty('Trial one')
  })

  test(`${host} adds a book after what is there: contents, formulas on other sheets and names, and leaves the rest alone.`, async () => {
    const before = await contents(scene.port)
    await scene.port.add(smallBook)
    const { 'Trial one': one, 'Trial two': two, ...others } = await contents(scene.port)
    expect(others).toEqual(before)
    expect(one).toEqual({ A1: 'Rates', B1: 'Jan 2', A2: 0.9, B2: '60', C2: true, A3: 0.8, C3: "='Trial two'!A1" })
    expect(two).toEqual({ A1: '=SUM(TrialRates)', A3: '=STICK.BAGS(300,60)' })
    expect((await scene.port.read()).names).toContainEqual({
      name: 'TrialRates',
      refersTo: expect.stringMatching(/^'Trial one'!\$?A\$?2:\$?A\$?3$/),
    })
    expect(await scene.port.valuesOf('TrialRates', 'Season 1')).toEqual([[0.9], [0.8]])
  })

  test(`${host} adds nothing of a book if one of its sheets or names is taken, however it is capitalised, and lists what is.`, async () => {
    const before = await contents(scene.port)
    const other = { ...smallBook.sheets[0]!, name: 'Trial three' }
    await expect(scene.port.add({ names: [], sheets: [other, { ...other, name: 'SEASON 1' }] })).rejects.toMatchObject({
      code: 'nameTaken',
      detail: 'the sheet SEASON 1',
    })
    await expect(
      scene.port.add({ names: [{ name: 'trialrates', refersTo: "'Trial three'!$A$1" }], sheets: [other] }),
    ).rejects.toMatchObject({ code: 'nameTaken', detail: 'the name trialrates' })
    await expect(scene.port.add(smallBook)).rejects.toMatchObject({
      detail: 'the sheet Trial one, the sheet Trial two and the name TrialRates',
    })
    expect(await contents(scene.port)).toEqual(before)
  })

  test(`${host} inserts rows with the formulas of the one above them and nothing typed in, and ranges across them grow.`, async () => {
    const rows = [1, 2, 3].map((liners, index): Cell[] => [
      { value: liners, look: 'input' },
      { formula: `=A${index + 2}*Factor`, look: 'result' },
    ])
    const sheet = { name: 'Lines', widths: [], frozenRows: 1, frozenColumns: 0, rows: [[{ value: 'Liners' }], ...rows] }
    await scene.port.add({
      names: [
        { name: 'Factor', refersTo: 'Lines!$A$2' },
        { name: 'AllLines', refersTo: 'Lines!$A$2:$A$4' },
      ],
      sheets: [sheet],
    })
    await scene.port.insertRows({ sheet: 'Lines', address: 'A4' }, 2)
    expect((await contents(scene.port)).Lines).toEqual({
      A1: 'Liners',
      A2: 1,
      B2: '=A2*Factor',
      A3: 2,
      B3: '=A3*Factor',
      B4: '=A4*Factor',
      B5: '=A5*Factor',
      A6: 3,
      B6: '=A6*Factor',
    })
    expect(await scene.port.valuesOf('AllLines', 'Lines')).toEqual([[1], [2], [null], [null], [3]])
  })

  test(`${host} takes everything away again if it cannot add a book to its end.`, async () => {
    const before = await contents(scene.port)
    const { names } = await scene.port.read()
    const [sheet] = smallBook.sheets
    const book = {
      names: [{ name: 'TrialFour', refersTo: "'Trial four'!$A$1" }],
      sheets: [
        { ...sheet!, name: 'Trial four' },
        { ...sheet!, name: 'Prices [old]' },
      ],
    }
    await expect(scene.port.add(book)).rejects.toMatchObject({ code: 'bookRefused' })
    expect(await contents(scene.port)).toEqual(before)
    expect((await scene.port.read()).names).toEqual(names)
  })

  test(`${host} takes a sheet away with all that stands on it, and leaves the others.`, async () => {
    const before = await contents(scene.port)
    const rows: Cell[][] = [[{ value: 1 }, { formula: '=A1+1' }]]
    await scene.port.add({ names: [], sheets: [{ name: 'Gone', widths: [], frozenRows: 0, frozenColumns: 0, rows }] })
    expect(await contents(scene.port)).toHaveProperty('Gone')
    await scene.port.removeSheet('Gone')
    expect(await contents(scene.port)).toEqual(before)
    await expect(scene.port.removeSheet('Gone')).rejects.toMatchObject({ code: 'hostFailed' })
  })

  test(`${host} adds the whole demo season, formula by formula.`, { timeout: 60_000 }, async () => {
    const season = demoSeason()
    await scene.port.add(season)
    const open = await scene.port.read()
    expect(open.names.map(({ name }) => name)).toEqual(expect.arrayContaining(season.names.map(({ name }) => name)))
    for (const { name, rows } of season.sheets) {
      const cells = open.sheets.find((sheet) => sheet.name === name)?.cells
      rows.forEach((row, rowIndex) =>
        row.forEach((cell, column) => {
          if (cell === undefined || (cell.formula === undefined && (cell.value ?? '') === '')) return
          const address = addressOf(rowIndex, column)
          expect(cells?.get(address), `${name}!${address}`).toMatchObject(
            cell.formula === undefined ? { formula: '', value: cell.value } : { formula: cell.formula },
          )
        }),
      )
    }
  })
}

/** Two sheets that read each other, of every kind of content. */
const smallBook: Book = {
  names: [{ name: 'TrialRates', refersTo: "'Trial one'!$A$2:$A$3" }],
  sheets: [
    {
      name: 'Trial one',
      widths: [20, 8.5],
      frozenRows: 1,
      frozenColumns: 1,
      rows: [
        [
          { value: 'Rates', look: 'title', note: 'Counted in three trays.' },
          { value: 'Jan 2', look: 'heading' },
        ],
        [
          {
            value: 0.9,
            look: 'input',
            format: '0%',
            allowed: { from: 0, to: 1, sentence: 'Type a share, such as 0.9 or 90%.' },
          },
          { value: '60' },
          { value: true },
        ],
        [{ value: 0.8, look: 'input', format: '0%' }, undefined, { formula: "='Trial two'!A1", look: 'total' }],
      ],
    },
    {
      name: 'Trial two',
      widths: [],
      frozenRows: 0,
      frozenColumns: 0,
      rows: [[{ formula: '=SUM(TrialRates)' }], [], [{ formula: '=STICK.BAGS(300,60)' }]],
    },
  ],
}

/** By sheet and address: the formula of a cell, else its value. */
async function contents(port: WorkbookPort): Promise<Record<string, Record<string, unknown>>> {
  const { sheets } = await port.read()
  return Object.fromEntries(
    sheets.map(({ name, cells }) => [
      name,
      Object.fromEntries(
        [...cells].map(([address, { formula, value }]) => [address, formula === '' ? value : formula]),
      ),
    ]),
  )
}

/** Resolves when the port calls back next. */
function nextCall(port: WorkbookPort): Promise<void> {
  return new Promise((resolve) => {
    const stop = port.onSelectionChange(() => {
      stop()
      resolve()
    })
  })
}
