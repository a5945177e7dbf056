/**
 * Mends the grid's box of names. Its list opens a moment after each letter, so that it opened anew after Enter had
 * closed it, and it stayed open after a click on one of its names; either way it lay over the cells. And the box kept
 * what stood in it, so that a name was typed into the middle of the old one. And it went to Orders!E9 on whatever sheet was
 * open, where the next key wrote. Seen with univer 0.25.1.
 */
import {
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core'
import { deserializeRangeWithSheet } from '@univerjs/engine-formula'
import { SetWorksheetActiveOperation } from '@univerjs/preset-sheets-core'

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
    if (!hasJumped || !(event.target instanceof HTMLInputElement)) return
    if (openSheetOf(injector, event.target.value)) return
    event.stopPropagation()
    event.target.select()
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

/** False where the address names a sheet that is not there. */
function openSheetOf(injector: Injector, address: string): boolean {
  if (!address.includes('!')) return true
  const { sheetName } = deserializeRangeWithSheet(address.trim())
  const open = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)
  const named = open?.getSheets().find((sheet) => sheet.getName().toLowerCase() === sheetName.toLowerCase())
  if (open === null || open === undefined || named === undefined) return false
  const place = { unitId: open.getUnitId(), subUnitId: named.getSheetId() }
  return injector.get(ICommandService).syncExecuteCommand(SetWorksheetActiveOperation.id, place)
}

function selectAll({ target }: Event): void {
  if (target instanceof HTMLInputElement && target.selectionStart === target.selectionEnd) target.select()
}
