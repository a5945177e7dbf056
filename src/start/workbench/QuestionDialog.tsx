import { useEffect, useRef } from 'react'
import type { Words } from '../../wording/words'

/** Something to read and to agree to before it is done. */
export interface Question {
  readonly heading: string
  readonly lines: readonly string[]
  readonly agree?: Choice
  /** Another way than all or nothing. */
  readonly partly?: Choice
  /** What the last button says, which does nothing; else that it cancels or closes. */
  readonly leave?: string
  /** Whatever was chosen, after it. A question that comes unasked starts at its last button: keys may be on their way. */
  readonly onClose?: () => void
}

interface Choice {
  readonly label: string
  readonly act: () => void | Promise<void>
}

interface QuestionDialogProps {
  readonly question: Question
  readonly words: Words
  readonly close: () => void
}

export function QuestionDialog({ question, words: { language, workbench: words }, close }: QuestionDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  const last = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    // One may follow another without a drawing between them.
    if (!dialog.current!.open) dialog.current!.showModal()
    if (question.onClose) last.current!.focus()
  }, [question])
  const onClose = () => {
    question.onClose?.()
    close()
  }
  return (
    <dialog ref={dialog} lang={language} className="question" aria-labelledby="question" onClose={onClose}>
      <h2 id="question">{question.heading}</h2>
      {question.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <form method="dialog">
        {question.agree && <button onClick={() => void question.agree!.act()}>{question.agree.label}</button>}
        {question.partly && <button onClick={() => void question.partly!.act()}>{question.partly.label}</button>}
        <button ref={last}>{question.leave ?? (question.agree ? words.cancel : words.close)}</button>
      </form>
    </dialog>
  )
}
