import type { Grid } from '../../workbench/grid/grid'

/** In milliseconds after the first of several edits. */
const pause = 3000

interface Following {
  readonly onEdit: () => void
  /** A while after an edit, and when the page is hidden: it may not be shown again. */
  readonly keep: () => void
}

/** Returns the way to stop. */
export function followEdits(grid: Pick<Grid, 'onEdit'>, { onEdit, keep }: Following): () => void {
  let waiting: number | undefined
  const keepNow = () => {
    window.clearTimeout(waiting)
    waiting = undefined
    keep()
  }
  const stop = grid.onEdit(() => {
    onEdit()
    waiting ??= window.setTimeout(keepNow, pause)
  })
  const keepHidden = () => {
    if (document.visibilityState === 'hidden') keepNow()
  }
  document.addEventListener('visibilitychange', keepHidden)
  return () => {
    stop()
    window.clearTimeout(waiting)
    document.removeEventListener('visibilitychange', keepHidden)
  }
}
