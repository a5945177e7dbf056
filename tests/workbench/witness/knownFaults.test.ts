/**
 * What the witness finds of the faults that the mends of the engine repair, each with its mend taken out: the examples
 * are those of tests/workbench/grid/mends.
 */
import './secondEngineInNode'
import { expect, it } from 'vitest'
import { findFilledCells } from '../../../src/workbench/grid/mends/blankCriteria'
import { takeBranches } from '../../../src/workbench/grid/mends/branches'
import { countChances } from '../../../src/workbench/grid/mends/chances'
import { compareCells } from '../../../src/workbench/grid/mends/comparison'
import { keepEmptyTexts } from '../../../src/workbench/grid/mends/emptyTexts'
import { countBlankResults } from '../../../src/workbench/grid/mends/blankResults'
import { engineMends } from '../../../src/workbench/grid/mends/engineMends'
import type { EngineMend } from '../../../src/workbench/grid/mends/mend'
import { giveZeroForNoMatch } from '../../../src/workbench/grid/mends/noMatch'
import { spellNumbers } from '../../../src/workbench/grid/mends/numberTexts'
import { giveOwnArguments } from '../../../src/workbench/grid/mends/ownArguments'
import { findSameValues } from '../../../src/workbench/grid/mends/sameValues'
import { readSigns } from '../../../src/workbench/grid/mends/signs'
import { mindSizes } from '../../../src/workbench/grid/mends/sizes'
import { truncateBelowZero } from '../../../src/workbench/grid/mends/truncation'
import { countWeeks } from '../../../src/workbench/grid/mends/weeks'
import { readCells } from '../../../src/workbench/grid/readCells'
import { testimonyOf } from '../../../src/workbench/witness/witness'
import { type Content, withCells } from '../grid/mends/openCells'
import { without } from '../grid/univerInNode'

interface KnownFault {
  readonly mend: EngineMend
  readonly cells: Readonly<Record<string, Content>>
  /** Formulas that the engine calculates wrongly without the mend. */
  readonly caught: readonly string[]
  /** The same, which the witness does not judge or gets wrong alike. */
  readonly missed?: readonly string[]
}

const keys = { A1: 'b', A3: 7, A4: '=""', A5: 'B', B1: 1, B2: 2, B3: 3, B4: 4, B5: 5 }
const filled = { A1: 1, A2: '=""', A4: 'x', B1: 10, B2: 20, B3: 30, B4: 40 }
const numbers = { A1: 1, A2: 2, A3: 3, B1: 10, B2: 20, B3: 30 }

const names = [{ name: 'Rate', refersTo: 'S!$A$1' }]

const faults: readonly KnownFault[] = [
  {
    mend: giveOwnArguments,
    cells: { ...numbers, A1: 3, A2: 1, A3: 2, C1: '=SORT(A1:A3)' },
    caught: ['=SUMPRODUCT(A1:A3,B1:B3)'],
  },
  {
    mend: giveOwnArguments,
    cells: { A1: 1, A2: 5, A3: 7, B1: 'x', B2: 'y', B3: 'x', C1: '=SUMIF(B1:B3,"x",A1)' },
    caught: ['=SUM(A1,10)'],
  },
  {
    mend: countWeeks,
    cells: {},
    caught: ['=ISOWEEKNUM(DATE(2022,3,15))', '=WEEKNUM(DATE(2021,1,4),21)', '=EDATE(DATE(2021,1,31),1)'],
  },
  { mend: truncateBelowZero, cells: {}, caught: ['=TRUNC(-1)', '=TRUNC(-8)'] },
  {
    mend: readSigns,
    cells: { A1: 3, A2: 4, B1: 'x', B2: 'y' },
    caught: ['=5+--A1', '=2*--A1', '=SUMPRODUCT(A1:A2*--(B1:B2="x"))', '=Rate * 2', '=-LET(x,2,x)', '="5"""&Rate'],
  },
  {
    mend: keepEmptyTexts,
    cells: { A1: '=IF(ISBLANK(B1),"",B1)' },
    caught: ['=A1>1', '=ISBLANK(A1)', '=ISTEXT(A1)', '=COUNTA(A1)', '=A1*5'],
  },
  { mend: countBlankResults, cells: { A2: 1 }, caught: ['=IF(TRUE,A1)', '=IFERROR(A1,1)'] },
  { mend: findFilledCells, cells: filled, caught: ['=COUNTIF(A1:A4,"<>")', '=SUMIF(A1:A4,"<>",B1:B4)'] },
  { mend: giveZeroForNoMatch, cells: numbers, caught: ['=MINIFS(A1:A3,B1:B3,">90")'] },
  {
    mend: findSameValues,
    cells: keys,
    caught: ['=VLOOKUP(C1,A1:B5,2,FALSE)', '=COUNTA(UNIQUE({"a";"A";"b"}))'],
  },
  { mend: mindSizes, cells: numbers, caught: ['=SUMPRODUCT(A1:A2,B1:B3)', '=ROWS(C:C)'] },
  { mend: spellNumbers, cells: {}, caught: [], missed: ['=1/3&""', '=LEN(1/3)', '=TEXT(1.005,"0.00")'] },
  {
    mend: takeBranches,
    cells: numbers,
    caught: ['=IFS(A1>0,1,TRUE,1/0)', '=IFNA(A1,1/0)', '=SWITCH(5,1,2,C1)', '=IF("some",1,2)'],
  },
  {
    mend: countChances,
    cells: {},
    caught: ['=BINOM.DIST(515,1030,0.5,TRUE)', '=BINOM.INV(2000,0.85,0.1)', '=POISSON.DIST(200,200,TRUE)'],
  },
  { mend: compareCells, cells: {}, caught: ['="abc"="a*"', '="abc"<>"a?c"'] },
]

/** The formulas in which the engines differ, calculated with these mends. */
function differing(
  { cells, caught, missed = [] }: KnownFault,
  mends: readonly EngineMend[],
): Promise<readonly string[]> {
  const formulas = [...caught, ...missed]
  const placed = Object.fromEntries(formulas.map((formula, index) => [`Z${3 * index + 1}`, formula]))
  return withCells(
    { ...cells, ...placed },
    ({ grid: { api, injector, calls } }) => {
      const sheet = api.getActiveWorkbook()!.getActiveSheet().getSheet()
      const open = { name: sheet.getName(), cells: readCells(injector, sheet, calls) }
      const { disagreements } = testimonyOf({ names, sheets: [open] })
      return disagreements.map(({ address }) => open.cells.get(address)!.formula)
    },
    mends,
    names,
  )
}

it.each(faults.map((fault) => [fault.mend.name, fault] as const))(
  'Of the faults without %s the witness finds those that are said to be found, and with it none.',
  async (_name, fault) => {
    expect(await differing(fault, without(fault.mend))).toEqual(fault.caught)
    expect(await differing(fault, engineMends)).toEqual([])
  },
)
