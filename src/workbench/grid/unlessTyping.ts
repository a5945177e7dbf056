import { PortProblem } from '../../workbook/port'
import type { OpenGrid } from './open'

type Act = (...given: readonly unknown[]) => unknown

/** The same members, but each refuses while a cell is being typed in, and leaves the workbook as it is. */
export function unlessTyping<Members extends object>({ workbook }: OpenGrid, members: Members): Members {
  const guarded =
    (act: Act) =>
    async (...given: readonly unknown[]) => {
      if (workbook().isCellEditing()) throw new PortProblem('cellEditMode')
      return act(...given)
    }
  return Object.fromEntries(Object.entries(members).map(([name, act]) => [name, guarded(act as Act)])) as Members
}
