/** What is lost divides, in every function that takes a loss: what is left bears all. By arithmetic from the definition. */
import { expect, test } from 'vitest'
import { cellOf, column, value } from './golden'

/** A tenth is lost, and 0.9 of each amount is left. Adding a tenth to the 0.9 would give 0.99 of it. */
const amounts: readonly [of: string, computed: () => number, expected: number][] = [
  ['cuttings for 900 liners', () => value('CUTTINGS', 900, [0.9]), 1000],
  ['stock plants with a reserve', () => value('MOTHERPLANTS', 900, 1, 1, 1, 0.1), 1000],
  ['stock plants of whose cuttings a tenth does not fit', () => value('MOTHERPLANTS', 900, 1, 1, 0.9), 1000],
  ['trays with cells left empty', () => value('TRAYS', 9000, 100, 0.1), 100],
  ['sheets with sites left empty', () => value('BLOCKS', 9000, 100, 0.1), 100],
  ['litres in vessels that settle', () => value('FILL', 9, 100, 0.1), 1],
  ['litres in vessels, spilt at the line', () => value('FILL', 9, 100, 0, 0.1), 1],
  ['litres in a bed that settles', () => value('BEDFILL', 9, 1, 0.1, 0.1), 1000],
  ['litres in a bed, spilt', () => value('BEDFILL', 9, 1, 0.1, 0, 0.1), 1000],
  ['loose litres of a mix that shrinks', () => column('BLENDPARTS', 900, [1], 0.1)[0]!, 1000],
  ['loose litres in all loads', () => cellOf('MIXLOADS', 'component 1', 'together', 900, [1], 500, 0.1), 1000],
  ['kg in a litre of a mix that shrinks', () => value('BLENDWEIGHT', [1], [900], 0.1), 1],
  ['cost of a litre of a mix that shrinks', () => value('BLENDCOST', [1], [0.9], 0.1), 1],
  ['cost of a litre with waste', () => value('PACKPRICE', 0.9, 1, 1, 0, 0.1), 1],
  ['medium of a cutting that settles', () => value('MEDIUMCOST', 900, 1, 0.1), 1],
  ['medium of a cutting, spilt', () => value('MEDIUMCOST', 900, 1, 0, 0.1), 1],
  ['a bench of which a tenth stands empty', () => value('BENCHCOST', 1, 1, 0.9, 0.9), 1],
  ['a liner', () => value('PERLINER', 0.9, [0.9]), 1],
  ['a liner of one stage', () => value('LINERCOST', [0.9], [0.9]), 1],
  ['a liner of one method', () => value('ROOTINGCOST', 90, 1, 100, 0.9), 1],
]

test.each(amounts)('%s: the losses divide', (_, computed, expected) => {
  const got = computed()
  expect(Math.abs(got - expected), `got ${got}`).toBeLessThanOrEqual(expected * 1e-14)
})
