/** Excel's task pane. functions.js has registered the cell functions before this script runs. */
import { callLogOfPage } from '../excel/callLog'
import { excelPort } from '../excel/excelPort'
import { mountPane } from '../pane/mountPane'
import type { ThemeName } from '../pane/theme'

void Office.onReady(() => {
  const theme = themeOfExcel()
  // For what the browser itself draws: scroll bars, boxes to choose from, the ground before the pane is there.
  document.documentElement.style.colorScheme = theme === 'contrast' ? 'light dark' : theme
  mountPane(document.getElementById('pane')!, excelPort(callLogOfPage()), {
    theme,
    locale: Office.context.displayLanguage,
    onLanguage(language) {
      document.documentElement.lang = language
    },
  })
})

/** Older versions of Excel do not tell their theme; light is what they have. */
function themeOfExcel(): ThemeName {
  if (matchMedia('(forced-colors: active)').matches) return 'contrast'
  return Office.context.officeTheme?.isDarkTheme ? 'dark' : 'light'
}
