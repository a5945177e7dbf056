import { makeStyles, mergeClasses, Radio, tokens } from '@fluentui/react-components'
import { useId } from 'react'
import type { DecimalMark } from '../core/quantity/decimalMark'
import { languages, type Language } from '../wording/languages'
import type { WorkbookPort } from '../workbook/port'
import { MoneyFields } from './MoneyFields'
import { RadioField } from './RadioField'
import type { Settings } from './settings/settings'
import { useNumberText } from './settings/useNumberText'
import { useSettings } from './settings/useSettings'
import { TryHost } from './TryHost'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

const useStyles = makeStyles({
  fields: {
    display: 'flex',
    flexDirection: 'column',
    rowGap: tokens.spacingVerticalL,
    maxWidth: '420px',
    marginTop: tokens.spacingVerticalM,
  },
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
        <RadioField
          label={say.language}
          hint={say.languageHint}
          value={settings.language}
          onChoose={(value) => choose({ language: value as Language })}
        >
          {Object.entries(languages).map(([language, { name }]) => (
            <Radio key={language} value={language} label={<span lang={language}>{name}</span>} />
          ))}
        </RadioField>
        <RadioField
          label={say.numbers}
          hint={say.numbersHint}
          value={settings.decimalMark}
          onChoose={(value) => choose({ decimalMark: value as DecimalMark })}
        >
          <Radio value="." label={say.decimalPoint('1,234.5')} />
          <Radio value="," label={say.decimalComma('1.234,5')} />
        </RadioField>
        <RadioField
          label={say.units}
          hint={say.unitsHint}
          value={settings.units}
          onChoose={(value) => choose({ units: value as Settings['units'] })}
        >
          <Radio value="metric" label={say.metric} />
          <Radio value="us" label={say.us} />
        </RadioField>
        <MoneyFields port={port} />
      </div>
      <Sample />
      {problem !== undefined && (
        <p role="alert" className={mergeClasses(pane.line, pane.error)}>
          {say[problem]}
        </p>
      )}
      <TryHost port={port} />
    </section>
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
