import type { CallLog } from './callLog'
import { run } from './run'

/** See WorkbookPort. Where rows or columns moved, the log is emptied: its calls stand at places of before. */
export function onSelectionChange(log: CallLog, listener: () => void): () => void {
  // Excel takes a while to let go of a handler, so a listener that has stopped is not called meanwhile.
  let stopped = false
  const notify = async () => {
    if (!stopped) listener()
  }
  const notifyOfChange = async ({ changeType }: Excel.WorksheetChangedEventArgs) => {
    if (changeType !== Excel.DataChangeType.rangeEdited) log.forgetAll()
    await notify()
  }
  // A pane that is opened while the user types in a cell would be refused, and then hear of nothing.
  const registration = run(
    async (context) => {
      const { worksheets } = context.workbook
      const handlers = [
        worksheets.onSelectionChanged.add(notify),
        // Going to another sheet changes the active cell without a change of that sheet's selection.
        worksheets.onActivated.add(notify),
        worksheets.onChanged.add(notifyOfChange),
      ]
      await context.sync()
      return handlers
    },
    { delayForCellEdit: true },
  )
  registration.catch((problem: unknown) => console.error('Excel does not tell which cell is selected.', problem))
  return () => {
    stopped = true
    void registration.then(remove, () => undefined)
  }
}

type Handlers = readonly { remove(): void; readonly context: OfficeExtension.ClientRequestContext }[]

/** A handler can only be removed through the context that added it. */
async function remove(handlers: Handlers): Promise<void> {
  for (const handler of handlers) handler.remove()
  await handlers[0]?.context.sync()
}
