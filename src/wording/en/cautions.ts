/**
 * The usual cautions for what a propagation house handles. They remind; they are no safety data sheet, so each ends by
 * deferring to the label, the local codes and licensed people.
 * Sources: respirable crystalline silica, US OSHA; asbestos in bags of vermiculite on sale, US EPA, August 2000
 * (744-R-00-010), which held the risk of a gardener for low; mineral-wool fibres, US NIOSH; heat, UC Davis AIR Nursery.
 * The others are common advice, without one source. What a bench carries is for its maker to say: no figure stands here.
 */
/** One text for each thing that can hurt someone, short enough to be read to its end on a sheet beside the pane. */
const things = {
  dust: 'Perlite, vermiculite and dry peat give off dust: dampen them, wear a mask and eye protection. Peat dust burns: no sparks or flames near it.',
  vermiculite:
    'Vermiculite can contain asbestos, and some bags on sale in 2000 did: ask for a test, keep it damp; when unsure, leave the bag closed.',
  sand: 'Sand dust can contain respirable crystalline silica, which scars the lungs: keep it damp, wear a mask, and never sweep it dry.',
  bed: 'A bed of wet sand is heavy: put it on the ground, or ask the maker of the bench what load it carries.',
  bags: 'Bagged mixes can carry Legionella: open them in fresh air, away from your face; dampen them, wear mask and gloves, wash your hands.',
  moss: 'Sphagnum moss (the moss, not peat) can carry a fungus that infects the skin: wear gloves and cover cuts.',
  weight:
    'Bags and wet mix are heavy, a bulk bag 800 kg and more: lift by machine or in twos, keep from under it, check what bench and floor carry.',
  lime: 'Lime, feed and wetting agent irritate skin, eyes and lungs: wear gloves, eye protection and a mask.',
  mixer: 'Never reach into a running mixer: switch it off and lock it first.',
  fibres:
    'Mineral-wool fibres irritate skin, eyes and throat: wet the blocks, wear gloves, long sleeves, eye protection and a mask.',
  acid: 'Acid for rockwool burns skin and eyes: wear gloves and eye protection, pour acid into water, never water into acid; no bleach near it.',
  water: 'Water that cuttings stand in fouls and breeds insects: change it, and never drink from those vessels.',
  hormone:
    'Rooting hormone harms eyes, skin and lungs, and alcohol dips catch fire: gloves, eye protection, a mask for powder, fresh air, no flames.',
  mist: 'Mist and fog can carry Legionella: use clean water, clean and disinfect tanks, lines and nozzles, and do not breathe it in.',
  electricity:
    'Electricity beside water, mist and heat mats can kill: have an electrician install residual-current protection, and switch off first.',
  disinfectant:
    'Disinfectants: clean first, fresh air, gloves, eye protection. Bleach: with nothing but water. Quaternary ammonium burns: dilute by label.',
  steam:
    'Steam scalds and is under pressure: tested boiler, safety valve, let it cool. 60 °C for 30 minutes throughout kills most diseases, not all.',
}

export const cautions = {
  things,
  deferring:
    'The usual cautions only: follow the label, the safety data sheet and your local codes, and leave licensed work to licensed people.',
}
