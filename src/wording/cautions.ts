/**
 * The usual cautions for handling media, trays and disinfectants. They remind; they are no safety data
 * sheet, so each ends by deferring to the label and the local rules.
 * Sources: crystalline silica limits of the US OSHA (limit 50 and action level 25 ug/m3); vermiculite and asbestos,
 * US EPA 2000; mineral-wool fibres, NIOSH; heat treatment, UC Davis AIR Nursery; bench load, NGMA.
 * Sporotrichosis, Legionella longbeachae and the bleach rule are common advice, without one source.
 */
import type { Definition, Subject } from '../core/definition/definition'

const deferring = 'Follow the label and your local rules.'

/** One sentence for each thing that can hurt someone. */
const cautions = {
  dust: 'Dust of perlite, vermiculite and dry peat: dampen it before you handle it and wear a mask.',
  bags: 'Bagged mixes can carry Legionella: open them away from your face, dampen the mix and wash your hands.',
  sand: 'Sand dust is respirable silica: keep it damp.',
  vermiculite: 'Old vermiculite stocks may hold asbestos: when in doubt, leave them closed.',
  bed: 'A bed of wet sand is heavy: put it on the ground or on a bench built for the load.',
  fibres: 'Mineral-wool fibres irritate skin, eyes and throat: wet the blocks, wear gloves and long sleeves.',
  water: 'Water that cuttings stand in fouls and breeds insects: change it, and never drink from those vessels.',
  moss: 'Sphagnum moss can carry a skin infection: wear gloves.',
  weight: 'Wet mix is heavy: check what a person and a bench may carry.',
  disinfectant: 'Disinfectants: clean first, ventilate, wear gloves and eye protection; never mix bleach with acids or ammonia.',
  steam: 'Steam and hot mixes scald: let them cool.',
} as const

export type Caution = keyof typeof cautions

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
  MEDIUMCOST: ['dust'],
}

/** The caution to show beside a function; undefined where handling nothing is involved. */
export function cautionFor(definition: Handling): string | undefined {
  const lines = cautionsFor([definition])
  return lines.length === 0 ? undefined : lines.join(' ')
}

/** The cautions of several functions together, each once and the deferring one last; none where handling nothing is involved. */
export function cautionsFor(definitions: readonly Handling[]): readonly string[] {
  return cautionSentences(definitions.flatMap(({ id, subject }) => byId[id] ?? bySubject[subject] ?? []))
}

/** Each once, and the deferring one last. */
export function cautionSentences(named: readonly Caution[]): readonly string[] {
  return named.length === 0 ? [] : [...new Set(named.map((name) => cautions[name])), deferring]
}

type Handling = Pick<Definition, 'id' | 'subject'>
