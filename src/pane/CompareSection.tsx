import { Button, Field, makeStyles, mergeClasses, Select, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useMemo, useState, type ReactNode } from 'react'
import { chartedCells, type ChartedCell, type ChartedId } from '../workbook/compare/chartedCells'
import type { NoChart } from '../workbook/compare/evaluated'
import { oddsOf } from '../workbook/compare/odds'
import { roundsOf } from '../workbook/compare/rounds'
import { sheetChartOf } from '../workbook/compare/sheetChart'
import { swingsOf } from '../workbook/compare/swings'
import { rootingCostRuns, waysOfCompare, waysOfRootingCosts } from '../workbook/compare/ways'
import type { OpenBook } from '../workbook/openBook'
import type { CellPlace, WorkbookPort } from '../workbook/port'
import type { SheetChart } from '../workbook/sheetChart'
import { OddsChart } from './charts/OddsChart'
import { RoundsChart } from './charts/RoundsChart'
import { SwingsChart } from './charts/SwingsChart'
import { WaysChart } from './charts/WaysChart'
import { usePortSentence } from './usePortSentence'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

type Reading =
  | { readonly is: 'reading' }
  | { readonly is: 'read'; readonly book: OpenBook }
  | { readonly is: 'failed'; readonly sentence: string }

const useStyles = makeStyles({
  subheading: { margin: `${tokens.spacingVerticalXL} 0 ${tokens.spacingVerticalXS}`, fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase400, fontWeight: tokens.fontWeightSemibold },
  put: { marginTop: tokens.spacingVerticalXS },
  cell: { display: 'flex', flexWrap: 'wrap', alignItems: 'end', gap: tokens.spacingHorizontalS, marginBottom: tokens.spacingVerticalS },
})

/** Charts of what the sheets compare. Their numbers are those of the cells. */
export function CompareSection({ port }: { readonly port: WorkbookPort }) {
  const pane = usePaneStyles()
  const headingId = useId()
  const { frame } = useWords()
  const portSentence = usePortSentence()
  const [reading, setReading] = useState<Reading>({ is: 'reading' })

  async function read({ calculateFirst = false } = {}) {
    setReading({ is: 'reading' })
    try {
      if (calculateFirst) await port.calculate()
      setReading({ is: 'read', book: await port.read() })
    } catch (error) {
      setReading({ is: 'failed', sentence: portSentence(error, 'reading') })
    }
  }

  useEffect(() => {
    void read()
    // Once when the section is opened; afterwards on demand, since a large workbook takes a while.
  }, [port])

  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>{frame.sections.Compare}</h2>
      {reading.is === 'reading' && <Spinner size="tiny" label={frame.readingTheWorkbook} />}
      {reading.is === 'failed' && <p role="status" className={mergeClasses(pane.line, pane.error)}>{reading.sentence}</p>}
      {reading.is === 'read' && <Charts book={reading.book} port={port} onCalculate={() => void read({ calculateFirst: true })} />}
      {reading.is !== 'reading' && <Button size="small" onClick={() => void read()}>Read the workbook again</Button>}
    </section>
  )
}

interface ChartsProps {
  readonly book: OpenBook
  readonly port: WorkbookPort
  readonly onCalculate: () => void
}

function Charts({ book, port, onCalculate }: ChartsProps) {
  const pane = usePaneStyles()
  const { cells, someUnseen } = useMemo(() => chartedCells(book), [book])
  const inSheetFrom = (...ids: readonly ChartedId[]) => ([cell]: readonly ChartedCell[], from = book) => (
    ids.includes(cell!.id) ? sheetChartOf(cell!, from) : undefined
  )
  const of = (...ids: readonly ChartedId[]) => cells.filter(({ id }) => ids.includes(id)).map((cell) => choiceOf([cell]))
  return (
    <>
      <p className={pane.line}>
        The numbers of these charts are those of the cells.
        {port.addChart === undefined && ' The sheets here hold no charts of their own; in Excel a button puts a chart into the sheet.'}
      </p>
      {someUnseen && (
        <>
          <p className={pane.line}>Some functions have not been called since the workbook was opened, so their charts are missing yet.</p>
          <Button size="small" onClick={onCalculate}>Calculate and read again</Button>
        </>
      )}
      <Part
        title="Ways of rooting" port={port} choices={[...of('COMPARE'), ...rootingCostRuns(cells).map(choiceOf)]}
        hint="Put STICK.COMPARE with your ways of rooting into a sheet, or STICK.ROOTINGCOST for one way, to see here what a saleable liner costs in each and what it is made of."
        chart={(chosen) => drawn(chosen[0]!.id === 'COMPARE' ? waysOfCompare(chosen[0]!, book) : waysOfRootingCosts(chosen, book), (ways) => <WaysChart ways={ways} />)}
        inSheet={inSheetFrom('COMPARE')} tableFunction="COMPARE"
      />
      <Part
        title="Round by round" port={port} choices={of('COMPARE', 'BREAKEVEN', 'REUSELEDGER')}
        hint="Put STICK.BREAKEVEN, STICK.REUSELEDGER or STICK.COMPARE into a sheet to see here how the cost falls with every round, and from which one on it beats single use."
        chart={([cell]) => drawn(roundsOf(cell!), (rounds) => <RoundsChart rounds={rounds} />)}
        inSheet={inSheetFrom('REUSELEDGER')} tableFunction="REUSELEDGER"
      />
      <Part
        title="What moves a result" port={port} choices={of('SWINGS')}
        hint="Put STICK.SWINGS with a low, a likely and a high value of each argument into a sheet to see here which of them moves the result most."
        chart={([cell]) => drawn(swingsOf(cell!), (swings) => <SwingsChart swings={swings} />)}
        inSheet={inSheetFrom('SWINGS')} tableFunction="SWINGS"
      />
      <Part
        title="How likely a result is" port={port} choices={of('ODDS')}
        hint="Put STICK.ODDS with a low, a likely and a high value of each argument into a sheet to see here how likely each result is."
        chart={([cell]) => drawn(oddsOf(cell!, book), (odds) => <OddsChart odds={odds} />)}
        inSheet={inSheetFrom('ODDS')} tableFunction="ODDS"
      />
    </>
  )
}

/** The cells that one chart shows. */
interface Choice {
  readonly cells: readonly ChartedCell[]
  readonly label: string
}

function choiceOf(cells: readonly ChartedCell[]): Choice {
  const [first, last] = [cells[0]!, cells.at(-1)!]
  return { cells, label: `${first.id} in ${first === last ? first.address : `${first.address}:${last.address}`} on ${first.sheet}` }
}

interface PartProps {
  readonly title: string
  readonly port: WorkbookPort
  readonly choices: readonly Choice[]
  /** What to do where no cell has such a call. */
  readonly hint: string
  readonly chart: (cells: readonly ChartedCell[]) => ReactNode
  /** The chart for the sheet itself, where the cells hold a table for it; the function that fills such a table. */
  readonly inSheet: (cells: readonly ChartedCell[], book?: OpenBook) => SheetChart | undefined
  readonly tableFunction: ChartedId
}

/** One chart, with the choice of the cell that it shows and a way to that cell. */
function Part({ title, port, choices, hint, chart, inSheet, tableFunction }: PartProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const [place, setPlace] = useState(0)
  const { compare: words } = useWords()
  const portSentence = usePortSentence()
  const [said, setSaid] = useState<{ readonly sentence: string; readonly failed: boolean }>()
  const chosen = choices[place] ?? choices[0]
  // Drawn again when another cell is chosen or the workbook was read again, not at every letter of a sentence.
  const figure = useMemo(() => chosen && chart(chosen.cells), [chosen?.cells[0], chosen?.cells.length])

  const sheetChart = useMemo(() => chosen && port.addChart && inSheet(chosen.cells), [chosen?.cells[0], chosen?.cells.length])

  async function attempt(action: Promise<string | void>) {
    setSaid(undefined)
    try {
      const done = await action
      if (done !== undefined) setSaid({ sentence: done, failed: false })
    } catch (error) {
      setSaid({ sentence: portSentence(error), failed: true })
    }
  }

  function go({ sheet, address }: CellPlace) {
    void attempt(port.select({ sheet, address }))
  }

  /** Into the workbook as it stands now: by now something may stand where there was room. */
  async function put(cells: readonly ChartedCell[]): Promise<string> {
    const chartOfSheet = inSheet(cells, await port.read())!
    await port.addChart!(chartOfSheet)
    const { sheet, free, table } = chartOfSheet
    return table === undefined ? words.chartPut(sheet, free) : words.tablePut(sheet, table.place)
  }

  return (
    <>
      <h3 className={styles.subheading}>{title}</h3>
      {chosen === undefined && <p className={pane.line}>{hint}</p>}
      {chosen !== undefined && (
        <div className={styles.cell}>
          {choices.length === 1
            ? <span className={pane.line}>{chosen.label}</span>
            : (
              <Field label={`${title}: cells to show`} size="small">
                <Select size="small" value={String(choices.indexOf(chosen))} onChange={(_event, { value }) => setPlace(Number(value))}>
                  {choices.map(({ label }, index) => <option key={index} value={index}>{label}</option>)}
                </Select>
              </Field>
            )}
          <Button size="small" onClick={() => go(chosen.cells[0]!)} aria-label={`Go to ${chosen.label}`}>{words.goToTheCell}</Button>
        </div>
      )}
      {figure}
      {sheetChart !== undefined && <Button size="small" className={styles.put} onClick={() => void attempt(put(chosen!.cells))} aria-label={`Put the chart of ${chosen!.label} into the sheet`}>Put this chart into the sheet</Button>}
      {chosen !== undefined && port.addChart !== undefined && sheetChart === undefined && (
        <p className={pane.line}>Excel draws its own charts from tables in cells: put STICK.{tableFunction} by itself into a cell, and choose that cell here.</p>
      )}
      {said !== undefined && <p role="status" className={mergeClasses(pane.line, said.failed && pane.error)}>{said.sentence}</p>}
    </>
  )
}

function drawn<Data extends object>(data: Data | NoChart, draw: (data: Data) => ReactNode): ReactNode {
  return 'sentence' in data ? <NoChartText sentence={data.sentence} /> : draw(data as Data)
}

function NoChartText({ sentence }: NoChart) {
  const pane = usePaneStyles()
  return <p className={pane.line}>There is no chart of this cell. {sentence}</p>
}
