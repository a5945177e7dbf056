/** The files beside the scripts that are derived from the catalogue. webpack.config.js writes them. */
import { functionsJson } from '../derived/functionsJson'
import { helpIndex, helpPage } from '../derived/helpPage'
import { catalogue } from '../functions/catalogue'
import { calculateBook } from '../workbench/engine/calculate'
import { demoSeason } from '../workbook/season/demoSeason'
import { storedResults } from '../workbook/storedResults'
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
    { file: 'functions.json', text: JSON.stringify(functionsJson(catalogue, address), null, 2) },
    { file: 'notStarted.js', text: notStarted },
    { file: 'help/index.html', text: helpIndex(catalogue) },
    ...catalogue.map((definition) => ({ file: `help/${definition.id}.html`, text: helpPage(definition) })),
  ]
}
