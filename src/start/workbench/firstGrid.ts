/** Nine tenths of all that the page runs, and so a chunk of its own. */
import { catalogue } from '../../functions/catalogue'
import { type Grid, type GridOptions, startGrid } from '../../workbench/grid/grid'
import { demoSeason } from '../../workbook/season/demoSeason'
import type { StoredResults } from '../../workbook/storedResults'
import { emptyBook } from './beginning'

/** Without stored results it takes until the demo is calculated. */
export function gridWithDemo(
  place: HTMLElement,
  options: GridOptions,
  stored: StoredResults | undefined,
): Promise<Grid> {
  return startGrid(place, catalogue, demoSeason(), { ...options, ...(stored && { stored }) })
}

export function emptyGrid(place: HTMLElement, options: GridOptions): Promise<Grid> {
  return startGrid(place, catalogue, emptyBook, options)
}
