import fc from 'fast-check'
import { expect, it } from 'vitest'
import { countChances } from '../../../../src/workbench/grid/mends/chances'
import { without } from '../univerInNode'
import { withCells } from './openCells'

/** Computed with fractions of whole numbers, and the Poisson chances with 60 digits. */
const right = [
  ['=BINOM.DIST(515,1030,0.5,FALSE)', 0.024855129936574467],
  ['=BINOM.DIST(515,1030,0.5,TRUE)', 0.5124275649682872],
  ['=BINOM.DIST(1600,2000,0.85,FALSE)', 3.155348894371534e-10],
  ['=BINOM.DIST(1400,2000,0.85,TRUE)', 8.910562644939688e-65],
  ['=BINOM.DIST.RANGE(2000,0.85,1690,1710)', 0.48915143788632653],
  ['=BINOM.INV(2000,0.85,0.1)', 1679],
  ['=POISSON.DIST(200,200,FALSE)', 0.028197727685920822],
  ['=POISSON.DIST(200,200,TRUE)', 0.5187943096786845],
  ['=POISSON.DIST(900,1000,FALSE)', 7.516954352125952e-5],
  // By definition.
  ['=BINOM.DIST(3,3,1,FALSE)', 1],
  ['=BINOM.DIST(2,3,1,TRUE)', 0],
  ['=BINOM.DIST(0,3,0,TRUE)', 1],
  ['=BINOM.DIST(0,0,0.5,FALSE)', 1],
  ['=POISSON.DIST(0,0,FALSE)', 1],
  ['=POISSON.DIST(2.9,1,TRUE)', 2.5 * Math.exp(-1)],
  ['=BINOM.INV(2,0.5,0.5)', 1],
] as const

/** The grid's own reading of a cell would cut the digits off. */
async function rawResults(
  formulas: readonly string[],
  mends?: ReturnType<typeof without>,
): Promise<readonly unknown[]> {
  const cells = Object.fromEntries(formulas.map((formula, index) => [`A${index + 1}`, formula]))
  return withCells(
    cells,
    ({ grid }) => {
      const sheet = grid.api.getActiveWorkbook()!.getActiveSheet().getSheet()
      return formulas.map((_formula, index) => sheet.getCellRaw(index, 0)?.v)
    },
    mends,
  )
}

it('Chances of small and large numbers are right to twelve digits.', async () => {
  const results = await rawResults(right.map(([formula]) => formula))
  right.forEach(([formula, chance], place) => {
    expect(Math.abs(Number(results[place]) - chance), formula).toBeLessThanOrEqual(1e-12 * chance)
  })
})

it('Chances of the largest numbers that are taken come at once: beside the middle they are those of the normal distribution.', async () => {
  const [poisson, binomial] = await rawResults([
    '=POISSON.DIST(1E9,1E9,FALSE)*SQRT(2*PI()*1E9)',
    '=BINOM.DIST(5E8,1E9,0.5,FALSE)*SQRT(PI()*5E8)',
  ])
  expect(poisson).toBeCloseTo(1, 8)
  expect(binomial).toBeCloseTo(1, 8)
})

it('What is no chance is an error, and so is what would take minutes.', async () => {
  const wrong = [
    '=BINOM.DIST(4,3,0.5,TRUE)',
    '=BINOM.DIST(1,3,1.5,TRUE)',
    '=BINOM.INV(3,0.5,1)',
    '=POISSON.DIST(-1,1,TRUE)',
    '=BINOM.DIST(1,1E12,0.5,TRUE)',
    '=BINOM.INV(1E12,0.5,0.5)',
    '=BINOM.DIST.RANGE(1E12,0.5,1,2)',
    '=POISSON.DIST(1,1E300,TRUE)',
  ]
  expect(await rawResults([...wrong, '=BINOM.DIST("x",3,0.5,TRUE)'])).toEqual([...wrong.map(() => '#NUM!'), '#VALUE!'])
})

/** Of the number of successes, from 0: one trial after the other. */
function binomialOf(trials: number, chance: number): readonly number[] {
  let chances = [1]
  for (let trial = 0; trial < trials; trial++)
    chances = [...chances, 0].map((one, count) => one * (1 - chance) + (chances[count - 1] ?? 0) * chance)
  return chances
}

it('Any binomial chance is what one trial after the other makes of it.', () => {
  const trials = fc.integer({ min: 1, max: 1500 })
  const chance = fc.integer({ min: 1, max: 99 }).map((percent) => percent / 100)
  return fc.assert(
    fc.asyncProperty(trials, chance, fc.nat(1500), async (n, p, any) => {
      const chances = binomialOf(n, p)
      const x = Math.min(n, any)
      const upTo = chances.slice(0, x + 1).reduce((sum, one) => sum + one, 0)
      const middle = chances.slice(0, x).reduce((sum, one) => sum + one, 0) + chances[x]! / 2
      const [just, all, first] = await rawResults([
        `=BINOM.DIST(${x},${n},${p},FALSE)`,
        `=BINOM.DIST(${x},${n},${p},TRUE)`,
        `=BINOM.INV(${n},${p},${middle > 0.001 && middle < 0.999 ? middle : 0.5})`,
      ])
      expect(just).toBeCloseTo(chances[x]!, 12)
      expect(all).toBeCloseTo(upTo, 11)
      if (middle > 0.001 && middle < 0.999 && chances[x]! > 1e-9) expect(first).toBe(x)
    }),
    { numRuns: 20 },
  )
})

it('Without the mend the library gives no chance of large numbers, or a wrong one.', async () => {
  const formulas = ['=BINOM.DIST(515,1030,0.5,TRUE)', '=BINOM.INV(2000,0.85,0.1)', '=POISSON.DIST(200,200,TRUE)']
  const [large, inverse, poisson] = await rawResults(formulas, without(countChances))
  expect(Number.isFinite(large)).toBe(false)
  expect(inverse).toBe(2000)
  expect(Number.isFinite(poisson)).toBe(false)
})
