/** The files beside the scripts that are derived from the catalogue. webpack.config.js writes them. */
import { functionsJson } from '../derived/functionsJson'
import { helpIndex, helpPage, type HelpIn } from '../derived/helpPage'
import { catalogue } from '../functions/catalogue'
import { calculateBook } from '../workbench/engine/calculate'
import { demoSeason } from '../workbook/season/demoSeason'
import { storedResults } from '../workbook/storedResults'
import { help as germanHelp } from '../wording/de/help'
import { german } from '../wording/de/words'
import { help as englishHelp } from '../wording/en/help'
import { english } from '../wording/en/words'
import { notStarted } from './notStarted'

interface Artefact {
  /** Its place below dist. */
  readonly file: string
  readonly text: string
}

/** Of the demo, which the workbench shows before it has calculated it. */
export async function demoResults(): Promise<Artefact> {
  const demo = demoSeason()
  return { file: 'demo-results.json', text: JSON.stringify(storedResults(demo, await calculateBook(demo))) }
}

/** @param address Where they will be, without a slash at its end; without one on the computer of a developer. */
export function artefacts(address?: string): readonly Artefact[] {
  return [
    { file: 'notStarted.js', text: notStarted },
    ...inLanguage('functions.json', 'help', { words: english, help: englishHelp }, address),
    // The manifest names it for Excel in German.
    ...inLanguage('functions.de.json', 'help/de', { words: german, help: germanHelp }, address),
  ]
}

function inLanguage(metadata: string, folder: string, language: HelpIn, address?: string): readonly Artefact[] {
  return [
    { file: metadata, text: JSON.stringify(functionsJson(catalogue, language.words, folder, address), null, 2) },
    { file: `${folder}/index.html`, text: helpIndex(catalogue, language) },
    ...catalogue.map((definition) => ({
      file: `${folder}/${definition.id}.html`,
      text: helpPage(definition, language),
    })),
  ]
}
