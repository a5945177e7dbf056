/** Where the keyboard can be. */
export type Region = 'bar' | 'sheet' | 'pane'
const chosenTab = '[role="tab"][aria-selected="true"]'
const anyControl = 'button, input:not([hidden]), a[href], [tabindex="0"]'

const regions: readonly Region[] = ['bar', 'sheet', 'pane']

/** The region after this one, or before it; after the last comes the first. */
export function beside(region: Region, step: 1 | -1): Region {
  return regions.at((regions.indexOf(region) + step) % regions.length)!
}

/**
 * On the chosen tab, from which Tab leads into what it shows, or else on the first control. A pane that has just begun
 * has none yet; the next Tab leads to it from the place itself.
 */
export function focusIn(place: HTMLElement): void {
  const control = place.querySelector<HTMLElement>(chosenTab) ?? place.querySelector<HTMLElement>(anyControl) ?? place
  control.focus()
}
