import { useLayoutEffect, useState } from 'react'

/** In milliseconds without a key: what is typed after that is a new entry. */
const pause = 700

/**
 * Keeps keys from a sheet that is not ready yet. Of an entry that was begun too early the sheet would take the end alone,
 * 50 of 1,50, so all of it is left out, up to the first pause. True from the first such key until one gets through.
 */
export function useEarlyKeys(isReady: boolean, isForSheet: (target: Node) => boolean): boolean {
  const [wasEarly, setWasEarly] = useState(false)
  // With the drawing that shows the sheet ready, not a moment after it.
  useLayoutEffect(() => {
    let last = -Infinity
    const takeKey = (event: KeyboardEvent) => {
      if (!writes(event) || !isForSheet(event.target as Node)) return
      if (isReady && event.timeStamp - last > pause) {
        setWasEarly(false)
        return
      }
      last = event.timeStamp
      event.preventDefault()
      event.stopImmediatePropagation()
      setWasEarly(true)
    }
    // An entry that was begun before goes on until it pauses.
    if (isReady && wasEarly) last = performance.now()
    window.addEventListener('keydown', takeKey, { capture: true })
    return () => window.removeEventListener('keydown', takeKey, { capture: true })
  }, [isReady])
  return wasEarly
}

/** Letters, Enter and the like; not what moves between the parts of the page. */
function writes({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
  return (
    !ctrlKey &&
    !metaKey &&
    !altKey &&
    (key.length === 1 || key === 'Enter' || key === 'Backspace' || key === 'Delete' || key.startsWith('Arrow'))
  )
}
