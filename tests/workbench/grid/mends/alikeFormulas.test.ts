import { Lexer, type LexerNode, LexerTreeBuilder } from '@univerjs/engine-formula'
import fc from 'fast-check'
import { expect, it, vi } from 'vitest'
import { readAlikeOnce } from '../../../../src/workbench/grid/mends/alikeFormulas'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import type { Book } from '../../../../src/workbook/book'
import { demoSeason } from '../../../../src/workbook/season/demoSeason'
import { openGrid, without } from '../univerInNode'
import { usualBook } from '../../witness/usualFormulas'
import { withCells } from './openCells'

const rows = 50
const column = Object.fromEntries(
  Array.from({ length: rows }, (_, row) => [`B${row + 1}`, `=IF(A${row + 1}>0,A${row + 1}*$A$1,"")`]),
)

/** How often the library takes a formula apart while a column of as many rows is calculated. */
function timesRead(mends = engineMends): Promise<number> {
  const read = vi.spyOn(LexerTreeBuilder.prototype as unknown as { _nodeMaker(text: string): unknown }, '_nodeMaker')
  return withCells(column, () => read.mock.calls.length, mends).finally(() => read.mockRestore())
}

it('A formula that is filled down a column is taken apart twice.', async () => {
  expect(await timesRead()).toBe(2)
})

it('Without the mend the library takes each row of it apart.', async () => {
  expect(await timesRead(without(readAlikeOnce))).toBeGreaterThanOrEqual(rows)
})

interface Read {
  readonly token: string
  readonly children: readonly (string | Read)[]
}

/** Without the places of the parts, which the calculation does not ask for. */
function parts(tree: unknown): unknown {
  if (typeof tree !== 'object') return tree
  const bare = ({ token, children }: Read): Read => ({
    token,
    children: children.map((child) => (typeof child === 'string' ? child : bare(child))),
  })
  return { read: bare((tree as LexerNode).serialize()), names: (tree as LexerNode).getDefinedNames() }
}

/** What the engine reads of these formulas beside a workbook, each read twice, so that all but the first are copies. */
async function readings(formulas: readonly string[], book: Book, mends = engineMends): Promise<readonly unknown[]> {
  const grid = openGrid(mends)
  try {
    await grid.calculated(() => grid.replace(book, 'book'))
    const lexer = grid.injector.get(Lexer)
    for (const formula of formulas) lexer.treeBuilder(formula)
    return formulas.map((formula) => parts(lexer.treeBuilder(formula)))
  } finally {
    grid.close()
  }
}

async function expectSame(formulas: readonly string[], book: Book): Promise<void> {
  const right = await readings(formulas, book, without(readAlikeOnce))
  const seen = await readings(formulas, book)
  formulas.forEach((formula, place) => expect(seen[place], formula).toEqual(right[place]))
}

function formulasOf({ sheets }: Book): readonly string[] {
  return sheets.flatMap(({ rows }) => rows.flat().flatMap((cell) => cell?.formula ?? []))
}

it('All formulas of the demo season are read as the library reads each alone.', async () => {
  const demo = demoSeason()
  const formulas = formulasOf(demo)
  expect(formulas.length).toBeGreaterThan(1000)
  await expectSame(formulas, demo)
})

const named: Book = {
  names: [
    { name: 'Rate', refersTo: "'Rates 2'!$B$1" },
    { name: 'Total', refersTo: "SUM('Rates 2'!$B$1:$B$3)" },
  ],
  sheets: ['S', 'Rates 2', 'Q1', "It's"].map((name) => ({
    name,
    widths: [],
    frozenRows: 0,
    frozenColumns: 0,
    rows: [[{ value: 1 }, { value: 2 }]],
  })),
}

it('Formulas as people type them are read as the library reads each alone.', async () => {
  const books = fc.sample(usualBook(400), 5)
  await expectSame(books.flatMap(formulasOf), named)
})

// What looks like a cell and is none, and cells beside all that may stand there.
it('What looks like a reference is left as it is.', async () => {
  const shapes = [
    (cell: string) => `=${cell}&"${cell} and ""${cell}"""`,
    (cell: string) => `='Rates 2'!${cell}+Q1!${cell}+'It''s'!${cell}`,
    (cell: string) => `=Q1!${cell}:${cell}9*Rate+Total`,
    (cell: string) => `=-${cell}--${cell}^2%`,
    (cell: string) => `=LOG10(${cell})+BIN2DEC(${cell})+1E5*${cell}`,
    (cell: string) => `=SUM($${cell},${cell}#,{1,2})`,
    (cell: string) => `=${cell.toLowerCase()}+${cell}`,
    (cell: string) => `=LET(x,${cell},x*2)+LAMBDA(y,y+${cell})(1)`,
    (cell: string) => `=${cell}0000000+${cell}.5`,
    (cell: string) => `=IF(${cell}=#REF!,,${cell} )`,
    (cell: string) => `=SUM( ${cell} : ${cell}5 , (${cell} ) )`,
    (cell: string) => `=Table1[[#This Row],[${cell}]]+${cell}`,
    (cell: string) => `=(${cell}`,
    (cell: string) => `=${cell}+"`,
    (cell: string) => `=Größe${cell}+${cell}_x+_${cell}`,
  ]
  const cells = ['A1', 'B2', 'XFD104', 'XFE3', 'ZZZ1', 'AA10', 'XFB1000001', 'TRUE1']
  await expectSame(
    shapes.flatMap((shape) => cells.map(shape)),
    named,
  )
})

it('A name that looks like a cell is still read as what it stands for.', async () => {
  const book = { ...named, names: [{ name: 'TAX1', refersTo: 'S!$B$1' }] }
  await expectSame(['=TAX1+A1', '=TAX1+A2', '=TAX1+A3'], book)
})

it('A formula follows a name that moves.', async () => {
  const cells = { A1: 1, A2: 2, B1: '=Rate+A1', B2: '=Rate+A2', B3: '=Rate+A3', C1: 10 }
  const seen = await withCells(
    cells,
    async ({ grid, values }) => {
      const before = values('B1', 'B2', 'B3')
      await grid.calculated(() => grid.api.getActiveWorkbook()!.getActiveSheet().insertRows(0, 1))
      return [before, values('B2', 'B3', 'B4')]
    },
    engineMends,
    [{ name: 'Rate', refersTo: 'S!$C$1' }],
  )
  expect(seen).toEqual([
    [11, 12, 10],
    [11, 12, 10],
  ])
})
