import { useEffect } from 'react'

/**
 * While the sheet gets ready its library takes the keyboard again and again. It is given back to whoever has it on the
 * page by then.
 */
export function useKeptFocus(isReady: boolean, isForSheet: (target: Node) => boolean): void {
  useEffect(() => {
    if (isReady) return
    const giveBack = ({ target, relatedTarget: before }: FocusEvent) => {
      if (!isForSheet(target as Node)) return
      if (before === null) (target as HTMLElement).blur()
      else (before as HTMLElement).focus()
    }
    window.addEventListener('focusin', giveBack)
    return () => window.removeEventListener('focusin', giveBack)
  }, [isReady])
}
