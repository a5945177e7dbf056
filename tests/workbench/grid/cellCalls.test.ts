import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { MadeCall } from '../../../src/derived/madeCall'
import { catalogue } from '../../../src/functions/catalogue'
import { CellCalls, keepCellCalls, type Place } from '../../../src/workbench/grid/cellCalls'
import { openGrid, type OpenGrid } from './univerInNode'

const definition = catalogue[0]!
const answered: MadeCall = { definition, args: [], outcome: { kind: 'value', value: 1 } }
const refused = (sentence: string): MadeCall => ({
  definition,
  args: [],
  outcome: { kind: 'error', code: '#VALUE!', sentence },
})

const here: Place = { workbook: 'book', sheet: 'sheet1', row: 3, column: 1 }

describe('the sentences of refusing cells', () => {
  it('gives a sentence only where the cell shows the error that came with it', () => {
    const calls = new CellCalls()
    calls.made(here, refused('Type a number.'))
    expect(calls.sentence(here, '#VALUE!')).toBe('Type a number.')
    expect(calls.sentence(here, '#DIV/0!')).toBeUndefined()
    expect(calls.sentence({ ...here, row: 4 }, '#VALUE!')).toBeUndefined()
  })

  it('gives every sentence where several functions of one formula refused, whatever another answered', () => {
    const calls = new CellCalls()
    calls.made(here, refused('Type a number.'))
    calls.made(here, refused('Type a share.'))
    calls.made(here, answered)
    expect(calls.sentence(here, '#VALUE!')).toBe('Type a number. Type a share.')
  })

  it('forgets what a cell said before when it is calculated again', () => {
    const calls = new CellCalls()
    calls.made(here, refused('Type a number.'))
    calls.cellIsDone()
    calls.made(here, refused('Type a share.'))
    expect(calls.sentence(here, '#VALUE!')).toBe('Type a share.')
    calls.cellIsDone()
    calls.made(here, answered)
    expect(calls.refuseNowhere).toBe(true)
  })
})

describe('the sentences of refusing cells while a workbook is edited', () => {
  let grid: OpenGrid

  beforeEach(async () => {
    grid = openGrid()
    const rows = [[{ value: 100 }, { value: 15 }], [{ formula: '=STICK.FILL(A1,50,B1)' }], [{ value: 'free' }]]
    await grid.calculated(() =>
      grid.replace(
        { names: [], sheets: [{ name: 'Plan', widths: [], frozenRows: 0, frozenColumns: 0, rows }] },
        'book',
      ),
    )
    keepCellCalls(grid.injector, grid.calls)
  })
  afterEach(() => grid.close())

  const sheet = () => grid.api.getActiveWorkbook()!.getActiveSheet()
  const sentenceIn = (row: number) =>
    grid.calls.sentence({ workbook: 'book', sheet: 'sheet1', row, column: 0 }, '#VALUE!')

  it('is there as soon as the workbook is calculated', () => {
    expect(sentenceIn(1)).toMatch(/15/)
  })

  it('goes when the input is mended', async () => {
    await grid.calculated(() => sheet().getRange('B1').setValue(0.15))
    expect(sentenceIn(1)).toBeUndefined()
    expect(sheet().getRange('A2').getRawValue()).toBeCloseTo(5.882, 3)
  })

  it('moves with its cell when a row is inserted above', async () => {
    await grid.calculated(() => sheet().insertRows(0, 1))
    expect(sentenceIn(1)).toBeUndefined()
    expect(sentenceIn(2)).toMatch(/15/)
  })

  it('goes when the cell is overwritten with a formula that fails for another reason', async () => {
    await grid.calculated(() => sheet().getRange('A2').setValue({ f: '=1+"a"' }))
    expect(sheet().getRange('A2').getRawValue()).toBe('#VALUE!')
    expect(sentenceIn(1)).toBeUndefined()
  })

  it('comes back when the mending is undone', async () => {
    await grid.calculated(() => sheet().getRange('B1').setValue(0.15))
    await grid.calculated(() => grid.execute('univer.command.undo', {}))
    expect(sentenceIn(1)).toMatch(/15/)
  })
})
