import { english } from '../en/words'
import type { Words } from '../words'
import { cautions } from './cautions'
import { ofDefinition } from './definitions'
import { frame } from './frame'
import { functions } from './functions'
import { port } from './port'
import { settings } from './settings'
import { subjectNames } from './subjects'

/** All that the pane says, in German. */
export const german: Words = { ...english, language: 'de', frame, functions, settings, port, cautions, subjectNames, ofDefinition }
