import { formats } from '../cells'
import { result } from '../table/column'
import type { Rows } from '../table/rowsSheet'

/** One row a week; nothing is typed. */
const columns = {
  monday: result('Monday', 'year-month-day', formats.day, { width: 16 }),
  week: result('Week', 'ISO 8601', undefined, { width: 12 }),
  toStick: result('To stick', 'cuttings', formats.count),
  pieces: result('Filled', 'containers', formats.count, { width: 12 }),
  bench: result('Bench taken', 'm2', formats.litres, { width: 15 }),
  benchThere: result('Bench there is', 'm2', formats.litres),
  benchLeft: result('Bench left', 'm2', formats.litres),
  ground: result('Ground taken', 'm2', formats.litres, { width: 16 }),
  groundThere: result('Ground there is', 'm2', formats.litres),
  groundLeft: result('Ground left', 'm2', formats.litres),
  hours: result('Work', 'hours', formats.litres, { note: 'Setting out and sticking only.' }),
  hoursThere: result('Hours there are', 'hours', formats.litres),
  hoursLeft: result('Hours left', 'hours', formats.litres),
  deliveries: result('To deliver', 'liners', formats.count),
  note: result('What does not fit', '', undefined, { width: 60 }),
}

export const calendar: Rows<keyof typeof columns> = { sheet: 'Calendar', columns }
