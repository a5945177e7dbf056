/** The one call of a function in a formula, wherever in it: it may wait in an IF for what it reads. */
import { tokenize } from '@borgar/fx'
import { argumentsFrom } from './callArguments'

/** Its arguments as they are written; undefined where the formula does not call the function, or calls it more than once. */
export function onlyCall(formula: string, id: string): readonly string[] | undefined {
  const tokens = tokenize(formula)
  const calls = tokens.flatMap(({ value }, index) =>
    value.toUpperCase() === `STICK.${id}` && tokens[index + 1]?.value === '(' ? [index + 1] : [],
  )
  const [open, ...more] = calls
  if (open === undefined || more.length > 0) return undefined
  return argumentsFrom(tokens, open).args.map((argument) =>
    argument
      .map(({ value }) => value)
      .join('')
      .trim(),
  )
}
