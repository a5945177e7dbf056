/** The section Settings. */
export const settings = {
  language: 'Language',
}
