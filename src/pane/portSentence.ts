import type { Words } from '../wording/words'
import { PortProblem } from '../workbook/port'

/** What a workbook could not do, as one sentence that says what to do about it. */
export function portSentence(error: unknown, doing: 'reading' | 'writing', port: Words['port']): string {
  const { code, detail } =
    error instanceof PortProblem
      ? error
      : new PortProblem('hostFailed', error instanceof Error ? error.message : String(error))
  return code === 'hostFailed' && doing === 'reading' ? port.notRead(detail) : port[code](detail)
}
