import type { Cell } from '../book'
import { bedFill } from '../../functions/volume/bedFill'
import { blocks } from '../../functions/volume/blocks'
import { fill } from '../../functions/volume/fill'
import { water } from '../../functions/volume/water'
import { cautionLines } from './cautionLines'
import { formats, heading, headOf, input, result, text, total, type NamedSheet, type Row } from './cells'
import { blank, layOut } from './layOut'
import { naming, namingAcross } from './names'
import { sixWays, wayKeys, type Way } from './sixWays'

type OfWays<Value> = Partial<Readonly<Record<Way, Value>>>

const noSource = 'common practice, no source'

/** One line of the comparison; a dash stands where it says nothing about a way. */
function line(label: string, unit: string, cells: OfWays<Cell>, how = ''): Row {
  return [text(label), text(unit), ...wayKeys.map((way) => cells[way] ?? text('–')), text(how)]
}

function each<Value>(values: OfWays<Value>, cell: (value: Value, column: string) => Cell): OfWays<Cell> {
  return Object.fromEntries(wayKeys.flatMap((way) => {
    const value = values[way]
    return value === undefined ? [] : [[way, cell(value, sixWays[way].column)]]
  }))
}

const inputs = (values: OfWays<number | string>, format?: string) => each(values, (value) => input(value, format))

function inAll(cell: (column: string) => Cell): OfWays<Cell> {
  return Object.fromEntries(wayKeys.map((way) => [way, cell(sixWays[way].column)]))
}

function section(label: string): Row {
  return [heading(label), heading('Unit'), ...wayKeys.map((way) => heading(sixWays[way].name)), heading('How it is worked out')]
}

/** The six ways of rooting side by side: volumes, money for each cutting stuck, money for each saleable liner. */
export function waysSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf('Six ways of rooting, side by side', 'Litres for the season, and what a cutting and a saleable liner cost. Rooting cost counts what differs between the ways: not the cutting itself, bench, heat or overheads.'),
    gap: blank,
    ways: () => section('Way of rooting'),
    keptIn: () => line('Kept in', '', each({ water: 'Vessels', peat: 'Trays', vermiculite: 'Trays', sand: 'Beds', premix: 'Trays', rockwool: 'Sheets' }, (value) => text(value))),
    product: () => line('Medium, as on Prices', '', inputs({ vermiculite: 'Vermiculite', premix: 'Premix' }), 'Peat, coir, perlite and sand come through Blends'),

    fromOrders: () => section('From the order book'),
    liners: (at) => line('Liners ordered', 'liners', inAll((c) => result(`=SUMIF(OrderWay,${c}$${at.ways},OrderLiners)`, formats.count))),
    cuttings: (at) => line('Cuttings to stick', 'cuttings', inAll((c) => result(`=SUMIF(OrderWay,${c}$${at.ways},OrderCuttings)`, formats.count))),

    vessels: () => section('Vessel, cell or bed'),
    sites: (at) => line('Places in one', 'cuttings', {
      ...inputs({ water: 100, peat: 84, vermiculite: 84, premix: 104, rockwool: 98 }, formats.count),
      sand: result(`=ROUNDDOWN(F${at.bedArea}*F${at.perM2},0)`, formats.count),
    }, 'A vessel, a tray, a bed (area x cuttings per m2), a sheet of blocks'),
    spare: () => line('Places left empty', 'share', inputs({ water: 0, peat: 0.03, vermiculite: 0.03, sand: 0.02, premix: 0.03, rockwool: 0.02 }, formats.share), 'A share of the places; an empty cell is filled all the same'),
    used: (at) => line('Places used', 'cuttings', inAll((c) => result(`=${c}${at.sites}*(1-${c}${at.spare})`, formats.litres))),
    topLength: () => line('Cell, top length or diameter', 'mm', inputs({ peat: 36, vermiculite: 36, premix: 34 }, formats.count), 'Inside measures; the cells of the premix trays are round'),
    topWidth: () => line('Cell, top width', 'mm', inputs({ peat: 36, vermiculite: 36 }, formats.count)),
    depth: () => line('Cell, depth', 'mm', inputs({ peat: 45, vermiculite: 45, premix: 45 }, formats.count)),
    bottomLength: () => line('Cell, bottom length or diameter', 'mm', inputs({ peat: 26, vermiculite: 26, premix: 26 }, formats.count)),
    bottomWidth: () => line('Cell, bottom width', 'mm', inputs({ peat: 26, vermiculite: 26 }, formats.count)),
    cell: (at) => line('Volume of one cell', 'mL', {
      ...each({ peat: true, vermiculite: true }, (_, c) => result(`=STICK.CELLVOLUME(${c}${at.topLength},${c}${at.topWidth},${c}${at.depth},${c}${at.bottomLength},${c}${at.bottomWidth})`, formats.litres)),
      premix: result(`=STICK.ROUNDCELL(G${at.topLength},G${at.depth},G${at.bottomLength})`, formats.litres),
    }, 'Brimful'),
    bedLength: () => line('Bed, inside length', 'm', inputs({ sand: 6 }, formats.measure)),
    bedWidth: () => line('Bed, inside width', 'm', inputs({ sand: 1.2 }, formats.measure)),
    bedDepth: () => line('Bed, depth once settled', 'm', inputs({ sand: 0.08 }, formats.measure)),
    bedArea: (at) => line('Bed, area', 'm2', { sand: result(`=F${at.bedLength}*F${at.bedWidth}`, formats.measure) }),
    perM2: () => line('Bed, cuttings stuck', 'per m2', inputs({ sand: 350 }, formats.count), `300 to 600 by the size of the leaf: ${noSource}`),
    usedPerM2: (at) => line('Bed, places used', 'per m2', { sand: result(`=F${at.used}/F${at.bedArea}`, formats.litres) }),
    sandPerM2: (at) => line('Bed, sand in it', 'L loose a m2', { sand: result(`=STICK.BEDFILL(F${at.bedLength},F${at.bedWidth},F${at.bedDepth},F${at.settle},F${at.spill})/F${at.bedArea}`, formats.litres) }),
    vesselLitres: () => line('Vessel, water in it', 'L', inputs({ water: 8 }, formats.measure)),
    days: () => line('Days until rooted', 'days', inputs({ water: 21 }, formats.count), `Two to four weeks: ${noSource}`),
    changeEvery: () => line('Days between changes of the water', 'days', inputs({ water: 4 }, formats.count), `Every 3 to 7 days: ${noSource}`),
    settle: () => line('Settling', 'share of height', inputs({ peat: 0.1, vermiculite: 0.08, sand: 0.06, premix: 0.1 }, formats.share), `What loose mix drops when firmed and watered; measure your own. 5 to 15 %: ${noSource}`),
    spill: () => line('Spilt while filling', 'share of loose mix', inputs({ peat: 0.03, vermiculite: 0.03, sand: 0.01, premix: 0.03 }, formats.share), `2 to 5 % at a filling line: ${noSource}`),

    volumes: () => section('For the season'),
    units: (at) => line('Vessels, trays, beds, sheets', 'pieces', {
      ...each({ water: true, sand: true }, (_, c) => result(`=STICK.TRAYS(${c}${at.cuttings},${c}${at.sites},${c}${at.spare})`, formats.count)),
      ...each({ peat: true, vermiculite: true, premix: true }, (_, c) => result(`=SUMIF(OrderWay,${c}$${at.ways},OrderTrays)`, formats.count)),
      rockwool: result(`=STICK.BLOCKS(H${at.cuttings},H${at.sites},H${at.spare})`, formats.count),
    }, 'Whole ones. Trays: the sum of the order lines'),
    litres: (at) => line('Medium or water', 'L loose', {
      water: result(`=STICK.WATER(C${at.vesselLitres},C${at.units},C${at.changeEvery},C${at.days})`, formats.count),
      ...each({ peat: true, vermiculite: true, premix: true }, (_, c) => result(`=STICK.FILL(${c}${at.units}*${c}${at.sites},${c}${at.cell},${c}${at.settle},${c}${at.spill})`, formats.count)),
      sand: result(`=F${at.units}*F${at.bedArea}*F${at.sandPerM2}`, formats.count),
    }, 'Loose litres, not those a bale declares. Settling and spilling divide. Water: first filling and changes'),

    perCutting: () => section('For each cutting stuck'),
    perLitre: (at) => line('Price of a litre', 'EUR a loose L', {
      water: result('=WaterPricePerM3/STICK.UNITS(1,"m3","L")', formats.each),
      peat: result('=(1-CoirShare)*PeatBlendCost+CoirShare*CoirBlendCost', formats.each),
      ...each({ vermiculite: true, premix: true }, (_, c) => result(`=INDEX(PricePerLooseLitre,MATCH(${c}${at.product},MediumName,0))`, formats.each)),
      sand: result('=SandCost', formats.each),
    }, 'From Prices and Blends, delivery and waste included'),
    volumePerCutting: (at) => line('Settled medium', 'mL a cutting', {
      ...each({ peat: true, vermiculite: true, premix: true }, (_, c) => result(`=${c}${at.cell}/(1-${c}${at.spare})`, formats.litres)),
      sand: result(`=STICK.UNITS(F${at.bedArea}*F${at.bedDepth},"m3","mL")/F${at.used}`, formats.litres),
    }, 'The empty places are shared out over the used ones'),
    rounds: () => line('Rounds the medium is used', 'rounds', { sand: result('=BedRounds', formats.count) }, 'A dash: once. The sand as long as the bed, see Reuse'),
    steaming: (at) => line('Steaming the sand', 'EUR a cutting and round', { sand: result(`=SandWash/F${at.usedPerM2}`, formats.each) }, 'Before each later round; the first use is not steamed'),
    medium: (at) => line('Medium', 'EUR a cutting', {
      water: result(`=STICK.WATER(C${at.vesselLitres},1,C${at.changeEvery},C${at.days})*C${at.perLitre}/C${at.used}`, formats.each),
      ...each({ peat: true, vermiculite: true, premix: true }, (_, c) => result(`=STICK.MEDIUMCOST(${c}${at.volumePerCutting},${c}${at.perLitre},${c}${at.settle},${c}${at.spill})`, formats.each)),
      sand: result(`=STICK.MEDIUMCOST(F${at.volumePerCutting},F${at.perLitre},F${at.settle},F${at.spill},F${at.rounds},F${at.steaming},SandTopUp)`, formats.each),
      rockwool: result(`=RockwoolSheetPrice/H${at.used}`, formats.each),
    }, 'Sand: its first filling, steaming and topping up over all its rounds, without interest'),
    interest: (at) => line('Interest on the sand', 'EUR a cutting', { sand: result(`=SandLevelCost/F${at.usedPerM2}-F${at.medium}`, formats.each) }, 'Level cost of the sand on Reuse, with interest, less the line above'),
    holder: (at) => line('Vessel, tray or bed frame', 'EUR a cutting', {
      water: result(`=VesselLevelCost/C${at.used}`, formats.each),
      ...each({ peat: true, vermiculite: true, premix: true }, (_, c) => result(`=TrayLevelCost/${c}${at.used}`, formats.each)),
      sand: result(`=FrameLevelCost/F${at.usedPerM2}`, formats.each),
    }, 'Level cost for a round from Reuse, over the places used'),
    labour: () => line('Labour that differs between the ways', 'EUR a cutting', inputs({ water: 0.013, peat: 0.011, vermiculite: 0.011, sand: 0.01, premix: 0.011, rockwool: 0.005 }, formats.each), 'Filling and setting out; changing water; lifting bare roots. Invented: time your own people'),
    cost: (at) => line('Rooting cost', 'EUR a cutting', inAll((c) => total(`=SUM(${c}${at.medium}:${c}${at.labour})`, formats.each)), 'Sum of the lines above'),

    perLiner: () => section('For each saleable liner'),
    strike: () => line('Strike rate', 'share rooted', inputs({ water: 0.84, peat: 0.91, vermiculite: 0.9, sand: 0.89, premix: 0.92, rockwool: 0.94 }, formats.share), 'One species in all six ways, so that ways and not species are compared. Invented trial'),
    pottingOn: () => line('Potting-on rate', 'share', inputs({ water: 0.9, peat: 0.97, vermiculite: 0.96, sand: 0.97, premix: 0.97, rockwool: 0.98 }, formats.share), 'Water roots and bare roots break more easily'),
    gradeOut: () => line('Grade-out rate', 'share saleable', inputs({ water: 0.94, peat: 0.96, vermiculite: 0.96, sand: 0.96, premix: 0.96, rockwool: 0.96 }, formats.share)),
    rate: (at) => line('Overall rate', 'share saleable', inAll((c) => result(`=PRODUCT(${c}${at.strike}:${c}${at.gradeOut})`, formats.share))),
    mediumPerLiner: (at) => line('Medium', 'EUR a saleable liner', inAll((c) => result(`=STICK.PERLINER(${c}${at.medium},${c}${at.strike}:${c}${at.gradeOut})`, formats.each)), 'Losses divide: the survivors bear the cost of all'),
    costPerLiner: (at) => line('Rooting cost', 'EUR a saleable liner', inAll((c) => total(`=STICK.PERLINER(${c}${at.cost},${c}${at.strike}:${c}${at.gradeOut})`, formats.each)), 'Losses divide here too'),
    dearer: (at) => line('Dearer than the cheapest way', 'share', inAll((c) => result(`=${c}${at.costPerLiner}/MIN($C${at.costPerLiner}:$H${at.costPerLiner})-1`, formats.share)), '0 % is the cheapest way'),

    withCutting: (at) => line('Rooting cost and the cutting itself', 'EUR a saleable liner', inAll((c) => total(`=STICK.PERLINER(${c}${at.cost}+CuttingItself,${c}${at.strike}:${c}${at.gradeOut})`, formats.each)), 'A cutting that fails is lost too, so the dearer the cutting, the more the rates decide. Its price is on Season'),

    weights: () => section('Weight when watered'),
    dryWeight: (at) => line('Dry weight of the medium', 'kg a loose L', {
      peat: result('=(1-CoirShare)*PeatBlendWeight+CoirShare*CoirBlendWeight', formats.weight),
      ...each({ vermiculite: true, premix: true }, (_, c) => result(`=INDEX(LooseDensity,MATCH(${c}${at.product},MediumName,0))/STICK.UNITS(1,"m3","L")`, formats.weight)),
      sand: result('=SandWeight', formats.weight),
    }, 'From Blends and Prices'),
    held: () => line('Water held after watering', 'share of volume', {
      peat: result('=(1-CoirShare)*PeatBlendHeld+CoirShare*CoirBlendHeld', formats.share),
      ...inputs({ vermiculite: 0.5, premix: 0.55 }, formats.share),
      sand: result('=SandHeld', formats.share),
    }, `Measure your own; these: ${noSource}`),
    settledLitres: (at) => line('Settled medium in one tray or bed', 'L', {
      ...each({ peat: true, vermiculite: true, premix: true }, (_, c) => result(`=STICK.UNITS(${c}${at.sites}*${c}${at.cell},"mL","L")`, formats.litres)),
      sand: result(`=STICK.UNITS(F${at.bedArea}*F${at.bedDepth},"m3","L")`, formats.litres),
    }),
    weight: (at) => line('Weight of one tray or bed', 'kg', each({ peat: true, vermiculite: true, sand: true, premix: true }, (_, c) => result(`=${c}${at.settledLitres}*(${c}${at.dryWeight}/(1-${c}${at.settle})+${c}${at.held})`, formats.litres)), 'Medium and its water, at 1 kg to the litre, without the tray or the plants'),
    load: (at) => line('Load of the bed', 'kg a m2', { sand: result(`=F${at.weight}/F${at.bedArea}`, formats.litres) }),
    limit: () => line('Bench limit', 'lb a ft2', inputs({ sand: 15 }, formats.measure), 'Benches are often limited to 15 lb per ft2 (NGMA). Ask the maker of yours'),
    limitMetric: (at) => line('Bench limit', 'kg a m2', { sand: result(`=STICK.UNITS(F${at.limit},"lb","kg")/(STICK.UNITS(1,"ft","m")*STICK.UNITS(1,"ft","m"))`, formats.litres) }),
    place: (at) => line('So the bed belongs', '', { sand: result(`=IF(F${at.load}>F${at.limitMetric},"on the ground","on a bench")`) }, 'Or on a bench engineered for the load'),

    gapBelow: blank,
    cautions: cautionLines(water, fill, bedFill, blocks),
  })
  const across = namingAcross('Ways', sixWays.water.column, sixWays.rockwool.column)
  const inSand = (name: string, row: number) => naming('Ways')(name, sixWays.sand.column, row)
  return {
    sheet: { name: 'Ways', widths: [38, 23, 12, 24, 14, 14, 12, 12, 88], frozenRows: at.ways, frozenColumns: 2, rows },
    names: [
      across('WayName', at.ways),
      across('WayKeptIn', at.keptIn),
      across('WayProduct', at.product),
      across('WayCuttings', at.cuttings),
      across('WayPlaces', at.sites),
      across('WaySpareShare', at.spare),
      across('WayPlacesUsed', at.used),
      across('WayUnits', at.units),
      across('WayLitres', at.litres),
      across('WayMedium', at.medium),
      across('WayLabour', at.labour),
      across('WayCostPerCutting', at.cost),
      across('WayRate', at.rate),
      across('WayMediumPerLiner', at.mediumPerLiner),
      across('WayRates', at.strike, at.gradeOut),
      across('WayCostPerLiner', at.costPerLiner),
      across('WayCostWithCutting', at.withCutting),
      inSand('BedArea', at.bedArea),
      inSand('BedPlacesPerM2', at.usedPerM2),
      inSand('SandPerM2', at.sandPerM2),
    ],
  }
}
