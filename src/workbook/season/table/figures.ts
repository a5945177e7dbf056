/** Figures of the season that stand alone, one below the other: what is typed once for the whole nursery. */
import { nameOf } from './nameOf'
import type { Column } from './table'

export interface Figures<T extends string = string, R extends string = string> {
  readonly sheet: string
  readonly typed: Readonly<Record<T, Column>>
  readonly results: Readonly<Record<R, Column>>
}

export function declareFigures<T extends string, R extends string>(figures: Figures<T, R>): Figures<T, R> {
  return figures
}

export type FigureOf<F extends Figures> = F extends Figures<infer T, infer R> ? T | R : never

/** The name of a figure's cell: `figureOf(setup, 'wage')` is SetupWage. */
export function figureOf<F extends Figures>({ sheet }: F, key: FigureOf<F>): string {
  return nameOf(sheet, key)
}

/** The name of the cell that says "ready", or what is missing. */
export function stateOf({ sheet }: Figures): string {
  return `${sheet}State`
}
