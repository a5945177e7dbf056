import type { Words } from '../words'

const functionsOf = (count: number) => (count === 1 ? '1 Funktion' : `${count} Funktionen`)

export const functions: Words['functions'] = {
  search: 'Funktionen suchen',
  searchHint: 'Suchen, etwa Sack, Platte, Waschen',
  clearSearch: 'Suche leeren',
  found: 'Gefunden',
  count: functionsOf,
  countFound: (count) => `${functionsOf(count)} gefunden`,
  noneFound: (query) =>
    `Keine Funktion zu „${query}“ gefunden. Nehmen Sie weniger oder andere Wörter, etwa Sack, Platte, Torf oder Waschen.`,
  noCell: 'Keine Zelle ist gewählt.',
  selected: (place) => `Gewählt: ${place}`,
  uses: ', benutzt ',
  usedHere: 'die gewählte Zelle benutzt sie',

  example: 'Beispiel',
  moreExamples: 'Weitere Beispiele',
  fillIn: 'Ausfüllen',
  comesOut: 'Was herauskommt',
  inShapeOf: (argument) => `, in der Form von ${argument}`,
  howCounted: 'Wie gerechnet wird',

  take: 'Holen',
  takeHint: 'Die gewählten Zellen holen',
  takeFor: (argument) => `Die Auswahl für ${argument} holen`,
  ifLeftOut: (value) => `${value}, wenn nichts angegeben ist`,
  mayBeLeftOut: 'kann leer bleiben',
  suchAs: (example) => `etwa ${example}`,
  result: 'Ergebnis',
  gives: 'ergibt',
  table: 'Die Tabelle, die herauskommt',
  needsSheet: 'Unter den Angaben ist eine Formel: das Ergebnis zeigt das Blatt.',
  cellShows: (error) => `Eine der Zellen zeigt ${error}.`,
  stillNeeded: (names) => `Es fehlt noch: ${names.join(', ')}`,
  selectTarget: 'Wählen Sie die Zelle, in der das Ergebnis stehen soll.',
  goesInto: (place) => `Es kommt nach ${place}.`,
  goesIntoReplacing: (place) => `Es kommt nach ${place} und ersetzt, was dort steht.`,
  changeFormula: 'Formel ändern',
  putIntoSheet: 'Ins Blatt setzen',
  putInstead: (place) => `Stattdessen nach ${place} setzen`,
  clearForm: 'Formular leeren',
  putInto: (place) => `Gesetzt: ${place}.`,

  putIntoSelected: 'In die gewählte Zelle setzen',
  source: (source) => `Quelle: ${source}`,
  selectFirst: 'Wählen Sie zuerst eine Zelle im Blatt.',
  isEmpty: (place) => `${place} ist leer.`,
  replaces: (place) => `Das ersetzt, was jetzt in ${place} steht.`,
  fills: (rows, columns) =>
    `Es füllt von dort an ${rows === 1 ? '1 Zeile' : `${rows} Zeilen`} und ${columns === 1 ? '1 Spalte' : `${columns} Spalten`}.`,
}
