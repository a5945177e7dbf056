import type { Definition, Subject } from '../core/definition/definition'
import type { Words } from '../wording/words'

export interface SubjectGroup {
  readonly subject: Subject
  readonly name: string
  readonly definitions: readonly Definition[]
}

/** The subjects that hold at least one function, in the order of `subjectNames`. */
export function groupBySubject(
  definitions: readonly Definition[],
  subjectNames: Words['subjectNames'],
): readonly SubjectGroup[] {
  return (Object.keys(subjectNames) as Subject[])
    .map((subject) => ({
      subject,
      name: subjectNames[subject],
      definitions: definitions.filter((definition) => definition.subject === subject),
    }))
    .filter((group) => group.definitions.length > 0)
}
