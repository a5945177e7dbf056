/** One Excel.run for each action, so that Excel's undo takes an action back as a whole. */
import { PortProblem, type PortProblemCode } from '../workbook/port'

export async function run<Answer>(
  action: (context: Excel.RequestContext) => Promise<Answer>,
  options: Excel.RunOptions = {},
): Promise<Answer> {
  try {
    return await Excel.run(options, action)
  } catch (error) {
    throw error instanceof PortProblem ? error : portProblem(error)
  }
}

/** So that what one action sends in several messages is one undo too, where this Excel can join them. */
export function asOneUndo(): Excel.RunOptions {
  return knows('1.20') ? { mergeUndoGroup: true } : {}
}

/** Whether this Excel knows a version of its interface: "1.18". */
export function knows(version: string): boolean {
  return Office.context.requirements.isSetSupported('ExcelApi', version)
}

const problemByExcelCode: Readonly<Record<string, PortProblemCode>> = {
  InvalidOperationInCellEditMode: 'cellEditMode',
  AccessDenied: 'protectedSheet',
  InvalidSelection: 'noSelection',
}

function portProblem(error: unknown): PortProblem {
  const { code = '', message = '' } = error as { code?: string; message?: string }
  const known = problemByExcelCode[code]
  return known === undefined
    ? new PortProblem('hostFailed', [code, message].filter(Boolean).join(' '), { cause: error })
    : new PortProblem(known)
}
