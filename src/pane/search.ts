/**
 * Finds functions by what a grower types. All words must be met (except the empty ones, "per", "how many"): by the
 * beginning of a word in any text of the definition, by another word of the trade for the same thing, or by a word that
 * is a slip of the finger away. Better places come first.
 */
import MiniSearch, { type Query } from 'minisearch'
import type { Definition } from '../core/definition/definition'
import { subjectNames } from '../wording/en/subjects'
import { emptyWords, namedThings, sameWords } from '../wording/searchWords'

/** How much a hit counts, by where it was found. */
const worth = { id: 100, summary: 20, parameterNames: 12, texts: 5 } as const

/** What is left of a hit that another word for the same thing made. */
const otherWordShare = 0.5

/** Shorter words are too easily another word's neighbour; in longer ones two letters may have changed places. */
const [shortestWordWithSlip, shortestWordWithSwap] = [4, 7]

/** Made once for a catalogue; gives the definitions that a query finds, best first. */
export function searchOf(definitions: readonly Definition[]): (query: string) => readonly Definition[] {
  let index: MiniSearch<Definition> | undefined
  return (query) => {
    const words = queryWords(query)
    if (words.length === 0) return definitions
    // Not before somebody searches, so that the pane opens without it.
    index ??= indexOf(definitions)
    const found = index.search(allOf(words.map(spoken)), { boost: worth })
    // Slips are looked for only where nothing else is found: "spill" must not bring up "still".
    const hits =
      found.length > 0
        ? found
        : index.search(allOf(words.map((word) => anyOf([spoken(word), slipped(word)]))), { boost: worth })
    return hits.map(({ id }) => definitions.find((definition) => definition.id === id)!)
  }
}

/** True where the query asks for nothing in particular, so that the whole list is shown. */
export function isEmptyQuery(query: string): boolean {
  return queryWords(query).length === 0
}

function indexOf(definitions: readonly Definition[]): MiniSearch<Definition> {
  const index = new MiniSearch<Definition>({
    fields: Object.keys(worth),
    extractField: (definition, field) => textsOf[field as keyof typeof textsOf](definition),
    tokenize: (text) => [...wordsOf(text)],
    processTerm: (word) => word,
  })
  index.addAll(definitions)
  return index
}

const textsOf = {
  id: ({ id }: Definition) => id,
  summary: ({ summary }: Definition) => summary,
  parameterNames: ({ parameters }: Definition) =>
    Object.keys(parameters)
      .flatMap((name) => [name, splitName(name)])
      .join(' '),
  texts: ({ subject, convention, result, parameters, examples }: Definition) =>
    [
      subjectNames[subject],
      convention,
      result.name,
      result.text,
      result.unit,
      ...Object.values(parameters).flatMap(({ text, unit }) => [text, unit]),
      ...examples.map(({ text }) => text),
    ].join(' '),
} satisfies Record<keyof typeof worth, (definition: Definition) => string>

const allOf = (queries: Query[]): Query => ({ combineWith: 'AND', queries })
const anyOf = (queries: Query[]): Query => ({ combineWith: 'OR', queries })

/** The word or the beginning of one, or another word for the same thing. */
function spoken(word: string): Query {
  const others = otherWords(word).map((other): Query => ({
    queries: [other],
    prefix: true,
    boostTerm: () => otherWordShare,
  }))
  return anyOf([{ queries: [word], prefix: true }, ...others])
}

function slipped(word: string): Query {
  const letters = word.length < shortestWordWithSlip ? 0 : word.length < shortestWordWithSwap ? 1 : 2
  return { queries: [word], fuzzy: letters }
}

const empty = new Set(emptyWords)

function queryWords(query: string): readonly string[] {
  return wordsOf(query.replace(/\bstick\./gi, '')).filter((word) => !empty.has(word))
}

function otherWords(word: string): readonly string[] {
  return [
    ...sameWords
      .filter((group) => group.includes(word))
      .flat()
      .filter((other) => other !== word),
    ...namedThings.filter(({ names }) => names.includes(word)).flatMap(({ spokenOfAs }) => spokenOfAs),
  ]
}

/** Lower case, without accents, plural s or punctuation. */
function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .split(/[^\p{L}\p{N}-]+/u)
    .map((word) => word.replace(/^-+|-+$/g, ''))
    .map((word) => (word.length > 3 && !word.endsWith('ss') ? word.replace(/s$/, '') : word))
    .filter((word) => word !== '')
}

/** "vesselVolumeMl" -> "vessel Volume Ml". */
function splitName(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, '$1 $2')
}
