import { ICommandService } from '@univerjs/core'
import {
  FormulaExecutedStateType,
  FormulaExecuteStageType,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
} from '@univerjs/engine-formula'
import { describe, expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { calculateInTurn } from '../../../../src/workbench/grid/mends/calculationsInTurn'
import { openGrid, type OpenGrid, without } from '../univerInNode'

const { START_DEPENDENCY, START_CALCULATION, CALCULATION_COMPLETED } = FormulaExecuteStageType

/** A1, its double and what both give together, calculated. */
async function withDoubled<Answer>(mends: typeof engineMends, ask: (grid: OpenGrid) => Promise<Answer>) {
  const grid = openGrid(mends)
  try {
    const rows = [[{ value: 1 }, { formula: '=A1*2' }, { formula: '=A1+B1' }]]
    const book = { names: [], sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }
    await grid.calculated(() => grid.replace(book, 'book'))
    return await ask(grid)
  } finally {
    grid.close()
  }
}

const at = (grid: OpenGrid, address: string) => grid.api.getActiveWorkbook()!.getActiveSheet().getRange(address)

type Told = ISetFormulaCalculationNotificationMutation

/** What a calculation tells of how far it is. */
const tells = (id: string, params: object | undefined): Told | undefined =>
  id === SetFormulaCalculationNotificationMutation.id ? params : undefined

function beforeTold(grid: OpenGrid, hear: (told: Told) => void): void {
  grid.injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    const told = tells(id, params)
    if (told !== undefined) hear(told)
  })
}

describe('A calculation that is told to stop when its last formula is done, to take in a newer edit,', () => {
  const endOfStopped = (mends = engineMends) =>
    withDoubled(mends, (grid) => {
      const commands = grid.injector.get(ICommandService)
      // The engine looks before every 500th formula whether it is to stop, and not again.
      beforeTold(grid, ({ stageInfo }) => {
        if (stageInfo?.stage === CALCULATION_COMPLETED)
          commands.syncExecuteCommand(SetFormulaCalculationStopMutation.id, {})
      })
      return new Promise((resolve) => {
        commands.onCommandExecuted(({ id, params }) => {
          const state = tells(id, params)?.functionsExecutedState
          if (state !== undefined) resolve(state)
        })
        at(grid, 'A1').setValue(5)
      })
    })

  it('says that it has stopped.', async () => {
    expect(await endOfStopped()).toBe(FormulaExecutedStateType.STOP_EXECUTION)
  })

  it('says without the mend that it is done, and the grid forgets that edit.', async () => {
    expect(await endOfStopped(without(calculateInTurn))).toBe(FormulaExecutedStateType.SUCCESS)
  })
})

describe('A calculation that is begun while another runs', () => {
  /** Whether it is prepared before the other one has ended, whose work is thrown away by that. */
  const crosses = (mends = engineMends) =>
    withDoubled(mends, async (grid) => {
      const config = grid.injector.get(IFormulaCurrentConfigService)
      let [runs, hasBegun, hasCrossed, ended] = [false, false, false, 0]
      const load = config.load.bind(config)
      config.load = (formulas) => {
        hasCrossed ||= runs
        load(formulas)
      }
      beforeTold(grid, ({ stageInfo, functionsExecutedState }) => {
        if (stageInfo?.stage === START_DEPENDENCY) runs = true
        if (functionsExecutedState !== undefined) {
          runs = false
          ended += 1
        }
        if (stageInfo?.stage !== START_CALCULATION || hasBegun) return
        hasBegun = true
        void grid.execute(SetFormulaCalculationStartMutation.id, { forceCalculation: true })
      })
      at(grid, 'A1').setValue(5)
      await expect.poll(() => ended, { timeout: 10_000 }).toBe(2)
      return hasCrossed
    })

  it('waits for its end.', async () => {
    expect(await crosses()).toBe(false)
  })

  it('does not without the mend.', async () => {
    expect(await crosses(without(calculateInTurn))).toBe(true)
  })
})

describe('A calculation that stops', () => {
  /** How often it tells that it has. */
  const ends = (mends = engineMends) =>
    withDoubled(mends, async (grid) => {
      const commands = grid.injector.get(ICommandService)
      let count = 0
      beforeTold(grid, ({ stageInfo, functionsExecutedState }) => {
        if (stageInfo?.stage === START_CALCULATION)
          commands.syncExecuteCommand(SetFormulaCalculationStopMutation.id, {})
        if (functionsExecutedState !== undefined) count += 1
      })
      at(grid, 'A1').setValue(5)
      await expect.poll(() => count).toBeGreaterThan(0)
      // The second telling comes with what is left of the same task.
      await new Promise((resolve) => setImmediate(resolve))
      return count
    })

  it('tells so once.', async () => {
    expect(await ends()).toBe(1)
  })

  it('tells so twice without the mend.', async () => {
    expect(await ends(without(calculateInTurn))).toBe(2)
  })
})

it('After a calculation that failed in the engine the next edit is calculated.', () =>
  withDoubled(engineMends, async (grid) => {
    const service = grid.injector.get(ICalculateFormulaService)
    const execute = service.execute.bind(service)
    const failed = new Promise<void>((resolve) => {
      service.execute = (formulas) => execute(formulas).catch(() => resolve())
    })
    const generator = grid.injector.get(IFormulaDependencyGenerator)
    const generate = generator.generate.bind(generator)
    generator.generate = () => {
      generator.generate = generate
      return Promise.reject(new Error('put in by the test'))
    }
    at(grid, 'A1').setValue(5)
    await failed
    at(grid, 'A1').setValue(6)
    await expect.poll(() => at(grid, 'C1').getValue()).toBe(18)
  }))
