import type { Fact } from '../../core/definition/fact'
import { factText } from './facts'

/** What the checks found in a workbook, in English: what stands there, why it looks wrong, and what to type. */
export const found = {
  typedOver: () =>
    'A number was typed over the formula of this column. Fill the formula down again, or keep the number on purpose.',
  valueForFormula: () =>
    'A value stands where this column has a formula, and is taken for its result. Fill the formula down again, or keep the value on purpose.',
  emptyForFormula: () =>
    'Nothing stands where this column has a formula, so totals leave the row out. Fill the formula down again.',
  broken: () =>
    'This formula differs from those above and below it. Fill the column down again, or keep it on purpose.',
  shows: (error: string) => `The formula ${errorMeaning[error] ?? `shows ${error}`}.`,
  waits: () =>
    'This cell still waits for its result, so neither it nor what reads it was checked. Check again once it shows one.',
  follows: (error: string, count: number, source: string) =>
    `${error} comes from ${source}${count > 1 ? ` and ${count - 1} other ${count === 2 ? 'cell' : 'cells'}` : ''}.`,
  noLosses: () =>
    'Nothing is lost between cutting and liner: all stageRates are 100 %. Type the shares that survive, such as 90%.',
  neverWashed: (rounds: string) =>
    `It is used for ${rounds} rounds, and washing was left out. Type what washing costs, or 0 where nothing is washed.`,
  benchFull: () => 'The bench is counted as full all the time. Type the share of it that is in use, such as 80%.',
  noDelivery: () => 'Delivery was left out. Type what it costs for each pack, or 0 where it is in the price.',
  pressedAsLoose: (word: string) =>
    `This row says “${word}”, and expansion is 1, as for loose litres. A pressed pack opens to more: type how many loose litres one declared litre gives.`,
  deepBed: (metres: string) =>
    `A bed ${metres} m deep. The depth is in metres: for ${metres} centimetres type "${metres} cm".`,
  wideCell: (name: string, millimetres: string) =>
    `${name} is ${millimetres} mm, which no cell or pot is. It is in millimetres; text may bring its own unit, such as "${millimetres} cm".`,
  largePot: (litres: string, label: string, most: string) =>
    `${litres} L in a vessel of ${label}: one as deep as it is wide holds ${most} L at most. Check the volume.`,
  markupAsMargin: (margin: string, markup: string, meant: string) =>
    `A margin of ${margin} of the price is a markup of ${markup} on the cost. Where ${margin} on the cost was meant, type a margin of ${meant}.`,
  unroundedQuote: () =>
    'The prices of this quote are not rounded, so a shown price times the quantity is not the shown total. Type a priceStep, such as 0.01.',
  zeroLeftOut: (name: string) =>
    `${name} is 0, or a blank cell that came as 0. None is taken here, so it counts as left out. Clear the cell, or type what you mean.`,
  oldPrice: (day: string, days: number, start: string, most: number) =>
    `This price is dated ${day}, ${days} days before the season starts (${start}); prices older than ${most} days are flagged. Ask for a new price, or keep it on purpose.`,
  dayAsText: (text: string, hasTwoReadings: boolean) =>
    `“${text}” is a text and no day, so the age of the price is not known${hasTwoReadings ? '; some read its day first, others its month' : ''}. Type it as year-month-day, such as 2026-02-09.`,
  noSeasonStart: () =>
    'The first day of the season is missing, so the age of its prices was not checked. Type it as year-month-day, such as 2026-02-09.',
  overlap: (quantity: string, warning: Fact) =>
    `Liners at the price for ${quantity}: ${factText(warning)}. ` +
    'Change a price or a quantity of the quote, or offer the larger order.',
} as const

const errorMeaning: Readonly<Record<string, string>> = {
  '#DIV/0!': 'divides by 0 or by an empty cell',
  '#N/A': 'finds nothing',
  '#NAME?': 'has a function or a name that is not known here',
  '#NULL!': 'names two ranges that do not meet',
  '#NUM!': 'has no number as its answer',
  '#REF!': 'reads a cell that is not there',
  '#SPILL!': 'has no room to spill: something stands in its way',
  '#VALUE!': 'has a text where a number is wanted',
}
