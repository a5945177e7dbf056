import type { Words } from '../words'

export const workbench: Words['workbench'] = {
  newWorkbook: {
    button: 'Neu',
    heading: 'Mit einer leeren Arbeitsmappe beginnen',
    warning: 'Die offene Arbeitsmappe geht verloren. Speichern Sie sie vorher, wenn Sie sie behalten wollen.',
    agree: 'Beginnen',
  },
  openFile: {
    button: '.xlsx öffnen',
    heading: 'Eine andere Arbeitsmappe öffnen',
    agree: 'Datei wählen',
    picker: 'Excel-Datei, die geöffnet wird',
    isOpen: (file) => `${file} ist offen`,
    cannotShow: 'Diese Teile davon kann das Programm hier nicht zeigen und nicht speichern:',
    fileStays: 'Die Datei selbst bleibt, wie sie ist.',
    notRead: (file) => `${file} konnte nicht gelesen werden`,
    unchanged: 'Die Arbeitsmappe, die offen war, ist unverändert.',
  },
  saveFile: {
    button: '.xlsx speichern',
    leavesOut: 'In einer gespeicherten Kopie fehlt etwas',
    holdsMore: 'Die Datei, die Sie geöffnet haben, enthält auch Folgendes, das einer hier gespeicherten Kopie fehlt:',
    keepOriginal: 'Behalten Sie auch das Original.',
    agree: 'Die Kopie speichern',
    notSaved: (file) => `${file} konnte nicht gespeichert werden`,
    as: 'Speichern unter',
    changed: (file) => `${file} hat sich geändert`,
    wouldReplace:
      'Ein anderes Programm oder ein anderer Tab hat sie geschrieben, verschoben oder gelöscht, seit sie hier geöffnet oder gespeichert wurde. Beim Speichern tritt diese Arbeitsmappe an ihre Stelle.',
    replace: 'Ersetzen',
    notAllowed:
      'Der Browser durfte die Datei nicht schreiben. Speichern Sie nochmals und erlauben Sie es, oder speichern Sie unter einem anderen Namen.',
  },
  keptWork: {
    heading: (file) => `${file} wurde nicht gespeichert`,
    stood: (title, time) =>
      `Dieser Browser hat die Arbeitsmappe${title === '' ? '' : ` „${title}“`} so aufbewahrt, wie sie am ${time} war.`,
    mayBeOpen: 'Sie ist vielleicht noch in einem anderen Tab offen.',
    choose: 'Öffnen und speichern Sie sie, oder verwerfen Sie sie endgültig.',
    open: 'Öffnen',
    throwAway: 'Verwerfen',
    later: 'Später entscheiden',
  },
  noPlace: {
    heading: (typed) => `Es gibt keine Stelle ${typed}`,
    instead:
      'Nichts wurde ausgewählt. Geben Sie den Namen von Zellen ein, eine Zelle wie B4 oder ein Blatt und eine Zelle wie Orders!B4.',
  },
  notCalculated: {
    heading: 'Die letzte Änderung wurde nicht berechnet',
    old: 'Was aus ihr folgt, zeigt noch die Ergebnisse von vorher: verwenden Sie sie nicht.',
    instead:
      'Nehmen Sie die Änderung mit Strg+Z zurück, oder speichern Sie die Mappe und laden Sie diese Seite neu. Was nicht ging:',
  },
  formulas: {
    heading: 'Formeln ersetzen?',
    goes: (sheet, address) => `1 Zelle auf ${sheet} würde ihre Formel verlieren: ${address}.`,
    go: (sheet, count, addresses, more) =>
      `${count} Zellen auf ${sheet} würden ihre Formeln verlieren: ${addresses}${more > 0 ? ` und ${more} weitere` : ''}.`,
    replaced: 'Was ersetzt ist, rechnet nicht mehr.',
    agree: 'Ersetzen',
    keep: 'Formeln behalten',
  },
  openWorkbook: 'Offene Arbeitsmappe',
  unsaved: (file) => `${file}, nicht gespeichert`,
  notice: 'Hinweis',
  notKept: 'Dieser Browser kann nichts Ungespeichertes aufbewahren: speichern Sie oft.',
  newerVersion: {
    isThere: 'Es gibt eine neuere Version; sie bietet beim Öffnen an, was Sie nicht gespeichert haben.',
    load: 'Laden',
    notKept:
      'Dieser Browser kann nicht aufbewahren, was Sie nicht gespeichert haben: speichern Sie es, und laden Sie dann die neuere Version.',
    otherTabs: 'Schließen Sie zuerst die anderen Tabs von Sticksheet: sie brauchen noch die ältere Version.',
  },
  cancel: 'Abbrechen',
  close: 'Schließen',
  show: 'Zeigen',
  sheet: 'Blatt',
  pane: 'Bereich',
  nextPart: 'nächster Teil',
  whichParts: ': Leiste, Blatt oder Bereich',
  pageDown: 'Bild ab',
  nextSheet: 'nächstes Blatt',
  dark: 'Dunkel',
  gettingReady: 'Das Blatt wird vorbereitet',
  typedEarly: 'Das Blatt war noch nicht bereit, und was Sie getippt haben, blieb draußen. Tippen Sie es nochmals.',
  noSheet: 'Das Blatt konnte nicht gezeigt werden',
  selectedCell: 'Gewählte Zelle',
  showInSheet: 'Im Blatt zeigen',
  list: (sheet, address) => `Liste für ${address} auf ${sheet}`,
  openList: 'Aus der Liste wählen (Alt+Pfeil ab)',
  emptyList: 'Die Liste ist leer.',
  empty: 'leer',
  gives: (formula, value) => `${formula} ergibt ${value}`,
}
