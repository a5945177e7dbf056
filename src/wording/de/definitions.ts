/**
 * What the definitions of the functions say, in German, by the English text: summaries, conventions, texts of arguments,
 * results, columns, steps and examples, reasons, and the units. What is not listed stays: symbols, names in formulas.
 */
import { withMark } from '../../core/quantity/decimalMark'
import { blend } from './definitions/blend'
import { buying } from './definitions/buying'
import { cost } from './definitions/cost'
import { counting } from './definitions/counting'
import { reuse } from './definitions/reuse'
import { review } from './definitions/review'
import { units } from './definitions/units'
import { volume } from './definitions/volume'

export const germanTexts: Readonly<Record<string, string>> = { ...units, ...counting, ...volume, ...blend, ...buying, ...reuse, ...cost, ...review }

const measure = String.raw`((?:US |imp |short )?(?:dry )?[A-Za-z]+3?(?:/[A-Za-z]+3?)?)`
const vessels: Readonly<Record<string, string>> = { bag: 'Sack', block: 'Block', cutting: 'Steckling', pack: 'Gebinde', tray: 'Platte' }

/** Texts that are made with a symbol or a name in them. */
const made: readonly (readonly [english: RegExp, german: (...found: readonly string[]) => string])[] = [
  [new RegExp(`^${measure} loose$`), (symbol) => `${symbol} lose`],
  [new RegExp(`^${measure}( loose)? per (bag|block|cutting|pack|tray)$`), (symbol, loose, vessel) => `${symbol}${loose === undefined ? '' : ' lose'} pro ${vessels[vessel!]}`],
  [new RegExp(`^money per (loose )?${measure}$`), (loose, symbol) => `Geld pro ${symbol}${loose === undefined ? '' : ' lose'}`],
  [new RegExp(`^${measure} per ${measure}$`), (symbol, other) => `${symbol} pro ${other}`],
  [new RegExp(`^${measure} in one ${measure}$`), (symbol, other) => `ein ${other} in ${symbol}`],
  [/^([A-Z]+) with every argument at its likely value$/, (id) => `${id} mit jedem Argument auf seinem wahrscheinlichsten Wert`],
  [/^(.+): break$/, (pack) => `${pack}: Staffel`],
  [/^not in (\d+) rounds$/, (rounds) => `nicht in ${rounds} Durchgängen`],
  [/^an order of (\d+) costs ([\d.]+), (\d+) cost ([\d.]+)$/, (few, more, many, less) => `ein Auftrag über ${few} kostet ${withMark(more!, ',')}, ${many} kosten ${withMark(less!, ',')}`],
  [/^1 more bag reaches the break and (cost|save)s ([\d.]+)(?: more)?$/, (does, amount) => `1 Sack mehr erreicht die Staffel und ${does === 'cost' ? 'kostet' : 'spart'} ${withMark(amount!, ',')}${does === 'cost' ? ' mehr' : ''}`],
  [/^(\d+) more bags reach the break and (cost|save) ([\d.]+)(?: more)?$/, (bags, does, amount) => `${bags} Säcke mehr erreichen die Staffel und ${does === 'cost' ? 'kosten' : 'sparen'} ${withMark(amount!, ',')}${does === 'cost' ? ' mehr' : ''}`],
  [/^delivery from (.+)$/, (supplier) => `Lieferung von ${supplier}`],
]

/** What stands in a working in place of a number. */
const noNumbers: Readonly<Record<string, string>> = {
  'the need reaches the break': 'der Bedarf erreicht die Staffel',
  'the break cannot be reached with what is available': 'die Staffel ist mit dem, was verfügbar ist, nicht zu erreichen',
  'no way with 1 round is given': 'kein Verfahren mit 1 Durchgang ist angegeben',
  'not known': 'nicht bekannt',
  none: 'keine',
  'single use': 'Einweg',
  'no single use to beat': 'kein Einweg zum Vergleich',
}

export function ofDefinition(english: string): string {
  if (Object.hasOwn(germanTexts, english)) return germanTexts[english]!
  if (Object.hasOwn(noNumbers, english)) return noNumbers[english]!
  for (const [pattern, german] of made) {
    const found = pattern.exec(english)
    if (found !== null) return german(...found.slice(1))
  }
  return english
}
