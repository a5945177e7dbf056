/** The help pages of the functions: what stands around what the definitions say. */
export const help = {
  allFunctions: 'All functions',
  takes: { heading: 'What it takes', columns: ['Argument', 'What it is', 'What may be typed'] },
  gives: { heading: 'What it gives', columns: ['Column', 'What it is', 'Unit'] },
  care: 'Take care',
  examples: { heading: 'Examples', columns: ['Formula', 'Gives', 'What it shows', 'Source'] },
  working: {
    heading: 'How the first example is worked out',
    columns: ['Step', 'Rule', 'Result', 'What it is'],
  },
  without: 'Without the add-in',
  plain: 'The first example in plain Excel:',
  check: 'A formula that checks the answer:',
  index: {
    title: 'Sticksheet functions',
    text: 'Shares are typed as 0.15 or 15%. A number with a unit in its name is in that unit, or text with its own, such as "3.8 cu ft".',
    columns: ['Function', 'Subject', 'What it gives'],
  },
  number: (value: number): string => String(value),
}

export type Help = typeof help
