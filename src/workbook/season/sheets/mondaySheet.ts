import { cautionRows } from '../cautionRows'
import { formats, type NamedSheet } from '../cells'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type TypedFigures } from '../table/figuresSheet'
import { mondayOf } from '../table/mondayOf'
import { rowsOf } from '../table/rowsSheet'
import { plainSpilled, type Spilled } from '../table/spilled'
import { all, notComplete } from '../table/table'
import { monday, standing, toStick, workedBy } from '../tables/answers'
import { batches } from '../tables/batches'
import { calendar } from '../tables/calendar'
import { orders } from '../tables/orders'

const at = (key: FigureOf<typeof monday>) => figureOf(monday, key)
const firstDay = mondayOf(at('day'))

/** What the calendar has for the week. */
function ofWeek(column: keyof typeof calendar.columns): string {
  return `INDEX(${rowsOf(calendar, column)},MATCH(${firstDay},${rowsOf(calendar, 'monday')},0))`
}

/** So many rows are drawn; there may be more. */
const rowsDrawn = 15

/** The rows of lines still to plan and of batches for which something holds; "none" where there is none. */
function listed(
  ofOrders: readonly string[],
  ofBatches: readonly string[],
  whenOrders: string,
  whenBatches: string,
): string {
  const found = (columns: readonly string[], when: string) => `FILTER(HSTACK(${columns.join(',')}),${when},"none")`
  const has = (when: string) => `SUM(--(${when}))>0`
  const [ofLines, ofStuck] = [found(ofOrders, whenOrders), found(ofBatches, whenBatches)]
  return `IF(AND(${has(whenOrders)},${has(whenBatches)}),VSTACK(${ofLines},${ofStuck}),IF(${has(whenBatches)},${ofStuck},${ofLines}))`
}

export function mondaySheet(mark: string, typed: TypedFigures<typeof monday>): NamedSheet {
  return figuresSheet(
    monday,
    {
      title: 'Monday morning',
      about: [
        'One week for those who do the work: what to stick and fill, what to mix, and what stands on benches and ground.',
      ],
      cautions: cautionRows(...workedBy),
      needs: [
        [`${notComplete(orders)}+${notComplete(batches)}>0`, '"Orders or Batches are not complete"'],
        [`ISNA(MATCH(${firstDay},${rowsOf(calendar, 'monday')},0))`, '"Week of: not on the calendar"'],
      ],
      results: {
        week: ofWeek('week'),
        cuttings: ofWeek('toStick'),
        pieces: ofWeek('pieces'),
        litres: `SUMIF(${all(orders, 'from')},${firstDay},${all(orders, 'litres')})+SUMIF(${all(batches, 'from')},${firstDay},${all(batches, 'litres')})`,
        hours: ofWeek('hours'),
        bench: ofWeek('bench'),
        deliver: ofWeek('deliveries'),
        note: `IF(LEN(${ofWeek('note')})=0,"everything fits",${ofWeek('note')})`,
      },
      tables: [stickingTable(), standingTable()],
    },
    mark,
    typed,
  )
}

function stickingTable(): Spilled {
  return plainSpilled(toStick.headings, {
    name: toStick.name,
    body: whenReady(
      monday,
      listed(
        [
          all(orders, 'line'),
          all(orders, 'species'),
          all(orders, 'planned'),
          all(orders, 'pieces'),
          all(orders, 'container'),
          all(orders, 'medium'),
        ],
        [
          all(batches, 'line'),
          all(batches, 'species'),
          all(batches, 'cuttings'),
          all(batches, 'pieces'),
          all(batches, 'container'),
          all(batches, 'medium'),
        ],
        `(${all(orders, 'from')}=${firstDay})*(${all(orders, 'pieces')}>0)`,
        `(${all(batches, 'from')}=${firstDay})*(${all(batches, 'pieces')}>0)`,
      ),
    ),
    formats: {
      line: undefined,
      species: undefined,
      cuttings: formats.count,
      pieces: formats.count,
      container: undefined,
      medium: undefined,
    },
    units: {
      line: 'To stick',
      species: '',
      cuttings: 'cuttings',
      pieces: 'to fill',
      container: '',
      medium: 'filled with',
    },
    height: rowsDrawn,
  })
}

function standingTable(): Spilled {
  const stands = (from: string, until: string, pieces: string) =>
    `(${from}<${firstDay})*(${until}>${firstDay})*(${pieces}>0)`
  return plainSpilled(standing.headings, {
    name: standing.name,
    body: whenReady(
      monday,
      listed(
        [
          all(orders, 'line'),
          all(orders, 'species'),
          all(orders, 'pieces'),
          all(orders, 'container'),
          all(orders, 'until'),
        ],
        [
          all(batches, 'line'),
          all(batches, 'species'),
          all(batches, 'pieces'),
          all(batches, 'container'),
          all(batches, 'until'),
        ],
        stands(all(orders, 'from'), all(orders, 'until'), all(orders, 'pieces')),
        stands(all(batches, 'from'), all(batches, 'until'), all(batches, 'pieces')),
      ),
    ),
    formats: { line: undefined, species: undefined, pieces: formats.count, container: undefined, until: formats.day },
    units: { line: 'Standing since before', species: '', pieces: '', container: '', until: 'Monday' },
    height: rowsDrawn,
  })
}
