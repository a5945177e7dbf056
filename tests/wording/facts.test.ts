/** What is no number in a cell or a working, in both languages. The English texts stand in saved workbooks. */
import { expect, test } from 'vitest'
import { evaluate, rowsOf } from '../../src/core/definition/evaluate'
import { isFact, type Fact } from '../../src/core/definition/fact'
import { Decimal } from '../../src/core/quantity/decimal'
import { call } from '../../src/derived/call'
import { definitionIn } from '../../src/derived/definitionIn'
import { workingOf } from '../../src/derived/working'
import { catalogue } from '../../src/functions/catalogue'
import { german } from '../../src/wording/de/words'
import { english } from '../../src/wording/en/words'

const d = (value: string | number) => new Decimal(value)

/** The source of the English column: what cells and workings of saved workbooks show. */
const said: readonly (readonly [english: string, german: string, fact: Fact])[] = [
  ['none', 'keine', { fact: 'none' }],
  ['total', 'Summe', { fact: 'total' }],
  ['Mix 60 L: break', 'Mix 60 L: Staffel', { fact: 'breakOf', pack: 'Mix 60 L' }],
  ['from 200 bags at 48.5', 'ab 200 Säcken zu 48,5', { fact: 'breakFrom', bags: d(200), price: d('48.5') }],
  [
    '1 more bag reaches the break and costs 4.50 more',
    '1 Sack mehr erreicht die Staffel und kostet 4,50 mehr',
    { fact: 'breakCosts', bags: d(1), amount: d('4.5') },
  ],
  [
    '4 more bags reach the break and cost 34.00 more',
    '4 Säcke mehr erreichen die Staffel und kosten 34,00 mehr',
    { fact: 'breakCosts', bags: d(4), amount: d(34) },
  ],
  [
    '1 more bag reaches the break and saves 3.625',
    '1 Sack mehr erreicht die Staffel und spart 3,625',
    { fact: 'breakSaves', bags: d(1), amount: d('3.625') },
  ],
  [
    '5 more bags reach the break and save 12.00',
    '5 Säcke mehr erreichen die Staffel und sparen 12,00',
    { fact: 'breakSaves', bags: d(5), amount: d(12) },
  ],
  ['the need reaches the break', 'der Bedarf erreicht die Staffel', { fact: 'breakNeeded' }],
  [
    'the break cannot be reached with what is available',
    'die Staffel ist mit dem, was verfügbar ist, nicht zu erreichen',
    { fact: 'breakOutOfReach' },
  ],
  ['delivery', 'Lieferung', { fact: 'delivery', from: '' }],
  ['delivery from North', 'Lieferung von North', { fact: 'delivery', from: 'North' }],
  [
    '5.5 for A + 2 for B',
    '5,5 für A + 2 für B',
    {
      fact: 'deliveryShares',
      shares: [
        { amount: d('5.5'), pack: 'A' },
        { amount: d(2), pack: 'B' },
      ],
    },
  ],
  ['there is no other', 'es gibt keine andere', { fact: 'noOtherOrder' }],
  ['the search for it was given up', 'die Suche danach wurde aufgegeben', { fact: 'searchGivenUp' }],
  ['not known', 'nicht bekannt', { fact: 'notKnown' }],
  ['single use', 'Einweg', { fact: 'singleUse' }],
  ['no single use to beat', 'kein Einweg zum Vergleich', { fact: 'noSingleUse' }],
  ['not in 16 rounds', 'nicht in 16 Durchgängen', { fact: 'notInRounds', rounds: d(16) }],
  ['no way with 1 round is given', 'kein Verfahren mit 1 Durchgang ist angegeben', { fact: 'noWayOfOneRound' }],
  ['component 2', 'Bestandteil 2', { fact: 'component', number: d(2) }],
  ['additive 1', 'Zusatz 1', { fact: 'additive', number: d(1) }],
  ['finished mix', 'fertige Mischung', { fact: 'finishedMix' }],
  ['more than 1000000', 'mehr als 1000000', { fact: 'moreThan', most: d(1_000_000) }],
  ['mean', 'Mittelwert', { fact: 'mean' }],
  ['all likely', 'mit wahrscheinlichsten Werten', { fact: 'allLikely' }],
  ['draws without answer', 'Ziehungen ohne Antwort', { fact: 'drawsWithoutAnswer' }],
  [
    'ODDS with every argument at its likely value',
    'ODDS mit jedem Argument auf seinem wahrscheinlichsten Wert',
    { fact: 'allLikelyOf', id: 'ODDS' },
  ],
  ['dearer each than 200', 'je Stück teurer als bei 200', { fact: 'quoteWarning', dearerThan: d(200) }],
  [
    '953 to 999 cost more than 1000',
    '953 bis 999 kosten mehr als 1000',
    { fact: 'quoteWarning', zone: { first: d(953), last: d(999), larger: d(1000) } },
  ],
  [
    'dearer each than 5; 9 costs more than 10',
    'je Stück teurer als bei 5; 9 kostet mehr als 10',
    { fact: 'quoteWarning', dearerThan: d(5), zone: { first: d(9), last: d(9), larger: d(10) } },
  ],
  [
    'an order of 414 costs 335.34, 500 cost 335.00',
    'ein Auftrag über 414 kostet 335,34, 500 kosten 335,00',
    { fact: 'orderCosts', order: d(414), amount: d('335.34'), larger: d(500), largerAmount: d(335) },
  ],
  [
    'US dry qt in one short ton',
    'ein short ton in US dry qt',
    { fact: 'unitsInOne', symbol: 'US dry qt', one: 'short ton' },
  ],
  ['price', 'Preis', { fact: 'price' }],
  ['usage', 'Verbrauch', { fact: 'usage' }],
  ['adverse', 'ungünstig', { fact: 'adverse' }],
  ['favourable', 'günstig', { fact: 'favourable' }],
]

test.each(said)('A fact reads in English as its cell, and in German in the pane: %s', (inEnglish, inGerman, fact) => {
  expect([english.factText(fact), german.factText(fact)]).toEqual([inEnglish, inGerman])
})

test('Each fact that an example of a function gives is said in both languages here.', () => {
  const given = catalogue.flatMap((definition) =>
    definition.examples.flatMap(({ given: args }) => {
      const evaluation = evaluate(definition, args.map(inCells))
      if (!('result' in evaluation)) throw new Error(`${definition.id} has an example without a result`)
      const steps = evaluation
        .working()
        .flatMap(({ name, text, formula, value }) => [name, text, formula, ...[value].flat()])
      return [...steps, ...rowsOf(evaluation.result).flatMap((row) => Object.values(row))]
        .filter(isFact)
        .map(({ fact }) => fact)
    }),
  )
  expect(new Set(given).size).toBeGreaterThan(10)
  expect([...new Set(given)].filter((one) => !said.some(([, , { fact }]) => fact === one))).toEqual([])
})

test('A German pane shows facts in German in a working, and the cell keeps its English text.', () => {
  const compare = catalogue.find(({ id }) => id === 'COMPARE')!
  const args = compare.examples[0]!.given.map(inCells)
  const working = workingOf(definitionIn(compare, german), args)
  expect('steps' in working && working.steps.find(({ name }) => name === 'beatsFrom')?.value).toEqual(['Einweg', 5])
  const outcome = call(definitionIn(compare, german), args)
  expect(outcome.kind === 'value' && [outcome.value].flat(2)).toContain('single use')
})

test('What a grower calls a pack or a way is a name in every language, even where it is a word of ours.', () => {
  const compare = catalogue.find(({ id }) => id === 'COMPARE')!
  const working = workingOf(definitionIn(compare, german), [
    [['none'], ['single use']],
    [[1], [2]],
    [[1], [1]],
    [[1], [1]],
    [[1], [1]],
  ])
  expect('steps' in working && working.steps.find(({ name }) => name === 'order')?.value).toEqual([
    'none',
    'single use',
  ])
})

function inCells(argument: unknown): unknown {
  return Array.isArray(argument) ? argument.map((one: unknown) => [one]) : argument
}
