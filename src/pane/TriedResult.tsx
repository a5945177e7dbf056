import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components'
import type { Definition } from '../core/definition/definition'
import type { Tried } from '../derived/tryCall'
import { ResultTable } from './ResultTable'
import { shortText } from './numberText'

interface TriedResultProps {
  readonly definition: Definition
  readonly tried: Tried | undefined
  readonly needsSheet: boolean
}

const useStyles = makeStyles({
  line: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  value: { fontWeight: tokens.fontWeightSemibold },
  quiet: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground2 },
  refused: { color: tokens.colorStatusDangerForeground1 },
})

/** What a form gives as it stands, and until then what it still needs. */
export function TriedResult({ definition, tried, needsSheet }: TriedResultProps) {
  const styles = useStyles()
  return (
    <div role="status" aria-label="Result">
      {needsSheet && <p className={mergeClasses(styles.line, styles.quiet)}>A formula stands among the arguments: the sheet shows the result.</p>}
      {tried !== undefined && <Shown definition={definition} tried={tried} />}
    </div>
  )
}

function Shown({ definition: { result }, tried }: { readonly definition: Definition; readonly tried: Tried }) {
  const styles = useStyles()
  if ('cellError' in tried) return <p className={mergeClasses(styles.line, styles.refused)}>One of the cells shows {tried.cellError}.</p>
  if ('value' in tried) {
    const { value } = tried
    if (typeof value === 'number') return <p className={styles.line}>gives <span className={styles.value}>{shortText(value)}</span> {result.unit}</p>
    if (result.columns === undefined) return <p className={styles.line}>gives <span className={styles.value}>{value.flat().map(shortText).join('; ')}</span> {result.unit}</p>
    return <ResultTable columns={result.columns} rows={value.slice(1)} />
  }
  const general = tried.problems.filter(({ parameter }) => parameter === undefined)
  return (
    <>
      {tried.missing.length > 0 && <p className={mergeClasses(styles.line, styles.quiet)}>Still needed: {tried.missing.join(', ')}</p>}
      {general.map(({ sentence }) => <p key={sentence} className={mergeClasses(styles.line, styles.refused)}>{sentence}</p>)}
    </>
  )
}
