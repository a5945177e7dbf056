import { type RefObject, useEffect, useState } from 'react'
import type { Grid } from '../../workbench/grid/grid'
import { beside, focusIn, type Region } from './regions'

export interface Places {
  readonly bar: RefObject<HTMLElement | null>
  readonly pane: RefObject<HTMLElement | null>
}

/** What shows in a narrow window, where the sheet and the pane take turns. */
export type Shown = Exclude<Region, 'bar'>

interface Regions {
  readonly shown: Shown
  /** Shows the region and puts the keyboard there. */
  readonly go: (region: Region) => void
  readonly regionOf: (at: Node) => Region
}

/** Leads the keyboard from one part of the page to the next by F6, and from sheet to sheet. */
export function useRegions(grid: Grid | undefined, { bar, pane }: Places): Regions {
  const [shown, setShown] = useState<Shown>('sheet')

  function go(region: Region) {
    if (region !== 'bar') setShown(region)
    // What was hidden takes the keyboard only once it shows.
    requestAnimationFrame(() => {
      if (region === 'sheet') grid?.focus()
      else focusIn(region === 'bar' ? bar.current! : pane.current!)
    })
  }

  function regionOf(at: Node): Region {
    if (bar.current!.contains(at)) return 'bar'
    return pane.current!.contains(at) ? 'pane' : 'sheet'
  }

  useEffect(() => {
    // Nobody has gone elsewhere yet.
    if (document.activeElement === document.body) grid?.focus()
    const takeKey = (event: KeyboardEvent) => {
      if (event.key === 'F6') go(beside(regionOf(event.target as Node), event.shiftKey ? -1 : 1))
      else if (event.altKey && event.key === 'PageDown') grid?.turnSheet(1)
      else if (event.altKey && event.key === 'PageUp') grid?.turnSheet(-1)
      else return
      event.preventDefault()
      event.stopPropagation()
    }
    // On the window and before anybody else: the grid keeps most keys to itself, and Tab never leaves it.
    window.addEventListener('keydown', takeKey, { capture: true })
    return () => window.removeEventListener('keydown', takeKey, { capture: true })
  }, [grid])

  return { shown, go, regionOf }
}
