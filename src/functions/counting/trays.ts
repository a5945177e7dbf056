import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { number, share } from '../../core/definition/parameter'

export const trays = defineBySteps({
  id: 'TRAYS',
  subject: 'counting',
  parameters: {
    cuttings: number('cuttings', { text: 'cuttings to stick', example: 1201, atLeast: 0 }),
    cellsPerTray: number('cells', { text: 'cells in one tray', example: 72, above: 0, whole: true }),
    spareShare: share({ text: 'share of the cells that is left empty', example: 0.1, default: 0, below: 1 }),
  },
  result: { name: 'trays', unit: 'trays' },
  steps: [
    ['usedCells', 'cellsPerTray * (1 - spareShare)', 'cells per tray', 'cells of a tray that take a cutting'],
    ['trays', 'ROUNDUP(cuttings / usedCells, 0)', 'trays', 'whole trays'],
  ],
})

export const traysText: TextsOf<typeof trays> = {
  summary: 'Whole trays for a number of cuttings.',
  convention: 'Part of a tray counts as a tray. spareShare is a share of the cells, not of the cuttings.',
  result: 'trays to fill',
  examples: [
    { text: '1,201 cuttings in trays of 72 cells', given: [1201, 72], gives: 17, source: 'definition' },
    { text: 'The same with a tenth of the cells left empty', given: [1201, 72, 0.1], gives: 19, source: 'definition' },
  ],
}
