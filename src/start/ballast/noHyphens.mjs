/**
 * In place of the patterns by which the grid's editor parts words of 77 languages at the end of a line, of which it
 * fetches one at every start. It goes on without where a module holds none.
 */
export {}
