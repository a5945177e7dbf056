/** The section Library, without its entries. */
export const library = {
  materials: 'Materials',
}
