import { Button, mergeClasses, Spinner } from '@fluentui/react-components'
import { useEffect, useId, useMemo, useState } from 'react'
import { chartedCells, type ChartedCell, type ChartedId } from '../workbook/compare/chartedCells'
import { oddsOf } from '../workbook/compare/odds'
import { swingsOf } from '../workbook/compare/swings'
import { rootingCostRuns, waysOfCompare, waysOfRootingCosts } from '../workbook/compare/ways'
import type { OpenBook } from '../workbook/openBook'
import type { WorkbookPort } from '../workbook/port'
import { ChartPart, type Choice } from './ChartPart'
import { drawn } from './charts/drawn'
import { OddsChart } from './charts/OddsChart'
import { RoundsOfCell } from './charts/RoundsOfCell'
import { SwingsChart } from './charts/SwingsChart'
import { WaysChart } from './charts/WaysChart'
import { useMayBeOld } from './useMayBeOld'
import { usePortSentence } from './usePortSentence'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

type Reading =
  | { readonly is: 'reading' }
  | { readonly is: 'read'; readonly book: OpenBook }
  | { readonly is: 'failed'; readonly sentence: string }

/** Charts of what the sheets compare. Their numbers are those of the cells. */
export function CompareSection({ port }: { readonly port: WorkbookPort }) {
  const pane = usePaneStyles()
  const headingId = useId()
  const { frame, compare: say } = useWords()
  const portSentence = usePortSentence()
  const [reading, setReading] = useState<Reading>({ is: 'reading' })
  const { isOld, beginReading } = useMayBeOld(port)

  async function read({ calculateFirst = false } = {}) {
    setReading({ is: 'reading' })
    try {
      if (calculateFirst) await port.calculate()
      beginReading()
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
      {reading.is === 'read' && isOld && <p className={pane.line}>{frame.mayBeOld}</p>}
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
  const { compare: say } = useWords()
  const { of, rootingCosts, someUnseen } = useChoices(book)
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
      <ChartPart
        texts={say.ways}
        port={port}
        book={book}
        choices={[...of('COMPARE'), ...rootingCosts]}
        chart={(chosen) =>
          drawn(
            chosen[0]!.id === 'COMPARE' ? waysOfCompare(chosen[0]!, book) : waysOfRootingCosts(chosen, book),
            (ways) => <WaysChart ways={ways} />,
          )
        }
        tableFunction="COMPARE"
      />
      <ChartPart
        texts={say.rounds}
        port={port}
        book={book}
        choices={of('COMPARE', 'BREAKEVEN', 'REUSELEDGER')}
        chart={([cell]) => <RoundsOfCell key={`${cell!.sheet}!${cell!.address}`} cell={cell!} book={book} />}
        tableFunction="REUSELEDGER"
      />
      <ChartPart
        texts={say.swings}
        port={port}
        book={book}
        choices={of('SWINGS')}
        chart={([cell]) => drawn(swingsOf(cell!, book), (swings) => <SwingsChart swings={swings} />)}
        tableFunction="SWINGS"
      />
      <ChartPart
        texts={say.odds}
        port={port}
        book={book}
        choices={of('ODDS')}
        chart={([cell]) => drawn(oddsOf(cell!, book), (odds) => <OddsChart odds={odds} />)}
        tableFunction="ODDS"
      />
    </>
  )
}

/** What there is to choose from in the workbook. */
function useChoices(book: OpenBook) {
  const { compare: say, frame } = useWords()
  const { cells, someUnseen } = useMemo(() => chartedCells(book), [book])
  const choiceOf = (chosen: readonly ChartedCell[]): Choice => {
    const [first, last] = [chosen[0]!, chosen.at(-1)!]
    const address = first === last ? first.address : `${first.address}:${last.address}`
    return { cells: chosen, label: say.choice(first.id, frame.place({ address, sheet: first.sheet })) }
  }
  return {
    of: (...ids: readonly ChartedId[]) => cells.filter(({ id }) => ids.includes(id)).map((cell) => choiceOf([cell])),
    rootingCosts: rootingCostRuns(cells).map(choiceOf),
    /** Whether calls of some charts are not known yet. */
    someUnseen,
  }
}
