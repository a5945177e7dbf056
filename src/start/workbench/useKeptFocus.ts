import { useEffect } from 'react'

interface Focus {
  readonly isForSheet: (target: Node) => boolean
  /** Whether the user has gone from the sheet to another part of the page. */
  readonly isElsewhere: () => boolean
}

/** In milliseconds, from when the sheet is there: an empty one takes the keyboard a little later. */
const longestSettling = 3000

/**
 * While the sheet gets ready its library takes the keyboard again and again. It is given back to whoever has it on the
 * page by then.
 */
export function useKeptFocus(isReady: boolean, { isForSheet, isElsewhere }: Focus): void {
  useEffect(() => {
    const giveBack = ({ target, relatedTarget: before }: FocusEvent) => {
      if (!isForSheet(target as Node) || (isReady && !wasTaken(target as HTMLElement, before as Node | null))) return
      if (before === null) (target as HTMLElement).blur()
      else (before as HTMLElement).focus()
    }
    /** By the cells of a sheet that is there: a box in it is reached by Tab too, and leads to the cells by itself. */
    const wasTaken = (by: HTMLElement, from: Node | null) =>
      by.isContentEditable && isElsewhere() && from !== null && !isForSheet(from)
    const stop = () => window.removeEventListener('focusin', giveBack)
    window.addEventListener('focusin', giveBack)
    const timer = isReady ? setTimeout(stop, longestSettling) : undefined
    return () => {
      stop()
      clearTimeout(timer)
    }
  }, [isReady])
}
