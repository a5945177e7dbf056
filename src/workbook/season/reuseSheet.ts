import { reuseCost } from '../../functions/reuse/reuseCost'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import { formats, headings, headOf, input, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { sixWays } from './sixWays'

function line(label: string, unit: string, cells: readonly (Cell | undefined)[], how = ''): Row {
  const filled = Array.from({ length: 4 }, (_, index) => cells[index] ?? text('–'))
  return [text(label), text(unit), ...filled, text(how)]
}

function comparison(label: string, unit: string, cells: readonly [Cell, Cell, Cell], how = ''): Row {
  return [text(label), text(unit), ...cells, undefined, text(how)]
}

/** What is washed and used again: its level cost for a round, and the round from which it beats single use. */
export function reuseSheet(): NamedSheet {
  const ofWay = (range: string, column: string, row: number) => `INDEX(${range},MATCH(${column}$${row},WayName,0))`
  const { rows, at } = layOut({
    ...headOf('Reuse', 'What trays, vessels and beds cost for each round they serve, and from which round on they beat single use.'),
    convention: () => [text('All money flows at the start of a round. The first use is not washed; each later round pays washing and topping up; broken pieces are not replaced; the end value comes back after the last round. Interest and rounds a year: on Season.')],
    gap: blank,
    heading: () => headings('Used again', 'Unit', 'Tray', 'Vessel', 'Bed frame', 'Sand in the bed', 'How it is worked out'),
    piece: () => line('One piece is', '', [text('one tray'), text('one vessel'), text('1 m2 of bed'), text('1 m2 of bed')]),
    first: () => line('First cost', 'EUR a piece', [input(2.4, formats.price), input(4.6, formats.price), input(15, formats.price), result('=SandPerM2*SandCost', formats.price)], 'Frame: boards, liner and drain. Sand: litres of Ways at the cost on Blends'),
    rounds: (at) => line('Rounds it serves', 'rounds', [input(14, formats.count), input(20, formats.count), input(16, formats.count), result(`=E${at.rounds}`, formats.count)], 'The first one included. Invented; the sand goes when the frame goes'),
    wash: () => line('Washing or steaming', 'EUR a piece, later round', [input(0.11, formats.price), input(0.18, formats.price), undefined, input(0.65, formats.price)]),
    topUp: () => line('Topped up', 'share of first cost', [undefined, undefined, undefined, input(0.04, formats.share)], 'Before each later round'),
    loss: () => line('Broken in a round', 'share of pieces', [input(0.05, formats.share), input(0.02, formats.share), undefined, undefined]),
    endValue: () => line('Worth at the end', 'EUR a piece', [input(0.05, formats.price), undefined, input(-1.2, formats.price), undefined], 'Negative: disposal'),
    level: (at) => line('Level cost', 'EUR a piece and round', [
      total(`=STICK.REUSECOST(C${at.first},C${at.rounds},C${at.wash},0,C${at.loss},C${at.endValue},YearlyInterest,RoundsPerYear)`, formats.each),
      total(`=STICK.REUSECOST(D${at.first},D${at.rounds},D${at.wash},0,D${at.loss},0,YearlyInterest,RoundsPerYear)`, formats.each),
      total(`=STICK.REUSECOST(E${at.first},E${at.rounds},0,0,0,E${at.endValue},YearlyInterest,RoundsPerYear)`, formats.each),
      total(`=STICK.REUSECOST(F${at.first},F${at.rounds},F${at.wash},F${at.topUp},0,0,YearlyInterest,RoundsPerYear)`, formats.each),
    ], 'The amount that, paid every round, has the same present value'),
    gapBetween: blank,
    breakEvens: () => headings('Reuse or single use', 'Unit', 'Tray', 'Bed', 'Vessel', '', 'How it is worked out'),
    reusable: () => comparison('Used again', '', [text('tray, washed'), text(sixWays.sand.name), text(sixWays.water.name)]),
    singleUse: () => comparison('Single use', '', [text('thin tray'), text(sixWays.premix.name), text(sixWays.rockwool.name)]),
    unit: () => comparison('One piece is', '', [text('one tray'), text('one cutting'), text('one cutting')]),
    singleCost: (at) => comparison('Single use costs', 'EUR a piece and round', [input(0.46, formats.each), result(`=${ofWay('WayCostPerCutting', 'D', at.singleUse)}+CuttingItself`, formats.each), result(`=${ofWay('WayCostPerCutting', 'E', at.singleUse)}+CuttingItself`, formats.each)], 'Rooting cost of a cutting, from Ways, and the cutting itself, from Season'),
    everyRound: (at) => comparison('Used again: paid in every round', 'EUR a piece and round', [
      text('–'),
      result(`=${ofWay('WayLabour', 'D', at.reusable)}+CuttingItself`, formats.each),
      result(`=${ofWay('WayLabour', 'E', at.reusable)}+${ofWay('WayMedium', 'E', at.reusable)}+CuttingItself`, formats.each),
    ], 'Labour, and the water of the vessels, from Ways; the cutting itself, from Season'),
    newCost: (at) => comparison('Used again: paid in the first round', 'EUR a piece', [
      result(`=C${at.first}`, formats.each),
      result(`=(E${at.first}+F${at.first})/BedPlacesPerM2+D${at.everyRound}`, formats.each),
      result(`=D${at.first}/${ofWay('WayPlacesUsed', 'E', at.reusable)}+E${at.everyRound}`, formats.each),
    ], 'First cost over the places used, and the line above'),
    laterCost: (at) => comparison('Used again: paid in each later round', 'EUR a piece and round', [
      result(`=C${at.wash}`, formats.each),
      result(`=(F${at.wash}+F${at.topUp}*F${at.first})/BedPlacesPerM2+D${at.everyRound}`, formats.each),
      result(`=D${at.wash}/${ofWay('WayPlacesUsed', 'E', at.reusable)}+E${at.everyRound}`, formats.each),
    ], 'Washing or steaming, topping up, and what every round costs'),
    breakage: (at) => comparison('Used again: broken in a round', 'share of pieces', [result(`=C${at.loss}`, formats.share), text('–'), result(`=D${at.loss}`, formats.share)]),
    endOfPiece: (at) => comparison('Used again: worth at the end', 'EUR a piece', [result(`=C${at.endValue}`, formats.each), result(`=E${at.endValue}/BedPlacesPerM2`, formats.each), text('–')]),
    life: (at) => comparison('Used again: rounds it serves', 'rounds', [result(`=C${at.rounds}`, formats.count), result(`=E${at.rounds}`, formats.count), result(`=D${at.rounds}`, formats.count)]),
    singleRate: (at) => comparison('Overall rate in single use', 'share saleable', [input(1, formats.share), result(`=${ofWay('WayRate', 'D', at.singleUse)}`, formats.share), result(`=${ofWay('WayRate', 'E', at.singleUse)}`, formats.share)], 'Trays: 100 % for both, since the tray is not taken to change the strike'),
    reusedRate: (at) => comparison('Overall rate used again', 'share saleable', [input(1, formats.share), result(`=${ofWay('WayRate', 'D', at.reusable)}`, formats.share), result(`=${ofWay('WayRate', 'E', at.reusable)}`, formats.share)]),
    breakEven: (at) => comparison('Pays from round', 'rounds', [
      total(`=STICK.BREAKEVEN(C${at.singleCost},C${at.newCost},C${at.laterCost},0,C${at.breakage},C${at.endOfPiece},YearlyInterest,RoundsPerYear,C${at.life},C${at.singleRate},C${at.reusedRate})`, formats.count),
      total(`=STICK.BREAKEVEN(D${at.singleCost},D${at.newCost},D${at.laterCost},0,0,D${at.endOfPiece},YearlyInterest,RoundsPerYear,D${at.life},D${at.singleRate},D${at.reusedRate})`, formats.count),
      total(`=STICK.BREAKEVEN(E${at.singleCost},E${at.newCost},E${at.laterCost},0,E${at.breakage},0,YearlyInterest,RoundsPerYear,E${at.life},E${at.singleRate},E${at.reusedRate})`, formats.count),
    ], 'The first number of rounds at which a saleable liner is no dearer than with single use; a failed cutting is lost too, so bed and vessel count it. #N/A: never in its life'),
    years: (at) => comparison('That is after', 'years', [result(`=C${at.breakEven}/RoundsPerYear`, formats.years), result(`=D${at.breakEven}/RoundsPerYear`, formats.years), result(`=E${at.breakEven}/RoundsPerYear`, formats.years)]),
    fullLife: (at) => comparison('Level cost over its whole life', 'EUR a piece and round', [
      result(`=STICK.REUSECOST(C${at.newCost},C${at.life},C${at.laterCost},0,C${at.breakage},C${at.endOfPiece},YearlyInterest,RoundsPerYear)`, formats.each),
      result(`=STICK.REUSECOST(D${at.newCost},D${at.life},D${at.laterCost},0,0,D${at.endOfPiece},YearlyInterest,RoundsPerYear)`, formats.each),
      result(`=STICK.REUSECOST(E${at.newCost},E${at.life},E${at.laterCost},0,E${at.breakage},0,YearlyInterest,RoundsPerYear)`, formats.each),
    ], 'Bed and vessel: the rooting cost of a cutting on Ways, and the cutting itself'),
    saved: (at) => comparison('Saved over its whole life', 'EUR a tray or liner, round', [
      result(`=C${at.singleCost}/C${at.singleRate}-C${at.fullLife}/C${at.reusedRate}`, formats.each),
      result(`=D${at.singleCost}/D${at.singleRate}-D${at.fullLife}/D${at.reusedRate}`, formats.each),
      result(`=E${at.singleCost}/E${at.singleRate}-E${at.fullLife}/E${at.reusedRate}`, formats.each),
    ], 'Single use less used again, each over its overall rate'),
    gapBelow: blank,
    cautions: cautionLines(reuseCost),
  })
  const name = naming('Reuse')
  return {
    sheet: { name: 'Reuse', widths: [38, 27, 15, 15, 15, 17, 96], frozenRows: at.invented, frozenColumns: 2, rows },
    names: [
      name('TrayLevelCost', 'C', at.level),
      name('VesselLevelCost', 'D', at.level),
      name('FrameLevelCost', 'E', at.level),
      name('SandLevelCost', 'F', at.level),
      name('BedRounds', 'E', at.rounds),
      name('SandWash', 'F', at.wash),
      name('SandTopUp', 'F', at.topUp),
      name('TrayPrice', 'C', at.first),
      name('VesselPrice', 'D', at.first),
      name('FramePrice', 'E', at.first),
      name('TrayBreakEven', 'C', at.breakEven),
      name('BedBreakEven', 'D', at.breakEven),
      name('VesselBreakEven', 'E', at.breakEven),
    ],
  }
}
