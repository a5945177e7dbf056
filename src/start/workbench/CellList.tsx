import type { Grid } from '../../workbench/grid/grid'
import type { Words } from '../../wording/words'
import { ListBox } from './ListBox'
import { useChoices } from './useChoices'

interface CellListProps {
  readonly grid: Grid | undefined
  readonly words: Words
}

/** The list of the selected cell, where it has one: an arrow at its right edge opens it, and so does Alt+Down. */
export function CellList({ grid, words: { language, workbench: words } }: CellListProps) {
  const { choices, isOpen, open } = useChoices(grid)
  if (grid === undefined || choices === undefined) return null
  const { box } = choices
  const leave = () => {
    open(false)
    grid.focus()
  }
  return (
    <div lang={language}>
      {box && (
        <button
          type="button"
          className="open-list"
          // Before the last pixels of a narrow window.
          style={{ left: `min(${box.right}px, 100vw - 24px)`, top: box.top, height: box.bottom - box.top }}
          aria-label={words.openList}
          aria-haspopup="listbox"
          aria-expanded={isOpen}
          title={words.openList}
          tabIndex={-1}
          // Else the list would close before the click that is to close it.
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => (isOpen ? leave() : open(true))}
        >
          ▾
        </button>
      )}
      {isOpen && (
        <ListBox
          choices={choices}
          words={words}
          onChoose={(entry) => void grid.choose(entry).then(leave)}
          onLeave={leave}
          onBlur={() => open(false)}
        />
      )}
    </div>
  )
}
