import { formats } from '../cells'
import { result } from '../table/column'

/** Where cuttings stand once they are stuck, of lines that are still to plan and of batches alike. */
export const standingColumns = {
  benchWeeks: result('Stands for', 'weeks', formats.measure),
  medium: result('Medium', '', undefined, { width: 24 }),
  litres: result('To mix', 'L loose', formats.litres, {
    note: 'Of medium or blend, for the containers beside. A bed of several rounds: its top-up; what fills it first is on Methods. Water and rockwool: none.',
  }),
  from: result('Stands from', 'Monday', formats.day, { width: 14 }),
  until: result('Until', 'Monday', formats.day, {
    width: 14,
    note: 'The Monday on which it is gone: a part of a week takes the whole week.',
  }),
  benchM2: result('Bench', 'm2', formats.litres),
  groundM2: result('Ground', 'm2', formats.litres),
  groundWeeks: result('Takes its ground for', 'weeks', formats.measure, {
    width: 14,
    note: 'A bed stands on it in its turn-round too.',
  }),
}
