import { expect, it } from 'vitest'
import { askWitness } from '../../src/start/askWitness'
import { witnessLines } from '../../src/start/witnessLines'
import { openBookOf } from '../workbench/witness/openBookOf'

it('Where the second engine breaks down, one sentence says so.', async () => {
  // So many brackets are more than it bears (IronCalc 0.8.4).
  const brackets = openBookOf({ A1: [`=${'('.repeat(3000)}1${')'.repeat(3000)}`, 1] })
  expect(witnessLines(await askWitness(brackets))).toEqual([
    'The second engine broke down, so these results have no second witness.',
  ])
})

it('Where it takes too long, it is stopped, and one sentence says so.', async () => {
  expect(witnessLines(await askWitness(openBookOf({ A1: ['=1+1', 2] }), 1))).toEqual([
    'The second engine took too long and was stopped, so these results have no second witness.',
  ])
})
