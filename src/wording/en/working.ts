/** The section Working: how the number in the selected cell came about. */
export const working = {
  withoutTheAddIn: 'Without the add-in',
}
