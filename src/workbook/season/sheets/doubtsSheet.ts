import type { NamedSheet } from '../cells'
import { figureOf, stateOf } from '../table/figures'
import { lookUp } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { risk } from '../tables/answers'
import { argumentOf, doubtful, doubts } from '../tables/doubts'
import { methods } from '../tables/methods'
import { setup } from '../tables/setup'

export function doubtsSheet(mark: string, rows: Typed<typeof doubts>, open: number): NamedSheet {
  const ofMethod = (column: Parameters<typeof lookUp<typeof methods>>[2]) =>
    lookUp(methods, figureOf(risk, 'method'), column)
  /** In the order of the list. */
  const likely = [
    ofMethod('first'),
    ofMethod('rounds'),
    ofMethod('used'),
    ofMethod('rate'),
    ofMethod('wash'),
    ofMethod('topUp'),
    ofMethod('broken'),
    ofMethod('otherCost'),
    ofMethod('endValue'),
    figureOf(setup, 'yearlyInterest'),
    figureOf(setup, 'roundsPerYear'),
  ].join(',')
  // Rounds are whole.
  const end = (argument: string, formula: string) => `IF(${argument}="rounds",MAX(1,ROUND(${formula},0)),${formula})`
  const chosen = (figure: string, choices: string) => `CHOOSE(MATCH(${figure},${doubtful.name},0),${choices})`
  const argumentNames = Object.values(argumentOf)
    .map((argument) => `"${argument}"`)
    .join(',')
  return tableSheet(
    doubts,
    {
      title: 'Doubts',
      about: [
        'How far each figure of the method that Risk asks about may be off: shares of the likely figure. Ask those who do the work.',
      ],
      needs: () => [[`${stateOf(risk)}<>"ready"`, '"see Risk"']],
      results: {
        argument: (r) => chosen(r.figure, argumentNames),
        likely: (r) => chosen(r.figure, likely),
        low: (r) => end(r.argument, `${r.likely}-ABS(${r.likely})*${r.lower}`),
        high: (r) => end(r.argument, `${r.likely}+ABS(${r.likely})*${r.higher}`),
      },
    },
    mark,
    rows,
    open,
  )
}
