import { Button, Field, Input, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useEffect, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import type { Parameter } from '../core/definition/parameter'
import { callArguments } from '../derived/callArguments'
import { defaultText, takesText } from '../wording/en/parameters'
import { quotedSheet } from '../derived/reference'
import type { Tried } from '../derived/tryCall'
import { textOfArgument } from '../derived/typedArgument'
import type { CellPlace, SelectedCell, WorkbookPort } from '../workbook/port'
import { isEmptyCell, placeText } from './cellText'
import { portSentence } from './portSentence'
import { TriedResult } from './TriedResult'
import { useFormCall } from './useFormCall'
import { usePaneStyles } from './usePaneStyles'

interface FunctionFormProps {
  readonly definition: Definition
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
}

type Outcome = { readonly done: boolean; readonly sentence: string }

const useStyles = makeStyles({
  form: { display: 'flex', flexDirection: 'column', rowGap: tokens.spacingVerticalM },
  name: { fontFamily: tokens.fontFamilyMonospace, fontSize: tokens.fontSizeBase200, fontWeight: tokens.fontWeightSemibold },
  row: { display: 'flex', columnGap: tokens.spacingHorizontalXS },
  input: { flexGrow: 1, minWidth: 0 },
  pick: { flexShrink: 0, minWidth: 'auto' },
  small: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  buttons: { display: 'flex', flexWrap: 'wrap', gap: tokens.spacingHorizontalS },
  done: { color: tokens.colorBrandForeground1 },
  refused: { color: tokens.colorStatusDangerForeground1 },
})

/** A call to fill in: its arguments typed or picked from the sheet, its result while one types, and the cell that it goes into. */
export function FunctionForm({ definition, port, cell }: FunctionFormProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const parameters = Object.entries(definition.parameters)
  const [texts, setTexts] = useState<readonly string[]>(() => parameters.map(() => ''))
  const [target, setTarget] = useState<CellPlace>()
  const [outcome, setOutcome] = useState<Outcome>()
  const inCell = cell && callArguments(cell.formula, definition.id)
  const cellKey = cell && `${cell.sheet}!${cell.address}`

  // A cell that holds this very call is opened for change. Typing goes on while other cells are selected to be picked.
  useEffect(() => {
    if (cell === undefined) return
    if (inCell !== undefined) {
      setTexts(parameters.map(([, parameter], index) => textOfArgument(parameter, inCell[index] ?? '')))
      setTarget({ sheet: cell.sheet, address: cell.address })
    } else if (target === undefined) {
      setTarget({ sheet: cell.sheet, address: cell.address })
    }
    // Only another cell, or another formula in it, begins anew.
  }, [cellKey, cell?.formula])

  const { formula, tried, needsSheet, failure } = useFormCall(definition, texts, target?.sheet ?? cell?.sheet ?? '', port)
  const problems = tried !== undefined && 'problems' in tried ? tried.problems : []

  function change(index: number, text: string) {
    setOutcome(undefined)
    setTexts((before) => before.map((one, at) => (at === index ? text : one)))
  }

  async function pick(index: number) {
    try {
      const { sheet, address } = await port.selectedRange()
      change(index, sheet === target?.sheet ? address : `${quotedSheet(sheet)}!${address}`)
    } catch (error) {
      setOutcome({ done: false, sentence: portSentence(error) })
    }
  }

  async function put() {
    setOutcome(undefined)
    try {
      await port.putFormula(formula, target)
      setOutcome({ done: true, sentence: target === undefined ? 'Put into the selected cell.' : `Put into ${placeText(target)}.` })
    } catch (error) {
      setOutcome({ done: false, sentence: portSentence(error) })
    }
  }

  const isTargetSelected = cell !== undefined && target !== undefined && cell.sheet === target.sheet && cell.address === target.address
  return (
    <form className={styles.form} aria-label={`STICK.${definition.id}`} onSubmit={(event) => { event.preventDefault(); void put() }}>
      {parameters.map(([name, parameter], index) => {
        const own = problems.filter((problem) => problem.parameter === name).map(({ sentence }) => sentence)
        return (
          <Field
            key={name}
            label={<span className={styles.name}>{name}</span>}
            required={!parameter.optional}
            hint={`${parameter.text}: ${takesText(parameter)}`}
            {...(own.length > 0 && { validationMessage: own.join(' '), validationState: 'error' as const })}
          >
            {(field) => (
              <span className={styles.row}>
                <Input {...field} className={styles.input} size="small" autoComplete="off" value={texts[index] ?? ''} placeholder={placeholder(definition, parameter, index)} onChange={(_event, data) => change(index, data.value)} />
                <Button className={styles.pick} size="small" onClick={() => void pick(index)} aria-label={`Take the selection for ${name}`} title="Take the selected cells">Take</Button>
              </span>
            )}
          </Field>
        )
      })}
      <code className={pane.formula}>{formula}</code>
      <TriedResult definition={definition} tried={tried} needsSheet={needsSheet} />
      {failure !== '' && <p role="status" className={mergeClasses(styles.small, styles.refused)}>{failure}</p>}
      <p className={styles.small}>{targetText(target, cell, isTargetSelected)}</p>
      <div className={styles.buttons}>
        <Button type="submit" appearance="primary" size="small" disabled={!isComplete(tried, needsSheet)}>
          {inCell !== undefined && isTargetSelected ? 'Change the formula' : 'Put into the sheet'}
        </Button>
        {!isTargetSelected && cell !== undefined && <Button size="small" onClick={() => setTarget({ sheet: cell.sheet, address: cell.address })}>Put into {placeText(cell)} instead</Button>}
        {texts.some((text) => text !== '') && <Button size="small" onClick={() => { setTexts(parameters.map(() => '')); setOutcome(undefined) }}>Clear the form</Button>}
      </div>
      <p role="status" className={mergeClasses(styles.small, outcome !== undefined && (outcome.done ? styles.done : styles.refused))}>{outcome?.sentence}</p>
    </form>
  )
}

/** A formula that is refused would only show an error in the sheet; one that has no answer says something. */
function isComplete(tried: Tried | undefined, needsSheet: boolean): boolean {
  if (needsSheet) return true
  if (tried === undefined) return false
  return !('problems' in tried) || (tried.missing.length === 0 && tried.problems.every(({ parameter }) => parameter === undefined))
}

/** What stands there if nothing is typed, or what the first example has there. */
function placeholder(definition: Definition, parameter: Parameter, index: number): string {
  const fallback = defaultText(parameter)
  if (fallback !== undefined) return `${fallback} if left out`
  const given = definition.examples[0]?.given[index]
  if (given === null || given === undefined) return parameter.optional ? 'may be left out' : ''
  return `such as ${typeof given === 'object' ? given.join('; ') : given}`
}

function targetText(target: CellPlace | undefined, cell: SelectedCell | undefined, isTargetSelected: boolean): string {
  if (target === undefined) return 'Select the cell in which the result shall stand.'
  if (isTargetSelected && cell !== undefined && !isEmptyCell(cell)) return `It goes into ${placeText(target)} and replaces what stands there.`
  return `It goes into ${placeText(target)}.`
}
