import type { Definition } from '../core/definition/definition'
import { plainCell } from '../derived/plainCell'
import { usePaneStyles } from './usePaneStyles'
import { useWords } from './useWords'

interface PlainPartProps {
  readonly formula: string
  readonly definitions: readonly Definition[]
}

/** The formula without the add-in, or why there is none. */
export function PlainPart({ formula, definitions }: PlainPartProps) {
  const pane = usePaneStyles()
  const { working: say } = useWords()
  const plain = plainCell(formula, definitions)
  if ('formula' in plain) return <code className={pane.formula}>{plain.formula}</code>
  return plain.without.map(({ id, reason, check }) => (
    <div key={id}>
      <p className={pane.line}>
        {say.because({ kind: 'function', id, ...(reason !== undefined && { reason }) })}
        {check !== undefined && ` ${say.checkFollows}`}
      </p>
      {check !== undefined && <code className={pane.formula}>{check}</code>}
    </div>
  ))
}
