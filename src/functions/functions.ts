/**
 * Every cell function as a call needs it, in the order in which the pane and the page of the functions list them.
 * functions.js is made of these: the texts of catalogue.ts stay out of it.
 */
import { bags } from './buying/bags'
import { buyPlan } from './buying/buyPlan'
import { packPrice } from './buying/packPrice'
import { blendCost } from './blend/blendCost'
import { blendParts } from './blend/blendParts'
import { blendWeight } from './blend/blendWeight'
import { mixLoads } from './blend/mixLoads'
import { batchSpread } from './counting/batchSpread'
import { cuttings } from './counting/cuttings'
import { motherPlants } from './counting/motherPlants'
import { overstick } from './counting/overstick'
import { trays } from './counting/trays'
import { benchCost } from './cost/benchCost'
import { labourCost } from './cost/labourCost'
import { linerCost } from './cost/linerCost'
import { linerPrice } from './cost/linerPrice'
import { mediumCost } from './cost/mediumCost'
import { perLiner } from './cost/perLiner'
import { quote } from './cost/quote'
import { rootingCost } from './cost/rootingCost'
import { breakEven } from './reuse/breakEven'
import { reuseCost } from './reuse/reuseCost'
import { reuseLedger } from './reuse/reuseLedger'
import { compare } from './review/compare'
import { onTrack } from './review/onTrack'
import { stockPlan } from './review/stockPlan'
import { variance } from './review/variance'
import { thoseOfNumbers } from './review/asked'
import { oddsOver } from './review/odds'
import { swingsOver } from './review/swings'
import { peak } from './weeks/peak'
import { standing } from './weeks/standing'
import { stickDay } from './weeks/stickDay'
import { bedFill } from './volume/bedFill'
import { blocks } from './volume/blocks'
import { cellVolume } from './volume/cellVolume'
import { fill } from './volume/fill'
import { roundCell } from './volume/roundCell'
import { units } from './volume/units'
import { water } from './volume/water'
import { weightToLitres } from './volume/weightToLitres'

const upToCompare = {
  cuttings,
  batchSpread,
  trays,
  overstick,
  motherPlants,
  stickDay,
  standing,
  peak,
  units,
  cellVolume,
  roundCell,
  fill,
  bedFill,
  blocks,
  water,
  weightToLitres,
  blendCost,
  blendParts,
  blendWeight,
  mixLoads,
  packPrice,
  bags,
  buyPlan,
  reuseCost,
  breakEven,
  reuseLedger,
  mediumCost,
  rootingCost,
  perLiner,
  linerCost,
  benchCost,
  labourCost,
  linerPrice,
  quote,
  compare,
}

const afterOdds = { onTrack, variance, stockPlan }

/** SWINGS and ODDS compute any of these by name. */
const ofNumbers = thoseOfNumbers([...Object.values(upToCompare), ...Object.values(afterOdds)])

export const swings = swingsOver(ofNumbers)
export const odds = oddsOver(ofNumbers)

export const functions = { ...upToCompare, swings, odds, ...afterOdds }
