import { Button, Field, Input, makeStyles, mergeClasses, Radio, Select, tokens } from '@fluentui/react-components'
import { useState } from 'react'
import { currencyOf } from '../workbook/season/currency'
import type { WorkbookPort } from '../workbook/port'
import { RadioField } from './RadioField'
import { longestCurrency, mostDecimals, type Settings } from './settings/settings'
import { useSettings } from './settings/useSettings'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

const useStyles = makeStyles({
  currency: { display: 'flex', flexWrap: 'wrap', gap: tokens.spacingHorizontalS },
  code: { width: '9em' },
})

/** The currency, where it stands and how many decimals it has. */
export function MoneyFields({ port }: { readonly port: WorkbookPort }) {
  const styles = useStyles()
  const { settings: say } = useWords()
  const { settings, choose } = useSettings()
  return (
    <>
      <CurrencyField port={port} />
      <RadioField
        label={say.currencyPlace}
        value={settings.currencyPlace}
        onChoose={(value) => choose({ currencyPlace: value as Settings['currencyPlace'] })}
      >
        <Radio value="before" label={say.before} />
        <Radio value="after" label={say.after} />
      </RadioField>
      <Field label={say.decimals}>
        <Select
          className={styles.code}
          value={String(settings.decimals)}
          onChange={(_event, { value }) => choose({ decimals: Number(value) })}
        >
          {Array.from({ length: mostDecimals + 1 }, (_, decimals) => (
            <option key={decimals} value={decimals}>
              {decimals}
            </option>
          ))}
        </Select>
      </Field>
    </>
  )
}

/** The currency, typed or taken from the open workbook. */
function CurrencyField({ port }: { readonly port: WorkbookPort }) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { settings: say } = useWords()
  const portSentence = usePortSentence()
  const { settings, choose } = useSettings()
  const [said, setSaid] = useState<{ readonly sentence: string; readonly failed: boolean }>()

  async function takeCurrency() {
    setSaid(undefined)
    try {
      const currency = currencyOf(await port.read())
      if (currency !== undefined) choose({ currency })
      setSaid({
        sentence: currency === undefined ? say.noneInWorkbook : say.taken(currency),
        failed: currency === undefined,
      })
    } catch (error) {
      setSaid({ sentence: portSentence(error, 'reading'), failed: true })
    }
  }

  return (
    <div>
      <Field label={say.currency} hint={say.currencyHint}>
        <Input
          className={styles.code}
          value={settings.currency}
          maxLength={longestCurrency}
          autoComplete="off"
          onChange={(_event, { value }) => {
            setSaid(undefined)
            choose({ currency: value.trim() })
          }}
        />
      </Field>
      <div className={styles.currency}>
        <Button size="small" onClick={() => void takeCurrency()}>
          {say.takeFromWorkbook}
        </Button>
      </div>
      <p role="status" className={mergeClasses(pane.line, said?.failed && pane.error)}>
        {said?.sentence}
      </p>
    </div>
  )
}
