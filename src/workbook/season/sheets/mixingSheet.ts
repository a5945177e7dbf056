import { mixLoads } from '../../../functions/blend/mixLoads'
import { cautionRows } from '../cautionRows'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type TypedFigures } from '../table/figuresSheet'
import { spilled } from '../table/spilled'
import { lookUp, onlyWhere, type ColumnOf } from '../table/table'
import { mixing } from '../tables/answers'
import { blends } from '../tables/blends'
import { components } from '../tables/components'

const at = (key: FigureOf<typeof mixing>) => figureOf(mixing, key)
const ofBlend = (column: ColumnOf<typeof blends>) => lookUp(blends, at('blend'), column)

/** Drawn for a blend of so many components; additives and the finished mix come below. */
const rowsDrawn = 8

export function mixingSheet(mark: string, typed: TypedFigures<typeof mixing>): NamedSheet {
  const loose = `${at('mixed')}/(1-${ofBlend('shrink')})`
  return figuresSheet(
    mixing,
    {
      title: 'Mixing sheet',
      about: [
        'For the potting shed: what goes into each load of the mixer. Additives are weighed for the finished mix.',
      ],
      cautions: cautionRows(mixLoads),
      needs: [[`${at('mixer')}<=0`, '"Mixer: more than 0"']],
      results: {
        mixed: `IF(LEN(${at('litres')})>0,${at('litres')},${ofBlend('needed')})`,
        loads: `ROUNDUP(ROUND(${loose}/${at('mixer')},9),0)`,
      },
      tables: [
        spilled(mixLoads, {
          name: 'MixingTable',
          formula: whenReady(
            mixing,
            call(mixLoads, {
              finishedLitres: at('mixed'),
              parts: onlyWhere(components, 'parts', 'blend', at('blend')),
              mixerLitres: at('mixer'),
              mixShrink: ofBlend('shrink'),
              additiveKgM3: `HSTACK(${ofBlend('lime')},${ofBlend('wetting')},${ofBlend('feed')})`,
              partNames: onlyWhere(components, 'medium', 'blend', at('blend')),
              additiveNames: '{"Lime","Wetting agent","Starter feed"}',
            }),
          ),
          formats: {
            item: undefined,
            unit: undefined,
            fullLoad: formats.weight,
            fullLoads: formats.count,
            lastLoad: formats.weight,
            together: formats.weight,
          },
          units: {
            item: 'What to put in',
            unit: '',
            fullLoad: 'each full load',
            fullLoads: 'loads',
            lastLoad: 'the last load',
            together: 'all loads',
          },
          height: rowsDrawn,
        }),
      ],
    },
    mark,
    typed,
  )
}
