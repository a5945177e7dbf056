import { Button, Field, Input, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useEffect, useRef, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import type { Parameter } from '../core/definition/parameter'
import { callArguments } from '../formula/callArguments'
import { quotedSheet } from '../formula/reference'
import type { Tried } from '../derived/tryCall'
import { commaNumberOf } from '../formula/decimalComma'
import { remarked, textOfArgument } from './typedArgument'
import type { DecimalMark } from '../core/quantity/decimalMark'
import type { Words } from '../wording/words'
import type { CellPlace, SelectedCell, WorkbookPort } from '../workbook/port'
import { isEmptyCell } from './isEmptyCell'
import { useSettings } from './settings/useSettings'
import { TriedResult } from './TriedResult'
import { useFormCall } from './useFormCall'
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
  name: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightSemibold,
  },
  row: { display: 'flex', columnGap: tokens.spacingHorizontalXS },
  input: { flexGrow: 1, minWidth: 0 },
  pick: { flexShrink: 0, minWidth: 'auto' },
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
  const {
    functions: say,
    frame: { place },
  } = words
  const portSentence = usePortSentence()
  const { decimalMark } = useSettings().settings
  const parameters = Object.entries(definition.parameters)
  const [texts, setTexts] = useState<readonly string[]>(() => parameters.map(() => ''))
  const [target, setTarget] = useState<CellPlace>()
  const [report, setReport] = useState<PutReport>()
  const inCell = cell && callArguments(cell.formula, definition.id)
  const cellKey = cell && `${cell.sheet}!${cell.address}`

  // A cell that holds this very call is opened for change. Typing goes on while other cells are selected to be picked.
  useEffect(() => {
    if (cell === undefined) return
    if (inCell !== undefined) {
      setTexts(parameters.map(([, parameter], index) => textOfArgument(parameter, inCell[index] ?? '', decimalMark)))
      setTarget({ sheet: cell.sheet, address: cell.address })
    } else if (target === undefined) {
      setTarget({ sheet: cell.sheet, address: cell.address })
    }
    // Only another cell, or another formula in it, begins anew.
  }, [cellKey, cell?.formula])

  const typedWith = useRef(decimalMark)
  // What is typed already means the same when the setting changes.
  useEffect(() => {
    const before = typedWith.current
    typedWith.current = decimalMark
    if (before !== decimalMark)
      setTexts((typed) => typed.map((text, index) => remarked(parameters[index]![1], text, before, decimalMark)))
  }, [decimalMark])

  const { formula, tried, needsSheet, failure } = useFormCall(
    definition,
    texts,
    target?.sheet ?? cell?.sheet ?? '',
    port,
  )
  const problems = tried !== undefined && 'problems' in tried ? tried.problems : []

  function change(index: number, text: string) {
    setReport(undefined)
    setTexts((before) => before.map((one, at) => (at === index ? text : one)))
  }

  async function pick(index: number) {
    try {
      const { sheet, address } = await port.selectedRange()
      change(index, sheet === target?.sheet ? address : `${quotedSheet(sheet)}!${address}`)
    } catch (error) {
      setReport({ done: false, sentence: portSentence(error) })
    }
  }

  async function put() {
    setReport(undefined)
    try {
      await port.putFormula(formula, target)
      setReport({ done: true, sentence: say.putInto(target === undefined ? words.frame.selectedCell : place(target)) })
    } catch (error) {
      setReport({ done: false, sentence: portSentence(error) })
    }
  }

  const isTargetSelected =
    cell !== undefined && target !== undefined && cell.sheet === target.sheet && cell.address === target.address
  return (
    <form
      className={styles.form}
      aria-label={`STICK.${definition.id}`}
      onSubmit={(event) => {
        event.preventDefault()
        void put()
      }}
    >
      {parameters.map(([name, parameter], index) => {
        const own = problems.filter((problem) => problem.parameter === name).map(({ sentence }) => sentence)
        return (
          <Field
            key={name}
            label={<span className={styles.name}>{name}</span>}
            required={!parameter.optional}
            hint={`${parameter.text}: ${words.parameters.takesText(parameter, decimalMark)}`}
            {...(own.length > 0 && { validationMessage: own.join(' '), validationState: 'error' as const })}
          >
            {(field) => (
              <span className={styles.row}>
                <Input
                  {...field}
                  className={styles.input}
                  size="small"
                  autoComplete="off"
                  value={texts[index] ?? ''}
                  placeholder={placeholder(definition, parameter, index, words, decimalMark)}
                  onChange={(_event, data) => change(index, data.value)}
                />
                <Button
                  className={styles.pick}
                  size="small"
                  onClick={() => void pick(index)}
                  aria-label={say.takeFor(name)}
                  title={say.takeHint}
                >
                  {say.take}
                </Button>
              </span>
            )}
          </Field>
        )
      })}
      <code className={pane.formula}>{formula}</code>
      <TriedResult definition={definition} tried={tried} needsSheet={needsSheet} />
      {failure !== '' && (
        <p role="status" className={mergeClasses(styles.small, styles.refused)}>
          {failure}
        </p>
      )}
      <p className={styles.small}>{targetText(target, cell, isTargetSelected, words)}</p>
      <div className={styles.buttons}>
        <Button type="submit" appearance="primary" size="small" disabled={!isComplete(tried, needsSheet)}>
          {inCell !== undefined && isTargetSelected ? say.changeFormula : say.putIntoSheet}
        </Button>
        {!isTargetSelected && cell !== undefined && (
          <Button size="small" onClick={() => setTarget({ sheet: cell.sheet, address: cell.address })}>
            {say.putInstead(place(cell))}
          </Button>
        )}
        {texts.some((text) => text !== '') && (
          <Button
            size="small"
            onClick={() => {
              setTexts(parameters.map(() => ''))
              setReport(undefined)
            }}
          >
            {say.clearForm}
          </Button>
        )}
      </div>
      <p
        role="status"
        className={mergeClasses(styles.small, report !== undefined && (report.done ? styles.done : styles.refused))}
      >
        {report?.sentence}
      </p>
    </form>
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

/** What stands there if nothing is typed, or what the first example has there. */
function placeholder(
  definition: Definition,
  parameter: Parameter,
  index: number,
  { functions: say, parameters }: Words,
  mark: DecimalMark,
): string {
  const fallback = parameters.defaultText(parameter, mark)
  if (fallback !== undefined) return say.ifLeftOut(fallback)
  const given = definition.examples[0]?.given[index]
  if (given === null || given === undefined) return parameter.optional ? say.mayBeLeftOut : ''
  const typed = (one: number | string) =>
    mark === ',' && parameter.takes === 'number' ? commaNumberOf(String(one)) : String(one)
  return say.suchAs(typeof given === 'object' ? given.map(typed).join('; ') : typed(given))
}

function targetText(
  target: CellPlace | undefined,
  cell: SelectedCell | undefined,
  isTargetSelected: boolean,
  { functions: say, frame: { place } }: Words,
): string {
  if (target === undefined) return say.selectTarget
  if (isTargetSelected && cell !== undefined && !isEmptyCell(cell)) return say.goesIntoReplacing(place(target))
  return say.goesInto(place(target))
}
