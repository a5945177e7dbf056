import { Field, makeStyles, Select, tokens } from '@fluentui/react-components'
import { useMemo, useState } from 'react'
import type { ChartedCell } from '../../workbook/compare/chartedCells'
import { roundsOf } from '../../workbook/compare/rounds'
import type { OpenBook } from '../../workbook/openBook'
import { useWords } from '../useWords'
import { drawn } from './drawn'
import { RoundsChart, singleUseText } from './RoundsChart'

const useStyles = makeStyles({
  against: { marginBottom: tokens.spacingVerticalS },
})

/** With a choice of what to compare with, where the cell has several ways that are used once. */
export function RoundsOfCell({ cell, book }: { readonly cell: ChartedCell; readonly book: OpenBook }) {
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
