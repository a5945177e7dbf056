import type { Cell } from '../book'
import { formats, headings, headOf, input, openInput, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { pastBatches, spreadName, type Batch } from './pastBatches'

function line(label: string, cell: Cell, unit: string, how: string): Row {
  return [text(label), cell, text(unit), undefined, undefined, text(how)]
}

/** How much batches differed in the past, and what that means for the number to stick. */
export function batchesSheet(): NamedSheet {
  const [one, other] = pastBatches
  const height = Math.max(one.batches.length, other.batches.length)
  const { rows, at } = layOut({
    ...headOf(
      'Past batches',
      'How much the rate differed from batch to batch, which Orders uses, and how many to stick where a missing liner costs more than a spare one.',
    ),
    gap: blank,
    units: () => headings('', 'stuck', 'saleable', 'stuck', 'saleable', ''),
    species: () =>
      headings('Past batches', one.species, one.species, other.species, other.species, 'Where it comes from'),
    batches: {
      height,
      rows: () =>
        Array.from({ length: height }, (_, index) => [
          text(`Batch ${index + 1}`),
          ...counts(one.batches[index]),
          ...counts(other.batches[index]),
          ...(index === 0 ? [text('Invented. Count your own: what was stuck, and the liners that could be sold')] : []),
        ]),
    },
    average: (at) => {
      const rate = (stuck: string, saleable: string) =>
        result(`=SUM(${column(saleable, at)})/SUM(${column(stuck, at)})`, formats.share)
      return [
        text('Rate of all batches'),
        undefined,
        rate('B', 'C'),
        undefined,
        rate('D', 'E'),
        text('Saleable over stuck'),
      ]
    },
    spread: (at) => {
      const spread = (stuck: string, saleable: string) =>
        total(`=STICK.BATCHSPREAD(${column(stuck, at)},${column(saleable, at)})`, formats.share)
      return [
        text('Spread between batches'),
        undefined,
        spread('B', 'C'),
        undefined,
        spread('D', 'E'),
        text('Standard deviation of the rate beyond chance. 0 would say that chance alone explains the differences'),
      ]
    },
    gapBetween: blank,
    order: () => headings('How many pay', 'Figure', 'Unit', '', '', 'Where it comes from'),
    ordered: () => line('Species', input(other.species), '', 'A line of Orders'),
    liners: (at) =>
      line('Liners ordered', result(`=${ofOrder('OrderLiners', at.ordered)}`, formats.count), 'liners', 'Orders'),
    strike: (at) => line('Strike', result(`=${ofOrder('OrderStrike', at.ordered)}`, formats.share), 'share', 'Orders'),
    pottingOn: (at) =>
      line('Potting on', result(`=${ofOrder('OrderPottingOn', at.ordered)}`, formats.share), 'share', 'Orders'),
    gradeOut: (at) =>
      line('Grade-out', result(`=${ofOrder('OrderGradeOut', at.ordered)}`, formats.share), 'share', 'Orders'),
    batchSpread: (at) =>
      line(
        'Batch spread',
        result(`=${ofOrder('OrderBatchSpread', at.ordered)}`, formats.share),
        'std. deviation',
        'Orders',
      ),
    costPerCutting: (at) =>
      line(
        'A cutting costs',
        result(`=${ofOrder('OrderCostPerCutting', at.ordered)}`, formats.each),
        'EUR',
        'Orders: rooting it',
      ),
    penalty: () =>
      line(
        'Goodwill for a missing liner',
        input(0.04, formats.each),
        'EUR',
        'Invented: what a disappointed customer costs beyond the lost sale',
      ),
    lost: (at) =>
      line(
        'A missing liner loses',
        result(`=LinerPrice-CostAfterRooting+B${at.penalty}`, formats.each),
        'EUR',
        'Its price on Quote, less what it would still have cost, and the goodwill',
      ),
    surplus: () =>
      line(
        'A surplus liner brings',
        input(0.05, formats.each),
        'EUR',
        'Invented: a late sale, less what it still costs',
      ),
    pays: (at) =>
      line(
        'Stick, so that it pays best',
        total(
          `=STICK.OVERSTICK(B${at.liners},B${at.strike}:B${at.gradeOut},B${at.costPerCutting},B${at.lost},B${at.surplus},B${at.batchSpread})`,
          formats.count,
        ),
        'cuttings',
        'The number beyond which one more costs more than it is likely to earn',
      ),
    planned: (at) =>
      line(
        'Orders says',
        result(`=${ofOrder('OrderCuttings', at.ordered)}`, formats.count),
        'cuttings',
        'By the confidence asked for there',
      ),
    more: (at) =>
      line(
        'So stick more, or fewer',
        result(`=B${at.pays}-B${at.planned}`, formats.count),
        'cuttings',
        'Negative: the confidence asked for costs more than it earns',
      ),
  })
  const name = naming('Batches')
  return {
    sheet: { name: 'Batches', widths: [28, 14, 14, 14, 14, 92], frozenRows: at.invented, frozenColumns: 0, rows },
    names: [
      name(spreadName(one.species), 'C', at.spread),
      name(spreadName(other.species), 'E', at.spread),
      name('CuttingsToAdd', 'B', at.more),
    ],
  }

  function column(letter: string, { batches }: { readonly batches: number }): string {
    return `${letter}${batches}:${letter}${batches + height - 1}`
  }
}

/** A row that one species has and the other has not stays blank, and is skipped. */
function counts(batch: Batch | undefined): readonly [Cell, Cell] {
  if (batch === undefined) return [openInput(formats.count), openInput(formats.count)]
  return [input(batch.stuck, formats.count), input(batch.saleable, formats.count)]
}

function ofOrder(range: string, row: number): string {
  return `INDEX(${range},MATCH($B$${row},OrderSpecies,0))`
}
