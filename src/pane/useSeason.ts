import { useState } from 'react'
import type { Book } from '../workbook/book'
import type { CellPlace, WorkbookPort } from '../workbook/port'
import { blankSeason } from '../workbook/season/blankSeason'
import { demoCurrency, inCurrency } from '../workbook/season/currency'
import { demoSeason } from '../workbook/season/demoSeason'
import { lastOrderLine } from '../workbook/season/orderLine'
import { useSettings } from './settings/useSettings'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

/** The demo's invented figures are in its own currency; an empty season takes that of the settings. */
export const seasons = {
  demo: () => demoSeason(),
  empty: (currency: string) => inCurrency(blankSeason(), currency),
} as const

export type Season = keyof typeof seasons

export type Progress =
  | { readonly is: 'choosing' }
  | { readonly is: 'announced' | 'adding'; readonly season: Season; readonly book: Book }
  | { readonly is: 'added'; readonly sheets: readonly string[] }

/** What is done with the season of the open workbook, and how far it is. */
export function useSeason(port: WorkbookPort) {
  const { season: say } = useWords()
  const portSentence = usePortSentence()
  const currency = useSettings().settings.currency || demoCurrency
  const [progress, setProgress] = useState<Progress>({ is: 'choosing' })
  /** The order line that was added last. */
  const [line, setLine] = useState<CellPlace | 'adding'>()
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
      setProgress({ is: 'added', sheets: book.sheets.map(({ name }) => name) })
    } catch (error) {
      setSentence(portSentence(error))
      setProgress({ is: 'announced', season, book })
    }
  }

  async function addLine() {
    setSentence('')
    setLine('adding')
    try {
      const last = lastOrderLine((await port.read()).names)
      if (last === undefined) {
        setSentence(say.noOrderBook)
        setLine(undefined)
        return
      }
      await port.insertRow(last)
      await port.select(last)
      setLine(last)
    } catch (error) {
      setSentence(portSentence(error))
      setLine(undefined)
    }
  }

  async function go(sheet: string) {
    setSentence('')
    await port.select({ sheet, address: 'A1' }).catch((error: unknown) => setSentence(portSentence(error)))
  }

  const beginAgain = () => setProgress({ is: 'choosing' })
  return { currency, progress, line, sentence, announce, add, addLine, go, beginAgain }
}
