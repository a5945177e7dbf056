import { headingRow, inOrder } from '../../core/definition/columns'
import { defineTable, type TableRow, type TextsOf } from '../../core/definition/definition'
import type { Fact } from '../../core/definition/fact'
import { number } from '../../core/definition/parameter'
import type { Decimal } from '../../core/quantity/decimal'

const columns = {
  variance: { heading: 'variance' },
  amount: { heading: 'amount' },
  reads: { heading: 'reads' },
}

export const variance = defineTable({
  id: 'VARIANCE',
  subject: 'review',
  parameters: {
    standardQuantity: number('units', {
      text: 'quantity that the standard allows for what was produced',
      example: 20,
      atLeast: 0,
    }),
    standardPrice: number('money per unit', {
      text: 'price that the standard allows; negative where one is paid to take it',
      example: 4,
    }),
    actualQuantity: number('units', { text: 'quantity that was used', example: 24, atLeast: 0 }),
    actualPrice: number('money per unit', {
      text: 'price that was paid; negative where one was paid to take it',
      example: 4.5,
    }),
  },
  result: { name: 'variance', unit: 'table', columns },
  method: ({ standardQuantity, standardPrice, actualQuantity, actualPrice }) => {
    const price = actualPrice.sub(standardPrice).mul(actualQuantity)
    const usage = actualQuantity.sub(standardQuantity).mul(standardPrice)
    const total = price.add(usage)
    return {
      table: [row('price', price), row('usage', usage), row('total', total)],
      working: () => [
        {
          name: 'standardCost',
          text: 'what the standard allows',
          formula: 'standardQuantity * standardPrice',
          value: standardQuantity.mul(standardPrice),
          unit: 'money',
        },
        {
          name: 'actualCost',
          text: 'what was spent',
          formula: 'actualQuantity * actualPrice',
          value: actualQuantity.mul(actualPrice),
          unit: 'money',
        },
        {
          name: 'price',
          text: 'price variance',
          formula: '(actualPrice - standardPrice) * actualQuantity',
          value: price,
          unit: 'money',
        },
        {
          name: 'usage',
          text: 'usage variance',
          formula: '(actualQuantity - standardQuantity) * standardPrice',
          value: usage,
          unit: 'money',
        },
        {
          name: 'total',
          text: 'both, which is actualCost - standardCost',
          formula: 'price + usage',
          value: total,
          unit: 'money',
        },
      ],
    }
  },
})

export const varianceText: TextsOf<typeof variance> = {
  summary: 'Splits what was spent beyond the standard into price and usage.',
  convention:
    'Positive means that more was spent than the standard allows, which is adverse; negative is favourable. The price is compared at the actual quantity and the quantity at the standard price, so the two add up exactly to actual quantity x actual price less standard quantity x standard price. The standard quantity is the one for what was really produced. Nothing is rounded.',
  result: 'a row each for price, usage and their total',
  columns: {
    variance: { text: 'price, usage or total', unit: 'text' },
    amount: { text: 'what was spent beyond the standard', unit: 'money' },
    reads: { text: 'favourable, adverse or none', unit: 'text' },
  },
  plain: (columns) => ({
    formula:
      'LET(priceVariance, (actualPrice - standardPrice) * actualQuantity, usageVariance, (actualQuantity - standardQuantity) * standardPrice, ' +
      'amounts, VSTACK(priceVariance, usageVariance, priceVariance + usageVariance), ' +
      // Where the two cancel, binary dust remains in plain Excel, and it must not read as adverse.
      'dust, (ABS(actualPrice * actualQuantity) + ABS(standardPrice * standardQuantity)) / 10 ^ 12, ' +
      `VSTACK(${headingRow(columns)}, HSTACK(${inOrder(columns, {
        variance: 'VSTACK("price", "usage", "total")',
        amount: 'amounts',
        reads: 'IF(amounts - dust > 0, "adverse", IF(amounts + dust < 0, "favourable", "none"))',
      })})))`,
  }),
  examples: [
    {
      text: '24 kg at 4.50 used where the standard is 20 kg at 4',
      given: [20, 4, 24, 4.5],
      gives: [
        ['price', 12, 'adverse'],
        ['usage', 16, 'adverse'],
        ['total', 28, 'adverse'],
      ],
      source: 'lpu-management-accounting',
    },
    {
      text: 'A lower price paid for with more waste: 2,200 kg at 4.50 where the standard is 2,000 kg at 5',
      given: [2000, 5, 2200, 4.5],
      gives: [
        ['price', -1100, 'favourable'],
        ['usage', 1000, 'adverse'],
        ['total', -100, 'favourable'],
      ],
      source: 'lpu-management-accounting',
    },
  ],
}

function row(fact: 'price' | 'usage' | 'total', amount: Decimal): TableRow<typeof columns> {
  return { variance: { fact }, amount, reads: reading(amount) }
}

function reading(amount: Decimal): Fact {
  if (amount.isZero()) return { fact: 'none' }
  return { fact: amount.isPositive() ? 'adverse' : 'favourable' }
}
