import { reuseLedger } from '../../functions/reuse/reuseLedger'
import { reuseCost } from '../../functions/reuse/reuseCost'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import { dayInput, formats, headings, headOf, input, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { sixWays } from './sixWays'
import { aboveTable, spilledTable } from './spilledTable'

const trayRounds = 14

type FourCells = readonly [Cell, Cell, Cell, Cell]

function line(label: string, unit: string, cells: readonly (Cell | undefined)[], how = ''): Row {
  const filled = Array.from({ length: 4 }, (_, index) => cells[index] ?? text('–'))
  return [text(label), text(unit), ...filled, text(how)]
}

/** The tray by itself first, then the ways that reuse something: all of them read the same lines of Ways. */
function comparison(label: string, unit: string, tray: Cell, ofWay: (column: string) => Cell, how = ''): Row {
  const cells: FourCells = [tray, ofWay('D'), ofWay('E'), ofWay('F')]
  return line(label, unit, cells, how)
}

/** What is washed and used again: its level cost for a round, and the round from which it beats single use. */
export function reuseSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf(
      'Reuse',
      'What trays, vessels and beds cost for each round they serve, and from which round on they beat single use.',
    ),
    convention: () => [
      text(
        'Money flows at the start of a round. The first use is not washed; later rounds pay washing and topping up; what breaks is not replaced.',
      ),
    ],
    gap: blank,
    heading: () =>
      headings('Used again', 'Unit', 'Tray', 'Vessel', 'Bed frame', 'Sand in the bed', 'How it is worked out'),
    piece: () =>
      line('One piece is', '', [text('one tray'), text('one vessel'), text('1 m2 of bed'), text('1 m2 of bed')]),
    first: () =>
      line(
        'First cost',
        'EUR a piece',
        [
          input(2.4, formats.price),
          input(4.6, formats.price),
          input(15, formats.price),
          result('=BedLitres*SandCost/BedArea', formats.price),
        ],
        'Frame: boards, liner and drain. Sand: litres of Ways at the cost on Blends',
      ),
    supplier: () =>
      line('Supplier', '', [input('Quayside'), input('Quayside'), input('Fenbridge')], 'Invented. The sand: on Prices'),
    priceOf: () =>
      line(
        'Price of',
        'year-month-day',
        [dayInput('2025-12-03'), dayInput('2025-12-03'), dayInput('2026-01-12')],
        'The day of the price',
      ),
    rounds: (at) =>
      line(
        'Rounds it serves',
        'rounds',
        [
          input(trayRounds, formats.count),
          input(20, formats.count),
          input(16, formats.count),
          result(`=E${at.rounds}`, formats.count),
        ],
        'The first one included. Invented; the sand goes when the frame goes',
      ),
    wash: () =>
      line(
        'Washing or steaming',
        'EUR a later round',
        [input(0.11, formats.price), input(0.18, formats.price), undefined, input(0.65, formats.price)],
        'Labour, water and disinfectant, or steam. Invented',
      ),
    topUp: () =>
      line(
        'Topped up',
        'share of first cost',
        [undefined, undefined, undefined, input(0.04, formats.share)],
        'Before each later round',
      ),
    loss: () => line('Broken in a round', 'share of pieces', [input(0.05, formats.share), input(0.02, formats.share)]),
    endValue: () =>
      line(
        'Worth at the end',
        'EUR a piece',
        [input(0.05, formats.price), undefined, input(-1.2, formats.price)],
        'After the last round. Negative: disposal',
      ),
    level: (at) =>
      line(
        'Level cost',
        'EUR a piece, round',
        [
          total(
            `=STICK.REUSECOST(C${at.first},C${at.rounds},C${at.wash},0,C${at.loss},C${at.endValue},YearlyInterest,RoundsPerYear)`,
            formats.each,
          ),
          total(
            `=STICK.REUSECOST(D${at.first},D${at.rounds},D${at.wash},0,D${at.loss},0,YearlyInterest,RoundsPerYear)`,
            formats.each,
          ),
          total(
            `=STICK.REUSECOST(E${at.first},E${at.rounds},0,0,0,E${at.endValue},YearlyInterest,RoundsPerYear)`,
            formats.each,
          ),
          total(
            `=STICK.REUSECOST(F${at.first},F${at.rounds},F${at.wash},F${at.topUp},0,0,YearlyInterest,RoundsPerYear)`,
            formats.each,
          ),
        ],
        'The amount that, paid every round, has the same present value. Interest and rounds a year: on Season',
      ),
    gapBetween: blank,
    breakEvens: () =>
      headings('Reuse or single use', 'Unit', 'Tray', 'Own mix', 'Bed', 'Vessel', 'How it is worked out'),
    reusable: () =>
      line(
        'Used again',
        '',
        [text('washed tray'), text(sixWays.peat.name), text(sixWays.sand.name), text(sixWays.water.name)],
        'Own mix: in washed trays',
      ),
    singleUse: () =>
      line(
        'Single use',
        '',
        [text('thin tray'), input(sixWays.premix.name), input(sixWays.rockwool.name), input(sixWays.rockwool.name)],
        'Premix: in thin trays. Type another way that serves one round to compare with that',
      ),
    unit: () =>
      line('One piece is', '', [text('one tray'), text('one cutting'), text('one cutting'), text('one cutting')]),
    singleCost: (at) =>
      comparison(
        'Single use costs',
        'EUR a piece, round',
        result('=STICK.REUSECOST(ThinTrayPrice,1,0,0,0,0-ThinTrayDisposal,YearlyInterest,RoundsPerYear)', formats.each),
        (c) => result(`=${ofWay('WayCostPerCutting', `${c}$${at.singleUse}`)}`, formats.each),
        'The tray with its disposal; the rooting cost of a cutting, from Ways',
      ),
    everyRound: (at) =>
      comparison(
        'Used again: paid in every round',
        'EUR a piece, round',
        text('–'),
        (c) => result(`=${ofWay('WayOther', `${c}$${at.reusable}`)}`, formats.each),
        'Medium of the round, hormone, the cutting, labour, bench: from Ways',
      ),
    newCost: (at) =>
      comparison(
        'Used again: paid in the first round',
        'EUR a piece',
        result(`=C${at.first}`, formats.each),
        (c) => result(`=${perPlace('WayFirstCost', c, at.reusable)}+${c}${at.everyRound}`, formats.each),
        'First cost over the places used, and the line above',
      ),
    laterCost: (at) =>
      comparison(
        'Used again: paid in each later round',
        'EUR a piece, round',
        result(`=C${at.wash}`, formats.each),
        (c) =>
          result(
            `=${perPlace('WayWash', c, at.reusable)}+${ofWay('WayTopUp', `${c}$${at.reusable}`)}*${perPlace('WayFirstCost', c, at.reusable)}+${c}${at.everyRound}`,
            formats.each,
          ),
        'Washing or steaming, topping up, and what every round costs',
      ),
    breakage: (at) =>
      comparison('Used again: broken in a round', 'share of pieces', result(`=C${at.loss}`, formats.share), (c) =>
        result(`=${ofWay('WayLost', `${c}$${at.reusable}`)}`, formats.share),
      ),
    endOfPiece: (at) =>
      comparison('Used again: worth at the end', 'EUR a piece', result(`=C${at.endValue}`, formats.each), (c) =>
        result(`=${perPlace('WayEndValue', c, at.reusable)}`, formats.each),
      ),
    life: (at) =>
      comparison('Used again: rounds it serves', 'rounds', result(`=C${at.rounds}`, formats.count), (c) =>
        result(`=${ofWay('WayRounds', `${c}$${at.reusable}`)}`, formats.count),
      ),
    singleRate: (at) =>
      comparison(
        'Overall rate in single use',
        'share saleable',
        input(1, formats.share),
        (c) => result(`=${ofWay('WayRate', `${c}$${at.singleUse}`)}`, formats.share),
        'Trays: 100 % for both, since the tray is not taken to change the strike',
      ),
    reusedRate: (at) =>
      comparison('Overall rate used again', 'share saleable', input(1, formats.share), (c) =>
        result(`=${ofWay('WayRate', `${c}$${at.reusable}`)}`, formats.share),
      ),
    breakEven: (at) => {
      // #N/A says that there is no such round; any other error must stay to be seen.
      const from = (c: string) =>
        total(
          `=IFNA(STICK.BREAKEVEN(${c}${at.singleCost},${c}${at.newCost},${c}${at.laterCost},0,${c}${at.breakage},${c}${at.endOfPiece},YearlyInterest,RoundsPerYear,${c}${at.life},${c}${at.singleRate},${c}${at.reusedRate}),"not in its life")`,
          formats.count,
        )
      return comparison(
        'Pays from round',
        'rounds',
        from('C'),
        from,
        'The first number of rounds at which a saleable liner is no dearer than with single use',
      )
    },
    years: (at) => {
      const after = (c: string) =>
        result(`=IF(ISNUMBER(${c}${at.breakEven}),${c}${at.breakEven}/RoundsPerYear,"–")`, formats.years)
      return comparison('That is after', 'years', after('C'), after)
    },
    fullLife: (at) => {
      const over = (c: string) =>
        result(
          `=STICK.REUSECOST(${c}${at.newCost},${c}${at.life},${c}${at.laterCost},0,${c}${at.breakage},${c}${at.endOfPiece},YearlyInterest,RoundsPerYear)`,
          formats.each,
        )
      return comparison(
        'Level cost over its whole life',
        'EUR a piece, round',
        over('C'),
        over,
        'Ways: the rooting cost of a cutting on Ways',
      )
    },
    saved: (at) => {
      const less = (c: string) =>
        result(`=${c}${at.singleCost}/${c}${at.singleRate}-${c}${at.fullLife}/${c}${at.reusedRate}`, formats.each)
      return comparison(
        'Saved over its whole life',
        'EUR a tray or liner',
        less('C'),
        less,
        'A round: single use less used again, each over its overall rate',
      )
    },
    gapBelow: blank,
    cautions: cautionLines(reuseCost),
    gapAbove: blank,
    ledgerHeading: () =>
      aboveTable(reuseLedger, {
        round: 'Ledger of a washed tray',
        unitsInUse: 'of one bought',
        outlay: 'EUR',
        presentValue: 'EUR',
        runningPresentValue: 'EUR',
        levelCost: 'EUR a tray, round',
      }),
    ledger: {
      height: trayRounds + 1,
      rows: (at) =>
        spilledTable(
          reuseLedger,
          `=STICK.REUSELEDGER(C${at.first},C${at.rounds},C${at.wash},0,C${at.loss},C${at.endValue},YearlyInterest,RoundsPerYear)`,
          {
            round: formats.count,
            unitsInUse: formats.each,
            outlay: formats.each,
            presentValue: formats.each,
            runningPresentValue: formats.each,
            levelCost: formats.each,
          },
          trayRounds,
        ),
    },
  })
  const name = naming('Reuse')
  return {
    sheet: { name: 'Reuse', widths: [37, 20, 14, 22, 23, 26, 96], frozenRows: at.invented, frozenColumns: 1, rows },
    names: [
      { name: 'ReuseSupplier', refersTo: `Reuse!$C$${at.supplier}:$F$${at.supplier}` },
      { name: 'PieceFirstCost', refersTo: `Reuse!$C$${at.first}:$F$${at.first}` },
      name('TrayPrice', 'C', at.first),
      name('TrayRounds', 'C', at.rounds),
      name('TrayWash', 'C', at.wash),
      name('TrayLoss', 'C', at.loss),
      name('TrayEndValue', 'C', at.endValue),
      name('VesselPrice', 'D', at.first),
      name('VesselRounds', 'D', at.rounds),
      name('VesselWash', 'D', at.wash),
      name('VesselLoss', 'D', at.loss),
      name('FramePrice', 'E', at.first),
      name('BedRounds', 'E', at.rounds),
      name('FrameEndValue', 'E', at.endValue),
      name('SandWash', 'F', at.wash),
      name('SandTopUp', 'F', at.topUp),
      name('TrayBreakEven', 'C', at.breakEven),
      name('OwnMixBreakEven', 'D', at.breakEven),
      name('BedBreakEven', 'E', at.breakEven),
      name('VesselBreakEven', 'F', at.breakEven),
    ],
  }
}

function ofWay(range: string, way: string): string {
  return `INDEX(${range},MATCH(${way},WayName,0))`
}

function perPlace(range: string, column: string, row: number): string {
  const way = `${column}$${row}`
  return `${ofWay(range, way)}/${ofWay('WayPlacesUsed', way)}`
}
