import type { Words } from '../words'
import { libraryEntries } from './libraryEntries'

const ofEntry = (english: string) => libraryEntries[english] ?? english

export const library: Words['library'] = {
  about:
    'Nur zur Orientierung: messen Sie selbst, und nehmen Sie Preise aus Ihren eigenen Rechnungen. Hier stehen keine.',
  sixWays: 'Sechs Bewurzelungsverfahren',
  materials: 'Materialien',
  noSource: 'Allgemein üblich, ohne Quelle',
  putIntoASheet: 'In ein Blatt setzen',
  putEntry: (name) => `In ein Blatt setzen: ${name}`,
  added: (sheet) =>
    `Das Blatt ${sheet} ist angefügt. Geben Sie Ihre eigenen Zahlen in die umrandeten Zellen ein; die Ergebnisse füllen sich dabei.`,
  goTo: (sheet) => `Zu ${sheet}`,
  adding: 'Das Blatt wird angefügt',
  ofEntry,
}
