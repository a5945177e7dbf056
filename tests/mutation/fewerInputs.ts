/**
 * Random tests try fewer inputs here, since they run once for each of thousands of mutants. A property with a seed of
 * its own counts the cases that it meets, and needs more.
 */
import type * as FastCheck from 'fast-check'
import { vi } from 'vitest'

const mostInputs = 20
const mostInputsWithSeed = 1000

vi.mock(import('fast-check'), async (importOriginal) => {
  const original = await importOriginal()
  const assertWithFewer = <Ts>(property: FastCheck.IRawProperty<Ts>, parameters: FastCheck.Parameters<Ts> = {}) => {
    const most = parameters.seed === undefined ? mostInputs : mostInputsWithSeed
    return original.default.assert(property, { ...parameters, numRuns: Math.min(parameters.numRuns ?? most, most) })
  }
  return { ...original, default: { ...original.default, assert: assertWithFewer as typeof FastCheck.assert } }
})
