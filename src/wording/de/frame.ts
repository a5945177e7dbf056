import type { Words } from '../words'

export const frame: Words['frame'] = {
  sections: { Season: 'Saison', Functions: 'Funktionen', Working: 'Rechenweg', Check: 'Prüfen', Compare: 'Vergleichen', Library: 'Nachschlagen', Settings: 'Einstellungen' },
  gettingReady: { Season: 'Die Saison wird vorbereitet', Library: 'Das Nachschlagewerk wird vorbereitet', Compare: 'Die Diagramme werden vorbereitet', Settings: 'Die Einstellungen werden vorbereitet' },
  place: ({ address, sheet }) => `${address} auf ${sheet}`,
  readingTheWorkbook: 'Die Arbeitsmappe wird gelesen',
  caution: 'Vorsicht.',
  blank: '(leer)',
  inputShows: (error) => `Eine der Zellen, die hineingehen, zeigt ${error}.`,
  selectedCell: 'die gewählte Zelle',
  inCurrency: (unit, currency) => unit.replace('Geld', () => currency),
}
