interface Waiting<Asked, Answer> {
  readonly asked: Asked
  readonly resolve: (answer: Answer | PromiseLike<Answer>) => void
  readonly reject: (problem: unknown) => void
}

/** What is asked one by one within a turn is answered together: one message to Excel in the place of many. */
export function gathered<Asked, Answer>(
  answerAll: (asked: readonly Asked[]) => Promise<readonly (Answer | PromiseLike<Answer>)[]>,
): (asked: Asked) => Promise<Answer> {
  let waiting: Waiting<Asked, Answer>[] = []
  const send = () => {
    const all = waiting
    waiting = []
    answerAll(all.map(({ asked }) => asked)).then(
      (answers) => all.forEach(({ resolve }, index) => resolve(answers[index]!)),
      (problem: unknown) => all.forEach(({ reject }) => reject(problem)),
    )
  }
  return (asked) =>
    new Promise((resolve, reject) => {
      waiting.push({ asked, resolve, reject })
      if (waiting.length === 1) queueMicrotask(send)
    })
}
