import type { Cell } from '../book'
import {
  dayInput,
  formats,
  headings,
  headOf,
  input,
  ofTable,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'

export const nursery = 'Vellimoor Young Plants'

function line(label: string, cell: Cell, unit: string, how = ''): Row {
  return [text(label), cell, text(unit), text(how)]
}

/** What a manager wants to see first, and the assumptions that more than one sheet reads. */
export function seasonSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf(
      `${nursery}: one season of propagation`,
      'Type into the boxed cells only: every other number follows from them. Figures are EUR without recoverable tax; costs here are no tax advice.',
    ),
    sheets: () => [
      text(
        'The sheets follow the job: what was promised and what it takes, what it costs, what to buy and when, what to ask for it, and how it ended.',
      ),
    ],
    checked: (at) => [
      result(
        `=IF(IFERROR(AND(B${at.counted}=0,B${at.rates}=0,B${at.prices}=0,B${at.covered}>=0,B${at.timed}=0,B${at.explained}=0),FALSE),"All checks at the foot of this sheet are met.","Not all checks at the foot of this sheet are met. Until they are, do not trust the figures.")`,
      ),
    ],
    heading: () => headings('The season', 'Figure', 'Unit', 'Where it comes from'),
    orderLines: () => line('Order lines', result('=COUNT(OrderLiners)', formats.count), 'lines', 'Orders'),
    liners: () => line('Liners ordered', result('=SUM(OrderLiners)', formats.count), 'liners', 'Orders'),
    cuttings: () =>
      line(
        'Cuttings to stick',
        result('=SUM(OrderCuttings)', formats.count),
        'cuttings',
        'Orders: rates of each species, and the confidence where one is asked for',
      ),
    expected: () =>
      line(
        'Saleable liners to expect',
        result('=SUM(OrderExpected)', formats.count),
        'liners',
        'Orders: on average; more than ordered where a confidence was asked for',
      ),
    weeks: () => line('First sticking week', result('=MIN(OrderStickWeek)', formats.count), 'week', 'Orders'),
    lastWeek: () => line('Last sticking week', result('=MAX(OrderStickWeek)', formats.count), 'week', 'Orders'),
    trays: () => line('Trays to fill', result('=SUM(OrderTrays)', formats.count), 'trays', 'Orders'),
    packs: () => line('Packs of media to buy', result('=MediaPacks', formats.count), 'packs', 'Buying'),
    media: () =>
      line(
        'Media to buy',
        result('=MediaToBuy', formats.price),
        'EUR',
        'Buying: costs rounded to the cent, then added',
      ),
    pieces: () =>
      line(
        'Blocks, trays, vessels, frames to buy',
        result('=PiecesToBuy', formats.price),
        'EUR',
        'Buying: washed trays, vessels and frames serve many rounds',
      ),
    buying: () =>
      line(
        'Buying list, everything',
        total('=BuyingTotal', formats.price),
        'EUR',
        'Buying: cash to pay this season for rooting; Buying says what is not in it',
      ),
    rooting: () =>
      line(
        'Rooting cost of the season',
        total('=SUM(OrderCost)', formats.price),
        'EUR',
        'Orders: everything up to the rooted plant, as Compare lists it',
      ),
    rootingPerLiner: (at) =>
      line(
        'Rooting cost for each liner ordered',
        result(`=B${at.rooting}/B${at.liners}`, formats.each),
        'EUR a liner',
        'The line above over the liners ordered',
      ),
    gapAbove: blank,
    waysHeading: () => headings('Which way wins', 'Figure', 'Unit', 'Where it comes from'),
    cheapest: () =>
      line(
        'Cheapest way of rooting',
        total('=CheapestWay'),
        '',
        'Compare: one species in all six ways, for each saleable liner',
      ),
    cheapestFrom: () =>
      line(
        'It beats single use from round',
        result('=CheapestFromRound', formats.count),
        'rounds',
        'Compare: against the cheapest way that serves one round, named there',
      ),
    cheapestCost: () =>
      line('Its rooting cost', result('=MIN(WayCostPerLiner)', formats.each), 'EUR a saleable liner', 'Ways'),
    next: () => line('The next way', result('=NextWay'), '', 'Compare'),
    ahead: () => line('Dearer by', result('=CheapestAheadBy', formats.each), 'EUR a saleable liner', 'Compare'),
    likely: () => [
      result('="In "&TEXT(SureShare,"0%")&" of draws it costs at most"'),
      result('=INDEX(OddsResult,MATCH(SureShare,OddsShare,0))', formats.each),
      text('EUR a saleable liner'),
      text('Risk: of the way that is named there'),
    ],
    doubt: () =>
      line(
        'The doubt that moves it most',
        result('=INDEX(RiskMeaning,MATCH(RiskiestArgument,RiskArgument,0))'),
        '',
        'Risk',
      ),
    gapBetween: blank,
    reuseHeading: () => headings('Reuse pays', 'Figure', 'Unit', 'Where it comes from'),
    tray: () =>
      line(
        'Washed tray instead of a thin tray',
        result('=TrayBreakEven', formats.count),
        'from this round on',
        'Reuse: first use not washed, breakage and interest counted',
      ),
    ownMix: () =>
      line(
        'Own mix instead of premix',
        result('=OwnMixBreakEven', formats.count),
        'from this round on',
        'Reuse: in washed trays, all costs of rooting counted',
      ),
    bed: () =>
      line(
        'Sand bed instead of rockwool',
        result('=BedBreakEven', formats.count),
        'from this round on',
        'Reuse: the same',
      ),
    vessel: () =>
      line(
        'Water in vessels instead of rockwool',
        result('=VesselBreakEven', formats.count),
        'from this round on',
        'Reuse: the same. Easy plants only',
      ),
    gapLower: blank,
    priceHeading: () => headings('What to ask for it', 'Figure', 'Unit', 'Where it comes from'),
    floor: () =>
      line(
        'Floor: cost of a saleable liner',
        total('=FloorPrice', formats.each),
        'EUR a liner',
        'Quote: all stages, without selling, the office, profit and liners left unsold',
      ),
    price: () => line('Price at the margin wanted', result('=LinerPrice', formats.price), 'EUR a liner', 'Quote'),
    largest: () =>
      line(
        'Price at the largest quantity quoted',
        result(ofTable('QuoteTable', 'LargestPriceEach'), formats.price),
        'EUR a liner',
        'Quote: paid-once costs spread over it',
      ),
    warned: () =>
      line(
        'Quantities with a warning',
        result(ofTable('QuoteTable', 'ROWS(QuoteWarnings)-COUNTIF(QuoteWarnings,"none")'), formats.count),
        'quantities',
        'Quote: orders just below a break that would cost more than the break',
      ),
    order: () => line('The order that asks for less', result('=AnswerToOrder'), '', 'Quote: against the least margin'),
    orderMargin: () =>
      line(
        'Margin it would leave',
        result('=OrderMarginLeft', formats.share),
        'share of the price',
        'Quote: at the price that was asked',
      ),
    gapMiddle: blank,
    moneyHeading: () => headings('Where the money went', 'Figure', 'Unit', 'Where it comes from'),
    spent: () =>
      line(
        'Spent beyond the standard',
        total('=ReviewTotal', formats.price),
        'EUR',
        'Review: on the five items there. Positive is adverse. Invented, as if the season were over',
      ),
    byPrice: () =>
      line(
        'Of that, because prices differed',
        result('=ReviewPrice', formats.price),
        'EUR',
        'Review: difference in price x actual quantity',
      ),
    byUsage: () =>
      line(
        'Of that, because more or less was used',
        result('=ReviewUsage', formats.price),
        'EUR',
        'Review: difference in quantity x standard price',
      ),
    mostAdverse: () => line('Most of it on', result('=ReviewLargest'), '', 'Review'),
    saved: () =>
      line(
        'Saved by the cheapest order',
        result('=SavedByOrder', formats.price),
        'EUR',
        'Offers: of the medium named there, against one pack of the price list',
      ),
    more: () =>
      line(
        'Stick more, or fewer, of one species',
        result('=CuttingsToAdd', formats.count),
        'cuttings',
        'Batches: where a missing liner and a spare one are both counted',
      ),
    gapBelow: blank,
    assumptions: () => headings('Assumptions for all sheets', 'Figure', 'Unit', 'Note'),
    start: () => line('Season starts', dayInput('2026-02-09'), 'year-month-day', 'Invented: the first day of sticking'),
    priceAge: () =>
      line(
        'A price may be older by',
        input(180, formats.count),
        'days',
        'Common practice, no source. Check lists the prices that were older when the season started',
      ),
    interest: () => line('Interest', input(0.06, formats.share), 'a year', 'Invented'),
    roundsPerYear: () =>
      line(
        'Rounds of cuttings',
        input(2, formats.count),
        'a year',
        'Invented: spring and late summer. This workbook is one of them',
      ),
    wage: () => line('Wage', input(16, formats.price), 'EUR an hour', 'Invented'),
    onCosts: () =>
      line('On-costs', input(0.22, formats.share), 'share of the wage', 'Invented: what the employer pays on top'),
    cuttingItself: () =>
      line(
        'The cutting itself',
        input(0.06, formats.each),
        'EUR a cutting',
        'Invented: bought, or cut from own stock plants',
      ),
    benchRate: () =>
      line(
        'Bench',
        input(0.55, formats.price),
        'EUR a m2 and week',
        'Invented: heat, light, upkeep and the overheads of the house',
      ),
    floorRate: () =>
      line(
        'Floor',
        input(0.32, formats.price),
        'EUR a m2 and week',
        'Invented: the same without the bench, and with less heat',
      ),
    benchUse: () =>
      line(
        'Bench or floor in use',
        input(0.8, formats.share),
        'share',
        'Invented: what stands empty is paid for by what stands on it',
      ),
    sure: () => line('Sure enough', input(0.9, formats.share), 'share of draws', 'One of the shares that Risk lists'),
    gapLast: blank,
    checks: () => headings('Checks', 'Figure', 'Unit', 'What it shows'),
    counted: () =>
      line(
        'Cuttings that no way counts',
        result('=SUM(OrderCuttings)-SUM(WayCuttings)', formats.count),
        'cuttings',
        'Must be 0: else a way is misspelt on Orders, which says where',
      ),
    rates: () =>
      line(
        'Rates left blank',
        result(
          '=COUNTBLANK(OrderRates)-COUNTBLANK(OrderSpecies)*COLUMNS(OrderRates)+COUNTBLANK(WayRates)',
          formats.count,
        ),
        'cells',
        'Must be 0: a blank rate counts as nothing lost, so too little is stuck',
      ),
    prices: (at) =>
      line(
        'Prices left blank',
        result(
          `=COUNTBLANK(PackPrice)+COUNTBLANK(OtherPrice)+COUNTBLANK(PieceFirstCost)+COUNTBLANK(WayHormone)+COUNTBLANK(B${at.interest}:B${at.benchUse})`,
          formats.count,
        ),
        'cells',
        'Must be 0: on Prices, First cost on Reuse, hormone on Ways, and from Interest to Bench in use above. Type 0 for what costs nothing',
      ),
    covered: () =>
      line(
        'Least stock left over',
        result('=ROUND(MIN(LeftOver),2)', formats.litres),
        'L loose',
        'Must not be below 0: else a medium runs out',
      ),
    timed: () =>
      line(
        'Trays outside the periods',
        result('=TraysNotTimed', formats.count),
        'trays',
        'Must be 0: else Timing forgets a sticking week',
      ),
    explained: () =>
      line(
        'Difference left unexplained',
        result('=ReviewUnexplained', formats.price),
        'EUR',
        'Must be 0: the variances on Review add up',
      ),
  })
  const name = naming('Season')
  return {
    sheet: { name: 'Season', widths: [37, 20, 20, 88], frozenRows: at.invented, frozenColumns: 0, rows },
    names: [
      name('SeasonStart', 'B', at.start),
      name('LongestPriceAge', 'B', at.priceAge),
      name('YearlyInterest', 'B', at.interest),
      name('RoundsPerYear', 'B', at.roundsPerYear),
      name('Wage', 'B', at.wage),
      name('OnCosts', 'B', at.onCosts),
      name('CuttingItself', 'B', at.cuttingItself),
      name('BenchRate', 'B', at.benchRate),
      name('FloorRate', 'B', at.floorRate),
      name('BenchUse', 'B', at.benchUse),
      name('SureShare', 'B', at.sure),
    ],
  }
}
