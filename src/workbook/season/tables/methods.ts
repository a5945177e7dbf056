import { formats } from '../cells'
import { choiceOf, figure, money, oneOf, openFigure, openText, result, text } from '../table/column'
import { declareTable } from '../table/table'
import { containers } from './containers'

export const methodKinds = {
  name: 'MethodKinds',
  words: ['water', 'peat or coir with perlite', 'vermiculite', 'sand', 'premix', 'rockwool'],
} as const

/** A bed of wet sand is heavy. */
export const standings = { name: 'Standings', words: ['bench', 'ground'] } as const

/** Rooting methods, each of one of the six kinds: a container, what is in it, the work and the weeks. */
export const methods = declareTable({
  sheet: 'Methods',
  row: 'Method',
  key: 'name',
  typed: {
    name: text('Method', 'name', { width: 26 }),
    kind: choiceOf('Kind', methodKinds, { width: 24 }),
    container: oneOf('Container', containers, { width: 22 }),
    medium: openText('Medium or blend', '', {
      width: 24,
      note: 'As on Blends or Media. Blank for water and rockwool.',
    }),
    spare: openFigure('Places left empty', 'share', formats.share, '0', {
      note: 'An empty cell is filled all the same.',
    }),
    settle: openFigure('Settling', 'share of height', formats.share, '0', {
      note: 'What loose mix drops when firmed and watered.',
    }),
    spill: openFigure('Spilt', 'share of loose mix', formats.share, '0', { note: 'While filling.' }),
    waterChange: openFigure('Water changed every', 'days', formats.count, 'no water', {
      note: 'Cuttings foul their water.',
    }),
    soak: openFigure('Water to soak a sheet', 'L', formats.measure, '0'),
    hormone: openFigure('Hormone', money('cutting'), formats.each, '0', { note: 'Follow the label.' }),
    cutting: figure('The cutting itself', money('cutting'), formats.each, {
      note: 'Bought, or cut from your own stock.',
    }),
    other: openFigure('Other costs', money('cutting'), formats.each, '0'),
    stuckPerHour: figure('Stuck in an hour', 'cuttings', formats.count, { note: 'Time your own people.' }),
    setPerHour: figure('Set out in an hour', 'pieces', formats.measure, {
      note: 'Filled or soaked, and set out: pieces of the container.',
    }),
    tendPerHour: openFigure('Tended in an hour', 'pieces', formats.measure, 'tending takes no work', {
      note: 'Water: vessels changed in an hour.',
    }),
    liftPerHour: openFigure('Lifted in an hour', 'plants', formats.count, 'lifting takes no work', {
      note: 'Bare roots: rooted plants lifted and washed, before potting on.',
    }),
    weeks: figure('On the bench', 'weeks', formats.measure, { note: 'Until rooted.' }),
    stands: choiceOf('Stands on', standings, {
      width: 12,
      note: 'A bed of wet sand is heavy: ask the maker what your bench carries.',
    }),
    weight: openFigure('Weighs, watered', 'kg per piece', formats.measure, 'its load is not asked', {
      note: 'Weigh one that is filled and watered.',
    }),
    strike: figure('Strike', 'share rooted', formats.share, {
      note: 'Of one species in all methods, so that methods and not species are compared.',
    }),
    pottingOn: figure('Potting on', 'share', formats.share),
    grading: figure('Passes grading', 'share', formats.share),
  },
  results: {
    used: result('Places used', 'cuttings per piece', formats.litres),
    loose: result('Filled with', 'L loose per piece', formats.litres, {
      note: 'Settling and spilling divide. Of a vessel: water, with its changes.',
    }),
    litre: result('A litre', money('L'), formats.each),
    first: result('Bought for', money('piece'), formats.price, { note: 'A bed: its frame and first filling.' }),
    rounds: result('Serves', 'rounds', formats.count),
    wash: result('Washing', money('piece, later round'), formats.price),
    topUp: result('Topped up', 'share of that', formats.share),
    broken: result('Broken', 'share per round', formats.share),
    endValue: result('Worth at the end', money('piece'), formats.price),
    piece: result('Container cost', money('cutting'), formats.each, {
      note: 'Average cost per round over its rounds, with interest, over the places used.',
    }),
    mediumCost: result('Medium cost', money('cutting'), formats.each, {
      note: 'A bed is filled once: its medium is in the container.',
    }),
    labour: result('Labour', money('cutting'), formats.each, { note: 'Setting out, sticking, tending and lifting.' }),
    bench: result('Bench or ground', money('cutting'), formats.each),
    otherCost: result('All but the container', money('cutting'), formats.each),
    cost: result('Rooting cost', money('cutting'), formats.each),
    rate: result('Overall rate', 'share saleable', formats.share),
    perLiner: result('Rooting cost per liner', money('saleable liner'), formats.each, {
      note: 'The survivors bear the cost of all: losses divide.',
    }),
    filled: result('Filled in the season', 'fillings', formats.count),
    load: result('Load', 'kg per m2', formats.measure, { note: 'Watered, on the ground that a piece takes.' }),
    heavy: result('Too heavy', '', undefined, {
      width: 28,
      note: 'On a bench, against the load on Setup; nothing where either is not typed.',
    }),
    litres: result('Medium needed', 'L loose in the season', formats.litres, {
      note: 'A reused bed: first fillings of those bought, and top-up. Water is metered and on no list.',
    }),
  },
})
