import { makeStyles, tokens } from '@fluentui/react-components'
import { useEffect, useEffectEvent } from 'react'
import type { Definition, Example } from '../core/definition/definition'
import { signature } from '../derived/signature'
import { cautionFor } from '../wording/cautions'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { ExampleBlock } from './ExampleBlock'
import { FunctionForm } from './FunctionForm'
import { useNumberText } from './settings/useNumberText'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface FunctionTextProps {
  readonly id: string
  readonly definition: Definition
  readonly port: WorkbookPort
  readonly cell: SelectedCell | undefined
  /** It may come a while after it was asked for. */
  readonly onShown: () => void
}

const useStyles = makeStyles({
  text: {
    display: 'flex',
    flexDirection: 'column',
    padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalM} ${tokens.spacingVerticalL} calc(${tokens.spacingHorizontalM} - 3px)`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  code: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground1,
  },
  heading: {
    margin: `${tokens.spacingVerticalM} 0 ${tokens.spacingVerticalXXS}`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  paragraph: { margin: 0 },
  parameters: { margin: 0 },
  parameter: { paddingBottom: tokens.spacingVerticalS },
  columnName: { fontWeight: tokens.fontWeightSemibold },
  meaning: { margin: 0 },
  caution: {
    margin: `${tokens.spacingVerticalM} 0 0`,
    paddingLeft: tokens.spacingHorizontalS,
    borderLeft: `3px solid ${tokens.colorStatusWarningBorderActive}`,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
})

/** All that the definition says about a function, with an example first, because it is read first. */
export function FunctionText({ id, definition, port, cell, onShown }: FunctionTextProps) {
  const styles = useStyles()
  const pane = usePaneStyles()
  const { functions: say, frame, cautions } = useWords()
  const numbers = useNumberText()
  // Once: a new function of the same meaning comes with every drawing of the list.
  const shown = useEffectEvent(onShown)
  useEffect(() => {
    shown()
  }, [])
  const caution = cautionFor(definition, cautions)
  const {
    result,
    examples: [first, ...more],
  } = definition
  const block = (example: Example) => (
    <ExampleBlock key={example.text} definition={definition} example={example} port={port} cell={cell} />
  )
  return (
    <div id={id} className={styles.text}>
      <code className={styles.code}>{signature(definition)}</code>
      {first !== undefined && <h5 className={styles.heading}>{say.example}</h5>}
      {first !== undefined && block(first)}
      <h5 className={styles.heading}>{say.fillIn}</h5>
      <FunctionForm definition={definition} port={port} cell={cell} />
      <h5 className={styles.heading}>{say.comesOut}</h5>
      <p className={styles.paragraph}>
        {result.text}
        {result.columns === undefined && (
          <span className={pane.small}>
            {numbers.unit(result.unit)}
            {result.like !== undefined && say.inShapeOf(result.like)}
          </span>
        )}
      </p>
      {result.columns !== undefined && (
        <dl className={styles.parameters}>
          {Object.values(result.columns).map(({ heading, text, unit }) => (
            <div key={heading} className={styles.parameter}>
              <dt className={styles.columnName}>{heading}</dt>
              <dd className={styles.meaning}>
                {text}
                <span className={pane.small}>{numbers.unit(unit)}</span>
              </dd>
            </div>
          ))}
        </dl>
      )}
      <h5 className={styles.heading}>{say.howCounted}</h5>
      <p className={styles.paragraph}>{definition.convention}</p>
      {caution !== undefined && (
        <p className={styles.caution}>
          <strong>{frame.caution}</strong> {caution}
        </p>
      )}
      {more.length > 0 && <h5 className={styles.heading}>{say.moreExamples}</h5>}
      {more.map(block)}
    </div>
  )
}
