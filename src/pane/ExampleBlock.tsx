import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useId, useState } from 'react'
import type { Definition, Example } from '../core/definition/definition'
import { exampleFormula } from '../derived/exampleFormula'
import { bibliography, type Source } from '../sources/bibliography'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import type { Words } from '../wording/words'
import { isEmptyCell } from './isEmptyCell'
import { ResultTable } from './ResultTable'
import { useNumberText } from './settings/useNumberText'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface ExampleBlockProps {
  readonly definition: Definition
  readonly example: Example
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
}

type PutReport = { readonly done: boolean; readonly sentence: string }

const useStyles = makeStyles({
  example: {
    display: 'flex',
    flexDirection: 'column',
    rowGap: tokens.spacingVerticalXS,
    paddingBottom: tokens.spacingVerticalS,
  },
  line: { margin: 0 },
  small: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
  button: { alignSelf: 'flex-start' },
  done: { color: tokens.colorBrandForeground1 },
  refused: { color: tokens.colorStatusDangerForeground3 },
})

/** A worked example, and the button that puts it into the sheet. */
export function ExampleBlock({ definition, example, port, cell }: ExampleBlockProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const words = useWords()
  const { functions: say, frame } = words
  const portSentence = usePortSentence()
  const numbers = useNumberText()
  const formulaId = useId()
  const noteId = useId()
  const [report, setReport] = useState<PutReport>()
  const formula = exampleFormula(definition, example)

  async function put() {
    setReport(undefined)
    try {
      await port.putFormula(formula)
      setReport({ done: true, sentence: say.putInto(cell === undefined ? frame.selectedCell : frame.place(cell)) })
    } catch (error) {
      setReport({ done: false, sentence: portSentence(error) })
    }
  }

  return (
    <div className={styles.example}>
      <p className={styles.line}>{example.text}</p>
      <code id={formulaId} className={pane.formula}>
        {formula}
      </code>
      {definition.result.columns === undefined ? (
        <p className={styles.line}>
          {say.gives}{' '}
          {rowsOf(example.gives)
            .map((row) => row.map((one) => numbers.measured(one, definition.result.unit, 'short')).join(', '))
            .join('; ')}
        </p>
      ) : (
        <ResultTable columns={Object.values(definition.result.columns)} rows={rowsOf(example.gives)} />
      )}
      <p className={styles.small}>{say.source(sourceText(example.source))}</p>
      <Button
        className={styles.button}
        appearance="primary"
        size="small"
        aria-describedby={`${formulaId} ${noteId}`}
        onClick={put}
      >
        {say.putIntoSelected}
      </Button>
      <p id={noteId} className={styles.small}>
        {targetText(cell, definition, example.gives, words)}
      </p>
      <p
        role="status"
        className={mergeClasses(styles.small, report !== undefined && (report.done ? styles.done : styles.refused))}
      >
        {report?.sentence}
      </p>
    </div>
  )
}

type Rows = readonly (readonly (number | string)[])[]

function rowsOf(gives: Example['gives']): Rows {
  return typeof gives === 'number' ? [[gives]] : gives
}

function targetText(
  cell: SelectedCell | undefined,
  { result }: Definition,
  gives: Example['gives'],
  { functions: say, frame }: Words,
): string {
  const headings = result.columns === undefined ? 0 : 1
  const size = typeof gives === 'number' ? '' : ` ${say.fills(gives.length + headings, gives[0]?.length ?? 0)}`
  if (cell === undefined) return say.selectFirst + size
  return (isEmptyCell(cell) ? say.isEmpty(frame.place(cell)) : say.replaces(frame.place(cell))) + size
}

function sourceText(key: string): string {
  const source: Source | undefined = Object.hasOwn(bibliography, key)
    ? bibliography[key as keyof typeof bibliography]
    : undefined
  return source === undefined ? key : `${source.title}. ${source.detail}.`
}
