/** What is handled with which function. The sentences stand with those of their language, from which every other says the same. */
import type { CellFunction } from '../core/definition/definition'
import { cautions as english } from './en/cautions'

export type Caution = keyof typeof english.things

/** Whatever is bought, filled or mixed loose. */
const loose = [
  'BLENDCOST',
  'BLENDPARTS',
  'BLENDWEIGHT',
  'MIXLOADS',
  'FILL',
  'PACKPRICE',
  'BAGS',
  'BUYPLAN',
  'MEDIUMCOST',
]
const packed = ['PACKPRICE', 'BAGS', 'BUYPLAN']
/** Cuttings are dipped, and stand under mist on heated benches. */
const rooting = ['ROOTINGCOST', 'COMPARE']
const washed = ['REUSECOST', 'BREAKEVEN', 'REUSELEDGER', 'MEDIUMCOST', ...rooting]

/** Functions that only count or reckon with money handle nothing. Sentences are shown in this order. */
const handledWith: Readonly<Record<Caution, readonly string[]>> = {
  dust: loose,
  vermiculite: loose,
  sand: ['BLENDCOST', 'BLENDPARTS', 'BLENDWEIGHT', 'MIXLOADS', 'BEDFILL', 'WEIGHTTOLITRES'],
  bed: ['BEDFILL'],
  bags: packed,
  moss: packed,
  weight: [...packed, 'WEIGHTTOLITRES', 'BLENDWEIGHT', 'MIXLOADS'],
  lime: ['MIXLOADS', 'BLENDCOST'],
  mixer: ['MIXLOADS'],
  fibres: ['BLOCKS'],
  acid: ['BLOCKS'],
  water: ['WATER'],
  hormone: rooting,
  mist: rooting,
  electricity: [...rooting, 'BENCHCOST'],
  disinfectant: washed,
  steam: washed,
}

export const hazards = Object.keys(handledWith) as readonly Caution[]

/** What people handle who do what these functions count. */
export function hazardsOf(definitions: readonly Handling[]): readonly Caution[] {
  return hazards.filter((hazard) => definitions.some(({ id }) => handledWith[hazard].includes(id)))
}

/** The caution to show beside a function; undefined where handling nothing is involved. */
export function cautionFor(definition: Handling, words = english): string | undefined {
  const lines = cautionsFor([definition], words)
  return lines.length === 0 ? undefined : lines.join(' ')
}

/** The cautions of several functions together, each once and the deferring one last; none where handling nothing is involved. */
export function cautionsFor(definitions: readonly Handling[], words = english): readonly string[] {
  return cautionSentences(hazardsOf(definitions), words)
}

/** The sentence of each hazard, and the deferring one last. */
export function cautionSentences(named: readonly Caution[], { things, deferring } = english): readonly string[] {
  return named.length === 0 ? [] : [...named.map((name) => things[name]), deferring]
}

type Handling = Pick<CellFunction, 'id'>
