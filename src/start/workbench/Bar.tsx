import { type RefObject, useRef } from 'react'
import type { Words } from '../../wording/words'
import { excelFile } from './diskFiles'
import { FileState } from './FileState'
import { NewerVersion } from './NewerVersion'
import type { Files } from './useFiles'
import type { Shown } from './useRegions'

interface BarProps {
  readonly place: RefObject<HTMLElement | null>
  readonly words: Words
  /** Whether there is a sheet to open, save or replace. */
  readonly isReady: boolean
  readonly files: Files
  readonly shown: Shown
  readonly dark: boolean
  readonly onShow: (part: Shown) => void
  readonly onDark: (dark: boolean) => void
}

/** The bar above the sheet and the pane. */
export function Bar({ place, words: { language, workbench: words }, isReady, files, shown, dark, ...on }: BarProps) {
  const picker = useRef<HTMLInputElement>(null)
  const choose = () => picker.current!.click()
  return (
    <header className="bar" ref={place} lang={language}>
      <strong className="name">Sticksheet</strong>
      <button type="button" disabled={!isReady} onClick={files.askForNew}>
        {words.newWorkbook.button}
      </button>
      <button type="button" disabled={!isReady} onClick={() => files.askForFile(choose)}>
        {words.openFile.button}
      </button>
      <button type="button" disabled={!isReady} onClick={files.save}>
        {words.saveFile.button}
      </button>
      {files.saveAs && (
        <button type="button" disabled={!isReady} onClick={files.saveAs}>
          {words.saveFile.as}
        </button>
      )}
      <FileState words={words} files={files} />
      <NewerVersion words={words} isReady={isReady} files={files} />
      <input
        ref={picker}
        type="file"
        hidden
        accept={`.xlsx,${excelFile}`}
        aria-label={words.openFile.picker}
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0]
          // So that the same file can be chosen again.
          currentTarget.value = ''
          if (file) void files.open(file)
        }}
      />
      <div className="turns" role="group" aria-label={words.show}>
        <button type="button" aria-pressed={shown === 'sheet'} onClick={() => on.onShow('sheet')}>
          {words.sheet}
        </button>
        <button type="button" aria-pressed={shown === 'pane'} onClick={() => on.onShow('pane')}>
          {words.pane}
        </button>
      </div>
      <span className="keys">
        <kbd>F6</kbd> {words.nextPart}
        <span className="more">{words.whichParts}</span>
      </span>
      <span className="keys">
        <kbd>Alt</kbd> <kbd>{words.pageDown}</kbd> {words.nextSheet}
      </span>
      <button type="button" className="theme" aria-pressed={dark} onClick={() => on.onDark(!dark)}>
        {words.dark}
      </button>
    </header>
  )
}
