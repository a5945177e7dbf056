import type { Words } from '../words'

export const library: Words['library'] = {
  materials: 'Materialien',
  noSource: 'Allgemein üblich, ohne Quelle',
  putIntoASheet: 'In ein Blatt setzen',
  putEntry: (name) => `In ein Blatt setzen: ${name}`,
  added: (sheet) => `Das Blatt ${sheet} ist angefügt. Geben Sie Ihre eigenen Zahlen in die umrandeten Zellen ein; die Ergebnisse füllen sich dabei.`,
  goTo: (sheet) => `Zu ${sheet}`,
  adding: 'Das Blatt wird angefügt',
  sheetTitle: (name) => `${name}: Zeilen für den Anfang`,
  sheetAbout: 'Geben Sie Ihre eigenen Zahlen in die umrandeten Zellen ein. Was daraus gelesen wird, bleibt bis dahin leer. Ein Bereich dient der Orientierung, und nichts hier ist ein Preis.',
  sheetHeadings: ['Was es ist', 'Einheit', 'Zahl', 'Was einzugeben ist', 'Üblicher Bereich', 'Woher der Bereich ist'],
  component: (label, place) => `${label}: Bestandteil ${place}`,
  wanted: (range, unit) => (unit === 'share' ? `Anteil ${range}: 0,15 oder 15%` : `Zahl ${range}`),
  typeThat: (wanted, unit) => (unit === 'share' ? `Geben Sie ein: ${wanted}.` : `Geben Sie ein: ${wanted}; die Einheit ist ${unit}.`),
}
