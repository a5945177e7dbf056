import './secondEngineInNode'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Testimony } from '../../../src/workbook/check/testimony'
import { demoSeason } from '../../../src/workbook/season/demoSeason'
import { emptySeason } from '../../../src/workbook/season/emptySeason'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { testimonyOf } from '../../../src/workbench/witness/witness'
import { openBookOf, type Shown } from './openBookOf'
import { usualBook } from './usualFormulas'

const na = { kind: 'cellError', code: '#N/A' } as const

function saidOf(cells: Readonly<Record<string, Shown>>): Testimony {
  return testimonyOf(openBookOf(cells))
}

/** Two cells typed, one of them half filled, and a formula that is not known to be right. */
const typed = { A1: 60, A2: 80, B1: 'tray', B2: 'bed', C1: true }

describe('The witness', () => {
  it('names a wrong result with what the second engine makes of it, and none of those that do right with it.', () => {
    const said = saidOf({ ...typed, D1: ['=A1+A2', 110], D2: ['=D1*2', 220], D3: ['=SUM(D1:D2)', 330] })
    // 60 + 80.
    expect(said).toEqual({
      disagreements: [{ sheet: 'Season', address: 'D1', first: 110, second: 140 }],
      judged: 3,
      notJudged: {},
    })
  })

  it.each<[string, Shown]>([
    ['a number', ['=A1/7', 60 / 7]],
    ['a text', ['=B1&" of "&A1', 'tray of 60']],
    ['a text of a fraction', ['=A1/7&""', '8.57142857142857']],
    ['yes', ['=A1<A2', true]],
    ['an error', ['=MATCH("pot",B1:B2,0)', na]],
    ['an empty text', ['=IF(A1>99,A1,"")', '']],
    ['the 0 of a blank cell', ['=A9', 0]],
    ['half a cent, which goes up', ['=ROUND(A1*0+1.005,2)', 1.01]],
    ['a cent that is not lost on the way down', ['=TRUNC(A1*0+617.3,2)', 617.3]],
    ['no cent more on the way up', ['=ROUNDUP(A1*0+305-0.09,2)', 304.91]],
    ['what two minuses make of yes', ['=SUMPRODUCT(--(B1:B2="bed"),A1:A2)', 80]],
    ['a quotient of two minuses', ['=A1/--A2', 0.75]],
    ['nothing that is as blank as a key', ['=MATCH(A9,A1:A9,0)', na]],
    ['a cell of a sheet in other capitals', ['=SUM(season!A1:A2)', 140]],
  ])('agrees where a formula rightly gives %s.', (_what, right) => {
    expect(saidOf({ ...typed, D1: right })).toEqual({ disagreements: [], judged: 1, notJudged: {} })
  })

  it.each<[string, Shown, Shown]>([
    ['a number', ['=A1*A2', 4800.0001], 4800],
    ['a text', ['=UPPER(B1)', 'Tray'], 'TRAY'],
    ['a number for yes', ['=A1<A2', 1], true],
    ['a blank for 0', ['=A9', null], 0],
    ['an error for a number', ['=A1+A2', na], 140],
    ['a number for an error', ['=MATCH("pot",B1:B2,0)', 2], na],
  ])('does not where it gives %s.', (_what, wrong, second) => {
    expect(saidOf({ ...typed, D1: wrong }).disagreements).toMatchObject([{ address: 'D1', second }])
  })

  it('compares every cell that a formula fills, and how many it fills.', () => {
    const spilled = { D1: ['=A1:A2*2', 120, { spill: 'D1:D2' }] as const }
    expect(saidOf({ ...typed, ...spilled, D2: 160 }).disagreements).toEqual([])
    expect(saidOf({ ...typed, ...spilled, D2: 161 }).disagreements).toMatchObject([{ first: 161, second: 160 }])
    expect(saidOf({ ...typed, D1: ['=A1:A2*2', 120] }).disagreements).toMatchObject([{ first: null, second: 160 }])
  })

  it('reads names and what stands below a spill sign.', () => {
    const names = [{ name: 'Places', refersTo: 'Season!$A$1:$A$2' }]
    const cells = {
      ...typed,
      D1: ['=A1:A2', 60, { spill: 'D1:D2' }] as const,
      D2: 80,
      E1: ['=SUM(places)+SUM(D1#)', 281] as const,
    }
    expect(testimonyOf(openBookOf(cells, names))).toMatchObject({
      disagreements: [{ first: 281, second: 280 }],
      judged: 2,
    })
  })

  const bagsOf = (litres: unknown) => ({ calls: [{ id: 'BAGS', args: [litres, 60] }] })

  it('takes what our functions gave as known, and judges what is made of it.', () => {
    // 140 litres fill three bags of 60.
    const cells = { ...typed, D1: ['=STICK.BAGS(A1+A2,60)*5', 15, bagsOf(140)] as const }
    expect(saidOf(cells)).toEqual({ disagreements: [], judged: 1, notJudged: {} })
    expect(saidOf({ ...typed, D1: ['=STICK.BAGS(A1+A2,60)*5', 16, bagsOf(140)] }).disagreements).toMatchObject([
      { first: 16, second: 15 },
    ])
  })

  it('judges what was calculated for our functions.', () => {
    expect(saidOf({ ...typed, D1: ['=STICK.BAGS(A1+A2,60)', 2, bagsOf(110)] })).toEqual({
      disagreements: [{ sheet: 'Season', address: 'D1', first: 110, second: 140 }],
      judged: 1,
      notJudged: {},
    })
  })

  it('reads tables that our functions gave within a formula.', () => {
    const calls = [{ id: 'BLENDPARTS', args: [100, [[3], [1]]] }]
    // 3 + 1 parts of 100 litres.
    expect(saidOf({ ...typed, D1: ['=SUM(STICK.BLENDPARTS(100,{3;1}))', 101, { calls }] }).disagreements).toMatchObject(
      [{ first: 101, second: 100 }],
    )
  })

  it.each<[string, keyof Testimony['notJudged'], Shown]>([
    ['one call of our functions that reads cells', 'ownFunction', ['=STICK.BAGS(A1,60)', 1, bagsOf(60)]],
    ['calls that nobody has seen', 'unseenCall', ['=STICK.BAGS(A1,60)*2', 2, { calls: undefined }]],
    ['other calls than are written', 'unseenCall', ['=STICK.BAGS(A1,60)*2', 2, { calls: [] }]],
    ['what the second engine rounds otherwise', 'otherwise', ['=TEXT(1.005,"0.00")', '1.01']],
    ['many cells where it takes one', 'otherwise', ['=SUM(ISNUMBER(A1:A2)*1)', 2]],
    ['what differs from a text', 'otherwise', ['=COUNTIF(B1:B2,"<>bed")', 1]],
    ['digits that it writes otherwise', 'otherwise', ['=LEN(A1/7)', 16]],
    ['a function that it does not know', 'unknown', ['=IFERROR(NOSUCH(A1),7)', 8]],
    ['two ranges that meet', 'unknown', ['=SUM(A1:A2 A2:C2)', 80]],
    ['a sheet that is not there', 'unknown', ['=Prices!A1', 1]],
    ['an error in a cell that it reads', 'error', ['=COUNT(A1,E1)+SUM(E1)', 2]],
    ['no room for its results', 'error', ['=A1:A2', { kind: 'cellError', code: '#SPILL!' }]],
    ['the day on which it is calculated', 'changing', ['=TODAY()-1', 1]],
  ])('says that it does not judge %s.', (_what, why, shown) => {
    expect(saidOf({ ...typed, E1: na, D1: shown })).toEqual({ disagreements: [], judged: 0, notJudged: { [why]: 1 } })
  })

  it('has nothing to say of an empty workbook.', () => {
    expect(saidOf({})).toEqual({ disagreements: [], judged: 0, notJudged: {} })
  })

  it('reaches neither circles nor a long chain from below, and both are judged.', () => {
    const chain = Array.from({ length: 3000 }, (_cell, row) => [`A${row + 1}`, [`=A${row + 2}+1`, 3000 - row]] as const)
    const said = saidOf({ ...Object.fromEntries(chain), A3001: 0, C1: ['=C2', 5], C2: ['=C1', 5] })
    expect(said).toEqual({ disagreements: [], judged: 3002, notJudged: {} })
  })
})

describe('Nothing differs', () => {
  it.each([
    ['the demo season', demoSeason(), 1300],
    ['the empty season', emptySeason('EUR'), 1600],
  ])('in %s.', async (_what, book, leastJudged) => {
    const { disagreements, judged } = testimonyOf(await calculateBook(book))
    expect(disagreements).toEqual([])
    expect(judged).toBeGreaterThan(leastJudged)
  })

  it('in at least 999 of 1,000 usual formulas.', async () => {
    const said: Testimony[] = []
    for (const book of fc.sample(usualBook(250), { numRuns: 12 })) said.push(testimonyOf(await calculateBook(book)))
    const judged = said.reduce((sum, one) => sum + one.judged, 0)
    expect(judged).toBeGreaterThan(2700)
    expect(said.flatMap(({ disagreements }) => disagreements).length).toBeLessThanOrEqual(judged / 1000)
  })
})
