/**
 * Ends a typed formula by Enter, whatever else the grid has on the screen. Its list of functions takes Enter for its
 * first line, and stays open for a moment after the name is complete: on a busy machine =IF(A1>2,1,0) became
 * =INTRATE(A1>2,1,0), or the next formula went on in the same cell, without an error. Tab chooses from the list, as in
 * Excel, but only while a name is being typed. Of two that take a key the one with the higher priority gets it.
 * Seen with univer 0.25.1.
 */
import { CommandType, EDITOR_ACTIVATED, ICommandService, type IContextService, type Injector } from '@univerjs/core'
import {
  DeviceInputEventType,
  IEditorBridgeService,
  IShortcutService,
  KeyCode,
  SetCellEditVisibleOperation,
} from '@univerjs/preset-sheets-core'
import { typedBody } from './typedBody'

/** The list of functions has 1000. */
const beforeTheList = 1001

const endFormula = 'sticksheet.operation.end-formula'

export function endTypedFormulas(injector: Injector): void {
  const commands = injector.get(ICommandService)
  const shortcuts = injector.get(IShortcutService)
  const editor = injector.get(IEditorBridgeService)
  commands.registerCommand({
    id: endFormula,
    type: CommandType.OPERATION,
    handler(_accessor, { keycode }: { readonly keycode: KeyCode }) {
      // The grid keeps its editor open while cells of another sheet are chosen for the formula.
      editor.disableForceKeepVisible()
      return commands.syncExecuteCommand(SetCellEditVisibleOperation.id, {
        visible: false,
        eventType: DeviceInputEventType.Keyboard,
        keycode,
        unitId: editor.getEditLocation()?.unitId,
      })
    },
  })

  const typed = () => typedBody(injector)?.dataStream.trimEnd() ?? ''
  const isTyped = (contexts: IContextService) => contexts.getContextValue(EDITOR_ACTIVATED) && typed().startsWith('=')
  const takeKey = (keycode: KeyCode, preconditions: (contexts: IContextService) => boolean) => {
    shortcuts.registerShortcut({
      id: endFormula,
      binding: keycode,
      priority: beforeTheList,
      preconditions,
      staticParameters: { keycode },
    })
  }
  takeKey(KeyCode.ENTER, isTyped)
  takeKey(KeyCode.TAB, (contexts) => isTyped(contexts) && !/[A-Za-z.]$/.test(typed()))
}
