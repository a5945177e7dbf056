import { Button, Field, makeStyles, mergeClasses, Select, tokens } from '@fluentui/react-components'
import { useMemo, useState, type ReactNode } from 'react'
import type { ChartedCell, ChartedId } from '../workbook/compare/chartedCells'
import { sheetChartOf } from '../workbook/compare/sheetChartOf'
import type { OpenBook } from '../workbook/openBook'
import type { CellPlace } from '../workbook/cellPlace'
import type { WorkbookPort } from '../workbook/port'
import type { SheetChart } from '../workbook/sheetChart'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

/** The cells that one chart shows. */
export interface Choice {
  readonly cells: readonly ChartedCell[]
  readonly label: string
}

interface ChartPartProps {
  /** The hint is what to do where no cell has such a call. */
  readonly texts: { readonly title: string; readonly hint: string }
  readonly port: WorkbookPort
  readonly book: OpenBook
  readonly choices: readonly Choice[]
  readonly chart: (cells: readonly ChartedCell[]) => ReactNode
  /** The function that fills a table from which a chart can be put into the sheet itself. */
  readonly tableFunction: ChartedId
}

const useStyles = makeStyles({
  subheading: {
    margin: `${tokens.spacingVerticalXL} 0 ${tokens.spacingVerticalXS}`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  put: { marginTop: tokens.spacingVerticalXS },
  cell: {
    display: 'flex',
    flexWrap: 'wrap',
    alignItems: 'end',
    gap: tokens.spacingHorizontalS,
    marginBottom: tokens.spacingVerticalS,
  },
})

/** One chart, with the choice of the cell that it shows and a way to that cell. */
export function ChartPart({ texts, port, book, choices, chart, tableFunction }: ChartPartProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { compare: say } = useWords()
  const [place, setPlace] = useState(0)
  const chosen = choices[place] ?? choices[0]
  // Drawn again when another cell is chosen or the workbook was read again, not at every letter of a sentence.
  const figure = useMemo(() => chosen && chart(chosen.cells), [chosen?.cells[0], chosen?.cells.length])
  const sheetChart = useMemo(
    () => chosen && port.addChart && sheetChartIn(chosen.cells, tableFunction, book),
    [chosen?.cells[0], chosen?.cells.length],
  )
  const { said, go, put } = useChartActions(port, tableFunction)
  return (
    <>
      <h3 className={styles.subheading}>{texts.title}</h3>
      {chosen === undefined && <p className={pane.line}>{texts.hint}</p>}
      {chosen !== undefined && (
        <div className={styles.cell}>
          <CellChoice title={texts.title} choices={choices} chosen={chosen} onChoose={setPlace} />
          <Button size="small" onClick={() => go(chosen.cells[0]!)} aria-label={say.goTo(chosen.label)}>
            {say.goToTheCell}
          </Button>
        </div>
      )}
      {figure}
      {chosen !== undefined && sheetChart !== undefined && (
        <Button
          size="small"
          className={styles.put}
          onClick={() => put(chosen.cells)}
          aria-label={say.putChartOf(chosen.label)}
        >
          {say.putChart}
        </Button>
      )}
      {chosen !== undefined && port.addChart !== undefined && sheetChart === undefined && (
        <p className={pane.line}>{say.needsTable(tableFunction)}</p>
      )}
      {said !== undefined && (
        <p role="status" className={mergeClasses(pane.line, said.failed && pane.error)}>
          {said.sentence}
        </p>
      )}
    </>
  )
}

/** The chart for the sheet itself, where the cells hold a table for it. */
function sheetChartIn(
  [cell]: readonly ChartedCell[],
  tableFunction: ChartedId,
  book: OpenBook,
): SheetChart | undefined {
  return cell!.id === tableFunction ? sheetChartOf(cell!, book) : undefined
}

/** What is done with a chart's cells, and what came of it. */
function useChartActions(port: WorkbookPort, tableFunction: ChartedId) {
  const { compare: say } = useWords()
  const portSentence = usePortSentence()
  const [said, setSaid] = useState<{ readonly sentence: string; readonly failed: boolean }>()

  async function attempt(action: Promise<string | void>) {
    setSaid(undefined)
    try {
      const done = await action
      if (done !== undefined) setSaid({ sentence: done, failed: false })
    } catch (error) {
      setSaid({ sentence: portSentence(error), failed: true })
    }
  }

  /** Into the workbook as it stands now: by now something may stand where there was room. */
  async function putChart(cells: readonly ChartedCell[]): Promise<string> {
    const chartOfSheet = sheetChartIn(cells, tableFunction, await port.read())!
    await port.addChart!(chartOfSheet)
    const { sheet, free, table } = chartOfSheet
    return table === undefined ? say.chartPut(sheet, free) : say.tablePut(sheet, table.place)
  }

  return {
    said,
    go: ({ sheet, address }: CellPlace) => void attempt(port.select({ sheet, address })),
    put: (cells: readonly ChartedCell[]) => void attempt(putChart(cells)),
  }
}

interface CellChoiceProps {
  readonly title: string
  readonly choices: readonly Choice[]
  readonly chosen: Choice
  readonly onChoose: (place: number) => void
}

function CellChoice({ title, choices, chosen, onChoose }: CellChoiceProps) {
  const pane = usePaneStyles()
  const { compare: say } = useWords()
  if (choices.length === 1) return <span className={pane.line}>{chosen.label}</span>
  return (
    <Field label={say.cellsToShow(title)} size="small">
      <Select
        size="small"
        value={String(choices.indexOf(chosen))}
        onChange={(_event, { value }) => onChoose(Number(value))}
      >
        {choices.map(({ label }, index) => (
          <option key={index} value={index}>
            {label}
          </option>
        ))}
      </Select>
    </Field>
  )
}
