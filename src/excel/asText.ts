/** Excel reads what is written as if it were typed: "60" would become a number, and "1-2" a day, without the sign for a text. */
export function asText(text: string): string | undefined {
  if (text === '') return undefined
  const isPlain = /^\p{L}\D*$/u.test(text) && !/^(true|false)$/i.test(text)
  // No number, day or time is so long.
  return isPlain || (/^\p{L}/u.test(text) && text.length > 40) ? text : `'${text}`
}
