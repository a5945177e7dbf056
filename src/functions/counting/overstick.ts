import { defineByMethod, type TextsOf, type WorkingStep } from '../../core/definition/definition'
import { money, number, share, shares } from '../../core/definition/parameter'
import {
  besideASurvivor,
  chanceOfAtLeast,
  expectedShortAndSurplus,
  leastToStick,
  type Survival,
} from '../../core/method/binomialTail'
import { Decimal, zero } from '../../core/quantity/decimal'
import { isAtMost } from '../../core/quantity/rounding'
import { distributionName, mostCuttings, rateOf, rateStepOf, survivalOf } from './survival'

export const overstick = defineByMethod({
  id: 'OVERSTICK',
  subject: 'counting',
  parameters: {
    liners: number('liners', { text: 'liners that were promised', example: 100, atLeast: 0 }),
    stageRates: shares({
      text: 'the share that survives each stage (strike, potting on, grade-out), one cell a stage',
      example: 0.8,
      above: 0,
      atMost: 1,
    }),
    costPerCutting: money('money per cutting', {
      text: 'what one more cutting costs until it is sold or lost',
      example: 0.1,
    }),
    lostPerMissingLiner: money('money per liner', {
      text: 'price not earned and penalty for each liner that is missing',
      example: 1.5,
    }),
    valuePerSurplusLiner: money('money per liner', {
      text: 'what a liner beyond those promised brings',
      example: 0.05,
      default: 0,
    }),
    batchSpread: share({
      text: 'how far the overall rate differs from batch to batch (its standard deviation, from BATCHSPREAD)',
      example: 0.06,
      default: 0,
      below: 1,
    }),
  },
  result: { name: 'cuttings', unit: 'cuttings' },
  method: ({ liners, stageRates, costPerCutting, lostPerMissingLiner, valuePerSurplusLiner, batchSpread }) => {
    const rate = rateOf(stageRates)
    const money: Money = { cost: costPerCutting, lost: lostPerMissingLiner, value: valuePerSurplusLiner }
    const surplusBrings = valuePerSurplusLiner.mul(rate)
    if (isAtMost(costPerCutting, surplusBrings)) {
      const shown = (amount: Decimal) => amount.toSignificantDigits(6).toString()
      return {
        problem: { kind: 'noAnswer', code: 'surplusPays', surplus: shown(surplusBrings), cost: shown(costPerCutting) },
      }
    }
    const read = survivalOf(liners, rate, batchSpread)
    if ('problem' in read) return read
    const { need, survival } = read
    const stop = stopOf(need, rate, money)
    const cuttings = leastReaching(stop.ratio, need, survival)
    if (cuttings === undefined)
      return { problem: { kind: 'noAnswer', code: 'paysBeyond', most: mostCuttings.toLocaleString('en-US') } }
    return {
      value: new Decimal(cuttings),
      working: () => [
        rateStepOf(rate),
        ...stopSteps(stop),
        {
          name: 'cuttings',
          text: 'least number that reaches it',
          formula: `least n with Pr(Y >= liners) >= ratio, Y ${distributionName(batchSpread)}(n) in a batch beside a survivor`,
          value: new Decimal(cuttings),
          unit: 'cuttings',
        },
        ...outcomeSteps(need, cuttings, survival, money),
      ],
    }
  },
})

export const overstickText: TextsOf<typeof overstick> = {
  summary:
    'Cuttings to stick so that cuttings, missing liners and surplus liners together leave the most money on average.',
  convention:
    'A missing liner loses lostPerMissingLiner: the price that is not earned, plus any penalty. A surplus liner brings valuePerSurplusLiner. Part of a liner counts as a whole one, and of two numbers that leave the same the smaller is given: 0 where no cutting pays.',
  result: 'cuttings to stick',
  plain: () => ({
    reason:
      'Excel has no formula for the number of trials. The check is for batches that do not differ, and for a number above 0.',
    check:
      'LET(rate,PRODUCT(stageRates),most,(costPerCutting-valuePerSurplusLiner*rate)/((lostPerMissingLiner-valuePerSurplusLiner)*rate),' +
      'AND(BINOM.DIST(liners-1,cuttings,rate,TRUE)<=most,IF(cuttings>liners,BINOM.DIST(liners-1,cuttings-1,rate,TRUE)>most,TRUE)))',
  }),
  examples: [
    {
      text: '100 liners at 80 %, a cutting at 0.10, and 1.50 lost with each missing liner',
      given: [100, [0.8], 0.1, 1.5],
      gives: 133,
      source: 'definition',
    },
    {
      text: 'The same, where a surplus liner still brings 0.05',
      given: [100, [0.8], 0.1, 1.5, 0.05],
      gives: 134,
      source: 'definition',
    },
    {
      text: 'The same, with batches that differ by 0.06',
      given: [100, [0.8], 0.1, 1.5, 0.05, 0.06],
      gives: 145,
      source: 'definition',
    },
  ],
}

interface Money {
  readonly cost: Decimal
  readonly lost: Decimal
  readonly value: Decimal
}

/** Where sticking stops: at the least number whose chance of having enough reaches the ratio. */
interface Stop {
  readonly under: Decimal
  readonly over: Decimal
  readonly ratio: Decimal
}

/**
 * The next cutting brings lost where it survives and liners are missing, and value where it survives and none are:
 *   value x P + (lost - value) x Pr(it survives and X < liners) - cost.
 * That it survives says something of its batch: the chance is P x Pr(Y < liners), Y being the survivors of a batch
 * beside a survivor. With every cutting Pr(Y < liners) falls, and what the next one brings falls with it where lost
 * is above value, so sticking stops at the least n at which Pr(Y >= liners) reaches under / (under + over). Where lost
 * is not above value, no cutting brings more than value x P, which is below its cost.
 */
function stopOf(need: number, rate: Decimal, { cost, lost, value }: Money): Stop {
  const under = lost.mul(rate).sub(cost)
  const over = cost.sub(value.mul(rate))
  const pays = need > 0 && !isAtMost(lost.mul(rate), cost)
  return { under, over, ratio: pays ? under.div(under.add(over)) : zero }
}

function leastReaching(ratio: Decimal, need: number, survival: Survival): number | undefined {
  if (ratio.isZero()) return 0
  return losesNone(survival) ? need : leastToStick(need, ratio.toNumber(), besideASurvivor(survival), mostCuttings)
}

function stopSteps({ under, over, ratio }: Stop): readonly WorkingStep[] {
  return [
    {
      name: 'under',
      text: 'what a cutting too few loses, where it would have survived',
      formula: 'lostPerMissingLiner * rate - costPerCutting',
      value: under,
      unit: 'money per cutting',
    },
    {
      name: 'over',
      text: 'what a cutting too many loses',
      formula: 'costPerCutting - valuePerSurplusLiner * rate',
      value: over,
      unit: 'money per cutting',
    },
    {
      name: 'ratio',
      text: 'chance of having enough up to which one more cutting pays',
      formula: 'under / (under + over), 0 where no cutting pays',
      value: ratio,
      unit: 'share',
    },
  ]
}

function losesNone({ mean }: Survival): boolean {
  return mean === 1
}

interface Expected {
  readonly enough: number
  readonly short: number
  readonly surplus: number
}

function expectedOf(need: number, cuttings: number, survival: Survival): Expected {
  if (losesNone(survival))
    return {
      enough: cuttings >= need ? 1 : 0,
      short: Math.max(0, need - cuttings),
      surplus: Math.max(0, cuttings - need),
    }
  if (need === 0) return { enough: 1, short: 0, surplus: cuttings * survival.mean }
  return { enough: chanceOfAtLeast(need, cuttings, survival), ...expectedShortAndSurplus(need, cuttings, survival) }
}

function outcomeSteps(
  need: number,
  cuttings: number,
  survival: Survival,
  { cost, lost, value }: Money,
): readonly WorkingStep[] {
  const { enough, short, surplus } = expectedOf(need, cuttings, survival)
  const profitOf = (stuck: number): Decimal => {
    const outcome = expectedOf(need, stuck, survival)
    return lost.mul(new Decimal(need).sub(outcome.short)).add(value.mul(outcome.surplus)).sub(cost.mul(stuck))
  }
  const profitStep = (name: string, text: string, stuck: number): WorkingStep => ({
    name,
    text,
    formula: 'lostPerMissingLiner * (liners - short) + valuePerSurplusLiner * surplus - costPerCutting * n',
    value: profitOf(stuck),
    unit: 'money',
  })
  return [
    {
      name: 'chance',
      text: 'chance of having enough with that number',
      formula: 'Pr(X >= liners)',
      value: new Decimal(enough),
      unit: 'share',
    },
    {
      name: 'short',
      text: 'liners that are missing, on average',
      formula: 'E[max(liners - X, 0)]',
      value: new Decimal(short),
      unit: 'liners',
    },
    {
      name: 'surplus',
      text: 'liners beyond those promised, on average',
      formula: 'E[max(X - liners, 0)]',
      value: new Decimal(surplus),
      unit: 'liners',
    },
    profitStep('profit', 'what is left on average', cuttings),
    ...(cuttings === 0
      ? []
      : [profitStep('profitOneFewer', 'what would be left with one cutting fewer', cuttings - 1)]),
    profitStep('profitOneMore', 'what would be left with one cutting more', cuttings + 1),
  ]
}
