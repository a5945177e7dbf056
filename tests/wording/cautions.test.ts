import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { cautionFor, cautionSentences, hazards, hazardsOf, type Caution } from '../../src/wording/cautions'
import { cautions as german } from '../../src/wording/de/cautions'
import { cautions as english } from '../../src/wording/en/cautions'

/** What a function is told tells what is handled with it, whatever else the map of the cautions says. */
const handled: Readonly<Record<Caution, RegExp>> = {
  dust: /^(parts|bagVolumeL|packVolumeL|packLitres|vesselVolumeMl|cuttingVolumeMl)$/,
  vermiculite: /^(parts|bagVolumeL|packVolumeL|packLitres|vesselVolumeMl|cuttingVolumeMl)$/,
  sand: /^(parts|weightKg|depthM)$/,
  bed: /^depthM$/,
  bags: /^(bagVolumeL|packVolumeL|packLitres)$/,
  moss: /^(bagVolumeL|packVolumeL|packLitres)$/,
  weight: /^(bagVolumeL|packVolumeL|packLitres|weightKg|bulkDensitiesKgM3|mixerLitres)$/,
  lime: /^(additiveKgM3|addedCostPerM3)$/,
  mixer: /^mixerLitres$/,
  fibres: /^sitesPerBlock$/,
  acid: /^sitesPerBlock$/,
  water: /^changeEveryDays$/,
  // A method of rooting: its cuttings are dipped, and stand on heat under mist.
  hormone: /^cuttingsPerRound$/,
  mist: /^cuttingsPerRound$/,
  electricity: /^(cuttingsPerRound|benchUseShare)$/,
  disinfectant: /^washCosts?(PerCutting)?$/,
  steam: /^washCosts?(PerCutting)?$/,
}

test.each(hazards)(
  'The caution about %s stands beside every function with which it is handled, and no other.',
  (hazard) => {
    const expected = catalogue.filter(({ parameters }) =>
      Object.keys(parameters).some((name) => handled[hazard].test(name)),
    )
    expect(expected.length).toBeGreaterThan(0)
    expect(catalogue.filter((one) => hazardsOf([one]).includes(hazard)).map(({ id }) => id)).toEqual(
      expected.map(({ id }) => id),
    )
  },
)

describe('a caution', () => {
  it('always ends by deferring to the label, the local codes and licensed people', () => {
    const cautions = catalogue.flatMap((definition) => cautionFor(definition) ?? [])
    expect(cautions.length).toBeGreaterThan(0)
    for (const caution of cautions)
      expect(caution).toMatch(/follow the label, .* your local codes, .* licensed people\.$/)
  })

  it('is short enough to be read to its end on a sheet beside the pane', () => {
    // A grid 1,040 pixels wide, as beside the pane in a window of 1,440, shows some 145 letters.
    expect(cautionSentences(hazards).filter((sentence) => sentence.length > 140)).toEqual([])
  })

  it('is absent where nothing is handled', () => {
    const silent = catalogue.filter((definition) => cautionFor(definition) === undefined).map(({ id }) => id)
    expect(silent).toEqual(expect.arrayContaining(['UNITS', 'CUTTINGS', 'TRAYS', 'PERLINER', 'PEAK', 'VARIANCE']))
  })

  it.each<[Caution, RegExp, RegExp]>([
    ['sand', /can contain respirable crystalline silica.*never sweep it dry/, /kann lungengängigen Quarz.*nie trocken/],
    ['vermiculite', /bags on sale in 2000/, /2000 im Handel/],
    ['moss', /the moss, not peat/, /das Moos, nicht der Torf/],
    ['bags', /mask/, /lüften|frischen Luft/],
    ['dust', /eye protection.*burns/, /Augenschutz.*brennt/],
    ['bed', /ask the maker of the bench what load it carries/, /den Hersteller des Tisches fragen/],
    ['weight', /800 kg/, /800 kg/],
    ['fibres', /eye protection/, /Augenschutz/],
    ['acid', /acid into water, never water into acid/, /die Säure ins Wasser .* nie umgekehrt/],
    ['hormone', /alcohol dips catch fire/, /Alkohol fangen Feuer/],
    ['mist', /Legionella/, /Legionellen/],
    ['electricity', /residual-current/, /Fehlerstrom/],
    ['disinfectant', /Bleach: with nothing but water.*Quaternary/, /mit nichts als Wasser.*Quartäre/],
    ['steam', /under pressure.*60 °C for 30 minutes.*not all/, /unter Druck.*30 Minuten bei 60 °C.*nicht alle/],
  ])('about %s says what matters, in both languages', (hazard, inEnglish, inGerman) => {
    expect(cautionSentences([hazard], english)[0]).toMatch(inEnglish)
    expect(cautionSentences([hazard], german)[0]).toMatch(inGerman)
  })
})
