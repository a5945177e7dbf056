import { type RefObject, useEffect, useRef } from 'react'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import { mountPane, type MountedPane } from '../../pane/mountPane'
import type { WorkbookPort } from '../../workbook/port'

interface PaneBesideGrid {
  readonly dark: boolean
  readonly onLanguage: (language: string) => void
  /** The line below the sheet has the mark too, so it goes through the page. */
  readonly setDecimalMark: (mark: DecimalMark) => void
  readonly onDrawn: () => void
}

/** Shows the pane. Gives the way to let it begin anew. */
export function usePane(
  place: RefObject<HTMLElement | null>,
  port: WorkbookPort,
  { dark, onLanguage, setDecimalMark, onDrawn }: PaneBesideGrid,
): () => void {
  const pane = useRef<MountedPane>(undefined)
  const theme = dark ? 'dark' : 'light'

  function begin() {
    pane.current = mountPane(place.current!, { ...port, setDecimalMark }, { theme, onLanguage, onDrawn })
  }

  useEffect(begin, [])
  useEffect(() => {
    pane.current?.setTheme(theme)
  }, [theme])

  return () => {
    pane.current!.unmount()
    begin()
  }
}
