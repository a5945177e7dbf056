import { Link, makeStyles, tokens } from '@fluentui/react-components'
import { Fragment } from 'react'
import type { Definition } from '../core/definition/definition'
import type { SelectedCell } from '../workbook/port'
import { useWords } from './useWords'

interface SelectedCellLineProps {
  readonly cell: SelectedCell | undefined
  readonly used: readonly Definition[]
  readonly onOpen: (id: string) => void
}

const useStyles = makeStyles({
  line: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    color: tokens.colorNeutralForeground2,
  },
  used: { fontSize: 'inherit', lineHeight: 'inherit', textDecorationLine: 'underline' },
})

/** Which cell is selected, and which functions of ours it uses. */
export function SelectedCellLine({ cell, used, onOpen }: SelectedCellLineProps) {
  const styles = useStyles()
  const { functions: say, frame } = useWords()
  if (cell === undefined) return <p className={styles.line}>{say.noCell}</p>
  return (
    <p className={styles.line}>
      {say.selected(frame.place(cell))}
      {used.map(({ id }, index) => (
        <Fragment key={id}>
          {index === 0 ? say.uses : ', '}
          <Link as="button" className={styles.used} onClick={() => onOpen(id)}>
            STICK.{id}
          </Link>
        </Fragment>
      ))}
    </p>
  )
}
