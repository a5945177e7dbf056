import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { cautionFor } from '../../src/wording/cautions'

function cautionOf(id: string): string {
  const definition = catalogue.find((candidate) => candidate.id === id)
  if (definition === undefined) throw new Error(`no function ${id}`)
  return cautionFor(definition) ?? ''
}

describe('the caution beside a function', () => {
  it('always ends by deferring to the label and the local rules', () => {
    const cautions = catalogue.flatMap((definition) => cautionFor(definition) ?? [])
    expect(cautions.length).toBeGreaterThan(0)
    for (const caution of cautions) expect(caution).toMatch(/Follow the label and your local rules\.$/)
  })

  it.each([
    ['FILL', 'Dust'],
    ['BEDFILL', 'silica'],
    ['BEDFILL', 'heavy'],
    ['BLOCKS', 'fibres'],
    ['WATER', 'fouls'],
    ['BAGS', 'Legionella'],
    ['BLENDCOST', 'asbestos'],
    ['MIXLOADS', 'Dust'],
    ['MIXLOADS', 'Lime'],
    ['MIXLOADS', 'running mixer'],
    ['MIXLOADS', 'heavy'],
    ['REUSECOST', 'bleach'],
    ['REUSELEDGER', 'bleach'],
  ])('of %s speaks of %s', (id, word) => {
    expect(cautionOf(id)).toContain(word)
  })

  it('is absent where nothing is handled', () => {
    expect(cautionOf('UNITS')).toBe('')
    expect(cautionOf('PERLINER')).toBe('')
    expect(cautionOf('PEAK')).toBe('')
    expect(cautionOf('VARIANCE')).toBe('')
  })
})
