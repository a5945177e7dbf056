/** Which cautions go with which function. The sentences stand with those of their language, from which every other says the same. */
import type { CellFunction, Subject } from '../core/definition/definition'
import { cautions as english } from './en/cautions'

export type Caution = keyof typeof english.things

const bySubject: Readonly<Partial<Record<Subject, readonly Caution[]>>> = {
  volume: ['dust'],
  blend: ['dust', 'sand', 'vermiculite'],
  buying: ['bags'],
  reuse: ['disinfectant', 'steam'],
}

/** Where the subject's line would miss the point of the function. */
const byId: Readonly<Record<string, readonly Caution[]>> = {
  CELLVOLUME: [],
  ROUNDCELL: [],
  UNITS: [],
  BEDFILL: ['sand', 'bed'],
  BLOCKS: ['fibres'],
  WATER: ['water'],
  WEIGHTTOLITRES: ['sand', 'moss'],
  BLENDWEIGHT: ['weight', 'dust'],
  MIXLOADS: ['dust', 'sand', 'vermiculite', 'lime', 'mixer', 'weight'],
  MEDIUMCOST: ['dust'],
}

/** The caution to show beside a function; undefined where handling nothing is involved. */
export function cautionFor(definition: Handling, words = english): string | undefined {
  const lines = cautionsFor([definition], words)
  return lines.length === 0 ? undefined : lines.join(' ')
}

/** The cautions of several functions together, each once and the deferring one last; none where handling nothing is involved. */
export function cautionsFor(definitions: readonly Handling[], words = english): readonly string[] {
  return cautionSentences(
    definitions.flatMap(({ id, subject }) => byId[id] ?? bySubject[subject] ?? []),
    words,
  )
}

/** Each once, and the deferring one last. */
export function cautionSentences(named: readonly Caution[], { things, deferring } = english): readonly string[] {
  return named.length === 0 ? [] : [...new Set(named.map((name) => things[name])), deferring]
}

type Handling = Pick<CellFunction, 'id' | 'subject'>
