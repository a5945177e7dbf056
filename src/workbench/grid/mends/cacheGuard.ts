/**
 * Keeps formulas from reading the old cells of a name. The grid's formula engine caches what it read of a formula
 * by the formula's text, in caches that all workbooks share, and a name in it keeps the place it had then. After a
 * row was inserted above a named range, or in a next workbook that has the same name elsewhere, formulas would
 * go on reading the old cells and show no error. So both caches are emptied whenever a place may have moved, and
 * everything is calculated again. Two workbooks in one calculation would still mix their names, which is why the
 * workbench keeps one open at a time. Seen with univer 0.25.1.
 */
import { ICommandService, type Injector, IUniverInstanceService, UniverInstanceType } from '@univerjs/core'
import { IFunctionService, LexerTreeBuilder, SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { movesPlaces } from '../movesPlaces'

const changesNames = /^formula\.mutation\.(set|remove)-(defined-name|super-table)/

export function guardFormulaCaches(injector: Injector): void {
  const lexer = injector.get(LexerTreeBuilder)
  const functions = injector.get(IFunctionService)
  const commands = injector.get(ICommandService)
  const units = injector.get(IUniverInstanceService)

  const emptyCaches = (): void => {
    lexer.dispose()
    // An empty text is part of every key.
    functions.deleteFormulaAstCacheKey('')
  }
  let placesMoved = false
  const emptyCachesFor = ({ id, params }: { readonly id: string; readonly params?: object }): void => {
    if (movesPlaces(id) || changesNames.test(id)) {
      emptyCaches()
      placesMoved = true
    }
    // The grid would recalculate what it believes to be touched, and for a name it believes in the old place.
    if (placesMoved && id === SetFormulaCalculationStartMutation.id) {
      ;(params as { forceCalculation?: boolean }).forceCalculation = true
      placesMoved = false
    }
  }
  // What another engine of this process left there.
  emptyCaches()
  // Before as well: the grid itself reads formulas while it carries a command out, and caches them again.
  commands.beforeCommandExecuted(emptyCachesFor)
  commands.onCommandExecuted(emptyCachesFor)
  units.getTypeOfUnitAdded$(UniverInstanceType.UNIVER_SHEET).subscribe(emptyCaches)
  units.getTypeOfUnitDisposed$(UniverInstanceType.UNIVER_SHEET).subscribe(emptyCaches)
}
