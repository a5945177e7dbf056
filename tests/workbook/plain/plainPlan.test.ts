import { beforeAll, expect, test } from 'vitest'
import { idsCalled } from '../../../src/formula/idsCalled'
import { catalogue } from '../../../src/functions/catalogue'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import type { OpenBook } from '../../../src/workbook/openBook'
import { plainPlan, type PlainPlan } from '../../../src/workbook/plain/plainPlan'
import { demoSeason } from '../../../src/workbook/season/demoSeason'

let open: OpenBook
let plan: PlainPlan

beforeAll(async () => {
  open = await calculateBook(demoSeason())
  plan = plainPlan(open, undefined, 'formulas', catalogue)
}, 60_000)

const keyOf = ({ sheet, address }: { readonly sheet: string; readonly address: string }) => `${sheet}!${address}`

test('A plan for the whole workbook changes every cell that calls a function of ours, on every sheet, and gives none such a call again.', () => {
  const calling = open.sheets.flatMap(({ name, cells }) =>
    [...cells]
      .filter(([, { formula }]) => idsCalled(formula).length > 0)
      .map(([address]) => keyOf({ sheet: name, address })),
  )
  expect(new Set(calling.map((key) => key.split('!')[0])).size).toBeGreaterThan(10)
  const changed = new Set(plan.changes.map(keyOf))
  expect(calling.filter((key) => !changed.has(key))).toEqual([])
  expect(plan.changes.filter(({ now }) => 'formula' in now && idsCalled(now.formula).length > 0)).toEqual([])
})

test('It says of each of these cells which formula stands there, and touches no other cell but those that a table fills.', () => {
  const formulaAt = (sheet: string, address: string) =>
    open.sheets.find(({ name }) => name === sheet)!.cells.get(address)?.formula
  for (const { sheet, address, was } of plan.changes) {
    if (was !== undefined) expect(was, keyOf({ sheet, address })).toBe(formulaAt(sheet, address))
  }
  const filled = plan.fates.filter(({ becomes, cell }) => becomes === 'value' && cell.spill !== undefined)
  expect(filled.length).toBeGreaterThan(0)
  expect(plan.changes.filter(({ was }) => was === undefined).length).toBeGreaterThan(filled.length)
})

test('A plan for a block leaves the rest of its sheet and all others alone.', () => {
  const [first] = plan.changes.filter(({ was }) => was !== undefined)
  const small = plainPlan(open, { sheet: first!.sheet, address: first!.address }, 'formulas', catalogue)
  expect(small.fates.map(keyOf)).toEqual([keyOf(first!)])
})
