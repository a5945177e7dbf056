/**
 * The script of the cell functions. Excel's shared page loads it before the pane.
 * Without Excel, as when a test or another page evaluates it, there is nothing to register with.
 */
import { callLogOfPage } from '../excel/callLog'
import { associateFunctions } from '../excel/customFunctions'
import { functions } from '../functions/functions'

if (typeof CustomFunctions !== 'undefined') associateFunctions(Object.values(functions), callLogOfPage())
