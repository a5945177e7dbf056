/** Excel's task pane. functions.js has registered the cell functions before this script runs. */
import { excelPort } from '../excel/excelPort'
import { mountPane } from '../pane/mountPane'

void Office.onReady(() => {
  mountPane(document.getElementById('pane')!, excelPort())
})
