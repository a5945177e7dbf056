import type { NamedSheet } from '../cells'
import { figureOf } from '../table/figures'
import { figuresSheet, type TypedFigures } from '../table/figuresSheet'
import { setup } from '../tables/setup'

const [typed, heat, mist, overheads] = (['benchRateTyped', 'heat', 'mist', 'overheads'] as const).map((key) =>
  figureOf(setup, key),
)
const [wage, onCosts] = [figureOf(setup, 'wage'), figureOf(setup, 'onCosts')]

export function setupSheet(mark: string, figures: TypedFigures<typeof setup>): NamedSheet {
  return figuresSheet(
    setup,
    {
      title: 'Setup',
      about: [
        'What holds for the whole nursery and season. Prices and wages without recoverable tax; what that means for you is for your accountant to say.',
      ],
      needs: [
        [
          `AND(LEN(${typed})=0,COUNT(${heat},${mist},${overheads})<3)`,
          '"Bench rate: type it, or heat, mist and overheads"',
        ],
      ],
      results: {
        benchRate: `IF(LEN(${typed})>0,${typed},IF(COUNT(${heat},${mist},${overheads})=3,${heat}+${mist}+${overheads},""))`,
        hourCost: `IF(COUNT(${wage},${onCosts})=2,${wage}*(1+${onCosts}),"")`,
      },
    },
    mark,
    figures,
  )
}
