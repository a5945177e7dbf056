/** Containers: what one cell holds, brimful. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import { fraction, pi, type Fraction } from '../fraction'
import { typed } from './typed'

export type Container = SeasonData['containers'][number]

/** In mL. A cell without a width is round; a bottom that is not given is like the top. */
export function cellOf(container: Container): Fraction {
  if (container.placeMl !== undefined) return typed(container.placeMl)
  const [length, depth] = [typed(container.topLength), typed(container.cellDepth)]
  const bottomLength = container.bottomLength === undefined ? length : typed(container.bottomLength)
  if (container.topWidth === undefined) {
    const squares = length.times(length).plus(length.times(bottomLength)).plus(bottomLength.times(bottomLength))
    return pi.times(depth).times(squares).over(12).over(1000)
  }
  const width = typed(container.topWidth)
  const bottomWidth = container.bottomWidth === undefined ? width : typed(container.bottomWidth)
  const middle = length.plus(bottomLength).over(2).times(width.plus(bottomWidth).over(2))
  const areas = length.times(width).plus(middle.times(4)).plus(bottomLength.times(bottomWidth))
  return depth.times(areas).over(6).over(1000)
}

/** Brimful volume of all cells of a tray, or a bed once settled, in L; nothing else is filled with a medium. */
export function volumeOf(container: Container): Fraction {
  if (container.kind === 'tray') return cellOf(container).times(typed(container.places)).over(1000)
  if (container.kind === 'bed')
    return typed(container.bedLength).times(typed(container.bedWidth)).times(typed(container.bedDepth)).times(1000)
  return fraction(0)
}
