import { expect, it } from 'vitest'
import type { Finding } from '../../../src/workbook/check/finding'
import { shownFindings } from '../../../src/workbook/check/shownFindings'

const findingsOn = (sheet: string, kind: Finding['kind'], count: number): Finding[] =>
  Array.from({ length: count }, (_, row) => ({ sheet, address: `A${row + 1}`, kind, sentence: 'Divides by 0.' }))

it('Of each sheet fifty errors and fifty warnings are listed in their order, and the others are counted', () => {
  const findings = [
    ...findingsOn('Foreign', 'error', 600_000),
    ...findingsOn('Orders', 'error', 50),
    ...findingsOn('Foreign', 'warning', 51),
  ]
  const { shown, left } = shownFindings(findings)
  expect(shown).toEqual([
    ...findings.slice(0, 50),
    ...findings.slice(600_000, 600_050),
    ...findings.slice(600_050, 600_100),
  ])
  expect(left).toEqual([
    { sheet: 'Foreign', kind: 'error', count: 599_950 },
    { sheet: 'Foreign', kind: 'warning', count: 1 },
  ])
})

it('Few findings are listed whole', () => {
  const findings = findingsOn('Orders', 'error', 3)
  expect(shownFindings(findings)).toEqual({ shown: findings, left: [] })
})
