import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { groupBySubject } from '../../src/pane/groupBySubject'
import { subjectNames } from '../../src/wording/en/subjects'

describe('the groups of the list', () => {
  it('hold every function exactly once', () => {
    const listed = groupBySubject(catalogue, subjectNames).flatMap(({ definitions }) => definitions)
    expect(listed).toHaveLength(catalogue.length)
    expect(new Set(listed)).toEqual(new Set(catalogue))
  })

  it('leave out a subject without functions', () => {
    const groups = groupBySubject(
      catalogue.filter(({ subject }) => subject === 'blend' || subject === 'volume'),
      subjectNames,
    )
    expect(groups.map(({ name }) => name)).toEqual(['Volume', 'Blends'])
  })
})
