import { type RefObject, useEffect, useRef } from 'react'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { mountPane, type MountedPane } from '../../pane/mountPane'
import type { Grid } from '../../workbench/grid/grid'

interface PaneBesideGrid {
  readonly dark: boolean
  readonly onLanguage: (language: string) => void
  /** The line below the sheet has the mark too, so it goes through the page. */
  readonly setDecimalMark: (mark: DecimalMark) => void
}

/** Shows the pane once there is a grid. Gives the way to let it begin anew. */
export function usePane(
  place: RefObject<HTMLElement | null>,
  grid: Grid | undefined,
  { dark, onLanguage, setDecimalMark }: PaneBesideGrid,
): () => void {
  const pane = useRef<MountedPane>(undefined)
  const theme = dark ? 'dark' : 'light'

  function begin(open: Grid) {
    pane.current = mountPane(place.current!, { ...open, setDecimalMark }, { theme, onLanguage })
  }

  useEffect(() => {
    if (grid !== undefined) begin(grid)
  }, [grid])
  useEffect(() => {
    pane.current?.setTheme(theme)
  }, [theme])

  return () => {
    pane.current!.unmount()
    begin(grid!)
  }
}
