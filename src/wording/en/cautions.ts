/**
 * The usual cautions for what a propagation house handles. They remind; they are no safety data sheet, so each ends by
 * deferring to the label, the local codes and licensed people.
 * Sources: respirable crystalline silica, US OSHA; asbestos in bags of vermiculite on sale, US EPA, August 2000
 * (744-R-00-010), which held the risk of a gardener for low; mineral-wool fibres, US NIOSH; heat, UC Davis AIR Nursery.
 * The others are common advice, without one source. What a bench carries is for its maker to say: no figure stands here.
 */
/** One text for each thing that can hurt someone. */
const things = {
  dust: 'Perlite, vermiculite and dry peat give off dust: dampen them first, air the room, wear a mask and eye protection. Peat dust burns: keep sparks, flames and hot lamps away.',
  vermiculite:
    'Vermiculite can contain asbestos, and some bags on sale in 2000 did: ask the supplier for a test, keep it damp, and leave closed what you are not sure of.',
  sand: 'Sand dust can contain respirable crystalline silica, which scars the lungs: keep sand damp, wear a mask, and never sweep it dry.',
  bed: 'A bed of wet sand is heavy: put it on the ground, or ask the maker of the bench what load it carries.',
  bags: 'Bagged mixes and composts can carry Legionella: open them in fresh air and away from your face, dampen the mix, wear a mask and gloves, and wash your hands.',
  moss: 'Sphagnum moss (the moss, not peat) can carry a fungus that infects the skin: wear gloves and cover cuts.',
  weight:
    'Bags, wet mix and wet sand are heavy, and a bulk bag weighs 800 kg and more: lift by machine or in twos, never stand under a hanging load, and check what bench and floor carry.',
  lime: 'Lime, feed and wetting agent irritate skin, eyes and lungs: wear gloves, eye protection and a mask.',
  mixer: 'Never reach into a running mixer: switch it off and lock it first.',
  fibres:
    'Mineral-wool fibres irritate skin, eyes and throat: wet the blocks, wear gloves, long sleeves and eye protection, and a mask where it is dusty.',
  acid: 'Acid for soaking rockwool burns skin and eyes: wear gloves and eye protection, pour the acid into the water and never the water into the acid, and keep it away from bleach.',
  water: 'Water that cuttings stand in fouls and breeds insects: change it, and never drink from those vessels.',
  hormone:
    'Rooting hormone harms eyes, skin and lungs, and dips in alcohol catch fire: wear gloves and eye protection, a mask for powder, air the room, and keep flames and sparks away.',
  mist: 'Mist and fog can carry Legionella: use clean water, clean and disinfect tanks, lines and nozzles, and do not breathe the mist in.',
  electricity:
    'Electricity beside water, mist and heat mats can kill: have an electrician install and test it, with residual-current (ground-fault) protection, and switch it off before you reach in.',
  disinfectant:
    'Disinfectants: clean first, air the room, wear gloves and eye protection. Mix bleach with nothing but water. Quaternary ammonium burns eyes and skin: dilute it as its label says.',
  steam:
    'Steam is under pressure and scalds: use a tested boiler with a safety valve, keep clear of covers and hoses, and let the mix cool. 60 °C for 30 minutes in all of the mix kills most plant diseases, not all, and the mix can be infected again.',
}

export const cautions = {
  things,
  deferring:
    'These are the usual cautions: follow the label, the safety data sheet and your local codes, and leave to licensed people what takes a licence.',
}
