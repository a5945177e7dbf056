import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { lazy, Suspense, useId, useRef } from 'react'
import type { Definition } from '../core/definition/definition'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { useWords } from './useWords'

interface FunctionEntryProps {
  readonly definition: Definition
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
  readonly open: boolean
  readonly usedBySelectedCell: boolean
  readonly onToggle: () => void
}

const useStyles = makeStyles({
  // What is scrolled out of sight is laid out when it comes into sight.
  entry: { borderLeft: `3px solid transparent`, contentVisibility: 'auto', containIntrinsicBlockSize: 'auto 60px' },
  openEntry: { borderLeftColor: tokens.colorBrandStroke1, backgroundColor: tokens.colorNeutralBackground2 },
  heading: { margin: 0 },
  row: {
    display: 'block',
    width: '100%',
    padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalM} ${tokens.spacingVerticalXS} calc(${tokens.spacingHorizontalM} - 3px)`,
    border: 'none',
    background: 'none',
    font: 'inherit',
    color: 'inherit',
    textAlign: 'start',
    cursor: 'pointer',
    ':hover': { backgroundColor: tokens.colorNeutralBackground1Hover },
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: '-2px' },
  },
  id: { display: 'flex', justifyContent: 'space-between', columnGap: tokens.spacingHorizontalS },
  name: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorBrandForeground1,
  },
  mark: {
    flexGrow: 1,
    fontWeight: tokens.fontWeightRegular,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    color: tokens.colorNeutralForeground2,
    textAlign: 'end',
  },
  arrow: { color: tokens.colorNeutralForeground3, lineHeight: tokens.lineHeightBase300 },
  openArrow: { transform: 'rotate(90deg)' },
  summary: {
    display: 'block',
    fontWeight: tokens.fontWeightRegular,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground1,
  },
})

const FunctionText = lazy(async () => ({ default: (await import('./FunctionText')).FunctionText }))

/** One function of the list: its name and summary, which open and close its full text. */
export function FunctionEntry({ definition, port, cell, open, usedBySelectedCell, onToggle }: FunctionEntryProps) {
  const styles = useStyles()
  const textId = useId()
  const item = useRef<HTMLLIElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const { functions: say, frame } = useWords()

  /** As much of the entry as the list has room for, from its name on: a text that is longer than the list would else show its end. */
  function bringIntoSight() {
    item.current?.scrollIntoView?.({ block: 'nearest' })
    heading.current?.scrollIntoView?.({ block: 'nearest' })
  }

  return (
    <li ref={item} data-function={definition.id} className={mergeClasses(styles.entry, open && styles.openEntry)}>
      <h4 ref={heading} className={styles.heading}>
        <button
          type="button"
          className={styles.row}
          aria-expanded={open}
          aria-controls={open ? textId : undefined}
          onClick={onToggle}
        >
          <span className={styles.id}>
            <span className={styles.name}>{definition.id}</span>
            {usedBySelectedCell && <span className={styles.mark}>{say.usedHere}</span>}
            <span aria-hidden="true" className={mergeClasses(styles.arrow, open && styles.openArrow)}>
              ›
            </span>
          </span>{' '}
          <span className={styles.summary}>{definition.summary}</span>
        </button>
      </h4>
      {open && (
        <Suspense fallback={<p role="status">{frame.gettingReady.Functions}</p>}>
          <FunctionText id={textId} definition={definition} port={port} cell={cell} onShown={bringIntoSight} />
        </Suspense>
      )}
    </li>
  )
}
