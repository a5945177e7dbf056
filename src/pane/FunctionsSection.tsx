import { makeStyles, SearchBox, tokens } from '@fluentui/react-components'
import { useDeferredValue, useEffect, useId, useMemo, useRef, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import type { Words } from '../wording/words'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { FunctionGroup } from './FunctionGroup'
import { functionsUsed } from './functionsUsed'
import { groupBySubject } from './groupBySubject'
import { isEmptyQuery, searchOf } from './search'
import { SelectedCellLine } from './SelectedCellLine'
import { useDefinitions } from './useDefinitions'
import { useWords } from './useWords'

interface FunctionsSectionProps {
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
  /** A function to open. */
  readonly asked?: { readonly id: string } | undefined
}

const useStyles = makeStyles({
  // In a window too low for two parts, such as one enlarged to 400 %, the search scrolls away with the list.
  section: {
    display: 'flex',
    flexDirection: 'column',
    flexGrow: 1,
    minHeight: 0,
    '@media (max-height: 400px)': { overflowY: 'auto' },
  },
  top: {
    display: 'flex',
    flexDirection: 'column',
    rowGap: tokens.spacingVerticalXS,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalM}`,
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
  },
  sectionHeading: {
    margin: 0,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorBrandForeground1,
  },
  search: { maxWidth: 'none' },
  count: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
  list: {
    flexGrow: 1,
    minHeight: 0,
    overflowY: 'auto',
    paddingBottom: tokens.spacingVerticalXXL,
    '@media (max-height: 400px)': { flexShrink: 0, overflowY: 'visible' },
  },
})

/** The functions by subject, or those that a search finds; one of them opened. */
export function FunctionsSection({ port, cell, asked }: FunctionsSectionProps) {
  const styles = useStyles()
  const { functions: say, frame, subjectNames } = useWords()
  const definitions = useDefinitions()
  const headingId = useId()
  const list = useRef<HTMLDivElement>(null)
  // What answers first comes first: the tabs and the search are drawn and taken, and then the list.
  const listIsDue = useDeferredValue(true, false)
  const search = useMemo(() => searchOf(definitions), [definitions])
  const used = useMemo(() => functionsUsed(cell?.formula ?? '', definitions), [cell?.formula, definitions])
  const { query, setQuery, openId, setOpenId, openOnly } = useShownFunctions(cell, used, asked)

  function searchFor(text: string) {
    setQuery(text)
    // An opened text would push the other results out of sight.
    setOpenId(undefined)
    list.current?.scrollTo?.({ top: 0 })
  }

  const found = search(query)
  const groups = isEmptyQuery(query)
    ? groupBySubject(definitions, subjectNames)
    : [{ subject: 'found', name: say.found, definitions: found }]

  return (
    <section className={styles.section} aria-labelledby={headingId}>
      <div className={styles.top}>
        <h2 id={headingId} className={styles.sectionHeading}>
          {frame.sections.Functions}
        </h2>
        <SelectedCellLine cell={cell} used={used} onOpen={openOnly} />
        <Search query={query} onSearch={searchFor} />
        <p role="status" className={styles.count}>
          {countText(found.length, query, say)}
        </p>
      </div>
      <div ref={list} className={styles.list}>
        {listIsDue &&
          groups
            .filter((group) => group.definitions.length > 0)
            .map((group) => (
              <FunctionGroup
                key={group.subject}
                group={group}
                headingId={headingId}
                port={port}
                cell={cell}
                used={used}
                openId={openId}
                onOpen={setOpenId}
              />
            ))}
      </div>
    </section>
  )
}

function Search({ query, onSearch }: { readonly query: string; readonly onSearch: (text: string) => void }) {
  const styles = useStyles()
  const { functions: say } = useWords()
  return (
    <SearchBox
      className={styles.search}
      aria-label={say.search}
      placeholder={say.searchHint}
      dismiss={{ 'aria-label': say.clearSearch }}
      value={query}
      onChange={(_event, data) => onSearch(data.value)}
    />
  )
}

/** What is searched for and which function is open. */
function useShownFunctions(
  cell: SelectedCell | undefined,
  used: readonly Definition[],
  asked: FunctionsSectionProps['asked'],
) {
  const [query, setQuery] = useState('')
  const [openId, setOpenId] = useState<string>()
  const onlyUsedId = used.length === 1 ? used[0]?.id : undefined
  const cellKey = cell === undefined ? '' : `${cell.sheet}!${cell.address}`

  function openOnly(id: string) {
    setQuery('')
    setOpenId(id)
  }

  // Whoever selects a cell of ours wants to read about its function; the key is there to open it again on the next cell.
  useEffect(() => {
    if (onlyUsedId !== undefined) setOpenId(onlyUsedId)
  }, [onlyUsedId, cellKey])

  useEffect(() => {
    if (asked !== undefined) openOnly(asked.id)
  }, [asked])

  return { query, setQuery, openId, setOpenId, openOnly }
}

function countText(count: number, query: string, say: Words['functions']): string {
  if (isEmptyQuery(query)) return say.count(count)
  return count === 0 ? say.noneFound(query.trim()) : say.countFound(count)
}
