import {
  Button,
  Field,
  Input,
  makeStyles,
  mergeClasses,
  Radio,
  RadioGroup,
  Select,
  tokens,
} from '@fluentui/react-components'
import { useId, useState, type ReactNode } from 'react'
import type { DecimalMark } from '../core/quantity/decimalMark'
import { languages, type Language } from '../wording/languages'
import { currencyOf } from '../workbook/season/currency'
import type { WorkbookPort } from '../workbook/port'
import { longestCurrency, mostDecimals, type Settings } from './settings/settings'
import { useNumberText } from './settings/useNumberText'
import { useSettings } from './settings/useSettings'
import { usePaneStyles } from './usePaneStyles'
import { usePortSentence } from './usePortSentence'
import { useWords } from './useWords'

const useStyles = makeStyles({
  fields: {
    display: 'flex',
    flexDirection: 'column',
    rowGap: tokens.spacingVerticalL,
    maxWidth: '420px',
    marginTop: tokens.spacingVerticalM,
  },
  currency: { display: 'flex', flexWrap: 'wrap', gap: tokens.spacingHorizontalS },
  code: { width: '9em' },
  sample: { fontVariantNumeric: 'tabular-nums' },
})

/** How the pane speaks and shows numbers. All of it takes effect at once. */
export function SettingsSection({ port }: { readonly port: WorkbookPort }) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { settings: say, frame } = useWords()
  const headingId = useId()
  const { settings, choose, problem } = useSettings()
  return (
    <section className={pane.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={pane.heading}>
        {frame.sections.Settings}
      </h2>
      <p className={pane.line}>{say.about}</p>
      <div className={styles.fields}>
        <Choice
          label={say.language}
          hint={say.languageHint}
          value={settings.language}
          onChoose={(value) => choose({ language: value as Language })}
        >
          {Object.entries(languages).map(([language, { name }]) => (
            <Radio key={language} value={language} label={<span lang={language}>{name}</span>} />
          ))}
        </Choice>
        <Choice
          label={say.numbers}
          hint={say.numbersHint}
          value={settings.decimalMark}
          onChoose={(value) => choose({ decimalMark: value as DecimalMark })}
        >
          <Radio value="." label={say.decimalPoint('1,234.5')} />
          <Radio value="," label={say.decimalComma('1.234,5')} />
        </Choice>
        <Choice
          label={say.units}
          hint={say.unitsHint}
          value={settings.units}
          onChoose={(value) => choose({ units: value as Settings['units'] })}
        >
          <Radio value="metric" label={say.metric} />
          <Radio value="us" label={say.us} />
        </Choice>
        <MoneyFields port={port} />
      </div>
      <Sample />
      {problem !== undefined && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {say[problem]}
        </p>
      )}
    </section>
  )
}

interface ChoiceProps {
  readonly label: string
  readonly hint?: string
  readonly value: string
  readonly onChoose: (value: string) => void
  /** Its radios. */
  readonly children: ReactNode
}

function Choice({ label, hint, value, onChoose, children }: ChoiceProps) {
  return (
    <Field label={label} {...(hint !== undefined && { hint })}>
      <RadioGroup value={value} onChange={(_event, chosen) => onChoose(chosen.value)}>
        {children}
      </RadioGroup>
    </Field>
  )
}

/** The currency, where it stands and how many decimals it has. */
function MoneyFields({ port }: { readonly port: WorkbookPort }) {
  const styles = useStyles()
  const { settings: say } = useWords()
  const { settings, choose } = useSettings()
  return (
    <>
      <CurrencyField port={port} />
      <Choice
        label={say.currencyPlace}
        value={settings.currencyPlace}
        onChoose={(value) => choose({ currencyPlace: value as Settings['currencyPlace'] })}
      >
        <Radio value="before" label={say.before} />
        <Radio value="after" label={say.after} />
      </Choice>
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

/** Three numbers as they are shown now. */
function Sample() {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { settings: say } = useWords()
  const numbers = useNumberText()
  return (
    <>
      <h3 className={pane.heading}>{say.sample}</h3>
      <p role="status" className={mergeClasses(pane.line, styles.sample)}>
        {[
          numbers.measured(1234.5, 'money', 'short'),
          numbers.measured(0.1875, 'money per liner', 'short'),
          numbers.measured(60, 'L loose', 'short'),
        ].join('; ')}
      </p>
    </>
  )
}
