import type { Words } from '../words'

export const frame: Words['frame'] = {
  sections: { Season: 'Saison', Functions: 'Funktionen', Working: 'Rechenweg', Check: 'Prüfen', Compare: 'Vergleichen', Library: 'Nachschlagen', Settings: 'Einstellungen' },
  gettingReady: { Season: 'Die Saison wird vorbereitet', Functions: 'Die Funktionen werden vorbereitet', Working: 'Der Rechenweg wird vorbereitet', Check: 'Die Prüfung wird vorbereitet', Library: 'Das Nachschlagewerk wird vorbereitet', Compare: 'Die Diagramme werden vorbereitet', Settings: 'Die Einstellungen werden vorbereitet' },
  sectionFailed: 'Dieser Teil konnte nicht geholt oder gezeigt werden. An der Arbeitsmappe hat sich nichts geändert. Schließen Sie den Seitenbereich und öffnen Sie ihn wieder; die anderen Teile gehen so lange weiter.',
  place: ({ address, sheet }) => `${address} auf ${sheet}`,
  readingTheWorkbook: 'Die Arbeitsmappe wird gelesen',
  caution: 'Vorsicht.',
  blank: '(leer)',
  inputShows: (error) => `Eine der Zellen, die hineingehen, zeigt ${error}.`,
  selectedCell: 'die gewählte Zelle',
  inCurrency: (unit, currency) => unit.replace('Geld', () => currency),
}
