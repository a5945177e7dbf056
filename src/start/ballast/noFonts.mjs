/** In place of opentype.js, by which the grid shapes texts in font files that a page hands it. This page hands it none. */
export function parse() {
  throw new Error('The workbench has no font files')
}
