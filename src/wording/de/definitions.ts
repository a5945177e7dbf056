/**
 * What the definitions of the functions say, in German, by the English text: summaries, conventions, texts of arguments,
 * results, columns, steps and examples, reasons, and the units. What is not listed stays: symbols, names in formulas.
 */
import { blend } from './definitions/blend'
import { buying } from './definitions/buying'
import { cost } from './definitions/cost'
import { counting } from './definitions/counting'
import { reuse } from './definitions/reuse'
import { review } from './definitions/review'
import { units } from './definitions/units'
import { volume } from './definitions/volume'
import { weeks } from './definitions/weeks'

export const germanTexts: Readonly<Record<string, string>> = {
  ...units,
  ...counting,
  ...weeks,
  ...volume,
  ...blend,
  ...buying,
  ...reuse,
  ...cost,
  ...review,
}

export function ofDefinition(english: string): string {
  return Object.hasOwn(germanTexts, english) ? germanTexts[english]! : english
}

/** The words of units that are made with a symbol; a symbol stays. */
const parts: Readonly<Record<string, string>> = {
  money: 'Geld',
  bag: 'Sack',
  block: 'Block',
  cutting: 'Steckling',
  pack: 'Gebinde',
  tray: 'Platte',
}

/** A unit as a definition has it, or as it is made of others, such as "US gal loose per bag". */
export function ofUnit(english: string): string {
  return Object.hasOwn(germanTexts, english) ? germanTexts[english]! : english.split(' per ').map(partIn).join(' pro ')
}

function partIn(english: string): string {
  const words = english.split(' ')
  const said = words
    .filter((word) => word !== 'loose')
    .map((word) => (Object.hasOwn(parts, word) ? parts[word]! : word))
  return [...said, ...(words.includes('loose') ? ['lose'] : [])].join(' ')
}
