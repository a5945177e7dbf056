import { compare } from '../../../functions/review/compare'
import { cautionRows } from '../cautionRows'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import { money } from '../table/column'
import { figureOf } from '../table/figures'
import { figuresSheet, whenReady, type TypedFigures } from '../table/figuresSheet'
import { fromSpilled, spilled, spilledColumn } from '../table/spilled'
import { all, filtered, onlyReady, type ColumnOf, countReady, notComplete } from '../table/table'
import { compareMethods } from '../tables/answers'
import { methods } from '../tables/methods'
import { setup } from '../tables/setup'

const table = 'CompareTable'
type Key = keyof typeof compare.result.columns

/** What the table has in a row, from 1. */
const inTable = (key: Key, row: 1 | 2) => fromSpilled(table, `INDEX(${spilledColumn(table, key)},${row})`)

/** A column of Methods for the rows that are complete, of one container or of as many cuttings as are compared. */
const ready = (column: ColumnOf<typeof methods>) => onlyReady(methods, column)
const isReady = `${all(methods, 'state')}="ready"`
const scaled = (column: ColumnOf<typeof methods>) =>
  filtered(`${all(methods, column)}/${all(methods, 'used')}*${figureOf(compareMethods, 'cuttings')}`, isReady)

/** What COMPARE is given: a round of as many cuttings for every method. */
const given = {
  names: ready('name'),
  firstCosts: scaled('first'),
  rounds: ready('rounds'),
  cuttingsPerRound: filtered(`IF(${isReady},${figureOf(compareMethods, 'cuttings')},"")`, isReady),
  yields: ready('rate'),
  washCosts: scaled('wash'),
  topUpShares: ready('topUp'),
  lossShares: ready('broken'),
  otherCostsPerCutting: ready('otherCost'),
  endValues: scaled('endValue'),
  yearlyInterest: figureOf(setup, 'yearlyInterest'),
  roundsPerYear: figureOf(setup, 'roundsPerYear'),
}

export function compareSheet(mark: string, typed: TypedFigures<typeof compareMethods>, rows: number): NamedSheet {
  const against = `INDEX(${spilledColumn(table, 'name')},MATCH("single use",${spilledColumn(table, 'beatsFrom')},0))`
  return figuresSheet(
    compareMethods,
    {
      title: 'Which method wins',
      about: [
        'All methods on one footing, for one species: the whole cost of rooting for each liner that can be sold, up to the rooted plant.',
      ],
      cautions: cautionRows(compare),
      needs: [
        [`${notComplete(methods)}>0`, '"Methods are not complete"'],
        [`${countReady(methods)}=0`, '"No method on Methods"'],
      ],
      results: {
        winner: inTable('name', 1),
        perLiner: inTable('perLiner', 1),
        from: inTable('beatsFrom', 1),
        against: fromSpilled(table, `IFNA(${against},"no method serves one round")`),
        next: `IF(${countReady(methods)}<2,"there is one method alone",${inTable('name', 2)})`,
        ahead: `IF(${countReady(methods)}<2,"–",${fromSpilled(table, `INDEX(${spilledColumn(table, 'perLiner')},2)-INDEX(${spilledColumn(table, 'perLiner')},1)`)})`,
      },
      tables: [
        spilled(compare, {
          name: table,
          formula: whenReady(compareMethods, call(compare, given)),
          formats: {
            name: undefined,
            levelCost: formats.price,
            perCutting: formats.each,
            perLiner: formats.each,
            cashBefore: formats.price,
            beatsFrom: formats.count,
          },
          units: {
            name: 'Cheapest first',
            levelCost: money('round, containers'),
            perCutting: money('cutting'),
            perLiner: money('saleable liner'),
            cashBefore: money('first round'),
            beatsFrom: 'round',
          },
          height: rows,
          grows: true,
        }),
      ],
    },
    mark,
    typed,
  )
}
