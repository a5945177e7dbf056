import { Button, makeStyles, tokens } from '@fluentui/react-components'
import { useState } from 'react'
import type { Working, WorkingInput, WorkingLine } from '../derived/working'
import type { NumberText } from './settings/numberText'
import { useNumberText } from './settings/useNumberText'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

type StepDigits = 'step' | 'exact'

interface WorkingOfCallProps {
  readonly id: string
  readonly summary: string
  readonly working: Working
}

const useStyles = makeStyles({
  heading: {
    margin: `${tokens.spacingVerticalL} 0 0`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
    fontFamily: tokens.fontFamilyMonospace,
  },
  part: {
    margin: `${tokens.spacingVerticalS} 0 0`,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
  },
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase300 },
  refused: {
    margin: 0,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    color: tokens.colorStatusDangerForeground3,
  },
  list: { listStyleType: 'none', margin: 0, padding: 0 },
  item: {
    padding: `${tokens.spacingVerticalXS} 0`,
    borderBottom: `${tokens.strokeWidthThin} solid ${tokens.colorNeutralStroke2}`,
  },
  row: { display: 'flex', flexWrap: 'wrap', justifyContent: 'space-between', columnGap: tokens.spacingHorizontalM },
  name: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
  value: {
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontVariantNumeric: 'tabular-nums',
    marginLeft: 'auto',
    textAlign: 'end',
  },
  digits: { marginTop: tokens.spacingVerticalXS },
})

/** One call, as an auditor would recalculate it: what went in, each step with its rule, and the convention. */
export function WorkingOfCall({ id, summary, working }: WorkingOfCallProps) {
  const styles = useStyles()
  const { working: say, frame } = useWords()
  const numbers = useNumberText()
  const [digits, setDigits] = useState<StepDigits>('step')
  const isRounded =
    'steps' in working &&
    [...working.inputs, ...working.steps].some(
      (line) => valueText(line, numbers, 'step') !== valueText(line, numbers, 'exact'),
    )
  return (
    <article aria-label={say.ofFunction(id)}>
      <h3 className={styles.heading}>STICK.{id}</h3>
      <p className={styles.text}>{summary}</p>
      {'cellError' in working && <p className={styles.refused}>{frame.inputShows(working.cellError)}</p>}
      {'refused' in working &&
        working.refused.map((sentence) => (
          <p key={sentence} className={styles.refused}>
            {sentence}
          </p>
        ))}
      {'steps' in working && (
        <>
          <h4 className={styles.part}>{say.whatWentIn}</h4>
          <ul className={styles.list}>
            {working.inputs.map((input) => (
              <Input key={input.name} input={input} digits={digits} />
            ))}
          </ul>
          <h4 className={styles.part}>{say.stepByStep}</h4>
          <ol className={styles.list}>
            {working.steps.map((step, index) => (
              <Step key={index} step={step} digits={digits} />
            ))}
          </ol>
          {isRounded && (
            <>
              {digits === 'step' && <p className={styles.text}>{say.rounded}</p>}
              <Button
                size="small"
                className={styles.digits}
                onClick={() => setDigits(digits === 'step' ? 'exact' : 'step')}
              >
                {digits === 'step' ? say.allDigits : say.fewerDigits}
              </Button>
            </>
          )}
          <h4 className={styles.part}>{say.howCounted}</h4>
          <p className={styles.text}>{working.convention}</p>
        </>
      )}
    </article>
  )
}

function Input({ input, digits }: { readonly input: WorkingInput; readonly digits: StepDigits }) {
  const { name, text, given } = input
  const styles = useStyles()
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const numbers = useNumberText()
  return (
    <li className={styles.item}>
      <span className={styles.row}>
        <span className={styles.name}>{name}</span>
        <span className={styles.value}>{valueText(input, numbers, digits)}</span>
      </span>
      <span className={pane.small}>{given ? text : say.leftOut(text)}</span>
    </li>
  )
}

function Step({ step, digits }: { readonly step: WorkingLine; readonly digits: StepDigits }) {
  const { name, text, formula } = step
  const styles = useStyles()
  const pane = usePaneStyles()
  const numbers = useNumberText()
  return (
    <li className={styles.item}>
      <span className={styles.row}>
        <span className={styles.name}>
          {name} = {formula}
        </span>
        <span className={styles.value}>{valueText(step, numbers, digits)}</span>
      </span>
      <span className={pane.small}>{text}</span>
    </li>
  )
}

function valueText(
  { value, unit }: Pick<WorkingLine, 'value' | 'unit'>,
  numbers: NumberText,
  digits: StepDigits,
): string {
  if (typeof value !== 'object') return numbers.measured(value, unit, digits)
  return `${value.map((one) => numbers.inColumn(one, unit, digits)).join('; ')} ${numbers.unit(unit)}`
}
