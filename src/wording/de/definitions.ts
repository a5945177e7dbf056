/**
 * What the definitions of the functions say, in German, by the English text: summaries, conventions, texts of arguments,
 * results, columns, steps and examples, and the units. What is not listed is shown in English.
 */
const texts: Readonly<Record<string, string>> = {
  // Units.
  share: 'Anteil',
  bags: 'Säcke',
  money: 'Geld',
}

export const ofDefinition = (english: string): string => (Object.hasOwn(texts, english) ? texts[english]! : english)
