import { expect, it } from 'vitest'
import { compareCells } from '../../../../src/workbench/grid/mends/comparison'
import type { Cell } from '../../../../src/workbook/book'
import { openGrid, without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

/** What two formulas say of the same error, once the cell beside it has been compared. */
async function answersOf(grid: ReturnType<typeof openGrid>): Promise<readonly unknown[]> {
  const rows: Cell[][] = [
    [{ formula: '=NA()' }, { value: 5 }],
    [{ formula: '=SUM((A1:B1>1)*1)' }],
    [{ formula: '=IF(A1<B1,"no","yes")' }],
    [{ formula: '=IF(A1<>B1,"other","same")' }],
  ]
  try {
    const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
    await grid.calculated(() => grid.replace(book, 'book'))
    const sheet = grid.api.getActiveWorkbook()!.getActiveSheet()
    return ['A3', 'A4'].map((address) => sheet.getRange(address).getValue())
  } finally {
    grid.close()
  }
}

// An error in a comparison is its answer, as in Excel.
it('A comparison with an error gives the error, however often the cell was compared before.', async () => {
  expect(await answersOf(openGrid())).toEqual(['#N/A', '#N/A'])
})

it('Without the mend the library takes an error for a value once its cell was compared.', async () => {
  expect(await answersOf(openGrid(without(compareCells)))).toContain('yes')
})

/** A1 holds an empty text, B1 is blank. */
const empty = { A1: '=""' }

// Excel compares texts sign by sign, whatever their capitals; a blank is an empty text beside a text, and FALSE or 0.
const right = [
  ['="abc"="a*"', 0],
  ['="abc"<>"a?c"', 1],
  ['="a*"="A*"', 1],
  ['="b">"a*"', 1],
  ['=A1=B1', 1],
  ['=B1=A1', 1],
  ['=A1>B1', 0],
  ['=B1="*"', 0],
  ['=B1=C1', 1],
  ['=FALSE=B1', 1],
  ['=0=B1', 1],
  ['=A1=0', 0],
  ['="x">B1', 1],
  ['="1"=1', 0],
  ['="a"<"B"', 1],
] as const

it('Texts are compared sign by sign, and a blank is what the other side is.', () => expectResults(right, empty))

it('Without the mend the library takes an asterisk for any text.', async () => {
  expect(await resultsOf(['="abc"="a*"'], empty, without(compareCells))).toEqual([1])
})

const typed = { A1: true, A2: 44, A3: 'x', A4: '="1"' }

// From memory of Excel: what is of different types is never equal, and numbers come before texts, texts before FALSE,
// FALSE before TRUE. A blank is none of these types.
const ofTypes = [
  ['=FALSE<>0', 1],
  ['=0<>FALSE', 1],
  ['=A1<>A2', 1],
  ['=A1<>A3', 1],
  ['=A3<>A1', 1],
  ['=TRUE<>1', 1],
  ['=TRUE=1', 0],
  ['=A4<>1', 1],
  ['=A4>99', 1],
  ['=1<=A4', 1],
  ['="TRUE"<>TRUE', 1],
  ['="TRUE"<FALSE', 1],
  ['=FALSE>=A3', 1],
  ['=A1<=A2', 0],
  ['=A1>A2', 1],
  ['=-1<FALSE', 1],
  ['=FALSE<TRUE', 1],
  ['=TRUE<>TRUE', 0],
  ['=TRUE<>FALSE', 1],
  ['=FALSE<>C1', 0],
  ['=TRUE<>C1', 1],
  ['=C1<>0', 0],
  ['=SUM(--(A1:A4<>44))', 3],
  ['=SUM(--(A1:A4>44))', 3],
  ['=SUMPRODUCT((A1:A4<>TRUE)*1)', 3],
  ['=IF(1/0<>TRUE,1,2)', '#DIV/0!'],
] as const

it('What is of different types is never equal, and has its order.', () => expectResults(ofTypes, typed))

it('Without the mend the library says of TRUE that it differs from nothing.', async () => {
  expect(await resultsOf(['=A1<>A2', '=FALSE<>0'], typed, without(compareCells))).toEqual([0, 0])
})
