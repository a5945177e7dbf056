/** The whole grid but its screen, in Node: for tests that edit workbooks as a user does and look at the numbers. */
import { register } from 'node:module'
import { ICommandService, type Injector, IUniverInstanceService, LocaleType, LogLevel, Univer } from '@univerjs/core'
import { FUniver } from '@univerjs/core/facade'
import { catalogue } from '../../../src/functions/catalogue'
import { bookToGrid } from '../../../src/workbench/grid/bookToGrid'
import { customFunctions } from '../../../src/workbench/grid/customFunctions'
import { engineMends } from '../../../src/workbench/grid/mends/engineMends'
import type { EngineMend } from '../../../src/workbench/grid/mends/mend'
import { nextCalculation } from '../../../src/workbench/grid/nextCalculation'
import { CellCalls } from '../../../src/workbench/grid/cellCalls'
import type { Book } from '../../../src/workbook/book'

// The drawing package of the grid asks a font library for names that Node sees only in its .mjs file.
register(
  `data:text/javascript,${encodeURIComponent(`
  export async function resolve(specifier, context, next) {
    const found = await next(specifier, context)
    return specifier === 'opentype.js' ? { ...found, format: 'module', url: found.url.replace(/\\.js$/, '.mjs') } : found
  }
`)}`,
)
const { CalculationMode, UniverSheetsNodeCorePreset } = await import('@univerjs/preset-sheets-node-core')

export interface OpenGrid {
  readonly api: FUniver
  readonly injector: Injector
  readonly calls: CellCalls
  /** One workbook is open at a time. */
  replace(book: Book, id: string): void
  /** Resolves once all is calculated that was edited in `edit`. */
  calculated(edit: () => unknown): Promise<void>
  execute(command: string, params: object): Promise<boolean>
  close(): void
}

/** The mends of the engine but one, to show the fault that it repairs. */
export function without(left: EngineMend): readonly EngineMend[] {
  return engineMends.filter((mend) => mend !== left)
}

export function openGrid(mends = engineMends): OpenGrid {
  const calls = new CellCalls()
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.ERROR })
  const { plugins } = UniverSheetsNodeCorePreset({
    formula: { ...customFunctions(catalogue, calls), initialFormulaComputing: CalculationMode.FORCED },
  })
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(...plugin)
    else univer.registerPlugin(plugin)
  }
  const injector = univer.__getInjector()
  const api = FUniver.newAPI(univer)
  let toMend = mends
  return {
    api,
    injector,
    calls,
    replace(book, id) {
      const former = api.getActiveWorkbook()
      if (former !== null) api.disposeUnit(former.getId())
      api.createWorkbook(bookToGrid(book, id))
      for (const mend of toMend) mend(injector)
      toMend = []
      // Undo belongs to the workbook that has the focus, which only the screen would give it.
      injector.get(IUniverInstanceService).focusUnit(id)
    },
    async calculated(edit) {
      const calculation = nextCalculation(injector)
      await edit()
      await calculation
    },
    execute: (command, params) => injector.get(ICommandService).executeCommand(command, params),
    close: () => univer.dispose(),
  }
}
