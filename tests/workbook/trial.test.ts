/** The self-check against the engine of the workbench, without a screen, and against one that calculates wrongly. */
import { expect, test } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { casesFor, sheetFor, wrongIn } from '../../src/workbook/trial/cases'

const cases = casesFor('workbench')
const calculated = calculateBook({ names: [], sheets: [sheetFor('Try', cases)] })

test('Every example of every function is a case, and all cases hold in the engine of the workbench.', async () => {
  const examples = catalogue.reduce((sum, { examples: { length } }) => sum + length, 0)
  expect(cases.length).toBeGreaterThan(examples + 10)
  const { cells } = (await calculated).sheets[0]!
  expect(cases.flatMap((one) => wrongIn(one, cells) ?? [])).toEqual([])
})

test('A cell that shows something else is told with what it shows and what was expected.', async () => {
  const cells = new Map((await calculated).sheets[0]!.cells)
  const first = cases[0]!
  cells.set('B1', { ...cells.get('B1')!, value: 6 })
  expect(wrongIn(first, cells)).toBe('B1 shows 6, not 5')
  cells.set('B1', { ...cells.get('B1')!, value: { kind: 'cellError', code: '#NAME?' } })
  expect(wrongIn(first, cells)).toBe('B1 shows #NAME?, not 5')
  cells.delete('B1')
  expect(wrongIn(first, cells)).toBe('B1 shows null, not 5')
})
