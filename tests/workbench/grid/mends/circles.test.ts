import { expect, it } from 'vitest'
import { showCircles } from '../../../../src/workbench/grid/mends/circles'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { without } from '../univerInNode'
import { withCells } from './openCells'

const cells = {
  A1: 2,
  B1: '=C1+1',
  C1: '=B1+1',
  D1: '=B1*2',
  D2: '=IFERROR(D1,0)',
  E1: '=E1+A1',
  F1: '=SUM(F1:F3)',
  F2: 1,
  G1: '=A1+1',
  G2: '=G1*2',
}
const inCircles = ['B1', 'C1', 'D1', 'D2', 'E1', 'F1']

it('What reads its own result, and all that follows from it, shows #CYCLE!, and nothing else does.', () =>
  withCells(cells, (open) => {
    expect(open.values(...inCircles)).toEqual(inCircles.map(() => '#CYCLE!'))
    expect(open.values('G1', 'G2')).toEqual([3, 6])
  }))

it('A circle that is typed shows so, and is calculated once it is opened.', () =>
  withCells({ A1: 2, B1: '=A1+1', C1: '=B1+1' }, async (open) => {
    await open.type('A1', '=C1')
    expect(open.values('A1', 'B1', 'C1')).toEqual(['#CYCLE!', '#CYCLE!', '#CYCLE!'])
    await open.type('A1', 5)
    expect(open.values('A1', 'B1', 'C1')).toEqual([5, 6, 7])
  }))

it('A circle may lead through what a formula spills.', () =>
  withCells(
    { A1: 1, A2: 2, A3: 3, B1: '=SUM(D2:D3)', D1: '=B1+A1:A3', E1: '=SUM(D1:D3)', F1: '=A1:A3*2' },
    async (open) => {
      expect(open.values('B1', 'D1', 'E1')).toEqual(['#CYCLE!', '#CYCLE!', '#CYCLE!'])
      expect(open.values('F1', 'F3')).toEqual([2, 6])
      await open.type('A1', 5)
      expect(open.values('B1', 'D1', 'E1', 'F1')).toEqual(['#CYCLE!', '#CYCLE!', '#CYCLE!', 10])
      await open.type('B1', 1)
      expect(open.values('D1', 'D2', 'D3', 'E1')).toEqual([6, 3, 4, 13])
    },
  ))

it('Without the mend the library gives whatever comes out of a circle.', () =>
  withCells(
    cells,
    (open) => expect(open.values(...inCircles).every((value) => typeof value === 'number')).toBe(true),
    engineMends.filter((mend) => without(showCircles).includes(mend)),
  ))
