import { useEffect, useState } from 'react'
import type { CellChoices } from '../../workbench/grid/choices'
import type { Grid } from '../../workbench/grid/grid'

interface Choices {
  /** Of the selected cell; undefined where it has no list. */
  readonly choices: CellChoices | undefined
  readonly isOpen: boolean
  readonly open: (isOpen: boolean) => void
}

/** What may be chosen for the selected cell, and whether its list is open: Alt+Down opens it, another cell closes it. */
export function useChoices(grid: Grid | undefined): Choices {
  const [choices, setChoices] = useState<CellChoices>()
  const [opened, setOpened] = useState<string>()

  useEffect(() => {
    if (grid === undefined) return
    const look = () => setChoices(grid.choices())
    look()
    const stops = [grid.onSelectionChange(look), grid.onScroll(look)]
    return () => stops.forEach((stop) => stop())
  }, [grid])

  useEffect(() => {
    const takeKey = (event: KeyboardEvent) => {
      if (!event.altKey || event.key !== 'ArrowDown' || !isInSheet(event.target)) return
      const now = grid?.choices()
      if (now === undefined) return
      event.preventDefault()
      event.stopPropagation()
      setOpened(keyOf(now))
    }
    // Before the grid, which keeps most keys to itself.
    window.addEventListener('keydown', takeKey, { capture: true })
    return () => window.removeEventListener('keydown', takeKey, { capture: true })
  }, [grid])

  const key = choices && keyOf(choices)
  const isOpen = key !== undefined && opened === key
  return { choices, isOpen, open: (wanted) => setOpened(wanted ? key : undefined) }
}

const keyOf = ({ sheet, address }: CellChoices): string => `${sheet}!${address}`

const isInSheet = (target: EventTarget | null): boolean => target instanceof Element && target.closest('.grid') !== null
