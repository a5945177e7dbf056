/** The files beside the scripts that are derived from the catalogue. webpack.config.js writes them. */
import { functionsJson } from '../derived/functionsJson'
import { helpIndex, helpPage } from '../derived/helpPage'
import { catalogue } from '../functions/catalogue'
import { notStarted } from './notStarted'

interface Artefact {
  /** Its place below dist. */
  readonly file: string
  readonly text: string
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
