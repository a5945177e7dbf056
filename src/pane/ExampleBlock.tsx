import { Button, makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import { useId, useState } from 'react'
import type { Column, Definition, Example } from '../core/definition/definition'
import { exampleFormula } from '../derived/exampleFormula'
import { bibliography, type Source } from '../sources/bibliography'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { isEmptyCell, placeText } from './cellText'
import { portSentence } from './portSentence'

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
  formula: {
    padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalS}`,
    backgroundColor: tokens.colorNeutralBackground4,
    borderRadius: tokens.borderRadiusMedium,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
  wide: { overflowX: 'auto' },
  table: { borderCollapse: 'collapse', fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  cell: {
    padding: `${tokens.spacingVerticalXXS} ${tokens.spacingHorizontalS} ${tokens.spacingVerticalXXS} 0`,
    textAlign: 'left',
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
  },
  number: { textAlign: 'right', fontVariantNumeric: 'tabular-nums' },
  small: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  button: { alignSelf: 'flex-start' },
  done: { color: tokens.colorBrandForeground1 },
  refused: { color: tokens.colorStatusDangerForeground1 },
})

/** A worked example, and the button that puts it into the sheet. */
export function ExampleBlock({ definition, example, port, cell }: ExampleBlockProps) {
  const styles = useStyles()
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
      <code id={formulaId} className={styles.formula}>{formula}</code>
      {definition.result.columns === undefined
        ? <p className={styles.line}>gives {givesText(example.gives)} {definition.result.unit}</p>
        : <ExampleTable columns={definition.result.columns} rows={rowsOf(example.gives)} />}
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

/** A table as it will stand in the sheet. */
function ExampleTable({ columns, rows }: { readonly columns: readonly Column[]; readonly rows: Rows }) {
  const styles = useStyles()
  return (
    <div className={styles.wide} tabIndex={0} role="region" aria-label="The table that it gives">
      <table className={styles.table}>
        <thead>
          <tr>{columns.map(({ heading, unit }) => <th key={heading} scope="col" title={unit} className={styles.cell}>{heading}</th>)}</tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>{row.map((value, column) => <td key={column} className={mergeClasses(styles.cell, typeof value === 'number' && styles.number)}>{valueText(value)}</td>)}</tr>
          ))}
        </tbody>
      </table>
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

/** Enough digits to compare with the cell, and no tail of a division. */
const shownDigits = 10

function givesText(gives: Example['gives']): string {
  return rowsOf(gives).map((row) => row.map(valueText).join(', ')).join('; ')
}

function valueText(value: number | string): string {
  return typeof value === 'number' ? value.toLocaleString('en-US', { maximumSignificantDigits: shownDigits }) : value
}

function sourceText(key: string): string {
  const source: Source | undefined = Object.hasOwn(bibliography, key) ? bibliography[key as keyof typeof bibliography] : undefined
  return source === undefined ? key : `${source.title}. ${source.detail}.`
}
