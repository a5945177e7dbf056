/** The section Functions: the list, the text of a function, its form and its examples. */
export const functions = {
  search: 'Search the functions',
}
