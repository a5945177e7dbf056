import { Button, Field, Input, makeStyles, tokens } from '@fluentui/react-components'
import type { ExampleArgument } from '../core/definition/definition'
import type { Parameter } from '../core/definition/parameter'
import type { DecimalMark } from '../core/quantity/decimalMark'
import { commaNumberOf } from '../formula/decimalComma'
import type { Words } from '../wording/words'
import { useSettings } from './settings/useSettings'
import { useWords } from './useWords'

interface ArgumentFieldProps {
  readonly name: string
  readonly parameter: Parameter
  /** What the first example has there. */
  readonly example: ExampleArgument | undefined
  readonly text: string
  /** What is wrong with it. */
  readonly problems: readonly string[]
  readonly onChange: (text: string) => void
  /** Takes the selected cells. */
  readonly onPick: () => void
}

const useStyles = makeStyles({
  name: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightSemibold,
  },
  row: { display: 'flex', columnGap: tokens.spacingHorizontalXS },
  input: { flexGrow: 1, minWidth: 0 },
  pick: { flexShrink: 0, minWidth: 'auto' },
})

/** One argument of a call, typed or picked from the sheet. */
export function ArgumentField({ name, parameter, example, text, problems, onChange, onPick }: ArgumentFieldProps) {
  const styles = useStyles()
  const words = useWords()
  const { functions: say } = words
  const { decimalMark } = useSettings().settings
  return (
    <Field
      label={<span className={styles.name}>{name}</span>}
      required={!parameter.optional}
      hint={`${parameter.text}: ${words.parameters.takesText(parameter, decimalMark)}`}
      {...(problems.length > 0 && { validationMessage: problems.join(' '), validationState: 'error' as const })}
    >
      {(field) => (
        <span className={styles.row}>
          <Input
            {...field}
            className={styles.input}
            size="small"
            autoComplete="off"
            value={text}
            placeholder={placeholder(parameter, example, words, decimalMark)}
            onChange={(_event, data) => onChange(data.value)}
          />
          <Button
            className={styles.pick}
            size="small"
            onClick={onPick}
            aria-label={say.takeFor(name)}
            title={say.takeHint}
          >
            {say.take}
          </Button>
        </span>
      )}
    </Field>
  )
}

/** What stands there if nothing is typed, or what the first example has there. */
function placeholder(
  parameter: Parameter,
  example: ExampleArgument | undefined,
  { functions: say, parameters }: Words,
  mark: DecimalMark,
): string {
  const fallback = parameters.defaultText(parameter, mark)
  if (fallback !== undefined) return say.ifLeftOut(fallback)
  if (example === null || example === undefined) return parameter.optional ? say.mayBeLeftOut : ''
  const typed = (one: number | string) =>
    mark === ',' && parameter.takes === 'number' ? commaNumberOf(String(one)) : String(one)
  return say.suchAs(typeof example === 'object' ? example.map(typed).join('; ') : typed(example))
}
