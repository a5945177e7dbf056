import { expect, test } from 'vitest'
import { catalogue } from '../../../src/functions/catalogue'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { blockIn } from '../../../src/formula/address'
import type { Book, Cell, Sheet } from '../../../src/workbook/book'
import { checkBook } from '../../../src/workbook/check/checkBook'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { emptySeason } from '../../../src/workbook/season/emptySeason'
import { english } from '../../../src/wording/en/words'

const text = (value: string): Cell => ({ value })
const number = (value: number): Cell => ({ value })
const formula = (written: string): Cell => ({ formula: written })

function bookOf(...rows: readonly (readonly Cell[])[]): Book {
  return { names: [], sheets: [{ name: 'Plan', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
}

async function findings(...rows: readonly (readonly Cell[])[]): Promise<readonly string[]> {
  const found = checkBook(await calculateBook(bookOf(...rows)), catalogue, english.found)
  return found.map(({ address, kind, sentence }) => `${address} ${kind}: ${sentence}`)
}

test('A sound sheet has no findings.', async () => {
  expect(
    await findings(
      [text('Peat, bale'), formula('=STICK.PACKPRICE(21.8,107,1.85,1.1)')],
      [text('Bench'), formula('=STICK.BENCHCOST(8,400,0.9,0.85)')],
      [text('Tray'), formula('=STICK.REUSECOST(2.4,14,0.11,0,0.05)')],
      [text('Pot of 6 in'), formula('=STICK.FILL(100,2300)')],
      [text('Bed'), formula('=STICK.BEDFILL(20,1.2,"10 cm")')],
      [text('Price'), formula('=STICK.LINERPRICE(0.4,0.35)')],
    ),
  ).toEqual([])
})

test.each([
  ['no losses', [formula('=STICK.CUTTINGS(1000,{1;1})')], /^A1 warning: Nothing is lost between cutting and liner/],
  [
    'reuse without washing',
    [formula('=STICK.REUSECOST(2.4,14)')],
    /^A1 warning: It is used for 14 rounds, and washing was left out/,
  ],
  [
    'a bench that is always full',
    [formula('=STICK.BENCHCOST(8,400,0.9)')],
    /^A1 warning: The bench is counted as full/,
  ],
  ['no delivery', [text('Perlite'), formula('=STICK.PACKPRICE(14.2,100)')], /^B1 warning: Delivery was left out/],
  [
    'a bale entered as loose litres',
    [text('Peat, compressed bale'), formula('=STICK.BAGS(2000,107)')],
    /^B1 warning: This row says “compressed”, and expansion is 1/,
  ],
  [
    'a 0 that cannot be meant',
    [text('Perlite'), formula('=STICK.BAGS(300,60,0)')],
    /^B1 warning: expansion is 0, or a blank cell that came as 0/,
  ],
  ['centimetres as metres', [formula('=STICK.BEDFILL(20,1.2,10)')], /^A1 warning: A bed 10 m deep.*type "10 cm"/],
  ['centimetres as millimetres', [formula('=STICK.CELLVOLUME(3.6,3.6,45)')], /^A1 warning: topLengthMm is 3\.6 mm/],
  [
    'a 6-inch pot of 5.9 L',
    [text('6-inch pot'), formula('=STICK.FILL(100,5900)')],
    /^B1 warning: 5\.9 L in a vessel of 6-inch: .* holds 2\.8 L at most/,
  ],
  [
    'markup typed as margin',
    [formula('=STICK.LINERPRICE(0.4,0.5)')],
    /^A1 warning: A margin of 50 % of the price is a markup of 100 % on the cost\. Where 50 % on the cost was meant, type a margin of 33\.3 %/,
  ],
  [
    'a quote whose prices are not rounded',
    [formula('=STICK.QUOTE(0.6,{500},{0.4})')],
    /^A1 warning: The prices of this quote are not rounded/,
  ],
  [
    'a price break overlap in a quote',
    [formula('=STICK.QUOTE(0.6,{500;1000},{0.425;0.4},0,0.05)')],
    /^A2 warning: Liners at the price for 500: 953 to 999 cost more than 1000\. Change a price/,
  ],
  ['a refused input', [formula('=STICK.BAGS(300,60,15%,-1)')], /^A1 error: onHandL must be 0 L or more/],
  ['an error of the sheet itself', [formula('=1/0')], /^A1 error: The formula divides by 0/],
] as const)('The checks find %s.', async (_, row, expected) => {
  const all = await findings(row)
  expect(
    all.filter((one) => expected.test(one)),
    all.join('\n'),
  ).toHaveLength(1)
})

test('Each price break overlap of a quote leads to the row of its own price, and to the cell of the formula where that shows no table.', async () => {
  // 953 at 1.05 cost 1,000.65 and a thousand at 1.00 cost 1,000; 1,501 at 1.00 cost 1,501 and 2,000 at 0.75 cost 1,500.
  const quote = 'STICK.QUOTE(0.6,{500;1000;2000},{0.425;0.4;0.2},0,0.05)'
  const places = async (...rows: readonly (readonly Cell[])[]) =>
    (await findings(...rows)).map((one) => /^(\w+) warning: Liners at the price for (\d+)/.exec(one)?.slice(1, 3))
  expect(await places([text('A quote')], [text('Here'), formula(`=${quote}`)])).toEqual([
    ['B3', '500'],
    ['B4', '1000'],
  ])
  expect(await places([text('A quote')], [text('Here'), formula(`=INDEX(${quote},2,7)`)])).toEqual([
    ['B2', '500'],
    ['B2', '1000'],
  ])
})

test('What was typed as 0 was not forgotten.', async () => {
  expect(await findings([formula('=STICK.PACKPRICE(14.2,100,1,0)')], [formula('=STICK.REUSECOST(2.4,14,0)')])).toEqual(
    [],
  )
})

test('An error behind a total is traced to where it comes from, over several cells.', async () => {
  expect(await findings([number(1), formula('=1/C9'), formula('=B1+1'), formula('=SUM(B1:C1)')])).toEqual([
    'B1 error: The formula divides by 0 or by an empty cell.',
    'C1 error: #DIV/0! comes from Plan!B1.',
    'D1 error: #DIV/0! comes from Plan!B1 and 1 other cell.',
  ])
})

const column = (...cells: readonly Cell[]) => cells.map((cell, index) => [number(index + 1), cell])

test('A formula broken in the middle of a column is found, and so is a number typed over one.', async () => {
  const down = (row: number) => formula(`=A${row}*2`)
  expect(await findings(...column(down(1), down(2), formula('=A3*3'), down(4), down(5)))).toEqual([
    expect.stringMatching(/^B3 warning: This formula differs/),
  ])
  expect(await findings(...column(down(1), down(2), number(6), down(4), down(5)))).toEqual([
    expect.stringMatching(/^B3 warning: A number was typed over/),
  ])
})

test('A column of two kinds of formulas, a heading among them and the ends of a column are no findings.', async () => {
  const down = (row: number) => formula(`=A${row}*2`)
  expect(await findings(...column(formula('=A1*3'), down(2), down(3), down(4), formula('=SUM(B1:B4)')))).toEqual([])
  expect(await findings(...column(down(1), formula('=A2+1'), down(3), formula('=A4+1'), down(5)))).toEqual([])
  expect(await findings(...column(down(1), down(2), text('Second half'), down(4), down(5)))).toEqual([])
})

test('Values and empty cells in a named column of formulas are found where they are many, where they are texts, and at its ends; a first value from which a column goes on is none.', async () => {
  const down = (row: number) => formula(`=A${row}*2`)
  const found = async (named: string, ...cells: readonly Cell[]) => {
    const names = [{ name: 'Doubled', refersTo: named }]
    const open = await calculateBook({ ...bookOf(...column(...cells)), names })
    return checkBook(open, catalogue, english.found).map(({ address, sentence }) => `${address} ${sentence}`)
  }
  const value = (address: string) => expect.stringMatching(new RegExp(`^${address} A value stands where`)) as unknown
  const blank = (address: string) => expect.stringMatching(new RegExp(`^${address} Nothing stands where`)) as unknown
  const cells = [text('2'), down(2), down(3), down(4), down(5), number(12), number(14), down(8), down(9)]
  expect(await found('Plan!$B$1:$B$9', ...cells)).toEqual([value('B1'), value('B6'), value('B7')])
  expect(await found('Plan!$B$2:$B$5', ...cells)).toEqual([])
  expect(await found('Plan!$B$2:$B$10', ...cells)).toEqual([value('B6'), value('B7'), blank('B10')])
  const weeks = [number(7), formula('=B1+7'), formula('=B2+7'), formula('=B3+7')]
  expect(await found('Plan!$B$1:$B$4', ...weeks)).toEqual([])
})

test('In the season, a result that was typed over and one that was emptied are found, though their rows stay ready.', async () => {
  const { sheets, names } = demoSeason()
  const costs = blockIn(names.find(({ name }) => name === 'OrderCost')!.refersTo.replace('Orders!', ''))
  const changed = ({ name, rows, ...sheet }: Sheet): Sheet => ({
    ...sheet,
    name,
    rows: rows.map((cells, row) => {
      const isChanged = name === 'Orders' && (row === costs.top || row === costs.top + 1)
      const content = row === costs.top ? { value: 1 } : undefined
      return isChanged ? cells.map((cell, column) => (column === costs.left ? content : cell)) : cells
    }),
  })
  const open = await calculateBook({ names, sheets: sheets.map(changed) })
  const onOrders = checkBook(open, catalogue, english.found).filter(({ sheet }) => sheet === 'Orders')
  expect(onOrders.map(({ address, sentence }) => `${address}: ${sentence}`)).toEqual([
    expect.stringMatching(/^AG9: A value stands where/),
    expect.stringMatching(/^AG10: Nothing stands where/),
  ])
})

test('The demo season has no error, and no warning but the orders on Quote that would cost more than the next break.', async () => {
  const found = checkBook(await calculateBook(demoSeason()), catalogue, english.found)
  const onQuote = found.filter(({ sheet, sentence }) => sheet === 'Quote' && sentence.includes('cost more than'))
  expect(onQuote.length).toBeGreaterThan(0)
  expect(
    found
      .filter((finding) => !onQuote.includes(finding))
      .map(({ sheet, address, sentence }) => `${sheet}!${address} ${sentence}`),
  ).toEqual([])
})

test('The empty season has no error and no warning.', async () => {
  const found = checkBook(await calculateBook(emptySeason('CHF')), catalogue, english.found)
  expect(found.map(({ sheet, address, sentence }) => `${sheet}!${address} ${sentence}`)).toEqual([])
})
