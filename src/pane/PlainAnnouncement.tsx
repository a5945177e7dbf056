import { makeStyles, tokens } from '@fluentui/react-components'
import type { PlainPlan } from '../workbook/plain/plainPlan'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

const useStyles = makeStyles({
  reasons: {
    margin: `${tokens.spacingVerticalXS} 0`,
    paddingLeft: tokens.spacingHorizontalL,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
})

/** What will become of the cells, and why it is not a formula or stays. */
export function PlainAnnouncement({ plan: { place, fates, changes } }: { readonly plan: PlainPlan }) {
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
