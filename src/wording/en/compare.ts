/** The section Compare: the charts, what each says in sentences, and the headings of their tables. */
export const compare = {
  goToTheCell: 'Go to the cell',
  perLiner: 'money per saleable liner',
  way: 'Way of rooting',
  chartPut: (sheet: string, free: string) => `The chart is on ${sheet}, at ${free} or below. It follows its cells.`,
  tablePut: (sheet: string, place: string) => `The chart is on ${sheet}, beside the cells that it draws: ${place}. Both follow your cells.`,
  parts: {
    medium: { name: 'Medium', text: 'the medium and the vessel, tray, bed or sheet that holds it, over the rounds it serves, with breakage and interest' },
    reuse: { name: 'Reuse', text: 'washing and topping up before each later round' },
    bench: { name: 'Bench', text: 'space and heat until the cuttings are rooted' },
    labour: { name: 'Labour', text: 'sticking, mixing, filling and other work' },
    other: { name: 'Other costs', text: 'what else is spent on a cutting' },
    losses: { name: 'Losses', text: 'what the liners that are sold bear for the cuttings that were lost' },
  },
  /** A part of the cost with the headings of the cells that it was found in. */
  partFrom: (name: string, text: string, headings: readonly string[]) => `${name}: ${text}${headings.length === 0 ? '' : `. Counted here: ${headings.map((heading) => `“${heading}”`).join(', ')}`}`,
  oneNumber: (ways: readonly string[]) => `${ways.join(', ')}: bench and labour are within “Other costs”, because the workbook does not tell them apart. To see them, give the other costs as a cell that only adds up others, such as =B4+B5+B6, each with a heading beside it.`,
}
