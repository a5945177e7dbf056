/** The colours of the looks, one palette for the grid and for files, in light; each is red, green and blue in six digits. */
export const palette = {
  ink: '1F2A1A',
  leaf: '305922',
  mist: 'E4EFDC',
  cream: 'FFF4D0',
  straw: 'C9A227',
  pen: '174A8C',
  clay: '9A3412',
  blush: 'FDEBE3',
} as const
