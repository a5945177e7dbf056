import { formats } from '../cells'
import { figure, money, oneOf, openFigure, openText, result, text } from '../table/column'
import { declareTable } from '../table/table'
import { methods } from './methods'
import { standingColumns } from './standingColumns'

/** The order book: a line for each promise. */
export const orders = declareTable({
  sheet: 'Orders',
  row: 'Order',
  key: 'line',
  typed: {
    line: text('Line', 'its number or name', { width: 12, note: 'Each line has its own.' }),
    customer: openText('Customer'),
    species: text('Species'),
    liners: figure('Ordered', 'liners', formats.count),
    delivery: figure('Delivery', 'year-month-day', formats.day, { width: 14 }),
    method: oneOf('Method', methods, { width: 26 }),
    weeks: figure('Lead time', 'weeks', formats.measure, { note: 'From sticking to delivery.' }),
    strike: openFigure('Strike', 'share rooted', formats.share, 'that of the method'),
    pottingOn: openFigure('Potting on', 'share', formats.share, 'that of the method'),
    grading: openFigure('Passes grading', 'share', formats.share, 'that of the method'),
    confidence: openFigure('Confidence', 'chance', formats.share, 'that of Setup'),
    spread: openFigure(
      'Batch spread',
      'std. deviation',
      formats.share,
      'that of the past batches of its species, else by chance only',
    ),
  },
  results: {
    stickDay: result('Stick on', 'year-month-day', formats.day, { width: 14 }),
    note: result('In time', '', undefined, { width: 34 }),
    strikeUsed: result('Strike used', 'share rooted', formats.share),
    pottingOnUsed: result('Potting on used', 'share', formats.share),
    gradingUsed: result('Grading used', 'share', formats.share),
    rate: result('Overall rate', 'share saleable', formats.share),
    confidenceUsed: result('Confidence used', 'chance', formats.share, {
      note: 'The one typed, else that of Setup; nothing where the average decides.',
    }),
    spreadUsed: result('Batch spread used', 'std. deviation', formats.share, {
      note: 'The one typed, else that of two or more past batches of the species.',
    }),
    cuttings: result('To stick', 'cuttings', formats.count),
    batched: result('In batches', 'cuttings', formats.count, { note: 'What stands on Batches for this line.' }),
    planned: result('Still to plan', 'cuttings', formats.count, {
      note: 'What no batch holds yet; stuck on the day beside.',
    }),
    pieces: result('Containers', 'pieces', formats.count, {
      note: 'For what is still to plan; each line starts a new one.',
    }),
    expected: result('Expected', 'liners', formats.count, { note: 'On average.' }),
    chance: result('Chance of enough', 'chance', formats.share, {
      note: 'With what grows by now and what is still to plan.',
    }),
    short: result('Short by', 'liners', formats.count, { note: 'Ordered less expected, in whole liners.' }),
    again: result('Stick again', 'cuttings', formats.count, {
      note: 'To reach the confidence with the batches as counted, beyond what is still to plan. 0 without batches.',
    }),
    againBy: result('Stick again by', 'year-month-day', formats.day, {
      width: 14,
      note: 'Later, and it is delivered late.',
    }),
    costPerCutting: result('Rooting a cutting', money('cutting'), formats.each),
    costPerLiner: result('Rooting a liner', money('saleable liner'), formats.each),
    cost: result('Rooting the line', money(), formats.price, {
      note: 'Cuttings to stick x cost per cutting, to the cent.',
    }),
    container: result('Container', '', undefined, { width: 22 }),
    ...standingColumns,
    hours: result('Work', 'hours', formats.litres, { note: 'Setting out and sticking, in the week of sticking.' }),
  },
})
