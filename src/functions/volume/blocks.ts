import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { number, share } from '../../core/definition/parameter'

export const blocks = defineBySteps({
  id: 'BLOCKS',
  subject: 'volume',
  parameters: {
    cuttings: number('cuttings', { text: 'cuttings to stick', example: 2450, atLeast: 0 }),
    sitesPerBlock: number('sites', {
      text: 'cuttings that one block, slab or sheet takes',
      example: 98,
      above: 0,
      whole: true,
    }),
    spareShare: share({ text: 'share of the sites that is left empty', example: 0.02, default: 0, below: 1 }),
  },
  result: { name: 'blocks', unit: 'blocks' },
  steps: [
    ['usedSites', 'sitesPerBlock * (1 - spareShare)', 'sites per block', 'sites of a block that take a cutting'],
    ['blocks', 'ROUNDUP(cuttings / usedSites, 0)', 'blocks', 'whole blocks'],
  ],
})

export const blocksText: TextsOf<typeof blocks> = {
  summary: 'Whole blocks, slabs or sheets (rockwool, foam) for a number of cuttings.',
  convention: 'Part of a block counts as a block. spareShare is a share of the sites, as in TRAYS.',
  result: 'blocks to buy',
  examples: [
    { text: '2,450 cuttings in sheets of 98 sites', given: [2450, 98], gives: 25, source: 'definition' },
    { text: 'The same with 2 % of the sites spare', given: [2450, 98, 0.02], gives: 26, source: 'definition' },
  ],
}
