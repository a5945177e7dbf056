import type { Cell } from '../book'
import { formats, headings, headOf, heading, input, ofTable, result, spilledTable, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { wayKeys } from './sixWays'

function line(label: string, cell: Cell, unit: string, how: string): Row {
  return [text(label), cell, text(unit), text(how)]
}

/** All six ways on one footing, the cheapest first. */
export function compareSheet(): NamedSheet {
  const ofWays = (column: string, { table }: { readonly table: number }) => `${column}${table + 1}:${column}${table + wayKeys.length}`
  const { rows, at } = layOut({
    ...headOf('Which way wins', 'All six ways on one footing, for one species: the whole cost of rooting for each liner that can be sold.'),
    whatIsIn: () => [text('In it: the cutting, hormone, the medium and its mixing, all labour until rooted, the bench with heat and the overheads of the house,')],
    pieces: () => [text('and the vessel, tray, bed or sheet with its washing, topping up, breakage, disposal and interest. The figures come from Ways.')],
    whatIsNot: () => [text('Not in it: potting on, growing on and grading, which are on Quote; selling and the office. What suits a plant and what a bench bears is on Ways.')],
    gap: blank,
    heading: () => headings('The answer', 'Figure', 'Unit', 'Where it comes from', '', ''),
    winner: (at) => line('Cheapest way', total(ofTable(`A${at.table}`, `A${at.table + 1}`)), '', 'First row of the table below'),
    from: (at) => line('It beats single use from', result(ofTable(`A${at.table}`, `F${at.table + 1}`), formats.count), 'rounds on', 'Against the way in the next line, as in the table'),
    against: (at) => line('Single use compared with', result(ofTable(`A${at.table}`, `IFNA(INDEX(${ofWays('A', at)},MATCH("single use",${ofWays('F', at)},0)),"no way serves one round")`)), '', 'The cheapest way that serves one round'),
    ahead: (at) => line('Ahead of the next by', result(ofTable(`A${at.table}`, `D${at.table + 1 + 1}-D${at.table + 1}`), formats.each), 'EUR a liner', 'Second row less first row'),
    next: (at) => line('The next way', result(ofTable(`A${at.table}`, `A${at.table + 1 + 1}`)), '', 'Second row of the table'),
    compared: () => line('Cuttings in a round', input(1000, formats.count), 'cuttings', 'Level cost (of the pieces alone) and cash in the table are for so many cuttings in every way'),
    gapAbove: blank,
    tableHeading: () => [heading('Cheapest first'), heading('EUR a round'), heading('EUR a cutting'), heading('EUR a liner'), heading('EUR, first round'), heading('rounds')],
    table: {
      height: wayKeys.length + 1,
      rows: () => spilledTable(
        '=STICK.COMPARE(WayName,ComparedFirst,WayRounds,ComparedCuttings,WayRate,ComparedWash,WayTopUp,WayLost,WayOther,ComparedEnd,YearlyInterest,RoundsPerYear)',
        [undefined, formats.price, formats.each, formats.each, formats.price, formats.count],
        wayKeys.length,
      ),
    },
  })
  const name = naming('Compare')
  return {
    sheet: { name: 'Compare', widths: [22, 21, 14, 18, 26, 32], frozenRows: at.invented, frozenColumns: 0, rows },
    names: [
      name('CheapestWay', 'B', at.winner),
      name('CheapestFromRound', 'B', at.from),
      name('CheapestAheadBy', 'B', at.ahead),
      name('NextWay', 'B', at.next),
      name('CuttingsCompared', 'B', at.compared),
    ],
  }
}
