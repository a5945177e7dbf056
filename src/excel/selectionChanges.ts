/** Tells the pane when another cell is selected or something changed. */
import type { WorkbookPort } from '../workbook/port'
import type { CallLog } from './callLog'
import { knows, run } from './run'

/**
 * See WorkbookPort. Excel is asked once, however many listen. Where cells moved, or others changed something, the log is
 * emptied: its calls stand at places of before, or Excel shows results that another computer has calculated.
 */
export function selectionChanges(log: CallLog): WorkbookPort['onSelectionChange'] {
  const listeners = new Set<{ readonly tell: () => void }>()
  let asking: Asking | undefined
  const tellAll = () => {
    // Excel takes a while to let go of a handler, and one that has stopped hears no more.
    for (const one of [...listeners]) if (listeners.has(one)) one.tell()
  }
  const begin = () => {
    const begun = askExcel(log, tellAll)
    begun.registration.catch((problem: unknown) => {
      console.error('Excel does not tell which cell is selected.', problem)
      // The next to listen tries again.
      if (asking === begun) asking = undefined
    })
    return begun
  }
  return (tell) => {
    const own = { tell }
    listeners.add(own)
    asking ??= begin()
    return () => {
      if (!listeners.delete(own) || listeners.size > 0) return
      asking?.stop()
      asking = undefined
    }
  }
}

interface Asking {
  readonly registration: Promise<Handlers>
  readonly stop: () => void
}

function askExcel(log: CallLog, tellAll: () => void): Asking {
  const notify = async () => tellAll()
  const notifyOfMove = async () => {
    log.forgetAll()
    tellAll()
  }
  const notifyOfChange = ({ changeType, source }: Excel.WorksheetChangedEventArgs) =>
    changeType === Excel.DataChangeType.rangeEdited && source !== Excel.EventSource.remote ? notify() : notifyOfMove()
  // A pane that is opened while the user types in a cell would be refused, and then hear of nothing.
  const registration = run(
    async (context) => {
      const { worksheets } = context.workbook
      const handlers: Handlers = [
        worksheets.onSelectionChanged.add(notify),
        // Going to another sheet changes the active cell without a change of that sheet's selection.
        worksheets.onActivated.add(notify),
        worksheets.onChanged.add(notifyOfChange),
        // Excel tells of what was sorted apart from other changes.
        ...(knows('1.10')
          ? [worksheets.onRowSorted.add(notifyOfMove), worksheets.onColumnSorted.add(notifyOfMove)]
          : []),
      ]
      await context.sync()
      return handlers
    },
    { delayForCellEdit: true },
  )
  const stop = () => void registration.then(remove, () => undefined)
  return { registration, stop }
}

type Handlers = readonly { remove(): void; readonly context: OfficeExtension.ClientRequestContext }[]

/** A handler can only be removed through the context that added it. */
async function remove(handlers: Handlers): Promise<void> {
  for (const handler of handlers) handler.remove()
  await handlers[0]?.context.sync()
}
