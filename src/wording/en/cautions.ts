/**
 * The usual cautions for handling media, trays and disinfectants. They remind; they are no safety data
 * sheet, so each ends by deferring to the label and the local rules.
 * Sources: crystalline silica limits of the US OSHA (limit 50 and action level 25 ug/m3); vermiculite and asbestos,
 * US EPA 2000; mineral-wool fibres, NIOSH; heat treatment, UC Davis AIR Nursery; bench load, NGMA.
 * Sporotrichosis, Legionella longbeachae, the bleach rule, lime and the mixer are common advice, without one source.
 */
/** One sentence for each thing that can hurt someone. */
const things = {
  dust: 'Dust of perlite, vermiculite and dry peat: dampen it before you handle it and wear a mask.',
  bags: 'Bagged mixes can carry Legionella: open them away from your face, dampen the mix and wash your hands.',
  sand: 'Sand dust is respirable silica: keep it damp.',
  vermiculite: 'Old vermiculite stocks may hold asbestos: when in doubt, leave them closed.',
  bed: 'A bed of wet sand is heavy: put it on the ground or on a bench built for the load.',
  fibres: 'Mineral-wool fibres irritate skin, eyes and throat: wet the blocks, wear gloves and long sleeves.',
  water: 'Water that cuttings stand in fouls and breeds insects: change it, and never drink from those vessels.',
  moss: 'Sphagnum moss can carry a skin infection: wear gloves.',
  weight: 'Wet mix is heavy: check what a person and a bench may carry.',
  lime: 'Lime, feed and wetting agent irritate skin, eyes and lungs: wear gloves, eye protection and a mask.',
  mixer: 'Never reach into a running mixer: switch it off and lock it first.',
  disinfectant:
    'Disinfectants: clean first, ventilate, wear gloves and eye protection; never mix bleach with acids or ammonia.',
  steam: 'Steam and hot mixes scald: let them cool.',
}

export const cautions = {
  things,
  deferring: 'Follow the label and your local rules.',
}
