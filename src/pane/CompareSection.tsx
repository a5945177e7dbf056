import { Button, Field, makeStyles, mergeClasses, Select, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useId, useMemo, useState, type ReactNode } from 'react'
import { functionIn } from '../derived/definitionIn'
import { chartedCells, type ChartedCell, type ChartedId } from '../workbook/compare/chartedCells'
import type { NoChart } from '../workbook/compare/evaluated'
import { oddsOf } from '../workbook/compare/odds'
import { roundsOf } from '../workbook/compare/rounds'
import { sheetChartOf } from '../workbook/compare/sheetChartOf'
import { swingsOf } from '../workbook/compare/swings'
import { rootingCostRuns, waysOfCompare, waysOfRootingCosts } from '../workbook/compare/ways'
import type { OpenBook } from '../workbook/openBook'
import type { CellPlace, WorkbookPort } from '../workbook/port'
import type { SheetChart } from '../workbook/sheetChart'
import { OddsChart } from './charts/OddsChart'
import { RoundsChart, singleUseText } from './charts/RoundsChart'
import { SwingsChart } from './charts/SwingsChart'
import { WaysChart } from './charts/WaysChart'
import { usePortSentence } from './usePortSentence'
import { usePaneStyles } from './usePaneStyles'
import { useProblemSentence } from './useProblemSentence'
import { useWords } from './useWords'

type Reading =
  | { readonly is: 'reading' }
  | { readonly is: 'read'; readonly book: OpenBook }
  | { readonly is: 'failed'; readonly sentence: string }

const useStyles = makeStyles({
  subheading: {
    margin: `${tokens.spacingVerticalXL} 0 ${tokens.spacingVerticalXS}`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  put: { marginTop: tokens.spacingVerticalXS },
  against: { marginBottom: tokens.spacingVerticalS },
  cell: {
    display: 'flex',
    flexWrap: 'wrap',
    alignItems: 'end',
    gap: tokens.spacingHorizontalS,
    marginBottom: tokens.spacingVerticalS,
  },
})

/** Charts of what the sheets compare. Their numbers are those of the cells. */
export function CompareSection({ port }: { readonly port: WorkbookPort }) {
  const pane = usePaneStyles()
  const headingId = useId()
  const { frame, compare: say } = useWords()
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
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Compare}
      </h2>
      {reading.is === 'reading' && <Spinner size="tiny" label={frame.readingTheWorkbook} />}
      {reading.is === 'failed' && (
        <p role="status" className={mergeClasses(pane.line, pane.error)}>
          {reading.sentence}
        </p>
      )}
      {reading.is === 'read' && (
        <Charts book={reading.book} port={port} onCalculate={() => void read({ calculateFirst: true })} />
      )}
      {reading.is !== 'reading' && (
        <Button size="small" onClick={() => void read()}>
          {say.readAgain}
        </Button>
      )}
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
  const { compare: say, frame } = useWords()
  const { cells, someUnseen } = useMemo(() => chartedCells(book), [book])
  const inSheetFrom =
    (...ids: readonly ChartedId[]) =>
    ([cell]: readonly ChartedCell[], from = book) =>
      ids.includes(cell!.id) ? sheetChartOf(cell!, from) : undefined
  const choiceOf = (chosen: readonly ChartedCell[]): Choice => {
    const [first, last] = [chosen[0]!, chosen.at(-1)!]
    const address = first === last ? first.address : `${first.address}:${last.address}`
    return { cells: chosen, label: say.choice(first.id, frame.place({ address, sheet: first.sheet })) }
  }
  const of = (...ids: readonly ChartedId[]) =>
    cells.filter(({ id }) => ids.includes(id)).map((cell) => choiceOf([cell]))
  return (
    <>
      <p className={pane.line}>
        {say.about}
        {port.addChart === undefined && ` ${say.noChartsInSheets}`}
      </p>
      {someUnseen && (
        <>
          <p className={pane.line}>{say.unseen}</p>
          <Button size="small" onClick={onCalculate}>
            {say.calculateAndRead}
          </Button>
        </>
      )}
      <Part
        title={say.ways.title}
        hint={say.ways.hint}
        port={port}
        choices={[...of('COMPARE'), ...rootingCostRuns(cells).map(choiceOf)]}
        chart={(chosen) =>
          drawn(
            chosen[0]!.id === 'COMPARE' ? waysOfCompare(chosen[0]!, book) : waysOfRootingCosts(chosen, book),
            (ways) => <WaysChart ways={ways} />,
          )
        }
        inSheet={inSheetFrom('COMPARE')}
        tableFunction="COMPARE"
      />
      <Part
        title={say.rounds.title}
        hint={say.rounds.hint}
        port={port}
        choices={of('COMPARE', 'BREAKEVEN', 'REUSELEDGER')}
        chart={([cell]) => <RoundsOfCell key={`${cell!.sheet}!${cell!.address}`} cell={cell!} book={book} />}
        inSheet={inSheetFrom('REUSELEDGER')}
        tableFunction="REUSELEDGER"
      />
      <Part
        title={say.swings.title}
        hint={say.swings.hint}
        port={port}
        choices={of('SWINGS')}
        chart={([cell]) => drawn(swingsOf(cell!, book), (swings) => <SwingsChart swings={swings} />)}
        inSheet={inSheetFrom('SWINGS')}
        tableFunction="SWINGS"
      />
      <Part
        title={say.odds.title}
        hint={say.odds.hint}
        port={port}
        choices={of('ODDS')}
        chart={([cell]) => drawn(oddsOf(cell!, book), (odds) => <OddsChart odds={odds} />)}
        inSheet={inSheetFrom('ODDS')}
        tableFunction="ODDS"
      />
    </>
  )
}

/** The cells that one chart shows. */
interface Choice {
  readonly cells: readonly ChartedCell[]
  readonly label: string
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
  const { compare: say } = useWords()
  const portSentence = usePortSentence()
  const [said, setSaid] = useState<{ readonly sentence: string; readonly failed: boolean }>()
  const chosen = choices[place] ?? choices[0]
  // Drawn again when another cell is chosen or the workbook was read again, not at every letter of a sentence.
  const figure = useMemo(() => chosen && chart(chosen.cells), [chosen?.cells[0], chosen?.cells.length])

  const sheetChart = useMemo(
    () => chosen && port.addChart && inSheet(chosen.cells),
    [chosen?.cells[0], chosen?.cells.length],
  )

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
    return table === undefined ? say.chartPut(sheet, free) : say.tablePut(sheet, table.place)
  }

  return (
    <>
      <h3 className={styles.subheading}>{title}</h3>
      {chosen === undefined && <p className={pane.line}>{hint}</p>}
      {chosen !== undefined && (
        <div className={styles.cell}>
          {choices.length === 1 ? (
            <span className={pane.line}>{chosen.label}</span>
          ) : (
            <Field label={say.cellsToShow(title)} size="small">
              <Select
                size="small"
                value={String(choices.indexOf(chosen))}
                onChange={(_event, { value }) => setPlace(Number(value))}
              >
                {choices.map(({ label }, index) => (
                  <option key={index} value={index}>
                    {label}
                  </option>
                ))}
              </Select>
            </Field>
          )}
          <Button size="small" onClick={() => go(chosen.cells[0]!)} aria-label={say.goTo(chosen.label)}>
            {say.goToTheCell}
          </Button>
        </div>
      )}
      {figure}
      {sheetChart !== undefined && (
        <Button
          size="small"
          className={styles.put}
          onClick={() => void attempt(put(chosen!.cells))}
          aria-label={say.putChartOf(chosen!.label)}
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

/** With a choice of what to compare with, where the cell has several ways that are used once. */
function RoundsOfCell({ cell, book }: { readonly cell: ChartedCell; readonly book: OpenBook }) {
  const styles = useStyles()
  const { rounds: say } = useWords().compare
  const [against, setAgainst] = useState(0)
  const rounds = useMemo(() => roundsOf(cell, book, against), [cell, book, against])
  return drawn(rounds, (data) => (
    <>
      {data.singleUses.length > 1 && (
        <Field label={say.compareWith} size="small" className={styles.against}>
          <Select
            size="small"
            value={String(data.singleUses.indexOf(data.singleUse!))}
            onChange={(_event, { value }) => setAgainst(Number(value))}
          >
            {data.singleUses.map((single, place) => (
              <option key={place} value={place}>
                {singleUseText(single, say)}
              </option>
            ))}
          </Select>
        </Field>
      )}
      <RoundsChart rounds={data} />
    </>
  ))
}

function drawn<Data extends object>(data: Data | NoChart, draw: (data: Data) => ReactNode): ReactNode {
  return 'noChart' in data ? <NoChartText noChart={data.noChart} /> : draw(data as Data)
}

function NoChartText({ noChart }: NoChart) {
  const pane = usePaneStyles()
  const words = useWords()
  const { compare: say, frame } = words
  const problemSentence = useProblemSentence()
  const why = () => {
    switch (noChart.kind) {
      case 'cellError':
        return frame.inputShows(noChart.code)
      case 'problems':
        return noChart.problems
          .map((problem) => problemSentence(problem, functionIn(noChart.definition, words)))
          .join(' ')
      case 'oneRoundOnly':
        return say.oneRoundOnly
    }
  }
  return <p className={pane.line}>{say.noChart(why())}</p>
}
