import { expect, it } from 'vitest'
import { takeBranches } from '../../../../src/workbench/grid/mends/branches'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

const cells = { A1: 1, A2: 2, A3: 3, B1: '1' }

// Microsoft's documentation of IFS, SWITCH and IFNA; C1 is blank, and a blank result is 0.
const right = [
  ['=IFS(A1>0,1,TRUE,1/0)', 1],
  ['=IFS(A1>0,1,1/0,2)', 1],
  ['=IFS(A1<0,1/0,TRUE,7)', 7],
  ['=IFS(A1<0,1,1/0,2)', '#DIV/0!'],
  ['=IFS(A1<0,1)', '#N/A'],
  ['=IFS(C1,1,TRUE,2)', 2],
  ['=IFS(TRUE,C1)', 0],
  ['=IFS("x",1)', '#VALUE!'],
  ['=SUM(IFS(A1:A3>1,A1:A3,TRUE,10))', 15],
  ['=SWITCH(A2,1,1/0,2,"two")', 'two'],
  ['=SWITCH(5,1,2,C1)', 0],
  ['=SWITCH(1,1,C1)', 0],
  ['=SWITCH(5,1,2)', '#N/A'],
  ['=SWITCH("B","b",1)', 1],
  ['=SWITCH("bc","b*",1,2)', 2],
  ['=SWITCH(1,"1","text",1,"number")', 'number'],
  ['=SWITCH(C1,0,"nothing",1)', 'nothing'],
  ['=SWITCH(1/0,1,2)', '#DIV/0!'],
  ['=SWITCH(2,1/0,1,2,3)', '#DIV/0!'],
  ['=SUM(SWITCH(A1:A3,1,10,2,20,0))', 30],
  ['=IFNA(A1,1/0)', 1],
  ['=IFNA(NA(),4)', 4],
  ['=IFNA(1/0,4)', '#DIV/0!'],
  ['=IFNA(NA(),C1)', 0],
  ['=IFERROR(A1,1/0)', 1],
  ['=IF(TRUE,1,1/0)', 1],
  // Microsoft's documentation of IF asks for TRUE or FALSE; what other texts give is from memory.
  ['=IF("",1,2)', '#VALUE!'],
  ['=IF("some",1,2)', '#VALUE!'],
  ['=IF("true",1,2)', 1],
  ['=IF(C1,1,2)', 2],
  ['=IF(1/0,1,2)', '#DIV/0!'],
  ['=SUM(IF(A1:A3>1,1,0))', 2],
] as const

it('An error, or a blank, of a branch that is not taken changes nothing.', () => expectResults(right, cells))

it('Without the mend the library shows the error of a branch that is not taken.', async () => {
  const formulas = ['=IFS(A1>0,1,TRUE,1/0)', '=IFNA(A1,1/0)', '=SWITCH(5,1,2,C1)', '=IF("some",1,2)']
  expect(await resultsOf(formulas, cells, without(takeBranches))).toEqual(['#DIV/0!', '#DIV/0!', '#N/A', 1])
})
