/**
 * Problem -> English sentence. Each says which argument, what it got, what it takes and what to type.
 * A second language is a second file of this shape, in a folder of its own.
 */
import type { CellFunction } from '../../core/definition/definition'
import { dayUnit, type Parameter } from '../../core/definition/parameter'
import type { Limit, Problem } from '../../core/definition/problem'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import type { Dimension } from '../../core/quantity/units'
import {
  asPercent,
  hundredth,
  sentenceIn,
  shortened,
  unitList,
  type NoAnswerSentence,
  type NoAnswerWords,
  type RefusalWords,
  type Shown,
} from '../problemParts'

/** In a cell, numbers have a point, as functions read them; the pane shows the mark that its user types. */
export function sentence(problem: Problem, definition: CellFunction, mark: DecimalMark = '.'): string {
  return sentenceIn({ refusals, noAnswers, row: 'row', typeSomething }, problem, definition, mark)
}

const dimensions: Readonly<Record<Dimension, string>> = {
  volume: 'a volume',
  length: 'a length',
  mass: 'a mass',
  massPerVolume: 'a mass per volume',
  volumePerMass: 'a volume per mass',
}

const refusals: RefusalWords = {
  missing: (_, { name, parameter, type }) => `${name} is blank; it takes ${parameter?.text ?? 'a value'}. ${type}`,
  emptyRange: (_, { name, type }) => `${name} has only blank cells. ${type}`,
  notNumber: ({ value }, { place, parameter, type }) =>
    `${place} takes ${takes(parameter)}; it is ${quoted(value)}. ${type}`,
  notText: ({ value }, { place, type, n }) => `${place} takes text; it is ${n(value)}. ${type}`,
  logical: ({ value }, { place, parameter, type }) => `${place} takes ${takes(parameter)}; it is ${value}. ${type}`,
  outsideCells: (_, { place, type }) => `${place} is larger or smaller than a cell can hold. ${type}`,
  unclearComma: ({ value }, { place, n }) => {
    const [before = '', after = ''] = value.trim().split(',')
    return `${place} is ${quoted(value)}, and the comma may mean ${before}${after} or ${n(`${before}.${after}`)}. Type the one you mean without a comma.`
  },
  notDay: ({ value }, { place, type }) => `${place} takes a date; it is the text ${quoted(value)}. ${type}`,
  beforeFirstDay: ({ other, days }, { name, n }) =>
    `${name} comes to ${n(days)} days, and so long before ${other} lies no day that is counted here. Check both.`,
  tooManyWeeks: ({ got, most }, { name }) =>
    `The table would have ${got} weeks; it takes at most ${most}. Check the years in ${name}, or give firstDay and weeks.`,
  severalMarks: ({ value }, { place, mark, n }) =>
    `${place} is ${quoted(value)}, which has more than one point or comma. Type it with a ${markNames[mark]} before the decimals and no mark between thousands, such as ${n('1500.25')}.`,
  notPlainDigits: ({ value }, { place, mark, n }) =>
    `${place} is ${quoted(value)}; a number is read from the digits 0 to 9 and a decimal ${markNames[mark]}, not from fractions or other digits. Type ${n('0.5')} for a half.`,
  outOfRange: ({ value, limit }, { place, parameter, type, n }) =>
    `${place} must be ${limited(limit, parameter, n)}; it is ${withUnit(value, parameter, n)}. ${type}`,
  zeroOrBlank: (_, { place, parameter, type }) =>
    `${place} is 0, or a blank cell; it must be above 0${parameter?.whole === true ? ', a whole number' : ''}. ${type}`,
  percentTyped: ({ value }, { place, parameter, n }) => {
    const limit = parameter?.below === 1 ? 'below 1 (100 %)' : 'at most 1 (100 %)'
    return `${place} must be ${limit}; it is ${n(value)}. For ${n(value)} per cent type ${n(value)}% or ${n(hundredth(value))}.`
  },
  unitUnknown: ({ unit }, { place, parameter }) =>
    `${place} has ${quoted(unit)}, which is not a unit that is read here. ${unitsOf(parameter)}`,
  unitAmbiguous: ({ unit, spellings }, { place }) =>
    `${place} has ${quoted(unit)}, which means two different units. Type ${spellings.map(quoted).join(' or ')}.`,
  unitOfOtherKind: ({ value, got, takes: wanted }, { place, type }) =>
    `${place} takes ${dimensions[wanted]}; it is ${quoted(value)}, ${dimensions[got]}. ${type}`,
  unitNotTaken: ({ value }, { place, parameter, type }) =>
    `${place} takes ${takes(parameter)} without another unit; it is ${quoted(value)}. ${type}`,
  unitsDiffer: ({ from, fromKind, to, toKind }) =>
    `${quoted(from)} is ${dimensions[fromKind]} and ${quoted(to)} is ${dimensions[toKind]}. Type two units of the same kind, such as "ft3" and "L".`,
  notOneCell: ({ rows, columns }, { name }) =>
    `${name} takes one cell; it is a range of ${size(rows, columns)}. Point it at a single cell.`,
  notOneLine: ({ rows, columns }, { name }) =>
    `${name} takes one row or one column; it is a block of ${size(rows, columns)}. Point it at a single row or column.`,
  lengthsDiffer: ({ length, other, otherLength }, { name }) =>
    `${name} has ${cells(length)} and ${other} has ${cells(otherLength)}. Point both at ranges of the same length.`,
  blankInRow: (_, { place, type }) =>
    `${place} is blank, while other ranges have a value there. ${type} Or clear the whole row.`,
  allZero: (_, { name, type }) => `${name} adds up to 0; at least one must be above 0. ${type}`,
  sharesExclude: ({ other, value, limit }, { name, n }) =>
    `${name} must be below ${n(limit)} with the ${other} given; it is ${n(value)}. Type a smaller one, or leave it out.`,
  noSpreadAtOne: ({ other, value }, { name, n }) =>
    `${name} is ${n(value)}, and ${other} of 1 lose nothing in any batch, which leaves no spread. Leave ${name} out, or type the rates that the batches had.`,
  batchesOfOne: (_, { name }) =>
    `${name} is 1 in every batch, and one cutting alone does not show how alike the cuttings of a batch are. Point it at batches of 2 cuttings or more.`,
  aboveOther: ({ value, other, otherValue }, { place, n }) =>
    `${place} is ${n(value)} and ${other} beside it is ${n(otherValue)}; it may not be above it. Check both cells.`,
  givenTwice: ({ value }, { name }) => `${name} has ${value} twice. Type each only once, or clear one of the two rows.`,
  tooFewRows: ({ got, least }, { name }) =>
    `${name} has ${rows(got)}; it takes ${least} or more. Point it at a longer range.`,
  tooManyRows: ({ got, most }, { name }) =>
    `${name} has ${rows(got)}; it takes at most ${most}. Point it at a shorter range.`,
  deliveriesDiffer: ({ value, other }, { place, n }) =>
    `${place} is ${n(value)}, and another row of the same supplier has ${n(other)}. An order has one delivery: type the same in both rows, or clear one of them.`,
  beyondExact: (_, { name }) =>
    `${name} has so many digits, or is so large, that the sums are no longer exact. Round to fewer decimals, such as whole cents, or check the units.`,
  needsOther: ({ other }, { place }) =>
    `${place} has a value, and ${other} beside it is blank or 0. Type both, or clear both.`,
  functionUnknown: ({ value, known }, { name }) =>
    `${name} is ${quoted(value)}, which is not a function that can be asked for here. Type one of ${known.join(', ')}.`,
  argumentUnknown: ({ value, of, known }, { place }) =>
    `${place} is ${quoted(value)}, which is no argument of ${of} that takes numbers. Type one of ${known.join(', ')}.`,
  argumentTwice: ({ value, of }, { place }) =>
    `${place} is ${quoted(value)} again, which is a single cell of ${of}. Clear one of the two rows.`,
  tooManyDraws: ({ value, of, most }, { name, n }) =>
    `${name} must be at most ${most} for ${of}, which searches for its answer and takes longer; it is ${n(value)}. Type ${most} or less.`,
  argumentMissing: ({ missing, of }, { name }) => `${name} lacks ${missing}, which ${of} needs. Add a row for it.`,
  functionRefused: ({ of, problems }, { place, definition, mark }) => {
    const asked = definition.over?.find(({ id }) => id === of)
    const why = asked === undefined ? '' : problems.map((problem) => sentence(problem, asked, mark)).join(' ')
    return `${of} refuses ${place.replace(/,$/, '')}: ${why}`
  },
  tooManyArguments: ({ given, most }, { definition }) =>
    `STICK.${definition.id} takes at most ${most} arguments; it got ${given}. Remove the last.`,
  resultOutsideCells: (_, { definition }) =>
    `The ${definition.result.name} would be larger or smaller than a cell can hold. Check the units of the inputs.`,
}

const noAnswers: NoAnswerWords = {
  neverPays: ({ least, singleUse, raises }, n) => {
    const causes = raises.length === 0 ? ['the first cost'] : raises.map((name) => causesOfReuse[name])
    // Nobody lowers the interest by wishing; a lower first cost lowers what it takes.
    const lower = raises.filter((name) => name !== 'yearlyInterest')
    const keep = causes.length === 1 ? 'keeps' : 'keep'
    const level = least === singleUse ? `above ${n(least)} a round` : `at ${n(least)} a round or more`
    return (
      `Reuse never catches up: however often, ${listed(causes, 'and')} ${keep} it ${level}, and single use costs ${n(singleUse)} for as many liners. ` +
      `Lower ${listed(lower.length === 0 ? ['firstCost'] : lower, 'or')}, or stay with single use.`
    )
  },
  paysTooLate: ({ mostRounds, level, singleUse }, n) =>
    `Reuse does not pay within ${mostRounds} rounds: by then it costs ${n(level)} a round, and single use ${n(singleUse)} for as many liners. Raise mostRounds if the medium lasts longer.`,
  cannotCover: ({ needed, most }, n) =>
    `All that is available gives ${n(most)} L, and ${n(needed)} L are needed. Raise available, add a pack, or lower the need.`,
  searchGivenUp: ({ most }, n) =>
    `No order is given: after ${n(most)} partial orders it was not yet proven which is cheapest. Leave out packs that are hardly cheaper than others, or plan a smaller need at a time.`,
  surplusPays: ({ surplus, cost }, n) =>
    `Every surplus cutting brings back ${n(surplus)} on average and costs ${n(cost)}, so more would always pay: bench and market set the limit. Check costPerCutting, lower valuePerSurplusLiner, or take CUTTINGS.`,
  functionHasNoAnswer: ({ of, parameter, row, why }, n) =>
    `${of} has no answer with ${row === undefined ? `the ${parameter}` : `${parameter}, row ${row}`}: ${(noAnswers[why.code] as NoAnswerSentence)(why, n)}`,
  noDrawHasAnswer: ({ of, draws }) => `${of} has no answer with any of the ${draws} draws. Check lows and highs.`,
  paysBeyond: ({ most }, n) =>
    `Even beyond ${n(most)} cuttings one more would pay. Check costPerCutting, stageRates and batchSpread.`,
  needsTooMany: ({ most }, n) =>
    `Not even ${n(most)} cuttings reach this confidence. Lower the confidence, or check stageRates and batchSpread.`,
}

const markNames = { '.': 'point', ',': 'comma' } as const

const causesOfReuse = {
  washCost: 'washing',
  topUpShare: 'topping up',
  lossShare: 'loss',
  yearlyInterest: 'interest',
} as const

function listed(words: readonly string[], last: 'and' | 'or'): string {
  return words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1] ?? ''}`
}

function takes(parameter: Parameter | undefined): string {
  if (parameter?.unit === dayUnit) return 'a date'
  if (parameter?.share === true) return 'a share'
  if (parameter?.dimension !== undefined) return `${dimensions[parameter.dimension]} in ${parameter.unit}`
  return 'a number'
}

function typeSomething(parameter: Parameter, example: string, n: Shown): string {
  if (parameter.takes === 'text') return `Type text, such as "${example}".`
  if (parameter.unit === dayUnit) return 'Type a date, such as 2026-03-02.'
  if (parameter.share === true) return `Type a share such as ${n(example)}, or ${n(asPercent(example))}.`
  if (parameter.dimension !== undefined)
    return `Type a number in ${parameter.unit}, such as ${n(example)}, or text with a unit, such as "${n(example)} ${parameter.unit}".`
  return `Type ${parameter.whole === true ? 'a whole number' : 'a number'}, such as ${n(example)}.`
}

function limited(limit: Limit, parameter: Parameter | undefined, n: Shown): string {
  switch (limit.is) {
    case 'whole':
      return 'a whole number'
    case 'atLeast':
      return `${withUnit(String(limit.value), parameter, n)} or more`
    case 'above':
      return `above ${withUnit(String(limit.value), parameter, n)}`
    case 'atMost':
      return `at most ${withUnit(String(limit.value), parameter, n)}`
    case 'below':
      return `below ${withUnit(String(limit.value), parameter, n)}`
  }
}

function withUnit(value: string, parameter: Parameter | undefined, n: Shown): string {
  // Per cent help to see a slip, and only clutter what is no share at all.
  if (parameter?.share === true)
    return value === '0' || Math.abs(Number(value)) > 100
      ? n(value)
      : `${n(value)} (${n(asPercent(value)).replace('%', ' %')})`
  return parameter?.dimension === undefined ? n(value) : `${n(value)} ${parameter.unit}`
}

function unitsOf(parameter: Parameter | undefined): string {
  if (parameter?.dimension === undefined) return 'Type a unit such as "L", "ft3", "mm", "in", "kg" or "lb".'
  return `Type ${dimensions[parameter.dimension]} in ${parameter.unit}, or with ${unitList[parameter.dimension]}.`
}

function quoted(text: string): string {
  return `"${shortened(text)}"`
}

function size(rows: number, columns: number): string {
  return `${rows} by ${columns} cells`
}

function rows(length: number): string {
  return length === 1 ? '1 row' : `${length} rows`
}

function cells(length: number): string {
  return length === 1 ? '1 cell' : `${length} cells`
}

/** Of an error value that a function of an add-in cannot hand on as it is. */
export function errorGoesIn(code: string): string {
  return `An input cell shows ${code}. Mend it first.`
}
