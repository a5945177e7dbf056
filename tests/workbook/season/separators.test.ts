/** Excel reads the pattern of TEXT, and a text that is to be a number, with the separators of the user's system. */
import { expect, test } from 'vitest'
import { plainFormula } from '../../../src/derived/plainFormula'
import { catalogue } from '../../../src/functions/catalogue'
import { demoSeason } from '../../../src/workbook/season/demoSeason'

const readsSeparators = /\bTEXT\([^"]*"[^"]*[.,/:][^"]*"\)|\b(DATEVALUE|TIMEVALUE|DOLLAR)\(|\bVALUE\("/

test('No formula of the season and no plain formula depends on the separators of numbers and dates that a user has.', () => {
  expect('=TEXT(A1,"0.00")').toMatch(readsSeparators)
  const season = demoSeason().sheets.flatMap(({ rows }) => rows.flat().flatMap((cell) => cell?.formula ?? []))
  const plain = catalogue.flatMap((definition) => {
    const cells = Object.keys(definition.parameters).map((_, index) => `A${index + 1}`)
    const made = plainFormula(definition, cells)
    return 'formula' in made ? [made.formula] : (made.check ?? [])
  })
  expect([...season, ...plain].filter((formula) => readsSeparators.test(formula))).toEqual([])
  expect(season.length).toBeGreaterThan(1000)
})
