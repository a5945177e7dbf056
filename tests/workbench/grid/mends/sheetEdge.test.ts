import { expect, it } from 'vitest'
import { readToSheetEdge } from '../../../../src/workbench/grid/mends/sheetEdge'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

// Microsoft, "Excel specifications and limits": 1,048,576 rows by 16,384 columns, so XFD1048576 is the last cell.
// The grid gives TRUE as 1.
const right = [
  ['=A500000', 0],
  ['=ZZ1', 0],
  ['=XFD1048576', 0],
  ['=ISBLANK(A500000)', 1],
  ['=A500000&"x"', 'x'],
  ['=SUM(A1:A1048576)', 2],
  ['=COUNTA(Y400000:ZZ400009)', 0],
  ['=XFE1', '#NAME?'],
  ['=A1048577', '#NAME?'],
] as const

it('Cells beyond what the grid has are blank, up to the last one of a sheet of Excel.', () =>
  expectResults(right, { A1: 2 }))

it('Without the mend the library knows no such cells.', async () =>
  expect(await resultsOf(['=A500000', '=ISBLANK(ZZ1)'], {}, without(readToSheetEdge))).toEqual(['#NAME?', 0]))
