import type { Help } from '../en/help'

export const help: Help = {
  allFunctions: 'Alle Funktionen',
  takes: { heading: 'Was sie nimmt', columns: ['Argument', 'Was es ist', 'Was man eingeben kann'] },
  gives: { heading: 'Was sie gibt', columns: ['Spalte', 'Was es ist', 'Einheit'] },
  care: 'Vorsicht',
  examples: { heading: 'Beispiele', columns: ['Formel', 'Gibt', 'Was es zeigt', 'Quelle'] },
  working: {
    heading: 'Wie das erste Beispiel gerechnet wird',
    columns: ['Schritt', 'Regel', 'Ergebnis', 'Was es ist'],
  },
  without: 'Ohne das Add-In',
  plain: 'Das erste Beispiel in reinem Excel, mit englischen Namen der Funktionen:',
  check: 'Eine Formel, die das Ergebnis nachprüft:',
  index: {
    title: 'Funktionen von Sticksheet',
    text: 'Anteile gibt man als 0,15 oder 15% ein. Eine Zahl mit einer Einheit im Namen hat diese Einheit; ein Text hat seine eigene, etwa "3,8 cu ft".',
    columns: ['Funktion', 'Thema', 'Was sie gibt'],
  },
  number: (value) => String(value).replace('.', ','),
}
