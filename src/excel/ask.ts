/** Questions that Excel answers at once. Those of one turn go in one message. */
import { gathered } from './gathered'
import { run } from './run'

/** Says what is to be loaded, and gives the way to the answer once it is there. */
export type Question<Answer> = (context: Excel.RequestContext) => () => Answer | Promise<Answer>

const askTogether = gathered(async (questions: readonly Question<unknown>[]): Promise<readonly unknown[]> => {
  try {
    return await answersTo(questions)
  } catch (problem) {
    if (questions.length === 1) throw problem
    // One of them that is refused takes the others with it: each is asked for itself then.
    return questions.map((question) => answersTo([question]).then(([answer]) => answer))
  }
})

function answersTo(questions: readonly Question<unknown>[]): Promise<readonly unknown[]> {
  return run(async (context) => {
    const answers = questions.map((question) => question(context))
    await context.sync()
    return Promise.all(answers.map((answer) => answer()))
  })
}

export function ask<Answer>(question: Question<Answer>): Promise<Answer> {
  return askTogether(question) as Promise<Answer>
}
