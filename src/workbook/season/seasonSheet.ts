import type { Cell } from '../book'
import { formats, headings, headOf, input, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { sixWays, wayKeys } from './sixWays'

const nursery = 'Vellimoor Young Plants'

function line(label: string, cell: Cell, unit: string, how = ''): Row {
  return [text(label), cell, text(unit), text(how)]
}

const wayNames = wayKeys.map((way) => sixWays[way].name)

/** What a manager wants to see first, and the assumptions that more than one sheet reads. */
export function seasonSheet(): NamedSheet {
  const cheapest = (range: string, choose: 'MIN' | 'MAX') => `=INDEX(${range},MATCH(${choose}(WayCostPerLiner),WayCostPerLiner,0))`
  const { rows, at } = layOut({
    ...headOf(`${nursery}: one season of propagation`, 'Type into the boxed cells only: every other number follows from them. Figures are EUR without recoverable tax; costs here are no tax advice.'),
    sheets: () => [text('Orders: cuttings to stick. Ways: six ways of rooting side by side. Blends: own mixes. Reuse: trays, vessels and beds. Prices: the price list. Buying: one list for the season.')],
    gap: blank,
    heading: () => headings('The season', 'Figure', 'Unit', 'Where it comes from'),
    orderLines: () => line('Order lines', result('=COUNT(OrderLiners)', formats.count), 'lines', 'Orders'),
    liners: () => line('Liners ordered', result('=SUM(OrderLiners)', formats.count), 'liners', 'Orders'),
    cuttings: () => line('Cuttings to stick', result('=SUM(OrderCuttings)', formats.count), 'cuttings', 'Orders: rates of each species, and the confidence where one is asked for'),
    expected: () => line('Saleable liners to expect', result('=SUM(OrderExpected)', formats.count), 'liners', 'Orders: on average; more than ordered where a confidence was asked for'),
    firstWeek: () => line('First sticking week', result('=MIN(OrderStickWeek)', formats.count), 'week', 'Orders'),
    lastWeek: () => line('Last sticking week', result('=MAX(OrderStickWeek)', formats.count), 'week', 'Orders'),
    trays: () => line('Trays to fill', result('=SUM(OrderTrays)', formats.count), 'trays', 'Orders'),
    packs: () => line('Bags, bales, bricks and bulk bags to buy', result('=MediaPacks', formats.count), 'packs', 'Buying'),
    media: () => line('Media to buy', result('=MediaToBuy', formats.price), 'EUR', 'Buying: costs rounded to the cent, then added'),
    pieces: () => line('Blocks, trays, vessels and frames to buy', result('=PiecesToBuy', formats.price), 'EUR', 'Buying: the last three serve for many rounds'),
    buying: () => line('Buying list, everything', total('=BuyingTotal', formats.price), 'EUR', 'Buying: cash to pay this season'),
    rooting: () => line('Rooting cost of the season', total('=SUM(OrderCost)', formats.price), 'EUR', 'Orders: medium, the share of this round in trays, vessels and beds, and the labour that differs'),
    rootingPerLiner: (at) => line('Rooting cost for each liner ordered', result(`=B${at.rooting}/B${at.liners}`, formats.each), 'EUR a liner', 'The line above over the liners ordered. No cost price to quote from: without the cutting, bench, heat and overheads'),
    gapAbove: blank,
    waysHeading: () => headings('Six ways, one species', 'Figure', 'Unit', 'Where it comes from'),
    ways: {
      height: wayNames.length,
      rows: (at) => wayNames.map((way, index) => line(way, result(`=INDEX(WayCostPerLiner,MATCH(A${at.ways + index},WayName,0))`, formats.each), 'EUR a saleable liner', 'Ways: rooting cost, losses divide')),
    },
    cheapest: () => line('Cheapest way', total(cheapest('WayName', 'MIN')), '', 'The least of the six. Look at the weight, the labour and the strike rate too'),
    dearest: () => line('Dearest way', result(cheapest('WayName', 'MAX')), ''),
    cheapestWithCutting: () => line('Cheapest way, the cutting itself counted', total('=INDEX(WayName,MATCH(MIN(WayCostWithCutting),WayCostWithCutting,0))'), '', 'Ways: at the price of a cutting below'),
    gapBetween: blank,
    reuseHeading: () => headings('Reuse pays', 'Figure', 'Unit', 'Where it comes from'),
    tray: () => line('Washed tray instead of a thin single-use tray', result('=TrayBreakEven', formats.count), 'from this round on', 'Reuse: first use not washed, breakage and interest counted'),
    bed: () => line('Sand bed instead of premix in trays', result('=BedBreakEven', formats.count), 'from this round on', 'Reuse: for each saleable liner, the cutting itself counted'),
    vessel: () => line('Water in vessels instead of rockwool', result('=VesselBreakEven', formats.count), 'from this round on', 'Reuse: for each saleable liner, the cutting itself counted'),
    gapBelow: blank,
    assumptions: () => headings('Assumptions for all sheets', 'Figure', 'Unit', 'Note'),
    interest: () => line('Interest', input(0.06, formats.share), 'a year', 'Invented'),
    roundsPerYear: () => line('Rounds of cuttings', input(2, formats.count), 'a year', 'Invented: spring and late summer. This workbook is one of them'),
    wage: () => line('Wage with on-costs', input(19.5, formats.price), 'EUR an hour', 'Invented'),
    cuttingItself: () => line('The cutting itself', input(0.06, formats.each), 'EUR a cutting', 'Invented: bought, or cut from own stock plants; rooting hormone included. Not in any rooting cost'),
    gapLast: blank,
    checks: () => headings('Checks', 'Figure', 'Unit', 'What it shows'),
    counted: () => line('Cuttings that no way counts', result('=SUM(OrderCuttings)-SUM(WayCuttings)', formats.count), 'cuttings', 'Must be 0: else a way is misspelt on Orders'),
    rates: () => line('Rates left blank', result('=COUNTBLANK(OrderRates)+COUNTBLANK(WayRates)', formats.count), 'cells', 'Must be 0: a blank rate counts as nothing lost, so too little is stuck'),
    covered: () => line('Least stock left over', result('=MIN(LeftOver)', formats.litres), 'L loose', 'Must not be below 0: else a medium runs out'),
  })
  const name = naming('Season')
  return {
    sheet: { name: 'Season', widths: [46, 22, 22, 88], frozenRows: at.invented, frozenColumns: 0, rows },
    names: [name('YearlyInterest', 'B', at.interest), name('RoundsPerYear', 'B', at.roundsPerYear), name('WagePerHour', 'B', at.wage), name('CuttingItself', 'B', at.cuttingItself)],
  }
}
