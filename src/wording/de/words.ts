import { english } from '../en/words'
import type { Words } from '../words'
import { cautions } from './cautions'
import { check } from './check'
import { ofDefinition } from './definitions'
import { found } from './findings'
import { frame } from './frame'
import { functions } from './functions'
import { parameters } from './parameters'
import { port } from './port'
import { sentence } from './problems'
import { season } from './season'
import { settings } from './settings'
import { subjectNames } from './subjects'

/** All that the pane says, in German. */
export const german: Words = { ...english, language: 'de', frame, functions, season, check, settings, port, found, sentence, parameters, cautions, subjectNames, ofDefinition }
