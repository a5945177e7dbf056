/**
 * Finds functions by what a grower types. All words must be met (except the empty ones, "per", "how many");
 * a word is met by any text of the definition, by another word of the trade for the same thing, or by a
 * word one slip of the finger away. Better places come first.
 */
import type { Definition } from '../core/definition/definition'
import { subjectNames } from '../wording/en/subjects'
import { emptyWords, namedThings, sameWords } from '../wording/searchWords'

/** How much a hit counts, by where it was found. */
const worth = { id: 100, summary: 20, parameterName: 12, text: 5 } as const
const wholeIdBonus = 100
/** What is left of a hit that another word for the same thing made. */
const otherWordShare = 0.5
/** Shorter words are too easily another word's neighbour. */
const shortestWordWithSlip = 4

interface Field {
  readonly worth: number
  readonly words: readonly string[]
}

interface Entry {
  readonly definition: Definition
  readonly fields: readonly Field[]
}

/** Made once for a catalogue; gives the definitions that a query finds, best first. */
export function searchOf(definitions: readonly Definition[]): (query: string) => readonly Definition[] {
  let entries: readonly Entry[] | undefined
  return (query) => {
    const words = queryWords(query)
    if (words.length === 0) return definitions
    // Not before somebody searches, so that the pane opens without it.
    entries ??= definitions.map(entryOf)
    const found = ranked(entries, words, scoreOf)
    // Slips are looked for only where nothing else is found: "spill" must not bring up "still".
    return found.length > 0 ? found : ranked(entries, words, (entry, word) => scoreOf(entry, word) || scoreOfSlip(entry, word))
  }
}

/** True where the query asks for nothing in particular, so that the whole list is shown. */
export function isEmptyQuery(query: string): boolean {
  return queryWords(query).length === 0
}

function entryOf(definition: Definition): Entry {
  const parameters = Object.entries(definition.parameters)
  const texts = [
    subjectNames[definition.subject], definition.convention, definition.result.name, definition.result.text, definition.result.unit,
    ...parameters.flatMap(([, parameter]) => [parameter.text, parameter.unit]),
    ...definition.examples.map((example) => example.text),
  ]
  return {
    definition,
    fields: [
      { worth: worth.id, words: [definition.id.toLowerCase()] },
      { worth: worth.summary, words: wordsOf(definition.summary) },
      { worth: worth.parameterName, words: parameters.flatMap(([name]) => [name.toLowerCase(), ...wordsOf(splitName(name))]) },
      { worth: worth.text, words: texts.flatMap(wordsOf) },
    ],
  }
}

type Score = (entry: Entry, word: string) => number

function ranked(entries: readonly Entry[], words: readonly string[], scoreOfWord: Score): readonly Definition[] {
  return entries
    .map((entry) => ({ entry, scores: words.map((word) => scoreOfWord(entry, word)) }))
    .filter(({ scores }) => !scores.includes(0))
    .map(({ entry, scores }) => ({ entry, sum: scores.reduce((sum, score) => sum + score, 0) }))
    .sort((one, other) => other.sum - one.sum)
    .map(({ entry }) => entry.definition)
}

function scoreOf(entry: Entry, word: string): number {
  const direct = best(entry.fields, (candidate) => candidate.includes(word))
  const bonus = entry.definition.id.toLowerCase() === word ? wholeIdBonus : 0
  if (direct > 0) return direct + bonus
  const others = otherWords(word)
  // Other words are met as beginnings only: "pot" must not be met by "spot".
  return otherWordShare * best(entry.fields, (candidate) => others.some((other) => candidate.startsWith(other)))
}

function scoreOfSlip(entry: Entry, word: string): number {
  return best(entry.fields, (candidate) => isOneSlipAway(word, candidate))
}

function best(fields: readonly Field[], meets: (candidate: string) => boolean): number {
  return fields.find((field) => field.words.some(meets))?.worth ?? 0
}

const empty = new Set(emptyWords)

function queryWords(query: string): readonly string[] {
  return wordsOf(query.replace(/\bstick\./gi, '')).filter((word) => !empty.has(word))
}

function otherWords(word: string): readonly string[] {
  return [
    ...sameWords.filter((group) => group.includes(word)).flat().filter((other) => other !== word),
    ...namedThings.filter(({ names }) => names.includes(word)).flatMap(({ spokenOfAs }) => spokenOfAs),
  ]
}

/** Lower case, without accents, plural s or punctuation. */
function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '')
    .split(/[^\p{L}\p{N}-]+/u)
    .map((word) => word.replace(/^-+|-+$/g, ''))
    .map((word) => word.length > 3 && !word.endsWith('ss') ? word.replace(/s$/, '') : word)
    .filter((word) => word !== '')
}

/** "vesselVolumeMl" -> "vessel Volume Ml". */
function splitName(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, '$1 $2')
}

/** One letter wrong, missing, too many, or two neighbours swapped. */
function isOneSlipAway(word: string, candidate: string): boolean {
  if (word.length < shortestWordWithSlip || Math.abs(word.length - candidate.length) > 1) return false
  let start = 0
  while (start < word.length && word[start] === candidate[start]) start += 1
  const rest = word.slice(start)
  const candidateRest = candidate.slice(start)
  return rest.slice(1) === candidateRest.slice(1)
    || rest.slice(1) === candidateRest
    || rest === candidateRest.slice(1)
    || (rest.slice(2) === candidateRest.slice(2) && rest[0] === candidateRest[1] && rest[1] === candidateRest[0])
}
