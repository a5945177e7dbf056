import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useState } from 'react'
import type { Definition } from '../core/definition/definition'
import type { Tried } from '../derived/tryCall'
import { quotedSheet } from '../formula/reference'
import type { Words } from '../wording/words'
import type { CellPlace } from '../workbook/cellPlace'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { ArgumentField } from './ArgumentField'
import { isEmptyCell } from './isEmptyCell'
import { TriedResult } from './TriedResult'
import { useFormCall } from './useFormCall'
import { useFormEntry, type FormEntry } from './useFormEntry'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface FunctionFormProps {
  readonly definition: Definition
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
}

type PutReport = { readonly done: boolean; readonly sentence: string }

const useStyles = makeStyles({
  form: { display: 'flex', flexDirection: 'column', rowGap: tokens.spacingVerticalM },
  small: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
  buttons: { display: 'flex', flexWrap: 'wrap', gap: tokens.spacingHorizontalS },
  done: { color: tokens.colorBrandForeground1 },
  refused: { color: tokens.colorStatusDangerForeground3 },
})

/** A call to fill in: its arguments typed or picked from the sheet, its result while one types, and the cell that it goes into. */
export function FunctionForm({ definition, port, cell }: FunctionFormProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const words = useWords()
  const entry = useFormEntry(definition, cell)
  const { texts, target } = entry
  const call = useFormCall(definition, texts, target?.sheet ?? cell?.sheet ?? '', port)
  const { report, forget, pick, put } = usePortActions(port, entry, call.formula)
  const problems = call.tried !== undefined && 'problems' in call.tried ? call.tried.problems : []
  return (
    <form
      className={styles.form}
      aria-label={`STICK.${definition.id}`}
      onSubmit={(event) => {
        event.preventDefault()
        void put()
      }}
    >
      {Object.entries(definition.parameters).map(([name, parameter], index) => (
        <ArgumentField
          key={name}
          name={name}
          parameter={parameter}
          example={definition.examples[0]?.given[index]}
          text={texts[index] ?? ''}
          problems={problems.filter((problem) => problem.parameter === name).map(({ sentence }) => sentence)}
          onChange={(text) => {
            forget()
            entry.change(index, text)
          }}
          onPick={() => void pick(index)}
        />
      ))}
      <code className={pane.formula}>{call.formula}</code>
      <TriedResult definition={definition} tried={call.tried} needsSheet={call.needsSheet} />
      {call.failure !== '' && (
        <p role="status" className={mergeClasses(styles.small, styles.refused)}>
          {call.failure}
        </p>
      )}
      <p className={styles.small}>{targetText(target, cell, words)}</p>
      <FormButtons entry={entry} cell={cell} isComplete={isComplete(call.tried, call.needsSheet)} onClear={forget} />
      <p
        role="status"
        className={mergeClasses(styles.small, report !== undefined && (report.done ? styles.done : styles.refused))}
      >
        {report?.sentence}
      </p>
    </form>
  )
}

/** What the form asks of the workbook, and what came of it. */
function usePortActions(port: WorkbookPort, { target, change }: FormEntry, formula: string) {
  const { functions: say, frame } = useWords()
  const portSentence = usePortSentence()
  const [report, setReport] = useState<PutReport>()
  const forget = () => setReport(undefined)

  async function pick(index: number) {
    try {
      const { sheet, address } = await port.selectedRange()
      forget()
      change(index, sheet === target?.sheet ? address : `${quotedSheet(sheet)}!${address}`)
    } catch (error) {
      setReport({ done: false, sentence: portSentence(error) })
    }
  }

  async function put() {
    forget()
    try {
      await port.putFormula(formula, target)
      setReport({ done: true, sentence: say.putInto(target === undefined ? frame.selectedCell : frame.place(target)) })
    } catch (error) {
      setReport({ done: false, sentence: portSentence(error) })
    }
  }

  return { report, forget, pick, put }
}

interface FormButtonsProps {
  readonly entry: FormEntry
  readonly cell: SelectedCell | undefined
  readonly isComplete: boolean
  readonly onClear: () => void
}

function FormButtons({ entry, cell, isComplete, onClear }: FormButtonsProps) {
  const styles = useStyles()
  const { functions: say, frame } = useWords()
  const isSelected = isTargetSelected(entry.target, cell)
  return (
    <div className={styles.buttons}>
      <Button type="submit" appearance="primary" size="small" disabled={!isComplete}>
        {entry.isInCell && isSelected ? say.changeFormula : say.putIntoSheet}
      </Button>
      {!isSelected && cell !== undefined && (
        <Button size="small" onClick={() => entry.aimAt({ sheet: cell.sheet, address: cell.address })}>
          {say.putInstead(frame.place(cell))}
        </Button>
      )}
      {entry.texts.some((text) => text !== '') && (
        <Button
          size="small"
          onClick={() => {
            entry.clear()
            onClear()
          }}
        >
          {say.clearForm}
        </Button>
      )}
    </div>
  )
}

/** A formula that is refused would only show an error in the sheet; one that has no answer says something. */
function isComplete(tried: Tried | undefined, needsSheet: boolean): boolean {
  if (needsSheet) return true
  if (tried === undefined) return false
  return (
    !('problems' in tried) ||
    (tried.missing.length === 0 && tried.problems.every(({ parameter }) => parameter === undefined))
  )
}

function isTargetSelected(target: CellPlace | undefined, cell: SelectedCell | undefined): boolean {
  return cell !== undefined && target !== undefined && cell.sheet === target.sheet && cell.address === target.address
}

function targetText(
  target: CellPlace | undefined,
  cell: SelectedCell | undefined,
  { functions: say, frame: { place } }: Words,
): string {
  if (target === undefined) return say.selectTarget
  if (cell !== undefined && isTargetSelected(target, cell) && !isEmptyCell(cell))
    return say.goesIntoReplacing(place(target))
  return say.goesInto(place(target))
}
