import type { Words } from '../words'
import { cautions } from './cautions'
import { check } from './check'
import { compare } from './compare'
import { ofDefinition, ofUnit } from './definitions'
import { factText } from './facts'
import { files } from './files'
import { found } from './findings'
import { frame } from './frame'
import { functions } from './functions'
import { library } from './library'
import { parameters } from './parameters'
import { port } from './port'
import { sentence } from './problems'
import { season } from './season'
import { settings } from './settings'
import { subjectNames } from './subjects'
import { workbench } from './workbench'
import { working } from './working'

/** All that the pane says, in German. */
export const german: Words = {
  language: 'de',
  frame,
  functions,
  season,
  working,
  check,
  compare,
  library,
  settings,
  workbench,
  files,
  port,
  found,
  sentence,
  parameters,
  cautions,
  subjectNames,
  ofDefinition,
  ofUnit,
  factText,
}
