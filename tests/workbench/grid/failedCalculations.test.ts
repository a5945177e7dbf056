import { IFormulaDependencyGenerator } from '@univerjs/engine-formula'
import { expect, test } from 'vitest'
import { onFailedCalculation } from '../../../src/workbench/grid/failedCalculations'
import { withCells } from './mends/openCells'

test('A calculation that fails is told once, and the next is right again.', () =>
  withCells({ A1: 2, B1: '=A1*2' }, async ({ grid, value, type }) => {
    const told: unknown[] = []
    onFailedCalculation(grid.injector, (problem) => told.push(problem))
    const generator = grid.injector.get(IFormulaDependencyGenerator)
    const generate = generator.generate
    const fault = new Error('A fault of the engine')
    generator.generate = () => Promise.reject(fault)
    grid.api.getActiveWorkbook()!.getActiveSheet().getRange('A1').setValue({ f: null, v: 3 })
    await expect.poll(() => told).toEqual([fault])
    expect(value('B1')).toBe(4)
    generator.generate = generate
    await type('A1', 5)
    expect(value('B1')).toBe(10)
    expect(told).toEqual([fault])
  }))
