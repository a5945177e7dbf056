import { createRoot } from 'react-dom/client'
import type { WorkbookPort } from '../workbook/port'
import { Pane } from './Pane'
import type { ThemeName } from './theme'

export interface MountedPane {
  setTheme(theme: ThemeName): void
  unmount(): void
}

interface PaneOptions {
  readonly theme?: ThemeName
  /** What the host speaks, where it says so; else what the browser does. */
  readonly locale?: string | undefined
  /** For a page that is all pane, and so in its language. */
  readonly onLanguage?: (language: string) => void
  /** Once the first section shows. */
  readonly onDrawn?: () => void
}

/** Shows the pane in a page's element, which gives it its height. The page knows the host, its theme and its language. */
export function mountPane(
  element: HTMLElement,
  port: WorkbookPort,
  { theme: first = 'light', locale = navigator.language, onLanguage, onDrawn }: PaneOptions = {},
): MountedPane {
  const root = createRoot(element)
  const show = (theme: ThemeName) =>
    root.render(<Pane port={port} theme={theme} locale={locale} onLanguage={onLanguage} onDrawn={onDrawn} />)
  show(first)
  return { setTheme: show, unmount: () => root.unmount() }
}
