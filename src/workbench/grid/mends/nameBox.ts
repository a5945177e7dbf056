/**
 * Mends the grid's box of names. Its list opens a moment after each letter, so that it opened anew after Enter had
 * closed it, and it stayed open after a click on one of its names; either way it lay over the cells. And the box kept
 * what stood in it, so that a name was typed into the middle of the old one. And it went to Orders!E9 on whatever sheet was
 * open, where the next key wrote. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { FUniver } from '@univerjs/core/facade'
import { deserializeRangeWithSheet } from '@univerjs/engine-formula'
import { ILayoutService } from '@univerjs/preset-sheets-core'
import { blockOf } from '../../../formula/address'
import { select } from '../show'

const box = '[data-u-comp="defined-name"]'
const nameInList = '[data-slot="popover-content"] li'

export function mendNameBox(injector: Injector, container: HTMLElement): void {
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
  atBox('keydown', (event) => {
    hasJumped = event.key === 'Enter'
    if (!hasJumped || !(event.target instanceof HTMLInputElement) || !event.target.value.includes('!')) return
    event.stopPropagation()
    if (goToOtherSheet(injector, event.target.value)) injector.get(ILayoutService).focus()
    else event.target.select()
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

/** False where the address names no cell of a sheet that is there. */
function goToOtherSheet(injector: Injector, text: string): boolean {
  const open = FUniver.newAPI(injector).getActiveWorkbook()
  const { sheetName } = deserializeRangeWithSheet(text.trim())
  const named = open?.getSheets().find((sheet) => sheet.getSheetName().toLowerCase() === sheetName.toLowerCase())
  const address = text.slice(text.lastIndexOf('!') + 1).trim()
  if (!open || named === undefined || blockOf(address) === undefined) return false
  void select({ injector, workbook: () => open }, { sheet: named.getSheetName(), address })
  return true
}

function selectAll({ target }: Event): void {
  if (target instanceof HTMLInputElement && target.selectionStart === target.selectionEnd) target.select()
}
