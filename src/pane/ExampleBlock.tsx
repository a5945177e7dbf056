import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useId, useState } from 'react'
import type { Definition, Example } from '../core/definition/definition'
import { exampleFormula } from '../derived/exampleFormula'
import { bibliography, type Source } from '../sources/bibliography'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { isEmptyCell, placeText } from './cellText'
import { shortText } from './numberText'
import { portSentence } from './portSentence'
import { ResultTable } from './ResultTable'
import { usePaneStyles } from './usePaneStyles'

interface ExampleBlockProps {
  readonly definition: Definition
  readonly example: Example
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
}

type Outcome = { readonly done: boolean; readonly sentence: string }

const useStyles = makeStyles({
  example: { display: 'flex', flexDirection: 'column', rowGap: tokens.spacingVerticalXS, paddingBottom: tokens.spacingVerticalS },
  line: { margin: 0 },
  small: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  button: { alignSelf: 'flex-start' },
  done: { color: tokens.colorBrandForeground1 },
  refused: { color: tokens.colorStatusDangerForeground1 },
})

/** A worked example, and the button that puts it into the sheet. */
export function ExampleBlock({ definition, example, port, cell }: ExampleBlockProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const formulaId = useId()
  const noteId = useId()
  const [outcome, setOutcome] = useState<Outcome>()
  const formula = exampleFormula(definition, example)

  async function put() {
    setOutcome(undefined)
    try {
      await port.putFormula(formula)
      setOutcome({ done: true, sentence: `Put into ${cell === undefined ? 'the selected cell' : placeText(cell)}.` })
    } catch (error) {
      setOutcome({ done: false, sentence: portSentence(error) })
    }
  }

  return (
    <div className={styles.example}>
      <p className={styles.line}>{example.text}</p>
      <code id={formulaId} className={pane.formula}>{formula}</code>
      {definition.result.columns === undefined
        ? <p className={styles.line}>gives {givesText(example.gives)} {definition.result.unit}</p>
        : <ResultTable columns={definition.result.columns} rows={rowsOf(example.gives)} />}
      <p className={styles.small}>Source: {sourceText(example.source)}</p>
      <Button className={styles.button} appearance="primary" size="small" aria-describedby={`${formulaId} ${noteId}`} onClick={put}>
        Put into the selected cell
      </Button>
      <p id={noteId} className={styles.small}>{targetText(cell, definition, example.gives)}</p>
      <p role="status" className={mergeClasses(styles.small, outcome !== undefined && (outcome.done ? styles.done : styles.refused))}>
        {outcome?.sentence}
      </p>
    </div>
  )
}

type Rows = readonly (readonly (number | string)[])[]

function rowsOf(gives: Example['gives']): Rows {
  return typeof gives === 'number' ? [[gives]] : gives
}

function targetText(cell: SelectedCell | undefined, { result }: Definition, gives: Example['gives']): string {
  const headings = result.columns === undefined ? 0 : 1
  const size = typeof gives === 'number' ? '' : ` It fills ${counted(gives.length + headings, 'row')} and ${counted(gives[0]?.length ?? 0, 'column')} from there.`
  if (cell === undefined) return `Select a cell in the sheet first.${size}`
  return isEmptyCell(cell) ? `${placeText(cell)} is empty.${size}` : `This replaces what ${placeText(cell)} holds now.${size}`
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`
}

function givesText(gives: Example['gives']): string {
  return rowsOf(gives).map((row) => row.map(shortText).join(', ')).join('; ')
}

function sourceText(key: string): string {
  const source: Source | undefined = Object.hasOwn(bibliography, key) ? bibliography[key as keyof typeof bibliography] : undefined
  return source === undefined ? key : `${source.title}. ${source.detail}.`
}
