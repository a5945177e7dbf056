/** What the page asks or says above the sheet and the pane. */
import type { AskAboutFormulas, LostFormulas } from '../../workbench/grid/lostFormulas'
import type { Lost } from '../../workbench/xlsx/lost'
import { XlsxProblem } from '../../workbench/xlsx/xlsxProblem'
import type { Words } from '../../wording/words'
import type { OpenFile } from './files'
import { type KeptWork, knowsTabs } from './keptWork'
import type { Question } from './QuestionDialog'

type Act = () => void | Promise<void>

export function beforeNew({ workbench: { newWorkbook } }: Words, act: Act): Question {
  return { heading: newWorkbook.heading, lines: [newWorkbook.warning], agree: { label: newWorkbook.agree, act } }
}

export function beforeOpening({ workbench: { newWorkbook, openFile } }: Words, act: Act): Question {
  return { heading: openFile.heading, lines: [newWorkbook.warning], agree: { label: openFile.agree, act } }
}

/** Says what of the file the grid does not hold. */
export function isOpen(words: Words, { name, lost }: OpenFile): Question {
  const { openFile: say } = words.workbench
  return { heading: say.isOpen(name), lines: [say.cannotShow, ...sentencesFor(lost, words), say.fileStays] }
}

export function notRead({ workbench: { openFile }, files }: Words, name: string, error: unknown): Question {
  const why = error instanceof XlsxProblem ? files.problems[error.code] : messageOf(error)
  return { heading: openFile.notRead(name), lines: [why, openFile.unchanged] }
}

export function noPlace({ workbench: { noPlace: say } }: Words, typed: string): Question {
  return { heading: say.heading(typed), lines: [say.instead] }
}

export function notCalculated({ workbench: { notCalculated: say } }: Words, problem: unknown): Question {
  return { heading: say.heading, lines: [say.old, say.instead, messageOf(problem)] }
}

export function beforeSaving(words: Words, lost: readonly Lost[], act: Act): Question {
  const { saveFile } = words.workbench
  return {
    heading: saveFile.leavesOut,
    lines: [saveFile.holdsMore, ...sentencesFor(lost, words), saveFile.keepOriginal],
    agree: { label: saveFile.agree, act },
  }
}

export function notSaved({ workbench: { saveFile } }: Words, name: string, error: unknown): Question {
  return { heading: saveFile.notSaved(name), lines: [messageOf(error)] }
}

/** Somebody else has written the file, or it is no longer there. */
export function beforeReplacingFile(
  { workbench: { saveFile } }: Words,
  name: string,
  { replace, saveAs }: { readonly replace: Act; readonly saveAs: Act },
): Question {
  return {
    heading: saveFile.changed(name),
    lines: [saveFile.wouldReplace],
    agree: { label: saveFile.replace, act: replace },
    partly: { label: saveFile.as, act: saveAs },
  }
}

export function notAllowed({ workbench: { saveFile } }: Words, name: string, saveAs: Act): Question {
  return {
    heading: saveFile.notSaved(name),
    lines: [saveFile.notAllowed],
    agree: { label: saveFile.as, act: saveAs },
  }
}

export type AboutLeftWork = 'open' | 'throwAway' | 'later'

/** Answers once it is closed, so that another question may follow. */
export function aboutLeftWork(
  { language, workbench: { keptWork } }: Words,
  { file, title, keptAt }: KeptWork,
  answer: (answer: AboutLeftWork) => void,
): Question {
  let given: AboutLeftWork = 'later'
  const give = (chosen: AboutLeftWork) => () => {
    given = chosen
  }
  const time = new Date(keptAt).toLocaleString(language, { dateStyle: 'medium', timeStyle: 'short' })
  return {
    heading: keptWork.heading(file.name),
    lines: [keptWork.stood(title, time), ...(knowsTabs() ? [] : [keptWork.mayBeOpen]), keptWork.choose],
    agree: { label: keptWork.open, act: give('open') },
    partly: { label: keptWork.throwAway, act: give('throwAway') },
    leave: keptWork.later,
    onClose: () => answer(given),
  }
}

/** That are named where many cells hold one. */
const formulasNamed = 3

type Answer = Awaited<ReturnType<AskAboutFormulas>>

export function beforeReplacing(
  { workbench: { formulas } }: Words,
  { sheet, addresses, canKeep }: LostFormulas,
  answer: (answer: Answer) => void,
): Question {
  const [count, named] = [addresses.length, addresses.slice(0, formulasNamed)]
  const lost =
    count === 1 ? formulas.goes(sheet, named.join()) : formulas.go(sheet, count, named.join(', '), count - named.length)
  return {
    heading: formulas.heading,
    lines: [lost, formulas.replaced],
    agree: { label: formulas.agree, act: () => answer('replace') },
    ...(canKeep && { partly: { label: formulas.keep, act: () => answer('keep') } }),
    onClose: () => answer('cancel'),
  }
}

export function noSheet({ workbench }: Words, error: unknown): Question {
  return { heading: workbench.noSheet, lines: [messageOf(error)] }
}

function sentencesFor(lost: readonly Lost[], { files }: Words): string[] {
  return lost.map(({ what, names }) => files.lost[what](names))
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
