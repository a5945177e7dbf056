import type { Cell } from '../book'
import { bedFill } from '../../functions/volume/bedFill'
import { blocks } from '../../functions/volume/blocks'
import { fill } from '../../functions/volume/fill'
import { water } from '../../functions/volume/water'
import { cautionLines } from './cautionLines'
import {
  formats,
  heading,
  headOf,
  input,
  openInput,
  priced,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut, type RowNumbers } from './layOut'
import { naming, namingAcross } from './names'
import { sixWays, wayKeys, type Way } from './sixWays'
import { tableIn } from './tableIn'

type OfWays<Value> = Partial<Readonly<Record<Way, Value>>>

const noSource = 'common practice, no source'

/** One line of the comparison; a dash stands where it says nothing about a way. */
function line(label: string, unit: string, cells: OfWays<Cell>, how = ''): Row {
  return [text(label), text(unit), ...wayKeys.map((way) => cells[way] ?? text('–')), text(how)]
}

function each<Value>(values: OfWays<Value>, cell: (value: Value, column: string) => Cell): OfWays<Cell> {
  return Object.fromEntries(
    wayKeys.flatMap((way) => {
      const value = values[way]
      return value === undefined ? [] : [[way, cell(value, sixWays[way].column)]]
    }),
  )
}

const inputs = (values: OfWays<number | string>, format?: string) => each(values, (value) => input(value, format))

function inAll(cell: (column: string) => Cell): OfWays<Cell> {
  return Object.fromEntries(wayKeys.map((way) => [way, cell(sixWays[way].column)]))
}

/** A blank input counts as none; a dash would be refused as a text by the functions that read the line. */
function inputsOrOpen(cells: OfWays<Cell>, format: string): OfWays<Cell> {
  return { ...inAll(() => openInput(format)), ...cells }
}

function section(label: string): Row {
  return [
    heading(label),
    heading('Unit'),
    ...wayKeys.map((way) => heading(sixWays[way].name)),
    heading('How it is worked out'),
  ]
}

/** The six ways of rooting side by side: what each takes, what it costs for a cutting stuck and for a saleable liner. */
export function waysSheet(): NamedSheet {
  const inTrays = { peat: true, vermiculite: true, premix: true } as const
  const { rows, at } = layOut({
    ...headOf(
      'Six ways of rooting, side by side',
      'What each way takes, and what it costs for a cutting stuck and for a saleable liner, from the cutting to the rooted plant.',
    ),
    gap: blank,
    ways: () => section('Way of rooting'),
    keptIn: () =>
      line(
        'Kept in',
        '',
        each(
          {
            water: 'Vessels',
            peat: 'Washed trays',
            vermiculite: 'Washed trays',
            sand: 'Beds',
            premix: 'Thin trays',
            rockwool: 'Sheets',
          },
          (value) => text(value),
        ),
        'Washed trays, vessels and beds serve many rounds; thin trays and sheets serve one',
      ),
    suits: () =>
      line(
        'Suits',
        '',
        each(
          {
            water: 'Easy plants only',
            peat: 'Most plants',
            vermiculite: 'Most plants',
            sand: 'Hardy shrubs',
            premix: 'Most plants',
            rockwool: 'Soft plants',
          },
          (value) => text(value),
        ),
        `By and large: ${noSource}`,
      ),
    product: () =>
      line(
        'Medium, as on Prices',
        '',
        inputs({ vermiculite: 'Vermiculite', premix: 'Premix' }),
        'Peat, coir, perlite and sand come through Blends',
      ),

    fromOrders: () => section('From the order book'),
    liners: (at) =>
      line(
        'Liners ordered',
        'liners',
        inAll((c) => result(`=SUMIF(OrderWay,${c}$${at.ways},OrderLiners)`, formats.count)),
      ),
    cuttings: (at) =>
      line(
        'Cuttings to stick',
        'cuttings',
        inAll((c) => result(`=SUMIF(OrderWay,${c}$${at.ways},OrderCuttings)`, formats.count)),
      ),

    vessels: () => section('Vessel, cell or bed'),
    sites: (at) =>
      line(
        'Places in one',
        'cuttings',
        {
          ...inputs({ water: 100, peat: 104, vermiculite: 84, premix: 104, rockwool: 98 }, formats.count),
          sand: result(`=ROUND(F${at.bedArea}*F${at.perM2},0)`, formats.count),
        },
        'A vessel, a tray, a bed (area x cuttings per m2), a sheet of blocks',
      ),
    spare: () =>
      line(
        'Places left empty',
        'share',
        inputs({ water: 0, peat: 0.03, vermiculite: 0.03, sand: 0.02, premix: 0.03, rockwool: 0.02 }, formats.share),
        'A share of the places; an empty cell is filled all the same',
      ),
    used: (at) =>
      line(
        'Places used',
        'cuttings',
        inAll((c) => result(`=${c}${at.sites}*(1-${c}${at.spare})`, formats.litres)),
      ),
    ground: (at) =>
      line(
        'Ground that one takes',
        'm2',
        {
          ...inputs({ water: 0.12, peat: 0.16, vermiculite: 0.16, premix: 0.16, rockwool: 0.15 }, formats.measure),
          sand: result(`=F${at.bedArea}`, formats.measure),
        },
        'Outside measures. Invented',
      ),
    topLength: () =>
      line(
        'Cell, top length or diameter',
        'mm',
        inputs({ peat: 31, vermiculite: 36, premix: 34 }, formats.count),
        'Inside measures; the cells of the premix trays are round',
      ),
    topWidth: () => line('Cell, top width', 'mm', inputs({ peat: 31, vermiculite: 36 }, formats.count)),
    depth: () => line('Cell, depth', 'mm', inputs({ peat: 45, vermiculite: 45, premix: 45 }, formats.count)),
    bottomLength: () =>
      line('Cell, bottom length or diameter', 'mm', inputs({ peat: 23, vermiculite: 26, premix: 26 }, formats.count)),
    bottomWidth: () => line('Cell, bottom width', 'mm', inputs({ peat: 23, vermiculite: 26 }, formats.count)),
    cell: (at) =>
      line(
        'Volume of one cell',
        'mL',
        {
          ...each({ peat: true, vermiculite: true }, (_, c) =>
            result(
              `=STICK.CELLVOLUME(${c}${at.topLength},${c}${at.topWidth},${c}${at.depth},${c}${at.bottomLength},${c}${at.bottomWidth})`,
              formats.litres,
            ),
          ),
          premix: result(`=STICK.ROUNDCELL(G${at.topLength},G${at.depth},G${at.bottomLength})`, formats.litres),
        },
        'Brimful',
      ),
    bedLength: () => line('Bed, inside length', 'm', inputs({ sand: 6 }, formats.measure)),
    bedWidth: () => line('Bed, inside width', 'm', inputs({ sand: 1.2 }, formats.measure)),
    bedDepth: () => line('Bed, depth once settled', 'm', inputs({ sand: 0.08 }, formats.measure)),
    bedArea: (at) => line('Bed, area', 'm2', { sand: result(`=F${at.bedLength}*F${at.bedWidth}`, formats.measure) }),
    perM2: () =>
      line(
        'Bed, cuttings stuck',
        'per m2',
        inputs({ sand: 350 }, formats.count),
        `300 to 600 by the size of the leaf: ${noSource}`,
      ),
    bedLitres: (at) =>
      line(
        'Bed, sand in it',
        'L loose',
        {
          sand: result(
            `=STICK.BEDFILL(F${at.bedLength},F${at.bedWidth},F${at.bedDepth},F${at.settle},F${at.spill})`,
            formats.litres,
          ),
        },
        'The sand is sold by weight: Prices turns kilograms into litres',
      ),
    vesselLitres: () => line('Vessel, water in it', 'L', inputs({ water: 8 }, formats.measure)),
    days: () =>
      line('Days until rooted', 'days', inputs({ water: 21 }, formats.count), `Two to four weeks: ${noSource}`),
    changeEvery: () =>
      line('Days between water changes', 'days', inputs({ water: 5 }, formats.count), `Every 3 to 7 days: ${noSource}`),
    soakLitres: () =>
      line(
        'Sheet, water to soak it',
        'L',
        inputs({ rockwool: 9 }, formats.measure),
        'With a little acid, as the maker says: fresh blocks are alkaline',
      ),
    settle: () =>
      line(
        'Settling',
        'share of height',
        inputs({ peat: 0.1, vermiculite: 0.08, sand: 0.06, premix: 0.1 }, formats.share),
        `What loose mix drops when firmed and watered; measure your own. 5 to 15 %: ${noSource}`,
      ),
    spill: () =>
      line(
        'Spilt while filling',
        'share of loose mix',
        inputs({ peat: 0.03, vermiculite: 0.03, sand: 0.01, premix: 0.03 }, formats.share),
        `2 to 5 % at a filling line: ${noSource}`,
      ),

    volumes: () => section('For the season'),
    units: (at) =>
      line(
        'Vessels, trays, beds, sheets',
        'pieces',
        {
          ...each({ water: true, sand: true }, (_, c) =>
            result(`=STICK.TRAYS(${c}${at.cuttings},${c}${at.sites},${c}${at.spare})`, formats.count),
          ),
          ...each(inTrays, (_, c) => result(`=SUMIF(OrderWay,${c}$${at.ways},OrderTrays)`, formats.count)),
          rockwool: result(`=STICK.BLOCKS(H${at.cuttings},H${at.sites},H${at.spare})`, formats.count),
        },
        'Whole ones. Trays: the sum of the order lines',
      ),
    litres: (at) =>
      line(
        'Medium or water',
        'L loose',
        {
          water: result(`=STICK.WATER(C${at.vesselLitres},C${at.units},C${at.changeEvery},C${at.days})`, formats.count),
          ...each(inTrays, (_, c) =>
            result(
              `=STICK.FILL(${c}${at.units}*${c}${at.sites},${c}${at.cell},${c}${at.settle},${c}${at.spill})`,
              formats.count,
            ),
          ),
          sand: result(`=F${at.units}*F${at.bedLitres}`, formats.count),
        },
        'Loose litres, not those a bale declares. Settling and spilling divide. Water: first filling and changes',
      ),

    bought: () => section('A vessel, tray, bed, sheet'),
    first: (at) =>
      line(
        'Bought for',
        'EUR',
        {
          water: result(`=${priced('VesselPrice')}`, formats.price),
          ...each({ peat: true, vermiculite: true }, () => result(`=${priced('TrayPrice')}`, formats.price)),
          sand: result(`=${priced('FramePrice')}*F${at.bedArea}+F${at.bedLitres}*SandCost`, formats.price),
          premix: result(`=${priced('ThinTrayPrice')}`, formats.price),
          rockwool: result('=RockwoolSheetPrice', formats.price),
        },
        'From Reuse and Prices. A bed: its frame and its first filling of sand',
      ),
    rounds: () =>
      line(
        'Rounds it serves',
        'rounds',
        {
          water: result('=VesselRounds', formats.count),
          ...each({ peat: true, vermiculite: true }, () => result('=TrayRounds', formats.count)),
          sand: result('=BedRounds', formats.count),
          ...inputs({ premix: 1, rockwool: 1 }, formats.count),
        },
        '1 is single use. The others: from Reuse',
      ),
    wash: (at) =>
      line(
        'Washed or steamed for',
        'EUR a later round',
        inputsOrOpen(
          {
            water: result('=VesselWash', formats.price),
            ...each({ peat: true, vermiculite: true }, () => result('=TrayWash', formats.price)),
            sand: result(`=SandWash*F${at.bedArea}`, formats.price),
          },
          formats.price,
        ),
        'From Reuse. The first use is not washed',
      ),
    topUp: (at) =>
      line(
        'Topped up',
        'share of the price',
        inputsOrOpen(
          {
            sand: result(`=SandTopUp*F${at.bedLitres}*SandCost/F${at.first}`, formats.share),
          },
          formats.share,
        ),
        'Only the sand is topped up, so its share of frame and sand together is smaller than the one on Reuse',
      ),
    lost: () =>
      line(
        'Broken in a round',
        'share of pieces',
        inputsOrOpen(
          {
            water: result('=VesselLoss', formats.share),
            ...each({ peat: true, vermiculite: true }, () => result('=TrayLoss', formats.share)),
          },
          formats.share,
        ),
        'From Reuse; not replaced',
      ),
    endValue: (at) =>
      line(
        'Worth at the end',
        'EUR',
        inputsOrOpen(
          {
            ...each({ peat: true, vermiculite: true }, () => result('=TrayEndValue', formats.price)),
            sand: result(`=FrameEndValue*F${at.bedArea}`, formats.price),
            premix: result('=0-ThinTrayDisposal', formats.price),
            rockwool: result('=0-RockwoolDisposal', formats.price),
          },
          formats.price,
        ),
        'Negative: disposal. From Reuse and Prices',
      ),

    rates: () => section('Work and space'),
    stuckPerHour: () =>
      line(
        'Stuck in an hour',
        'cuttings an hour',
        inputs({ water: 1000, peat: 1100, vermiculite: 1100, sand: 1200, premix: 1100, rockwool: 1250 }, formats.count),
        'Invented, like all rates of work here: time your own people',
      ),
    setPerHour: () =>
      line(
        'Filled and set out in an hour',
        'pieces an hour',
        inputs({ water: 60, peat: 150, vermiculite: 150, sand: 1.2, premix: 160, rockwool: 240 }, formats.measure),
        'The first filling of a vessel; levelling and marking a bed; laying out a sheet',
      ),
    changedPerHour: () => line('Water changed in an hour', 'vessels an hour', inputs({ water: 75 }, formats.count)),
    soakedPerHour: () => line('Soaked in an hour', 'sheets an hour', inputs({ rockwool: 120 }, formats.count)),
    washedPerHour: () =>
      line(
        'Roots washed in an hour',
        'plants an hour',
        inputs({ sand: 1800 }, formats.count),
        'Only what rooted is washed; trays and blocks are potted on with their medium',
      ),
    weeks: () =>
      line(
        'On the bench until rooted',
        'weeks',
        inputs({ water: 3, peat: 5, vermiculite: 5, sand: 7, premix: 5, rockwool: 4 }, formats.measure),
        'Invented',
      ),
    density: (at) =>
      line(
        'Cuttings on the ground',
        'per m2',
        inAll((c) => result(`=${c}${at.used}/${c}${at.ground}`, formats.count)),
        'Places used over the ground that one takes',
      ),
    groundRate: (at) =>
      line(
        'Rate for the ground',
        'EUR a m2, week',
        {
          ...each({ water: true, peat: true, vermiculite: true, premix: true, rockwool: true }, () =>
            result(`=${priced('BenchRate')}`, formats.price),
          ),
          sand: result(
            `=IF(F${at.load}>F${at.limitMetric},${priced('FloorRate')},${priced('BenchRate')})`,
            formats.price,
          ),
        },
        'From Season, with heat and the overheads of the house. A bed that is too heavy for a bench pays the rate of the floor',
      ),

    perCutting: () => section('A cutting, every round'),
    perLitre: (at) =>
      line(
        'Price of a litre',
        'EUR a loose L',
        {
          water: result('=WaterPricePerM3/STICK.UNITS(1,"m3","L")', formats.each),
          peat: result('=(1-CoirShare)*PeatBlendCost+CoirShare*CoirBlendCost', formats.each),
          ...each({ vermiculite: true, premix: true }, (_, c) =>
            result(`=INDEX(PricePerLooseLitre,MATCH(${c}${at.product},MediumName,0))`, formats.each),
          ),
          sand: result('=SandCost', formats.each),
        },
        'Delivery and waste included. Own blends: their mixing labour too; premix needs none',
      ),
    volumePerCutting: (at) =>
      line(
        'Settled medium',
        'mL a cutting',
        {
          ...each(inTrays, (_, c) => result(`=${c}${at.cell}/(1-${c}${at.spare})`, formats.litres)),
          sand: result(`=STICK.UNITS(F${at.bedArea}*F${at.bedDepth},"m3","mL")/F${at.used}`, formats.litres),
        },
        'The empty places are shared out over the used ones',
      ),
    medium: (at) =>
      line(
        'Medium',
        'EUR a cutting',
        {
          water: result(
            `=STICK.WATER(C${at.vesselLitres},1,C${at.changeEvery},C${at.days})*C${at.perLitre}/C${at.used}`,
            formats.each,
          ),
          ...each(inTrays, (_, c) =>
            result(
              `=STICK.MEDIUMCOST(${c}${at.volumePerCutting},${c}${at.perLitre},${c}${at.settle},${c}${at.spill})`,
              formats.each,
            ),
          ),
        },
        'A dash: the sand is bought with the bed, and the block is the sheet',
      ),
    soaking: (at) =>
      line('Water and acid to soak', 'EUR a cutting', {
        rockwool: result(
          `=H${at.soakLitres}*(WaterPricePerM3+AcidPerM3)/STICK.UNITS(1,"m3","L")/H${at.used}`,
          formats.each,
        ),
      }),
    hormone: () =>
      line(
        'Rooting hormone',
        'EUR a cutting',
        inputs(
          { water: 0.006, peat: 0.004, vermiculite: 0.004, sand: 0.004, premix: 0.004, rockwool: 0.004 },
          formats.each,
        ),
        'Powder; in water a liquid, since powder would wash off. Invented. Follow the label',
      ),
    cutting: () =>
      line(
        'The cutting itself',
        'EUR a cutting',
        inAll(() => result(`=${priced('CuttingItself')}`, formats.each)),
        'From Season',
      ),
    sticking: (at) =>
      line(
        'Labour: sticking',
        'EUR a cutting',
        inAll((c) => result(`=STICK.LABOURCOST(${c}${at.stuckPerHour},Wage,OnCosts)`, formats.each)),
        'Wage and on-costs: Season',
      ),
    setting: (at) =>
      line(
        'Labour: filling and setting out',
        'EUR a cutting',
        inAll((c) => result(`=STICK.LABOURCOST(${c}${at.setPerHour},Wage,OnCosts)/${c}${at.used}`, formats.each)),
        'Over the places used',
      ),
    changing: (at) =>
      line(
        'Labour: changing the water',
        'EUR a cutting',
        {
          water: result(
            `=(STICK.WATER(1,1,C${at.changeEvery},C${at.days})-1)*STICK.LABOURCOST(C${at.changedPerHour},Wage,OnCosts)/C${at.used}`,
            formats.each,
          ),
        },
        'Fillings less the first',
      ),
    soakingLabour: (at) =>
      line('Labour: soaking', 'EUR a cutting', {
        rockwool: result(`=STICK.LABOURCOST(H${at.soakedPerHour},Wage,OnCosts)/H${at.used}`, formats.each),
      }),
    washing: (at) =>
      line(
        'Labour: washing the roots',
        'EUR a cutting',
        { sand: result(`=F${at.strike}*STICK.LABOURCOST(F${at.washedPerHour},Wage,OnCosts)`, formats.each) },
        'Of those that rooted, before potting on',
      ),
    bench: (at) =>
      line(
        'Bench or floor',
        'EUR a cutting',
        inAll((c) =>
          result(`=STICK.BENCHCOST(${c}${at.weeks},${c}${at.density},${c}${at.groundRate},BenchUse)`, formats.each),
        ),
        'Weeks x rate over the cuttings; the paths are paid for too',
      ),
    other: (at) =>
      line(
        'All of that',
        'EUR a cutting',
        inAll((c) => total(`=SUM(${c}${at.medium}:${c}${at.bench})`, formats.each)),
        'Sum of the lines from the medium on',
      ),
    piece: (at) =>
      line(
        'Share of the piece',
        'EUR a cutting',
        inAll((c) =>
          result(
            `=STICK.REUSECOST(${c}${at.first},${c}${at.rounds},${c}${at.wash},${c}${at.topUp},${c}${at.lost},${c}${at.endValue},YearlyInterest,RoundsPerYear)/${c}${at.used}`,
            formats.each,
          ),
        ),
        'Vessel, tray, bed or sheet: level cost over its rounds, with interest, over the places used',
      ),
    cost: (at) =>
      line(
        'Rooting cost',
        'EUR a cutting',
        inAll((c) => total(rootingCost(c, '1', at), formats.each)),
        'The two lines above',
      ),

    perLiner: () => section('For each saleable liner'),
    strike: () =>
      line(
        'Strike rate',
        'share rooted',
        inputs({ water: 0.9, peat: 0.91, vermiculite: 0.9, sand: 0.89, premix: 0.92, rockwool: 0.94 }, formats.share),
        'One species in all six ways, so that ways and not species are compared. Invented trial',
      ),
    pottingOn: () =>
      line(
        'Potting-on rate',
        'share',
        inputs({ water: 0.9, peat: 0.97, vermiculite: 0.96, sand: 0.94, premix: 0.97, rockwool: 0.98 }, formats.share),
        'Water roots and washed, bare roots break more easily: transplant losses',
      ),
    gradeOut: () =>
      line(
        'Grade-out rate',
        'share saleable',
        inputs({ water: 0.94, peat: 0.96, vermiculite: 0.96, sand: 0.96, premix: 0.96, rockwool: 0.96 }, formats.share),
      ),
    rate: (at) =>
      line(
        'Overall rate',
        'share saleable',
        inAll((c) =>
          result(
            `=IF(COUNTBLANK(${c}${at.strike}:${c}${at.gradeOut})>0,"rate missing",PRODUCT(${c}${at.strike}:${c}${at.gradeOut}))`,
            formats.share,
          ),
        ),
      ),
    costPerLiner: (at) =>
      line(
        'Rooting cost',
        'EUR a saleable liner',
        inAll((c) => total(rootingCost(c, `${c}${at.rate}`, at), formats.each)),
        'The survivors bear the cost of all: losses divide. Compare ranks these',
      ),
    dearer: (at) =>
      line(
        'Dearer than the cheapest way',
        'share',
        inAll((c) => result(`=${c}${at.costPerLiner}/MIN($C${at.costPerLiner}:$H${at.costPerLiner})-1`, formats.share)),
        '0 % is the cheapest way',
      ),
    mediumAlone: (at) =>
      line(
        'Of that, the medium',
        'EUR a saleable liner',
        {
          ...each({ water: true, ...inTrays }, (_, c) =>
            result(`=STICK.PERLINER(${c}${at.medium},${c}${at.strike}:${c}${at.gradeOut})`, formats.each),
          ),
          sand: result(
            `=STICK.PERLINER(STICK.MEDIUMCOST(F${at.volumePerCutting},F${at.perLitre},F${at.settle},F${at.spill},F${at.rounds},F${at.wash}/F${at.used},SandTopUp),F${at.strike}:F${at.gradeOut})`,
            formats.each,
          ),
          rockwool: result(`=STICK.PERLINER(H${at.first}/H${at.used},H${at.strike}:H${at.gradeOut})`, formats.each),
        },
        'Sand: filling, steaming and topping up over all its rounds, without interest',
      ),

    compared: () => section('For as many cuttings'),
    comparedCuttings: () =>
      line(
        'Cuttings in a round',
        'cuttings',
        inAll(() => result('=CuttingsCompared', formats.count)),
        'From Compare, which reads these lines: one piece of each way holds a different number',
      ),
    comparedFirst: (at) =>
      line('Pieces bought for', 'EUR', forCompared(at.first, at), 'The price of one, for so many cuttings'),
    comparedWash: (at) => line('Pieces washed or steamed for', 'EUR a later round', forCompared(at.wash, at)),
    comparedEnd: (at) => line('Pieces worth at the end', 'EUR', forCompared(at.endValue, at)),

    weights: () => section('Weight when watered'),
    dryWeight: (at) =>
      line(
        'Dry weight of the medium',
        'kg a loose L',
        {
          peat: result('=(1-CoirShare)*PeatBlendWeight+CoirShare*CoirBlendWeight', formats.weight),
          ...each({ vermiculite: true, premix: true }, (_, c) =>
            result(
              `=INDEX(LooseDensity,MATCH(${c}${at.product},MediumName,0))/STICK.UNITS(1,"m3","L")`,
              formats.weight,
            ),
          ),
          sand: result('=SandWeight', formats.weight),
        },
        'From Blends and Prices',
      ),
    held: () =>
      line(
        'Water held after watering',
        'share of volume',
        {
          peat: result('=(1-CoirShare)*PeatBlendHeld+CoirShare*CoirBlendHeld', formats.share),
          ...inputs({ vermiculite: 0.5, premix: 0.55 }, formats.share),
          sand: result('=SandHeld', formats.share),
        },
        `Measure your own; these: ${noSource}`,
      ),
    settledLitres: (at) =>
      line('Settled, in one tray or bed', 'L', {
        ...each(inTrays, (_, c) => result(`=STICK.UNITS(${c}${at.sites}*${c}${at.cell},"mL","L")`, formats.litres)),
        sand: result(`=STICK.UNITS(F${at.bedArea}*F${at.bedDepth},"m3","L")`, formats.litres),
      }),
    weight: (at) =>
      line(
        'Weight of one tray or bed',
        'kg',
        each({ ...inTrays, sand: true }, (_, c) =>
          result(`=${c}${at.settledLitres}*(${c}${at.dryWeight}/(1-${c}${at.settle})+${c}${at.held})`, formats.litres),
        ),
        'Medium and its water, at 1 kg to the litre, without the tray or the plants',
      ),
    load: (at) => line('Load of the bed', 'kg a m2', { sand: result(`=F${at.weight}/F${at.bedArea}`, formats.litres) }),
    limit: () =>
      line(
        'Bench limit',
        'lb a ft2',
        inputs({ sand: 15 }, formats.measure),
        'Benches are often limited to 15 lb per ft2 (NGMA). Ask the maker of yours',
      ),
    limitMetric: (at) =>
      line('Bench limit', 'kg a m2', {
        sand: result(
          `=STICK.UNITS(F${at.limit},"lb","kg")/(STICK.UNITS(1,"ft","m")*STICK.UNITS(1,"ft","m"))`,
          formats.litres,
        ),
      }),
    place: (at) =>
      line(
        'So the bed belongs',
        '',
        { sand: result(`=IF(F${at.load}>F${at.limitMetric},"on the ground","on a bench")`) },
        'Or on a bench engineered for the load',
      ),

    gapBelow: blank,
    cautions: cautionLines(water, fill, bedFill, blocks),
  })
  // Each section ends where the next one begins.
  const sections = [
    ['WaysOfRooting', at.ways],
    ['WaysOrders', at.fromOrders],
    ['WaysPlaces', at.vessels],
    ['WaysSeason', at.volumes],
    ['WaysPieces', at.bought],
    ['WaysWork', at.rates],
    ['WaysCutting', at.perCutting],
    ['WaysLiner', at.perLiner],
    ['WaysCompared', at.compared],
    ['WaysWeights', at.weights],
  ] as const
  const tables = sections.map(([called, row], index) =>
    tableIn(called, 'A', row, 'I', (sections[index + 1]?.[1] ?? at.gapBelow) - 1),
  )
  const across = namingAcross('Ways', sixWays.water.column, sixWays.rockwool.column)
  const inSand = (name: string, row: number) => naming('Ways')(name, sixWays.sand.column, row)
  return {
    sheet: {
      name: 'Ways',
      widths: [30, 18, 15, 22, 13, 13, 12, 11, 100],
      frozenRows: at.ways,
      frozenColumns: 1,
      rows,
      tables,
    },
    names: [
      across('WayName', at.ways),
      across('WayKeptIn', at.keptIn),
      across('WaySuits', at.suits),
      across('WayProduct', at.product),
      across('WayCuttings', at.cuttings),
      across('WayPlaces', at.sites),
      across('WaySpareShare', at.spare),
      across('WayPlacesUsed', at.used),
      across('WayUnits', at.units),
      across('WayLitres', at.litres),
      across('WayFirstCost', at.first),
      across('WayRounds', at.rounds),
      across('WayWash', at.wash),
      across('WayTopUp', at.topUp),
      across('WayLost', at.lost),
      across('WayEndValue', at.endValue),
      across('WayStuckPerHour', at.stuckPerHour),
      across('WayHormone', at.hormone),
      across('WayOther', at.other),
      across('WayCostPerCutting', at.cost),
      across('WayStrike', at.strike),
      across('WayPottingOn', at.pottingOn),
      across('WayGradeOut', at.gradeOut),
      across('WayRate', at.rate),
      across('WayRates', at.strike, at.gradeOut),
      across('WayCostPerLiner', at.costPerLiner),
      across('ComparedCuttings', at.comparedCuttings),
      across('ComparedFirst', at.comparedFirst),
      across('ComparedWash', at.comparedWash),
      across('ComparedEnd', at.comparedEnd),
      inSand('BedArea', at.bedArea),
      inSand('BedLitres', at.bedLitres),
    ],
  }
}

/** The money of one piece, for as many cuttings as are compared. */
function forCompared(money: number, at: RowNumbers<'used' | 'comparedCuttings'>): OfWays<Cell> {
  return inAll((c) => result(`=${c}${money}/${c}${at.used}*${c}${at.comparedCuttings}`, formats.price))
}

type PieceLine = 'first' | 'rounds' | 'used' | 'wash' | 'topUp' | 'lost' | 'other' | 'endValue'

/** The whole cost of one way, for each cutting stuck (a yield of 1) or for each saleable liner. */
function rootingCost(c: string, yieldShare: string, at: RowNumbers<PieceLine>): string {
  return `=STICK.ROOTINGCOST(${c}${at.first},${c}${at.rounds},${c}${at.used},${yieldShare},${c}${at.wash},${c}${at.topUp},${c}${at.lost},${c}${at.other},${c}${at.endValue},YearlyInterest,RoundsPerYear)`
}
