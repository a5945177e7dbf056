import { BooleanNumber } from '@univerjs/core'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../src/functions/catalogue'
import { customFunctions } from '../../../src/workbench/grid/customFunctions'
import { CellCalls } from '../../../src/workbench/grid/cellCalls'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { errorOf } from '../../workbook/errorOf'
import type { Cell } from '../../../src/workbook/book'

const registered = customFunctions(catalogue, new CellCalls())

async function sentenceOf(formula: string, ...inputs: Cell[]): Promise<string | undefined> {
  const { sheets } = await calculateBook({
    names: [],
    sheets: [{ name: 'Plan', widths: [], frozenRows: 0, frozenColumns: 0, rows: [inputs, [{ formula }]] }],
  })
  const cell = sheets[0]!.cells.get('A2')!
  return cell.sentence ?? errorOf(cell)
}

describe('the functions in the grid', () => {
  it('are the catalogue, each under its name in the sheet, with a text for the signature help', () => {
    const names = catalogue.map(({ id }) => `STICK.${id}`)
    expect(registered.function.map(([, name]) => name)).toEqual(names)
    expect(registered.description.map(({ functionName }) => functionName)).toEqual(names)
    expect(names.length).toBeGreaterThan(0)
  })

  it('explain every argument, and say which may be left out', () => {
    for (const [index, definition] of catalogue.entries()) {
      const parameters = Object.entries(definition.parameters)
      expect(registered.description[index]!.functionParameter.map(({ name, require }) => [name, require])).toEqual(
        parameters.map(([name, { optional }]) => [name, optional ? BooleanNumber.FALSE : BooleanNumber.TRUE]),
      )
      for (const [place, [, parameter]] of parameters.entries()) {
        expect(registered.description[index]!.functionParameter[place]!.detail).toContain(parameter.text)
      }
    }
  })

  it('see a logical value as one, whether typed into the formula or in a cell', async () => {
    expect(await sentenceOf('=STICK.BAGS(TRUE,60)')).toMatch(/TRUE/)
    expect(await sentenceOf('=STICK.BAGS(A1,60)', { value: true })).toMatch(/TRUE/)
  })

  it('see a text as it was typed, and not as the date or share that the grid would make of it', async () => {
    expect(await sentenceOf('=STICK.BAGS("1-2",60)')).toMatch(/"1-2"/)
    expect(await sentenceOf('=STICK.BAGS(A1,60)', { value: '1-2' })).toMatch(/"1-2"/)
  })

  it('pass on the error of a cell inside a range', async () => {
    expect(await sentenceOf('=STICK.BLENDPARTS(100,A1:B1,0)', { value: 1 }, { formula: '=1/0' })).toBe('#DIV/0!')
  })

  it('take an argument that is left out in the middle for one that is missing', async () => {
    expect(await sentenceOf('=STICK.FILL(100,50,,0.5)')).toBeUndefined()
    expect(await sentenceOf('=STICK.FILL(100,,0.1)')).toMatch(/vesselVolumeMl/)
  })
})
