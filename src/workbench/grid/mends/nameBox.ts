/**
 * Mends the grid's box of names. Its list opens a moment after each letter, so that it opened anew after Enter had
 * closed it, and it stayed open after a click on one of its names; either way it lay over the cells. And the box kept
 * what stood in it, so that a name was typed into the middle of the old one. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'

const box = '[data-u-comp="defined-name"]'
const nameInList = '[data-slot="popover-content"] li'

export function mendNameBox(_injector: Injector, container: HTMLElement): void {
  /** From a jump on until the list is asked for again. */
  let hasJumped = false
  const closeList = (): void => {
    if (hasJumped) container.querySelector<HTMLElement>(`${box} a[aria-expanded="true"]`)?.click()
  }
  new MutationObserver(closeList).observe(container, { subtree: true, attributeFilter: ['aria-expanded'] })

  // Before the grid: it empties its hidden editor while it takes the key.
  type Events = HTMLElementEventMap
  const atBox = <Name extends keyof Events>(name: Name, act: (event: Events[Name]) => void): void => {
    container.addEventListener(
      name,
      (event) => {
        if (event.target instanceof Element && event.target.closest(box)) act(event)
      },
      { capture: true },
    )
  }
  atBox('keydown', ({ key }) => {
    hasJumped = key === 'Enter'
  })
  atBox('pointerdown', () => {
    hasJumped = false
  })
  atBox('focusin', selectAll)
  // The click that brings the keyboard puts the cursor between the letters.
  atBox('click', selectAll)
  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element && target.closest(nameInList))) return
    hasJumped = true
    closeList()
  })
}

function selectAll({ target }: Event): void {
  if (target instanceof HTMLInputElement && target.selectionStart === target.selectionEnd) target.select()
}
