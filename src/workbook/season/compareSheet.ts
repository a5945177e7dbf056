import { compare } from '../../functions/review/compare'
import type { Cell } from '../book'
import { formats, headings, headOf, input, ofTable, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { wayKeys } from './sixWays'
import { aboveTable, letterOf, spilledTable } from './spilledTable'

function line(label: string, cell: Cell, unit: string, how: string): Row {
  return [text(label), cell, text(unit), text(how)]
}

/** All six ways on one footing, the cheapest first. */
export function compareSheet(): NamedSheet {
  type Key = keyof typeof compare.result.columns
  /** What the table has in a row, from 1. */
  const figure = (key: Key, row: number, { table }: { readonly table: number }) =>
    `${letterOf(compare, key)}${table + row}`
  const ofWays = (key: Key, at: { readonly table: number }) =>
    `${figure(key, 1, at)}:${figure(key, wayKeys.length, at)}`
  const { rows, at } = layOut({
    ...headOf(
      'Which way wins',
      'All six ways on one footing, for one species: the whole cost of rooting for each liner that can be sold.',
    ),
    whatIsIn: () => [
      text(
        'In it: the cutting, hormone, the medium and its mixing, all labour until rooted, the bench with heat and the overheads of the house,',
      ),
    ],
    pieces: () => [
      text(
        'and the vessel, tray, bed or sheet with its washing, topping up, breakage, disposal and interest. The figures come from Ways.',
      ),
    ],
    whatIsNot: () => [
      text(
        'Not in it: potting on, growing on and grading, which are on Quote; selling and the office. What suits a plant and what a bench bears is on Ways.',
      ),
    ],
    gap: blank,
    heading: () => headings('The answer', 'Figure', 'Unit', 'Where it comes from', '', ''),
    winner: (at) =>
      line('Cheapest way', total(ofTable(`A${at.table}`, figure('name', 1, at))), '', 'First row of the table below'),
    from: (at) =>
      line(
        'It beats single use from',
        result(ofTable(`A${at.table}`, figure('beatsFrom', 1, at)), formats.count),
        'rounds on',
        'Against the way in the next line, as in the table',
      ),
    against: (at) =>
      line(
        'Single use compared with',
        result(
          ofTable(
            `A${at.table}`,
            `IFNA(INDEX(${ofWays('name', at)},MATCH("single use",${ofWays('beatsFrom', at)},0)),"no way serves one round")`,
          ),
        ),
        '',
        'The cheapest way that serves one round',
      ),
    ahead: (at) =>
      line(
        'Ahead of the next by',
        result(ofTable(`A${at.table}`, `${figure('perLiner', 2, at)}-${figure('perLiner', 1, at)}`), formats.each),
        'EUR a liner',
        'Second row less first row',
      ),
    next: (at) =>
      line('The next way', result(ofTable(`A${at.table}`, figure('name', 2, at))), '', 'Second row of the table'),
    compared: () =>
      line(
        'Cuttings in a round',
        input(1000, formats.count),
        'cuttings',
        'Level cost (of the pieces alone) and cash in the table are for so many cuttings in every way',
      ),
    gapAbove: blank,
    tableHeading: () =>
      aboveTable(compare, {
        name: 'Cheapest first',
        levelCost: 'EUR a round',
        perCutting: 'EUR a cutting',
        perLiner: 'EUR a liner',
        cashBefore: 'EUR, first round',
        beatsFrom: 'rounds',
      }),
    table: {
      height: wayKeys.length + 1,
      rows: () =>
        spilledTable(
          compare,
          '=STICK.COMPARE(WayName,ComparedFirst,WayRounds,ComparedCuttings,WayRate,ComparedWash,WayTopUp,WayLost,WayOther,ComparedEnd,YearlyInterest,RoundsPerYear)',
          {
            name: undefined,
            levelCost: formats.price,
            perCutting: formats.each,
            perLiner: formats.each,
            cashBefore: formats.price,
            beatsFrom: formats.count,
          },
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
