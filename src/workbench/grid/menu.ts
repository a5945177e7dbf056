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
import { SortRangeAscInCtxMenuCommand, SortRangeDescInCtxMenuCommand } from '@univerjs/preset-sheets-sort'

/** They sort the selected cells alone, without asking: the liners of an order would stand beside another species. */
const tearsRowsApart = [SortRangeAscInCtxMenuCommand.id, SortRangeDescInCtxMenuCommand.id]

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

export const menu = Object.fromEntries([...tearsRowsApart, ...notSaved].map((id) => [id, { hidden: true }]))
