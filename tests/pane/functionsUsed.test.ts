import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { functionsUsed } from '../../src/pane/functionsUsed'

function idsIn(formula: string): readonly string[] {
  return functionsUsed(formula, catalogue).map(({ id }) => id)
}

describe('the functions that a formula uses', () => {
  it('finds a call alone, inside another formula, and in small letters', () => {
    expect(idsIn('=STICK.FILL(A1,65)')).toEqual(['FILL'])
    expect(idsIn('=ROUND(STICK.FILL (A1,65),0)+1')).toEqual(['FILL'])
    expect(idsIn('=stick.fill(A1,65)')).toEqual(['FILL'])
  })

  it('names each function once, in the order of the formula', () => {
    expect(idsIn('=STICK.BAGS(STICK.FILL(A1,65)+STICK.FILL(A2,65),60)')).toEqual(['BAGS', 'FILL'])
  })

  it('does not take a quoted text, a sheet name or an unknown name for a call', () => {
    expect(idsIn('="STICK.FILL(1,2)"')).toEqual([])
    expect(idsIn('="say ""STICK.FILL(1,2)"""&A1')).toEqual([])
    expect(idsIn("='STICK.FILL(1)'!A1")).toEqual([])
    expect(idsIn('=STICK.ZEBRA(1)')).toEqual([])
    expect(idsIn('=CHOPSTICK.FILL(1)')).toEqual([])
    expect(idsIn('')).toEqual([])
  })
})
