import type { Words } from '../words'

export const frame: Words['frame'] = {
  sections: {
    Season: 'Saison',
    Functions: 'Funktionen',
    Working: 'Rechenweg',
    Check: 'Prüfen',
    Compare: 'Vergleichen',
    Library: 'Nachschlagen',
    Settings: 'Einstellungen',
  },
  gettingReady: {
    Season: 'Die Saison wird vorbereitet',
    Functions: 'Die Funktionen werden vorbereitet',
    Working: 'Der Rechenweg wird vorbereitet',
    Check: 'Die Prüfung wird vorbereitet',
    Library: 'Das Nachschlagewerk wird vorbereitet',
    Compare: 'Die Diagramme werden vorbereitet',
    Settings: 'Die Einstellungen werden vorbereitet',
  },
  sectionFailed:
    'Dieser Teil konnte nicht geholt oder gezeigt werden. Was in der Arbeitsmappe steht, bleibt, und die anderen Teile gehen weiter. Hilft es nicht, ihn nochmals zu zeigen: Schließen Sie in Excel den Bereich und öffnen Sie ihn wieder; im Browser speichern Sie zuerst die Arbeitsmappe und laden dann die Seite neu.',
  notStarted:
    'Sticksheet ist nicht gestartet. Es braucht einen Browser von 2023 oder neuer: Chrome oder Edge 111, Firefox 115, Safari 16.4. Ist Ihrer neuer, laden Sie die Seite nochmals.',
  noOffice:
    'Sticksheet ist nicht gestartet: das Skript office.js, das jedes Add-in braucht, ließ sich nicht von Microsoft holen. Prüfen Sie die Verbindung, oder ob etwas appsforoffice.microsoft.com fernhält; öffnen Sie dann den Bereich noch einmal.',
  showAgain: 'Nochmals zeigen',
  place: ({ address, sheet }) => `${address} auf ${sheet}`,
  mayBeOld: 'Seitdem können sich Zellen geändert haben.',
  readingTheWorkbook: 'Die Arbeitsmappe wird gelesen',
  caution: 'Vorsicht.',
  blank: '(leer)',
  inputShows: (error) => `Eine der Zellen, die hineingehen, zeigt ${error}.`,
  selectedCell: 'die gewählte Zelle',
  inCurrency: (unit, currency) => unit.replace('Geld', () => currency),
}
