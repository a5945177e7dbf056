import { Button, Field, Input, Select } from '@fluentui/react-components'
import { useId, useState } from 'react'
import { growing } from '../workbook/season/growing'
import type { Table } from '../workbook/season/table/table'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface AddRowsProps {
  readonly isBusy: boolean
  readonly onAdd: (table: Table, count: number) => void
}

/** More at once would take long, and a slip of the finger longer still. */
const mostRows = 100

/** Further rows for a table of the season. */
export function AddRows({ isBusy, onAdd }: AddRowsProps) {
  const pane = usePaneStyles()
  const { season: say } = useWords()
  const headingId = useId()
  const [sheet, setSheet] = useState(growing[0]!.sheet)
  const [count, setCount] = useState('1')
  const rows = /^\d+$/.test(count.trim()) ? Number(count) : 0
  const isTaken = rows >= 1 && rows <= mostRows
  const table = growing.find((one) => one.sheet === sheet)
  return (
    <section aria-labelledby={headingId}>
      <h3 id={headingId} className={pane.heading}>
        {say.rows}
      </h3>
      <p className={pane.line}>{say.aboutRows}</p>
      <Field label={say.sheet}>
        <Select value={sheet} onChange={(_, { value }) => setSheet(value)}>
          {growing.map((one) => (
            <option key={one.sheet}>{one.sheet}</option>
          ))}
        </Select>
      </Field>
      <Field
        label={say.howMany}
        {...(isTaken ? {} : { validationState: 'error', validationMessage: say.rowsTaken(mostRows) })}
      >
        <Input value={count} inputMode="numeric" onChange={(_, { value }) => setCount(value)} />
      </Field>
      <div className={pane.buttons}>
        <Button disabledFocusable={isBusy || !isTaken} onClick={() => table && isTaken && onAdd(table, rows)}>
          {say.addRows}
        </Button>
      </div>
    </section>
  )
}
