/** What every implementation of WorkbookPort must do. Each host runs this one suite. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { WorkbookPort } from '../../src/workbook/port'

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
    const stop = scene.port.onSelectionChange(() => { calls += 1 })
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
