/** The workbench: the grid on the left, the same pane as in Excel on the right, and files from and to this machine. */
import { useRef, useState } from 'react'
import { keptSettings } from '../../pane/settings/keptSettings'
import { settingsFrom } from '../../pane/settings/settings'
import { Bar } from './Bar'
import { CellLine } from './CellLine'
import { CellList } from './CellList'
import { type Question, QuestionDialog } from './QuestionDialog'
import { noSheet } from './questions'
import { useDarkTheme } from './useDarkTheme'
import { useEarlyKeys } from './useEarlyKeys'
import { useFiles } from './useFiles'
import { useGrid } from './useGrid'
import { useKeptFocus } from './useKeptFocus'
import { usePane } from './usePane'
import { usePaneLanguage } from './usePaneLanguage'
import { useRegions } from './useRegions'

export function Workbench() {
  const [dark, setDark] = useDarkTheme()
  const { words, follow: onLanguage } = usePaneLanguage()
  // Known before the pane can tell it, because the sheet takes entries earlier.
  const [decimalMark, setDecimalMark] = useState(() => settingsFrom(keptSettings(), navigator.language).decimalMark)
  const [question, ask] = useState<Question>()
  const [hasFailed, setHasFailed] = useState(false)
  const [bar, sheet, pane] = [useRef<HTMLElement>(null), useRef<HTMLDivElement>(null), useRef<HTMLElement>(null)]
  /** Called from the pane, at any time later, when another file may be open. */
  const giveCopy = useRef<(bytes: Uint8Array) => void>(undefined)

  const onFailure = (error: unknown) => {
    setHasFailed(true)
    ask(noSheet(words, error))
  }
  const giveFile = (bytes: Uint8Array) => giveCopy.current!(bytes)
  const { grid, calculated, port, start } = useGrid(sheet, { dark, decimalMark, giveFile, words, ask, onFailure })
  const beginPane = usePane(pane, port, { dark, onLanguage, setDecimalMark, onDrawn: start })
  const { shown, go, regionOf } = useRegions(grid, { bar, pane })
  const toSheet = () => go('sheet')
  const onEmpty = () => {
    // Beside an empty workbook the pane offers to build a season.
    beginPane()
    go('pane')
  }
  const files = useFiles(calculated, { words, ask, onEmpty, onOpen: toSheet })
  giveCopy.current = files.giveCopy
  // A question above the sheet, such as why it cannot be shown, takes its own keys.
  const isInDialog = (at: Node) => at instanceof Element && at.closest('dialog') !== null
  const isForSheet = (at: Node) => regionOf(at) === 'sheet' && !isInDialog(at)
  const typedEarly = useEarlyKeys(grid !== undefined, isForSheet)
  useKeptFocus(grid !== undefined, isForSheet)

  return (
    <div className="workbench" data-shown={shown}>
      <Bar
        place={bar}
        words={words}
        isReady={calculated !== undefined}
        files={files}
        shown={shown}
        dark={dark}
        onShow={go}
        onDark={setDark}
      />
      <main className="sheet">
        <div className="grid" ref={sheet} />
        {grid === undefined && (
          <p className="veil" role="status" lang={words.language}>
            {hasFailed ? words.workbench.noSheet : words.workbench.gettingReady}
          </p>
        )}
        <CellList grid={grid} words={words} />
        <CellLine grid={grid} words={words} decimalMark={decimalMark} typedEarly={typedEarly} onShow={toSheet} />
      </main>
      <aside className="functions" ref={pane} aria-label={words.workbench.pane} tabIndex={-1} />
      {question && <QuestionDialog question={question} words={words} close={() => ask(undefined)} />}
    </div>
  )
}
