/** Where the keyboard can be. */
export type Region = 'bar' | 'sheet' | 'pane'
const regions: readonly Region[] = ['bar', 'sheet', 'pane']

/** The region after this one, or before it; after the last comes the first. */
export function beside(region: Region, step: 1 | -1): Region {
  return regions.at((regions.indexOf(region) + step) % regions.length)!
}

/** On the first control. A pane that has just begun has none yet; the next Tab leads to it from the place itself. */
export function focusIn(place: HTMLElement): void {
  const first = place.querySelector<HTMLElement>('button, input:not([hidden]), a[href], [tabindex="0"]') ?? place
  first.focus()
}
