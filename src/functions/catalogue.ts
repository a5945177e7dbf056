/** Every cell function with all that people read of it, in the order of functions.ts. */
import { described, type Definition, type TextsOf } from '../core/definition/definition'
import { bagsText } from './buying/bags'
import { buyPlanText } from './buying/buyPlan'
import { packPriceText } from './buying/packPrice'
import { blendCostText } from './blend/blendCost'
import { blendPartsText } from './blend/blendParts'
import { blendWeightText } from './blend/blendWeight'
import { mixLoadsText } from './blend/mixLoads'
import { batchSpreadText } from './counting/batchSpread'
import { cuttingsText } from './counting/cuttings'
import { motherPlantsText } from './counting/motherPlants'
import { overstickText } from './counting/overstick'
import { traysText } from './counting/trays'
import { benchCostText } from './cost/benchCost'
import { labourCostText } from './cost/labourCost'
import { linerCostText } from './cost/linerCost'
import { linerPriceText } from './cost/linerPrice'
import { mediumCostText } from './cost/mediumCost'
import { perLinerText } from './cost/perLiner'
import { quoteText } from './cost/quote'
import { rootingCostText } from './cost/rootingCost'
import { breakEvenText } from './reuse/breakEven'
import { reuseCostText } from './reuse/reuseCost'
import { reuseLedgerText } from './reuse/reuseLedger'
import { compareText } from './review/compare'
import { onTrackText } from './review/onTrack'
import { stockPlanText } from './review/stockPlan'
import { varianceText } from './review/variance'
import { oddsText } from './review/odds'
import { swingsText } from './review/swings'
import { peakText } from './weeks/peak'
import { standingText } from './weeks/standing'
import { stickDayText } from './weeks/stickDay'
import { bedFillText } from './volume/bedFill'
import { blocksText } from './volume/blocks'
import { cellVolumeText } from './volume/cellVolume'
import { fillText } from './volume/fill'
import { roundCellText } from './volume/roundCell'
import { unitsText } from './volume/units'
import { waterText } from './volume/water'
import { weightToLitresText } from './volume/weightToLitres'
import { functions } from './functions'

type Functions = typeof functions

/** The compiler says which function has no texts, and which texts have no function. */
const texts: { readonly [Name in keyof Functions]: TextsOf<Functions[Name]> } = {
  cuttings: cuttingsText,
  batchSpread: batchSpreadText,
  trays: traysText,
  overstick: overstickText,
  motherPlants: motherPlantsText,
  stickDay: stickDayText,
  standing: standingText,
  peak: peakText,
  units: unitsText,
  cellVolume: cellVolumeText,
  roundCell: roundCellText,
  fill: fillText,
  bedFill: bedFillText,
  blocks: blocksText,
  water: waterText,
  weightToLitres: weightToLitresText,
  blendCost: blendCostText,
  blendParts: blendPartsText,
  blendWeight: blendWeightText,
  mixLoads: mixLoadsText,
  packPrice: packPriceText,
  bags: bagsText,
  buyPlan: buyPlanText,
  reuseCost: reuseCostText,
  breakEven: breakEvenText,
  reuseLedger: reuseLedgerText,
  mediumCost: mediumCostText,
  rootingCost: rootingCostText,
  perLiner: perLinerText,
  linerCost: linerCostText,
  benchCost: benchCostText,
  labourCost: labourCostText,
  linerPrice: linerPriceText,
  quote: quoteText,
  compare: compareText,
  swings: swingsText,
  odds: oddsText,
  onTrack: onTrackText,
  variance: varianceText,
  stockPlan: stockPlanText,
}

const names = Object.keys(functions) as (keyof Functions)[]

export const catalogue: readonly Definition[] = names.map((name) => described(functions[name], texts[name]))
