/** Every cell function, in the order in which the pane and the README list them. */
import type { Definition } from '../core/definition/definition'
import { bags } from './buying/bags'
import { packPrice } from './buying/packPrice'
import { blendCost } from './blend/blendCost'
import { blendParts } from './blend/blendParts'
import { blendWeight } from './blend/blendWeight'
import { cuttings } from './counting/cuttings'
import { trays } from './counting/trays'
import { mediumCost } from './cost/mediumCost'
import { perLiner } from './cost/perLiner'
import { breakEven } from './reuse/breakEven'
import { reuseCost } from './reuse/reuseCost'
import { bedFill } from './volume/bedFill'
import { blocks } from './volume/blocks'
import { cellVolume } from './volume/cellVolume'
import { fill } from './volume/fill'
import { roundCell } from './volume/roundCell'
import { units } from './volume/units'
import { water } from './volume/water'
import { weightToLitres } from './volume/weightToLitres'

export const catalogue: readonly Definition[] = [
  cuttings, trays,
  units, cellVolume, roundCell, fill, bedFill, blocks, water, weightToLitres,
  blendCost, blendParts, blendWeight,
  packPrice, bags,
  reuseCost, breakEven,
  mediumCost, perLiner,
]
