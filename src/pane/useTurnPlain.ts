import { useState } from 'react'
import type { Definition } from '../core/definition/definition'
import { catalogue } from '../functions/catalogue'
import { changedValues } from '../workbook/plain/changedValues'
import { listOfValues } from '../workbook/plain/listOfValues'
import type { Into } from '../workbook/plain/plainCells'
import { plainCopy } from '../workbook/plain/plainCopy'
import { plainPlan, type PlainPlan } from '../workbook/plain/plainPlan'
import type { WorkbookPort } from '../workbook/port'
import { listed } from '../workbook/taken'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

export type Progress =
  | { readonly is: 'ready' }
  | { readonly is: 'busy'; readonly with: string }
  | { readonly is: 'announced'; readonly plan: PlainPlan; readonly again: boolean }
  | { readonly is: 'done'; readonly sentence: string }
  | { readonly is: 'failed'; readonly sentence: string }

/** Turning cells, or a copy of the workbook, into plain formulas and values, and how far it is. */
export function useTurnPlain(definitions: readonly Definition[], port: WorkbookPort) {
  const { working: say } = useWords()
  const portSentence = usePortSentence()
  const [progress, setProgress] = useState<Progress>({ is: 'ready' })

  async function attempt(doing: string, action: () => Promise<Progress>) {
    setProgress({ is: 'busy', with: doing })
    setProgress(await action().catch((error: unknown): Progress => ({ is: 'failed', sentence: portSentence(error) })))
  }

  const announce = (into: Into, within: 'selection' | 'workbook') =>
    attempt(say.reading, async () => {
      const place = within === 'selection' ? await port.selectedRange() : undefined
      const plan = plainPlan(await port.read(), place, into, definitions)
      return plan.fates.length === 0
        ? { is: 'done', sentence: say.noneSelected(place) }
        : { is: 'announced', plan, again: false }
    })

  const change = ({ place, into, changes }: PlainPlan) =>
    attempt(say.changing, async () => {
      const before = await port.read()
      const plan = plainPlan(before, place, into, definitions)
      if (JSON.stringify(plan.changes) !== JSON.stringify(changes)) return { is: 'announced', plan, again: true }
      await port.putCells(changes)
      // A whole workbook is for somebody else, who cannot look up what a value was, and may read no other language.
      const list =
        place === undefined
          ? listOfValues(
              plainPlan(before, place, into, catalogue).fates,
              before.sheets.map(({ name }) => name),
            )
          : undefined
      // The cells are changed by then, which is to be said even where the list is refused.
      const aboutList =
        list && (await port.add({ names: [], sheets: [list] }).then(() => say.listedOn(list.name), portSentence))
      const others = changedValues(before, await port.read())
      const count = turned(plan)
      if (others.length === 0) return { is: 'done', sentence: `${say.changed(count)} ${aboutList ?? say.undo}` }
      return {
        is: 'done',
        sentence: say.changedOthers(count, listed(others.map(({ sheet, address }) => `${sheet}!${address}`))),
      }
    })

  const copy = () =>
    attempt(say.making, async () => {
      let sentence = ''
      await port.saveCopy!((book, open) => {
        const made = plainCopy(book, open, catalogue)
        sentence = say.copied(made.formulas, made.values, made.listedOn)
        return made
      })
      return { is: 'done', sentence }
    })

  return { progress, announce, change, copy, beginAgain: () => setProgress({ is: 'ready' }) }
}

/** How many cells lose their function. */
export function turned({ fates }: PlainPlan): number {
  return fates.filter(({ becomes }) => becomes !== 'left').length
}
