/** Imported before anything else, this lets the grid's engine calculate in Node as quickly as in the workbench. */
import { register } from 'node:module'

register('./ballast/plainFieldsHooks.mjs', import.meta.url)
