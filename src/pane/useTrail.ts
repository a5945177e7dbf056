import { useEffect, useRef, useState } from 'react'
import type { CellPlace } from '../workbook/cellPlace'
import type { WorkbookPort } from '../workbook/port'
import { usePortSentence } from './usePortSentence'

/** The way from one cell to the cells that it reads, and back. */
export function useTrail(port: WorkbookPort) {
  const portSentence = usePortSentence()
  /** The cells from which one went on, the last one at the end. */
  const [trail, setTrail] = useState<readonly CellPlace[]>([])
  const back = useRef<HTMLSpanElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  /** What was done on the way; empty where nothing was. */
  const [said, setSaid] = useState('')
  const [failure, setFailure] = useState('')

  async function calculate() {
    setFailure('')
    await port.calculate().catch((error: unknown) => setFailure(portSentence(error)))
  }

  async function go(place: CellPlace, nextTrail: readonly CellPlace[], saying = '') {
    setFailure('')
    setSaid(saying)
    try {
      await port.select(place)
      setTrail(nextTrail)
    } catch (error) {
      setFailure(portSentence(error))
    }
  }

  // The button that was pressed belongs to the cell before, and is gone by then.
  const trailBefore = useRef(trail)
  useEffect(() => {
    if (trail !== trailBefore.current) (back.current?.querySelector('button') ?? heading.current)?.focus()
    trailBefore.current = trail
  }, [trail])

  return {
    from: trail.at(-1),
    back,
    heading,
    said,
    failure,
    calculate,
    goBack: (from: CellPlace) => void go(from, trail.slice(0, -1)),
    goOn: ({ sheet, address }: CellPlace, place: CellPlace, saying?: string) =>
      void go(place, [...trail, { sheet, address }], saying),
  }
}
