import { Button, makeStyles, mergeClasses, Spinner, tokens } from '@fluentui/react-components'
import { useEffect, useRef, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import { catalogue } from '../functions/catalogue'
import { changedValues } from '../workbook/plain/changedValues'
import type { Into } from '../workbook/plain/plainCells'
import { listOfValues } from '../workbook/plain/listOfValues'
import { plainCopy } from '../workbook/plain/plainCopy'
import { plainPlan, type PlainPlan } from '../workbook/plain/plainPlan'
import type { WorkbookPort } from '../workbook/port'
import { listed } from '../workbook/taken'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

interface TurnPlainProps {
  readonly definitions: readonly Definition[]
  readonly port: WorkbookPort
}

type Progress =
  | { readonly is: 'ready' }
  | { readonly is: 'busy'; readonly with: string }
  | { readonly is: 'announced'; readonly plan: PlainPlan; readonly again: boolean }
  | { readonly is: 'done'; readonly sentence: string }
  | { readonly is: 'failed'; readonly sentence: string }

const useStyles = makeStyles({
  reasons: {
    margin: `${tokens.spacingVerticalXS} 0`,
    paddingLeft: tokens.spacingHorizontalL,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
})

/** Turns the selected cells, or a copy of the workbook, into plain formulas and values; it says first what will change. */
export function TurnPlain({ definitions, port }: TurnPlainProps) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const portSentence = usePortSentence()
  const said = useRef<HTMLDivElement>(null)
  const [progress, setProgress] = useState<Progress>({ is: 'ready' })

  // The button that was pressed is gone by then, and the keyboard would be nowhere.
  useEffect(() => {
    if (progress.is === 'done' || progress.is === 'announced') said.current?.focus()
  }, [progress])

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

  const isBusy = progress.is === 'busy'
  return (
    <>
      <p className={pane.line}>{say.aboutTurning}</p>
      <div className={pane.buttons}>
        <Button size="small" disabledFocusable={isBusy} onClick={() => void announce('formulas', 'selection')}>
          {say.toFormulas}
        </Button>
        <Button size="small" disabledFocusable={isBusy} onClick={() => void announce('values', 'selection')}>
          {say.toValues}
        </Button>
      </div>
      {port.saveCopy === undefined ? (
        <>
          <p className={pane.line}>{say.aboutWorkbook}</p>
          <Button size="small" disabledFocusable={isBusy} onClick={() => void announce('formulas', 'workbook')}>
            {say.turnWorkbook}
          </Button>
        </>
      ) : (
        <>
          <p className={pane.line}>{say.aboutCopy}</p>
          <Button size="small" disabledFocusable={isBusy} onClick={() => void copy()}>
            {say.makeCopy}
          </Button>
        </>
      )}
      {progress.is === 'busy' && <Spinner size="tiny" label={progress.with} />}
      {progress.is === 'announced' && (
        <>
          <div ref={said} tabIndex={-1} role="status">
            {progress.again && <p className={pane.line}>{say.changedMeanwhile}</p>}
            <Announcement plan={progress.plan} />
          </div>
          <div className={pane.buttons}>
            {turned(progress.plan) > 0 && (
              <Button size="small" appearance="primary" onClick={() => void change(progress.plan)}>
                {say.change(turned(progress.plan))}
              </Button>
            )}
            <Button size="small" onClick={() => setProgress({ is: 'ready' })}>
              {say.doNotChange}
            </Button>
          </div>
        </>
      )}
      {progress.is === 'done' && (
        <div ref={said} tabIndex={-1} role="status" className={pane.line}>
          {progress.sentence}
        </div>
      )}
      {progress.is === 'failed' && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {progress.sentence}
        </p>
      )}
    </>
  )
}

/** How many cells lose their function. */
function turned({ fates }: PlainPlan): number {
  return fates.filter(({ becomes }) => becomes !== 'left').length
}

function Announcement({ plan: { place, fates, changes } }: { readonly plan: PlainPlan }) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const formulas = fates.filter(({ becomes }) => becomes === 'formula')
  const values = fates.filter(({ becomes }) => becomes === 'value')
  const left = fates.filter(({ becomes }) => becomes === 'left')
  const reasons = (of: typeof fates) => [
    ...new Set(of.flatMap(({ because }) => (because === undefined ? [] : [say.because(because)]))),
  ]
  return (
    <>
      {formulas.length > 0 && <p className={pane.line}>{say.becomeFormulas(formulas.length, place)}</p>}
      {values.length > 0 && (
        <>
          <p className={pane.line}>
            {say.becomeValues(values.length, place)}
            {changes.length > formulas.length + values.length && ` ${say.spilledToo(changes.length - formulas.length)}`}
          </p>
          <Reasons sentences={reasons(values)} />
        </>
      )}
      {left.length > 0 && (
        <>
          <p className={pane.line}>{say.stay(left.length)}</p>
          <Reasons sentences={reasons(left)} />
        </>
      )}
    </>
  )
}

function Reasons({ sentences }: { readonly sentences: readonly string[] }) {
  const styles = useStyles()
  return (
    sentences.length > 0 && (
      <ul className={styles.reasons}>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    )
  )
}
