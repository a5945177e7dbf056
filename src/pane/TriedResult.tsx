import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import type { Definition } from '../core/definition/definition'
import type { Tried } from '../derived/tryCall'
import { ResultTable } from './ResultTable'
import { useNumberText } from './settings/useNumberText'
import { useWords } from './useWords'

interface TriedResultProps {
  readonly definition: Definition
  readonly tried: Tried | undefined
  readonly needsSheet: boolean
}

const useStyles = makeStyles({
  line: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  value: { fontWeight: tokens.fontWeightSemibold },
  quiet: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  refused: { color: tokens.colorStatusDangerForeground3 },
})

/** What a form gives as it stands, and until then what it still needs. */
export function TriedResult({ definition, tried, needsSheet }: TriedResultProps) {
  const styles = useStyles()
  const { functions: say } = useWords()
  return (
    <div role="status" aria-label={say.result}>
      {needsSheet && <p className={mergeClasses(styles.line, styles.quiet)}>{say.needsSheet}</p>}
      {tried !== undefined && <Shown definition={definition} tried={tried} />}
    </div>
  )
}

function Shown({ definition: { result }, tried }: { readonly definition: Definition; readonly tried: Tried }) {
  const styles = useStyles()
  const { functions: say } = useWords()
  const { measured } = useNumberText()
  if ('cellError' in tried)
    return <p className={mergeClasses(styles.line, styles.refused)}>{say.cellShows(tried.cellError)}</p>
  if ('value' in tried) {
    const { value } = tried
    if (typeof value === 'number')
      return (
        <p className={styles.line}>
          {say.gives} <span className={styles.value}>{measured(value, result.unit, 'short')}</span>
        </p>
      )
    if (result.columns === undefined)
      return (
        <p className={styles.line}>
          {say.gives}{' '}
          <span className={styles.value}>
            {value
              .flat()
              .map((one) => measured(one, result.unit, 'short'))
              .join('; ')}
          </span>
        </p>
      )
    return <ResultTable columns={Object.values(result.columns)} rows={value.slice(1)} />
  }
  const general = tried.problems.filter(({ parameter }) => parameter === undefined)
  return (
    <>
      {tried.missing.length > 0 && (
        <p className={mergeClasses(styles.line, styles.quiet)}>{say.stillNeeded(tried.missing)}</p>
      )}
      {general.map(({ sentence }) => (
        <p key={sentence} className={mergeClasses(styles.line, styles.refused)}>
          {sentence}
        </p>
      ))}
    </>
  )
}
