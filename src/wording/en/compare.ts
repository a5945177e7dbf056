/** The section Compare: the charts, what each says in sentences, and the headings of their tables. */

const parts = {
  medium: {
    name: 'Medium',
    text: 'the medium and the vessel, tray, bed or sheet that holds it, over the rounds it serves, with breakage and interest',
  },
  reuse: { name: 'Reuse', text: 'washing and topping up before each later round' },
  bench: { name: 'Bench', text: 'space and heat until the cuttings are rooted' },
  labour: { name: 'Labour', text: 'sticking, mixing, filling and other work' },
  other: { name: 'Other costs', text: 'what else is spent on a cutting' },
  losses: { name: 'Losses', text: 'what the liners that are sold bear for the cuttings that were lost' },
}

/** Amounts and rounds are given as they will be shown. */
export const compare = {
  about: 'The numbers of these charts are those of the cells.',
  noChartsInSheets: 'The sheets here hold no charts of their own; in Excel a button puts a chart into the sheet.',
  unseen: 'Some functions have not been calculated since the workbook was opened, so their charts are still missing.',
  calculateAndRead: 'Calculate and read again',
  readAgain: 'Read the workbook again',
  choice: (id: string, place: string) => `${id} in ${place}`,
  cellsToShow: (title: string) => `${title}: cells to show`,
  goToTheCell: 'Go to the cell',
  goTo: (choice: string) => `Go to ${choice}`,
  putChart: 'Put this chart into the sheet',
  putChartOf: (choice: string) => `Put the chart of ${choice} into the sheet`,
  needsTable: (id: string) =>
    `Excel draws its own charts from tables in cells: put STICK.${id} by itself into a cell, and choose that cell here.`,
  chartPut: (sheet: string, free: string) => `The chart is on ${sheet}, at ${free} or below. It follows its cells.`,
  tablePut: (sheet: string, place: string) =>
    `The chart is on ${sheet}, beside the cells that it draws: ${place}. Both follow your cells.`,
  noChart: (why: string) => `There is no chart of this cell. ${why}`,
  oneRoundOnly: 'All methods here are single use, so there is no round-by-round chart.',
  key: 'Key',
  asTable: 'Show as a table',
  asChart: 'Show as a chart',
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  perLiner: 'money per saleable liner',

  ways: {
    title: 'Rooting methods',
    hint: 'Put STICK.COMPARE with your rooting methods into a sheet, or STICK.ROOTINGCOST for one method, to see here what a saleable liner costs in each and what it is made of.',
    chart: 'Cost of a saleable liner, part by part',
    way: 'method',
    perLiner: 'per saleable liner',
    parts,
    partHeading: (part: keyof typeof parts) => parts[part].name.toLowerCase(),
    /** A part of the cost with the headings of the cells that it was found in. */
    partFrom: (part: keyof typeof parts, headings: readonly string[]) =>
      `${parts[part].name}: ${parts[part].text}${headings.length === 0 ? '' : `. Counted here: ${headings.map((heading) => `“${heading}”`).join(', ')}`}`,
    costs: (way: string, amount: string) => `${way} costs ${amount} for a saleable liner.`,
    cheapest: (way: string, amount: string) => `${way} is cheapest: ${amount} for a saleable liner.`,
    largestPart: (part: string, amount: string) => `Its largest part is “${part}” with ${amount}.`,
    next: (way: string, amount: string) => `${way} comes next with ${amount}.`,
    dearest: (way: string, amount: string) => `${way} is the most expensive with ${amount}.`,
    oneNumber: (ways: readonly string[]) =>
      `${ways.join(', ')}: bench and labour are within “Other costs”, because the workbook does not tell them apart. To see them, give the other costs as a cell that only adds up others, such as =B4+B5+B6, each with a heading beside it.`,
  },

  rounds: {
    title: 'Round by round',
    hint: 'Put STICK.BREAKEVEN, STICK.REUSELEDGER or STICK.COMPARE into a sheet to see here how the cost falls with every round, and from which one on it beats single use.',
    chart: 'Cost by the rounds it serves',
    usedAgain: 'Used again',
    singleUse: 'Single use',
    /** As what a thing is compared with, where it has no name. */
    anySingleUse: 'single use',
    compareWith: 'Compare with',
    cheapestSingleUse: (name: string) => `${name}: the cheapest single use`,
    usedOnce: (name: string) => `${name}: single use`,
    singleUseColumn: (name: string) => `${name}, single use`,
    tie: (once: string) => `the first round in which it costs no more than ${once}`,
    round: (round: string) => `round ${round}`,
    rounds: 'rounds',
    roundsServed: 'rounds it serves',
    noDearerFrom: 'costs no more from',
    fromRound: (name: string, round: string) => `${name}: from round ${round} on`,
    /** Where it never beats what it is compared with. */
    notIn: (rounds: string) => `not in ${rounds} rounds`,
    singleUseCosts: (amount: string) => `Single use costs ${amount}.`,
    cheapestCosts: (name: string, amount: string) => `${name}, the cheapest single use, costs ${amount}.`,
    onceCosts: (name: string, amount: string) => `${name}, used once, costs ${amount}.`,
    oneRound: (name: string, amount: string) => `${name} costs ${amount} over 1 round`,
    course: (name: string, first: string, last: string, rounds: string) =>
      `${name} goes from ${first} over 1 round to ${last} over ${rounds}`,
    beats: (course: string, once: string, round: string) =>
      `${course}, and costs no more than ${once} from round ${round} on.`,
    neverBeats: (course: string, once: string, rounds: string) =>
      `${course}, and does not beat ${once} in its ${rounds} rounds.`,
  },

  swings: {
    title: 'What moves a result',
    hint: 'Put STICK.SWINGS with a low, a likely and a high value of each argument into a sheet to see here which of them moves the result most.',
    chart: (id: string) => `What moves ${id} most`,
    atItsHigh: 'with the argument at its high',
    atItsLow: 'with the argument at its low',
    allAtLikely: 'with every argument at its likely value',
    columns: {
      argument: 'argument',
      low: 'low',
      high: 'high',
      atLow: 'at low',
      allLikely: 'all likely',
      atHigh: 'at high',
      swing: 'swing',
    },
    likely: (id: string, amount: string) => `With every argument at its likely value ${id} gives ${amount}.`,
    widest: (argument: string, atLow: string, atHigh: string) =>
      `${argument} moves it most: ${atLow} at its low, ${atHigh} at its high.`,
    still: (names: readonly string[]) => `What does not move it: ${names.join(', ')}.`,
  },

  odds: {
    title: 'How likely a result is',
    hint: 'Put STICK.ODDS with a low, a likely and a high value of each argument into a sheet to see here how likely each result is.',
    chart: (id: string) => `How likely each ${id} is`,
    atOrBelow: 'share of the draws at or below a result',
    likelyLine: (amount: string) => `every argument at its likely value: ${amount}`,
    meanLine: (amount: string) => `mean of the draws: ${amount}`,
    shareOfDraws: 'share of the draws',
    columns: { share: 'share of draws', result: 'result' },
    rows: { mean: 'mean', likely: 'all likely', withoutAnswer: 'draws without answer' },
    spread: (id: string, half: string, from: string, to: string) =>
      `A draw takes a random value of each argument between its low and its high. Half of the draws of ${id} lie at or below ${half}, and nine in ten between ${from} and ${to}.`,
    likely: (amount: string) => `With every argument at its likely value it is ${amount}.`,
    withoutAnswer: (count: string) => `${count} draws have no answer and are left out.`,
  },
}
