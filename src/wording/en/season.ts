/** The section Season. */
export const season = {
  buildDemo: 'Build the demo season',
}
