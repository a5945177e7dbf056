import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import type { CellContent } from '../../workbook/book'
import type { CellBox, CellChoices } from '../../workbench/grid/choices'
import type { Words } from '../../wording/words'

interface ListBoxProps {
  readonly choices: CellChoices
  readonly words: Words['workbench']
  readonly onChoose: (entry: CellContent) => void
  /** Nothing was chosen, and the keyboard is to go back. */
  readonly onLeave: () => void
  readonly onBlur: () => void
}

/** Takes the keyboard as it opens: arrows, Home, End or the first letter lead to an entry, Enter takes it, Escape leaves. */
export function ListBox({ choices: { sheet, address, entries, chosen, box }, words, ...on }: ListBoxProps) {
  const [at, setAt] = useState(() =>
    Math.max(
      0,
      entries.findIndex((entry) => entry === chosen),
    ),
  )
  const list = useRef<HTMLUListElement>(null)
  const id = useId()
  useEffect(() => {
    list.current!.focus()
  }, [])
  useEffect(() => {
    list.current!.children[at]?.scrollIntoView({ block: 'nearest' })
  }, [at])

  const take = (entry: CellContent | undefined) => (entry === undefined ? on.onLeave() : on.onChoose(entry))
  const takeKey = (event: KeyboardEvent) => {
    if (event.key === 'Enter' || event.key === ' ') take(entries[at])
    else if (event.key === 'Escape' || event.key === 'Tab') on.onLeave()
    else setAt(placeAfter(event.key, at, entries))
    event.preventDefault()
    event.stopPropagation()
  }

  return (
    <ul
      ref={list}
      className="list"
      role="listbox"
      tabIndex={0}
      aria-label={words.list(sheet, address)}
      aria-activedescendant={entries.length > 0 ? `${id}${at}` : undefined}
      style={placeOf(box)}
      onKeyDown={takeKey}
      onBlur={on.onBlur}
    >
      {entries.map((entry, index) => (
        <li
          key={index}
          id={`${id}${index}`}
          role="option"
          aria-selected={index === at}
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => take(entry)}
        >
          {String(entry)}
        </li>
      ))}
      {entries.length === 0 && <li role="presentation">{words.emptyList}</li>}
    </ul>
  )
}

/** Where the entries lead by a key: a letter leads to the next one that begins with it. */
function placeAfter(key: string, at: number, entries: readonly CellContent[]): number {
  const last = Math.max(0, entries.length - 1)
  if (key === 'ArrowDown') return Math.min(last, at + 1)
  if (key === 'ArrowUp') return Math.max(0, at - 1)
  if (key === 'Home') return 0
  if (key === 'End') return last
  const begins = (entry: CellContent) => key.length === 1 && String(entry).toLowerCase().startsWith(key.toLowerCase())
  const onwards = entries.map((_entry, step) => (at + 1 + step) % entries.length)
  return onwards.find((index) => begins(entries[index]!)) ?? at
}

/** Below the cell, or above one in the lower half; a cell out of sight has its list in the middle. */
function placeOf(box: CellBox | undefined) {
  if (box === undefined) return { left: 8, top: '30vh' }
  const left = `max(8px, min(${box.left}px, 100vw - 240px))`
  return box.bottom < window.innerHeight / 2
    ? { left, top: box.bottom }
    : { left, bottom: window.innerHeight - box.top }
}
