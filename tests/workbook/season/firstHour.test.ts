import { expect, it } from 'vitest'
import { thornmere } from '../../../src/workbook/season/data/thornmere'
import { empty } from '../../../src/workbook/season/data/empty'
import { season, type SeasonData } from '../../../src/workbook/season/season'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { overviewOf } from './figuresOf'

const { setup, containers, media, blends, components, methods, orders } = thornmere

/** What a nursery types that asks what its season takes and costs, and leaves the other questions for later. */
const firstHour: SeasonData = {
  ...empty('GBP'),
  setup,
  containers,
  media,
  blends,
  components,
  methods,
  // Potting on and grading are those of the method, and how sure to be that of Setup.
  orders: orders.slice(0, 15).map(({ pottingOn: _, grading: _grading, confidence: _confidence, ...line }) => line),
}

const boxesOf = (data: SeasonData) =>
  season(data).sheets.flatMap(({ rows }) =>
    rows.flatMap((cells) => cells.filter((cell) => cell?.look === 'input' && cell.value !== undefined)),
  ).length

it('A nursery with 15 order lines, each with a strike rate of its own, and four methods is costed after fewer than 300 boxes, from an empty season.', async () => {
  expect(boxesOf(firstHour) - boxesOf(empty('GBP'))).toBeLessThan(300)
  const overview = overviewOf(await calculateBook(season(firstHour)))
  expect(overview.get('Order lines')).toBe(15)
  expect(overview.get('Complete')).toBe('Every sheet is complete.')
  for (const figure of ['Rooting cost of the season', 'Buying, everything', 'Cuttings to stick'])
    expect(overview.get(figure), figure).toBeGreaterThan(0)
})
