import type { SeasonData } from '../../../../src/workbook/season/season'
import type { setup } from '../../../../src/workbook/season/tables/setup'
import type { Fraction } from '../fraction'
import { typed, type FiguresOf } from './typed'

export interface Setup extends FiguresOf<typeof setup> {
  readonly benchRate: Fraction
  readonly hourCost: Fraction
}

/** An hour costs the wage and what the employer pays on top; a bench rate is typed, or is the sum of its three parts. */
export function setupOf({ setup }: SeasonData): Setup {
  return {
    benchRate:
      setup.benchRateTyped === undefined
        ? typed(setup.heat).plus(typed(setup.mist)).plus(typed(setup.overheads))
        : typed(setup.benchRateTyped),
    hourCost: typed(setup.wage).times(typed(setup.onCosts).plus(1)),
  }
}
