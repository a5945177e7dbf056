/**
 * Says what the buttons of the grid's own bars do, for those who hear the page: most had no name, some had roles that
 * do not exist, and the canvases came before all else in the order of Tab. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'

/** By what tells each in the page: itself, or its picture. In English, as all that the grid says. */
const names: readonly (readonly [selector: string, name: string])[] = [
  ['[data-u-comp="defined-name"] input', 'Cell or name to go to'],
  ['[data-u-comp="defined-name"] .univerjs-icon-more-down-icon', 'Names of cells'],
  ['[data-u-comp="formula-bar"] .univerjs-icon-close-icon', 'Leave the cell as it was'],
  ['footer [data-u-comp="sheet-bar-append-button"] .univerjs-icon-increase-icon', 'Add a sheet'],
  ['footer .univerjs-icon-convert-icon', 'All sheets'],
  ['footer .univerjs-icon-more-icon.univer-rotate-180', 'Sheets before these'],
  ['footer .univerjs-icon-more-icon:not(.univer-rotate-180)', 'Sheets after these'],
  ['footer [data-u-command="sheet.command.toggle-gridlines"]', 'Gridlines'],
  ['footer .univerjs-icon-reduce-icon', 'Smaller'],
  ['footer [data-u-comp="button"] .univerjs-icon-increase-icon', 'Larger'],
  ['footer a[role="button"]', 'Usual size'],
  ['footer button[role="handle"], footer .univer-top-\\[calc\\(50\\%-6px\\)\\]', 'Size'],
]

export function nameBars(_injector: Injector, container: HTMLElement): void {
  const name = (): void => nameAll(container)
  new MutationObserver(name).observe(container, {
    subtree: true,
    childList: true,
    attributeFilter: ['role', 'aria-expanded', 'tabindex'],
  })
  name()
}

function nameAll(container: HTMLElement): void {
  const each = (selector: string, act: (element: Element, index: number) => void): void =>
    container.querySelectorAll(selector).forEach(act)
  for (const [selector, name] of names)
    each(selector, (found) => setIfOther(found.closest('button, a, input'), 'aria-label', name))
  // A link without an address is a button to those who see it, and has its state.
  each('[data-u-comp="defined-name"] a', (link) => setIfOther(link, 'role', 'button'))
  each('[role="track"], [role="handle"]', (element) => element.removeAttribute('role'))
  // The button is the one inside.
  each('footer div[aria-expanded]', (around) => {
    around.removeAttribute('aria-expanded')
    around.removeAttribute('aria-haspopup')
  })
  each('canvas[tabindex="1"]', (canvas) => setIfOther(canvas, 'tabindex', '0'))
  each('section[aria-live]', (section, index) => setIfOther(section, 'aria-label', `Notices ${index + 1}`))
}

function setIfOther(element: Element | null, attribute: string, value: string): void {
  if (element?.getAttribute(attribute) !== value) element?.setAttribute(attribute, value)
}
