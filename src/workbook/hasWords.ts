/** Whether a value can be what something is called: a dash in an empty place says nothing. */
export function hasWords(value: unknown): value is string {
  return typeof value === 'string' && /\p{L}/u.test(value)
}
