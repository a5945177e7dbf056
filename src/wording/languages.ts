import { english } from './en/words'
import type { Words } from './words'

/** Each language by its own name, and the number style that its readers expect. */
export const languages = {
  en: { name: 'English', decimalMark: '.' },
  de: { name: 'Deutsch', decimalMark: ',' },
} as const

export type Language = keyof typeof languages

/** English is always there; another language comes when it is asked for. */
export async function wordsIn(language: Language): Promise<Words> {
  return language === 'de' ? (await import('./de/words')).german : english
}
