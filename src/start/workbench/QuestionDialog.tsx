import { useEffect, useRef } from 'react'
import type { Words } from '../../wording/words'

/** Something to read and to agree to before it is done. */
export interface Question {
  readonly heading: string
  readonly lines: readonly string[]
  readonly agree?: { readonly label: string; readonly act: () => void | Promise<void> }
}

interface QuestionDialogProps {
  readonly question: Question
  readonly words: Words
  readonly close: () => void
}

export function QuestionDialog({ question, words: { language, workbench: words }, close }: QuestionDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    dialog.current!.showModal()
  }, [])
  return (
    <dialog ref={dialog} lang={language} className="question" aria-labelledby="question" onClose={close}>
      <h2 id="question">{question.heading}</h2>
      {question.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <form method="dialog">
        {question.agree && <button onClick={() => void question.agree!.act()}>{question.agree.label}</button>}
        <button>{question.agree ? words.cancel : words.close}</button>
      </form>
    </dialog>
  )
}
