import { defineByMethod, type TextsOf } from '../../core/definition/definition'
import { number, text } from '../../core/definition/parameter'
import { convert, readUnit, type Unit, type UnitProblem } from '../../core/quantity/units'

export const units = defineByMethod({
  id: 'UNITS',
  subject: 'volume',
  parameters: {
    quantity: number('any', { text: 'the number to convert' }),
    fromUnit: text({ text: 'the unit it is in', example: 'ft3' }),
    toUnit: text({ text: 'the unit it is wanted in', example: 'L' }),
  },
  result: { name: 'converted', unit: 'in toUnit' },
  method: ({ quantity, fromUnit, toUnit }) => {
    const from = readUnit(fromUnit)
    if (isProblem(from)) return { problem: { ...from, parameter: 'fromUnit' } }
    const to = readUnit(toUnit)
    if (isProblem(to)) return { problem: { ...to, parameter: 'toUnit' } }
    if (from.dimension !== to.dimension) {
      return {
        problem: {
          code: 'unitsDiffer',
          parameter: 'toUnit',
          from: fromUnit,
          fromKind: from.dimension,
          to: toUnit,
          toKind: to.dimension,
        },
      }
    }
    const converted = convert(quantity, from, to)
    return {
      value: converted,
      working: () => [
        {
          name: 'factor',
          text: { fact: 'unitsInOne', symbol: to.symbol, one: from.symbol },
          formula: `${from.symbol} / ${to.symbol}`,
          value: convert(from.factor.div(from.factor), from, to),
          unit: `${to.symbol} per ${from.symbol}`,
        },
        {
          name: 'quantity',
          text: 'the converted number',
          formula: 'quantity * factor',
          value: converted,
          unit: to.symbol,
        },
      ],
    }
  },
})

export const unitsText: TextsOf<typeof units> = {
  summary: 'Converts a quantity from one unit to another.',
  convention:
    'Exact factors, by NIST SP 811 and Handbook 44. Volumes, lengths, masses, and mass per volume ("lb/yd3" to "kg/m3"). A gallon, quart, bushel or ton is never guessed: it must say which.',
  result: 'the converted number',
  plain: () => ({
    reason:
      "Excel's own CONVERT knows other spellings of the units, and no mass per volume. The check is for units that both spell alike, such as ft3, L, m, in, kg.",
    check: 'ABS(CONVERT(quantity, fromUnit, toUnit) - converted) <= ABS(converted) / 10 ^ 9',
  }),
  examples: [
    { text: 'Cubic feet to litres', given: [1, 'ft3', 'L'], gives: 28.316846592, source: 'nist-sp-811' },
    {
      text: 'A rate of 5 lb per cubic yard in kg per cubic metre',
      given: [5, 'lb/yd3', 'kg/m3'],
      gives: 2.96638210628891,
      source: 'acquaah-4-11',
    },
  ],
}

function isProblem(read: Unit | UnitProblem): read is UnitProblem {
  return 'code' in read
}
