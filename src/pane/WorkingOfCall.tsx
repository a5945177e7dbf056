import { makeStyles, tokens } from '@fluentui/react-components'
import type { Working, WorkingInput, WorkingLine } from '../derived/working'
import type { NumberText } from './settings/numberText'
import { useNumberText } from './settings/useSettings'
import { useWords } from './useWords'

interface WorkingOfCallProps {
  readonly id: string
  readonly summary: string
  readonly working: Working
}

const useStyles = makeStyles({
  heading: { margin: `${tokens.spacingVerticalL} 0 0`, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold, fontFamily: tokens.fontFamilyMonospace },
  part: { margin: `${tokens.spacingVerticalS} 0 0`, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, fontWeight: tokens.fontWeightSemibold },
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase300 },
  refused: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, color: tokens.colorStatusDangerForeground3 },
  list: { listStyleType: 'none', margin: 0, padding: 0 },
  item: { padding: `${tokens.spacingVerticalXS} 0`, borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}` },
  row: { display: 'flex', flexWrap: 'wrap', justifyContent: 'space-between', columnGap: tokens.spacingHorizontalM },
  name: { fontFamily: tokens.fontFamilyMonospace, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase300 },
  value: { fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, fontVariantNumeric: 'tabular-nums', marginLeft: 'auto', textAlign: 'end' },
  small: { display: 'block', fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
})

/** One call, as an auditor would recalculate it: what went in, each step with its rule, and the convention. */
export function WorkingOfCall({ id, summary, working }: WorkingOfCallProps) {
  const styles = useStyles()
  const { working: words, frame } = useWords()
  return (
    <article aria-label={words.ofFunction(id)}>
      <h3 className={styles.heading}>STICK.{id}</h3>
      <p className={styles.text}>{summary}</p>
      {'cellError' in working && <p className={styles.refused}>{frame.inputShows(working.cellError)}</p>}
      {'refused' in working && working.refused.map((sentence) => <p key={sentence} className={styles.refused}>{sentence}</p>)}
      {'steps' in working && (
        <>
          <h4 className={styles.part}>{words.whatWentIn}</h4>
          <ul className={styles.list}>{working.inputs.map((input) => <Input key={input.name} input={input} />)}</ul>
          <h4 className={styles.part}>{words.stepByStep}</h4>
          <ol className={styles.list}>{working.steps.map((step, index) => <Step key={index} step={step} />)}</ol>
          <h4 className={styles.part}>{words.howCounted}</h4>
          <p className={styles.text}>{working.convention}</p>
        </>
      )}
    </article>
  )
}

function Input({ input: { name, text, value, unit, given } }: { readonly input: WorkingInput }) {
  const styles = useStyles()
  const { working: words } = useWords()
  const numbers = useNumberText()
  return (
    <li className={styles.item}>
      <span className={styles.row}>
        <span className={styles.name}>{name}</span>
        <span className={styles.value}>{valueText(value, unit, numbers)}</span>
      </span>
      <span className={styles.small}>{given ? text : words.leftOut(text)}</span>
    </li>
  )
}

function Step({ step: { name, text, formula, value, unit } }: { readonly step: WorkingLine }) {
  const styles = useStyles()
  const numbers = useNumberText()
  return (
    <li className={styles.item}>
      <span className={styles.row}>
        <span className={styles.name}>{name} = {formula}</span>
        <span className={styles.value}>{valueText(value, unit, numbers)}</span>
      </span>
      <span className={styles.small}>{text}</span>
    </li>
  )
}

function valueText(value: WorkingLine['value'], unit: string, numbers: NumberText): string {
  if (typeof value !== 'object') return numbers.measured(value, unit, 'exact')
  return `${value.map((one) => numbers.inColumn(one, unit, 'exact')).join('; ')} ${numbers.unit(unit)}`
}
