/**
 * Mends the grid's box of names. Its list opens a moment after each letter, so that it opened anew after Enter had closed
 * it, and it stayed open after a click on one of its names; either way it lay over the cells. And the box kept what stood
 * in it, so that a name was typed into the middle of the old one.
 */
const box = '[data-u-comp="defined-name"]'
const nameInList = '[data-slot="popover-content"] li'

export function mendNameBox(container: HTMLElement): void {
  /** From a jump on until the list is asked for again. */
  let hasJumped = false
  const closeList = (): void => {
    if (hasJumped) container.querySelector<HTMLElement>(`${box} a[aria-expanded="true"]`)?.click()
  }
  new MutationObserver(closeList).observe(container, { subtree: true, attributeFilter: ['aria-expanded'] })

  // Before the grid: it empties its hidden editor while it takes the key.
  const atBox = <Name extends keyof HTMLElementEventMap>(name: Name, act: (event: HTMLElementEventMap[Name]) => void): void => {
    container.addEventListener(name, (event) => {
      if (event.target instanceof Element && event.target.closest(box)) act(event)
    }, { capture: true })
  }
  atBox('keydown', ({ key }) => { hasJumped = key === 'Enter' })
  atBox('pointerdown', () => { hasJumped = false })
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
