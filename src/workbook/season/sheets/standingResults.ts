/** Where cuttings stand once they are stuck, for lines that are still to plan and for batches alike. */
import { mondayOf } from '../table/mondayOf'
import { lookUp, type ColumnOf } from '../table/table'
import { containers } from '../tables/containers'
import { methods } from '../tables/methods'

/** The cells of a row that say so. */
interface Stuck {
  readonly method: string
  readonly container: string
  readonly pieces: string
  readonly medium: string
  readonly benchWeeks: string
  readonly from: string
}

/** @param day The day of sticking. */
export function standingResults<R extends Stuck>(day: (row: R) => string) {
  const ofMethod = ({ method }: R, column: ColumnOf<typeof methods>) => lookUp(methods, method, column)
  const ofContainer = ({ container }: R, column: ColumnOf<typeof containers>) => lookUp(containers, container, column)
  const area = (r: R, on: 'bench' | 'ground') =>
    `IF(${ofMethod(r, 'stands')}="${on}",${r.pieces}*${ofContainer(r, 'ground')},0)`
  return {
    container: (r: R) => ofMethod(r, 'container'),
    benchWeeks: (r: R) => ofMethod(r, 'weeks'),
    medium: (r: R) => `${ofMethod(r, 'medium')}&""`,
    litres: (r: R) =>
      `IF(LEN(${r.medium})=0,0,${r.pieces}*${ofMethod(r, 'loose')}*IF(AND(${ofContainer(r, 'kind')}="bed",${ofContainer(r, 'rounds')}>1),${ofContainer(r, 'topUp')},1))`,
    from: (r: R) => mondayOf(day(r)),
    until: (r: R) => `${r.from}+7*ROUNDUP(${r.benchWeeks},0)`,
    benchM2: (r: R) => area(r, 'bench'),
    groundM2: (r: R) => area(r, 'ground'),
    groundWeeks: (r: R) => `${r.benchWeeks}+IF(${ofContainer(r, 'kind')}="bed",${ofContainer(r, 'turnround')}+0,0)`,
  }
}
