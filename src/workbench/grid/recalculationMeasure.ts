/** The name of the measure, in the browser's own timeline, from the last edit to its results in the cells. */
export const recalculationMeasure = 'sticksheet recalculation'
