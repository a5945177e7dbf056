import { createRoot } from 'react-dom/client'
import { catalogue } from '../functions/catalogue'
import type { WorkbookPort } from '../workbook/port'
import { Pane } from './Pane'
import type { ThemeName } from './theme'

export interface MountedPane {
  setTheme(theme: ThemeName): void
  unmount(): void
}

/** Shows the pane in a page's element, which gives it its height. The page knows the host and its theme. */
export function mountPane(element: HTMLElement, port: WorkbookPort, options: { readonly theme?: ThemeName } = {}): MountedPane {
  const root = createRoot(element)
  const show = (theme: ThemeName) => root.render(<Pane definitions={catalogue} port={port} theme={theme} />)
  show(options.theme ?? 'light')
  return { setTheme: show, unmount: () => root.unmount() }
}
