/** The section Compare: the charts, what each says in sentences, and the headings of their tables. */
export const compare = {
  goToTheCell: 'Go to the cell',
}
