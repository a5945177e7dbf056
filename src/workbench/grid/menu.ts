/** What of its menus the grid leaves out here. */
import {
  AddRangeProtectionFromSheetBarCommand,
  ChangeSheetProtectionFromSheetBarCommand,
  DeleteWorksheetProtectionFormSheetBarCommand,
  HideColConfirmCommand,
  HideRowConfirmCommand,
  SetTabColorCommand,
  SetWorksheetHideCommand,
  ShowMenuListCommand,
  ViewSheetPermissionFromSheetBarCommand,
} from '@univerjs/preset-sheets-core'

/**
 * The library's sorting takes headings and totals along, and moves a formula as it is spelled, so that the cuttings
 * beside an order would be those of the order that stood there before: 1 beside the double of 2. Seen with univer 0.25.1.
 */
const sorting = 'sheet.menu.sheets-sort-ctx'

/** No saved file keeps these. */
const notSaved = [
  'sheet.contextMenu.permission',
  AddRangeProtectionFromSheetBarCommand.id,
  ChangeSheetProtectionFromSheetBarCommand.id,
  DeleteWorksheetProtectionFormSheetBarCommand.id,
  ViewSheetPermissionFromSheetBarCommand.id,
  HideRowConfirmCommand.id,
  HideColConfirmCommand.id,
  SetWorksheetHideCommand.id,
  ShowMenuListCommand.id,
  SetTabColorCommand.id,
]

export const menu = Object.fromEntries([sorting, ...notSaved].map((id) => [id, { hidden: true }]))
