/** The workbench: the grid on the left, the same pane as in Excel on the right, and files from and to this machine. */
import { useEffect, useRef, useState } from 'react'
import { createRoot } from 'react-dom/client'
import type { DecimalMark } from '../core/quantity/decimalMark'
import { catalogue } from '../functions/catalogue'
import { mountPane, type MountedPane } from '../pane/mountPane'
import { keptSettings } from '../pane/settings/keptSettings'
import { settingsFrom } from '../pane/settings/settings'
import { startGrid, type Grid, type GridCell } from '../workbench/grid/grid'
import { gridPort } from '../workbench/grid/gridPort'
import type { Lost } from '../workbench/xlsx/lost'
import { XlsxProblem } from '../workbench/xlsx/xlsxProblem'
import type { Book } from '../workbook/book'
import type { WorkbookPort } from '../workbook/port'
import { demoSeason } from '../workbook/season/demoSeason'
import type { Words } from '../wording/words'
import { QuestionDialog, type Question } from './QuestionDialog'
import { useDarkTheme } from './useDarkTheme'
import { useEarlyKeys } from './useEarlyKeys'
import { usePaneLanguage } from './usePaneLanguage'
import './workbench.css'

/** Where the keyboard can be. In a narrow window the sheet and the pane take turns. */
type Region = 'bar' | 'sheet' | 'pane'
const regions: readonly Region[] = ['bar', 'sheet', 'pane']

/** The region after this one, or before it; after the last comes the first. */
function beside(region: Region, step: 1 | -1): Region {
  return regions.at((regions.indexOf(region) + step) % regions.length)!
}

const emptyBook: Book = { names: [], sheets: [{ name: 'Sheet1', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }] }

/** In milliseconds. */
const longEnoughToSave = 60_000

const excelFile = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

function Workbench() {
  const [dark, setDark] = useDarkTheme()
  const { words: spoken, follow: onLanguage } = usePaneLanguage()
  const { language, workbench: words, files } = spoken
  /** Known before the pane can tell it, because the sheet takes entries earlier. */
  const [decimalMark, setDecimalMark] = useState(() => settingsFrom(keptSettings(), navigator.language).decimalMark)
  const [shown, setShown] = useState<'sheet' | 'pane'>('sheet')
  const [cell, setCell] = useState<GridCell>()
  const [question, setQuestion] = useState<Question>()
  /** What the open file held that a saved one will not. */
  const [lost, setLost] = useState<readonly Lost[]>([])
  const [fileName, setFileName] = useState('season.xlsx')
  const gridPlace = useRef<HTMLDivElement>(null)
  const panePlace = useRef<HTMLElement>(null)
  const bar = useRef<HTMLElement>(null)
  const filePicker = useRef<HTMLInputElement>(null)
  const [grid, setGrid] = useState<Grid>()
  /** The sheet will not come any more. */
  const [hasFailed, setHasFailed] = useState(false)
  const pane = useRef<MountedPane>(undefined)

  useEffect(() => {
    // The grid lives as long as the page: this runs once.
    startGrid(gridPlace.current!, catalogue, demoSeason(), { dark, decimalMark }).then(setGrid, (error: unknown) => {
      setHasFailed(true)
      setQuestion({ heading: words.noSheet, lines: [messageOf(error)] })
    })
  }, [])

  useEffect(() => {
    if (grid === undefined) return
    pane.current = mountPane(panePlace.current!, portOf(grid), { onLanguage })
    // Nobody has gone elsewhere yet.
    if (document.activeElement === document.body) grid.focus()
    const show = () => setCell(grid.selectedCell())
    show()
    return grid.onChange(show)
  }, [grid])

  useEffect(() => {
    // Closed or loaded anew, the page would lose it; the browser asks in its own words.
    const askBeforeLeaving = (event: BeforeUnloadEvent) => {
      if (grid?.hasUnsaved()) event.preventDefault()
    }
    window.addEventListener('beforeunload', askBeforeLeaving)
    return () => window.removeEventListener('beforeunload', askBeforeLeaving)
  }, [grid])

  useEffect(() => {
    grid?.setDark(dark)
    pane.current?.setTheme(dark ? 'dark' : 'light')
  }, [grid, dark])

  useEffect(() => { grid?.setDecimalMark(decimalMark) }, [grid, decimalMark])

  /** The line below the sheet has the mark too, so it goes through here. */
  function portOf(open: Grid): WorkbookPort {
    return { ...gridPort(open, giveCopy), setDecimalMark }
  }

  function askForNew() {
    setQuestion({
      heading: words.newWorkbook.heading,
      lines: [words.newWorkbook.warning],
      agree: { label: words.newWorkbook.agree, act: openEmpty },
    })
  }

  function askForFile() {
    const choose = () => filePicker.current!.click()
    if (!grid!.hasUnsaved()) return choose()
    setQuestion({
      heading: words.openFile.heading,
      lines: [words.newWorkbook.warning],
      agree: { label: words.openFile.agree, act: choose },
    })
  }

  async function openEmpty() {
    await grid!.open(emptyBook)
    setFileName('workbook.xlsx')
    setLost([])
    // The pane begins anew too: beside an empty workbook it offers to build a season.
    pane.current!.unmount()
    pane.current = mountPane(panePlace.current!, portOf(grid!), { theme: dark ? 'dark' : 'light', onLanguage })
    go('pane')
  }

  async function openFile(file: File) {
    try {
      const { readXlsx } = await import('../workbench/xlsx/readXlsx')
      const read = await readXlsx(new Uint8Array(await file.arrayBuffer()))
      await grid!.open(read.book)
      setFileName(file.name)
      setLost(read.lost)
      if (read.lost.length === 0) {
        go('sheet')
      } else {
        setQuestion({ heading: words.openFile.isOpen(file.name), lines: [words.openFile.cannotShow, ...sentencesFor(read.lost, spoken), words.openFile.fileStays] })
      }
    } catch (error) {
      setQuestion({ heading: words.openFile.notRead(file.name), lines: [error instanceof XlsxProblem ? files.problems[error.code] : messageOf(error), words.openFile.unchanged] })
    }
  }

  async function saveFile() {
    try {
      const { writeXlsx } = await import('../workbench/xlsx/writeXlsx')
      const book = await grid!.book()
      download(await writeXlsx(book), fileName)
      grid!.markSaved(book)
    } catch (error) {
      setQuestion({ heading: words.saveFile.notSaved(fileName), lines: [messageOf(error)] })
    }
  }

  const openFileNow = useRef({ fileName, lost, spoken })
  openFileNow.current = { fileName, lost, spoken }

  /** A copy for people without the add-in. It is called from the pane, at any time later. */
  function giveCopy(bytes: Uint8Array) {
    const { fileName: name, lost: left, spoken: now } = openFileNow.current
    askWhereLost(left, now, async () => download(bytes, name.replace(/(\.xlsx)?$/i, '-without-add-in.xlsx')))
  }

  function askWhereLost(left: readonly Lost[], now: Words, save: () => Promise<void>) {
    if (left.length === 0) return void save()
    const { saveFile: say } = now.workbench
    setQuestion({
      heading: say.leavesOut,
      lines: [say.holdsMore, ...sentencesFor(left, now), say.keepOriginal],
      agree: { label: say.agree, act: save },
    })
  }

  function go(region: Region) {
    if (region !== 'bar') setShown(region)
    // What was hidden takes the keyboard only once it shows.
    requestAnimationFrame(() => {
      if (region === 'sheet') grid?.focus()
      else focusIn(region === 'bar' ? bar.current! : panePlace.current!)
    })
  }

  function regionOf(at: Node): Region {
    if (bar.current!.contains(at)) return 'bar'
    return panePlace.current!.contains(at) ? 'pane' : 'sheet'
  }

  // A question above the sheet, such as why it cannot be shown, takes its own keys.
  const typedEarly = useEarlyKeys(grid !== undefined, (at) => regionOf(at) === 'sheet' && !(at instanceof Element && at.closest('dialog')))

  useEffect(() => {
    const takeKey = (event: KeyboardEvent) => {
      if (event.key === 'F6') go(beside(regionOf(event.target as Node), event.shiftKey ? -1 : 1))
      else if (event.altKey && event.key === 'PageDown') grid?.turnSheet(1)
      else if (event.altKey && event.key === 'PageUp') grid?.turnSheet(-1)
      else return
      event.preventDefault()
      event.stopPropagation()
    }
    // On the window and before anybody else: the grid keeps most keys to itself, and Tab never leaves it.
    window.addEventListener('keydown', takeKey, { capture: true })
    return () => window.removeEventListener('keydown', takeKey, { capture: true })
  }, [grid])

  return (
    <div className="workbench" data-shown={shown}>
      <header className="bar" ref={bar} lang={language}>
        <strong className="name">Sticksheet</strong>
        <button type="button" disabled={grid === undefined} onClick={askForNew}>{words.newWorkbook.button}</button>
        <button type="button" disabled={grid === undefined} onClick={askForFile}>{words.openFile.button}</button>
        <button type="button" disabled={grid === undefined} onClick={() => askWhereLost(lost, spoken, saveFile)}>{words.saveFile.button}</button>
        <input
          ref={filePicker} type="file" hidden accept={`.xlsx,${excelFile}`} aria-label={words.openFile.picker}
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0]
            // So that the same file can be chosen again.
            currentTarget.value = ''
            if (file) void openFile(file)
          }}
        />
        <div className="turns" role="group" aria-label={words.show}>
          <button type="button" aria-pressed={shown === 'sheet'} onClick={() => go('sheet')}>{words.sheet}</button>
          <button type="button" aria-pressed={shown === 'pane'} onClick={() => go('pane')}>{words.pane}</button>
        </div>
        <span className="keys"><kbd>F6</kbd> {words.nextPart}<span className="more">{words.whichParts}</span></span>
        <span className="keys"><kbd>Alt</kbd> <kbd>{words.pageDown}</kbd> {words.nextSheet}</span>
        <button type="button" className="theme" aria-pressed={dark} onClick={() => setDark(!dark)}>{words.dark}</button>
      </header>
      <main className="sheet">
        <div className="grid" ref={gridPlace} />
        {grid === undefined && <p className="veil" role="status" lang={language}>{hasFailed ? words.noSheet : words.gettingReady}</p>}
        <p className="cell" role="status" lang={language} aria-label={words.selectedCell} data-refused={typedEarly || cell?.sentence !== undefined}>
          {typedEarly ? words.typedEarly : cell && cellText(cell, words, decimalMark)}
        </p>
      </main>
      <aside className="functions" ref={panePlace} aria-label={words.pane} tabIndex={-1} />
      {question && <QuestionDialog question={question} words={spoken} close={() => setQuestion(undefined)} />}
    </div>
  )
}

/** The canvas of the grid says nothing to a screen reader, so this line does. */
function cellText({ sheet, address, formula, value, error, sentence }: GridCell, words: Words['workbench'], decimalMark: DecimalMark): string {
  const number = (of: number) => of.toLocaleString(decimalMark === ',' ? 'de-DE' : 'en-US', { maximumSignificantDigits: 12 })
  const shown = error ?? (value === null ? words.empty : typeof value === 'number' ? number(value) : String(value))
  const content = formula === '' ? shown : words.gives(formula, shown)
  return `${sheet}, ${address}: ${content}${sentence === undefined ? '' : `: ${sentence}`}`
}

/** On the first control; while a pane has just begun it has none yet, and the next Tab leads to it from the place itself. */
function focusIn(place: HTMLElement): void {
  const first = place.querySelector<HTMLElement>('button, input:not([hidden]), a[href], [tabindex="0"]') ?? place
  first.focus()
}

function download(bytes: Uint8Array, name: string) {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: excelFile }))
  link.download = name
  link.click()
  // Some browsers read it a while after the click.
  setTimeout(() => URL.revokeObjectURL(link.href), longEnoughToSave)
}

function sentencesFor(lost: readonly Lost[], { files }: Words): string[] {
  return lost.map(({ what, names }) => files.lost[what](names))
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}

createRoot(document.getElementById('workbench')!).render(<Workbench />)
