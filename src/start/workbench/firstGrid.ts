/** Nine tenths of all that the page runs, and so a chunk of its own. */
import { catalogue } from '../../functions/catalogue'
import { type Grid, type GridOptions, startGrid } from '../../workbench/grid/grid'
import { demoSeason } from '../../workbook/season/demoSeason'
import type { StoredResults } from '../../workbook/storedResults'
import { beginsEmpty, emptyBook } from './beginning'

/** Without stored results it takes until the workbook is calculated. */
export function firstGrid(place: HTMLElement, options: GridOptions, stored: StoredResults | undefined): Promise<Grid> {
  const book = beginsEmpty() ? emptyBook : demoSeason()
  return startGrid(place, catalogue, book, { ...options, ...(stored && { stored }) })
}
