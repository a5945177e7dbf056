import { useState } from 'react'
import type { Book } from '../workbook/book'
import type { CellPlace } from '../workbook/cellPlace'
import type { WorkbookPort } from '../workbook/port'
import { demoSeason } from '../workbook/season/demoSeason'
import { emptySeason } from '../workbook/season/emptySeason'
import { lastRowOf } from '../workbook/season/growing'
import type { Table } from '../workbook/season/table/table'
import { setup } from '../workbook/season/tables/setup'
import { useSettings } from './settings/useSettings'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

/** The demo's invented figures are in its own currency; an empty season takes that of the settings. */
export const seasons = {
  demo: () => demoSeason(),
  empty: emptySeason,
} as const

/** What an empty season begins with where Settings names no currency. */
const usualCurrency = 'EUR'

export type Season = keyof typeof seasons

export type Progress =
  | { readonly is: 'choosing' }
  | { readonly is: 'announced' | 'adding'; readonly season: Season; readonly book: Book }
  | { readonly is: 'added'; readonly sheets: readonly string[] }

/** What is done with the season of the open workbook, and how far it is. */
export function useSeason(port: WorkbookPort) {
  const { season: say } = useWords()
  const portSentence = usePortSentence()
  const currency = useSettings().settings.currency || usualCurrency
  const [progress, setProgress] = useState<Progress>({ is: 'choosing' })
  /** The first of the rows that were added last. */
  const [added, setAdded] = useState<CellPlace | 'adding'>()
  /** Why something was not done; empty where it was. */
  const [sentence, setSentence] = useState('')

  function announce(season: Season) {
    setSentence('')
    setProgress({ is: 'announced', season, book: seasons[season](currency) })
  }

  async function add(season: Season, book: Book) {
    setSentence('')
    setProgress({ is: 'adding', season, book })
    try {
      await port.add(book)
    } catch (error) {
      setSentence(portSentence(error))
      setProgress({ is: 'announced', season, book })
      return
    }
    setProgress({ is: 'added', sheets: book.sheets.map(({ name }) => name) })
    if (season === 'empty') await go(setup.sheet)
  }

  /** Above the last row, so that the ranges that read the table grow. */
  async function addRows(table: Table, count: number) {
    setSentence('')
    setAdded('adding')
    try {
      const last = lastRowOf(table, await port.names())
      if (last === undefined) {
        setSentence(say.noTable(table.sheet))
        setAdded(undefined)
        return
      }
      await port.insertRows(last, count)
      await port.select(last)
      setAdded(last)
    } catch (error) {
      setSentence(portSentence(error))
      setAdded(undefined)
    }
  }

  async function go(sheet: string) {
    setSentence('')
    await port.select({ sheet, address: 'A1' }).catch((error: unknown) => setSentence(portSentence(error)))
  }

  const beginAgain = () => setProgress({ is: 'choosing' })
  return { currency, progress, added, sentence, announce, add, addRows, go, beginAgain }
}
