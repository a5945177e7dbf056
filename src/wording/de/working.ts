import type { Place } from '../en/frame'
import type { Words } from '../words'

const cells = (count: number) => (count === 1 ? '1 Zelle' : `${count} Zellen`)

const unreadArgument =
  'Eines der Argumente lässt sich hier nicht lesen, etwa Zellen einer geschlossenen Arbeitsmappe. Kopieren Sie sie zuerst in diese Arbeitsmappe.'

/** Without a place the whole workbook is meant. */
const inside = (place: Place | undefined) =>
  place === undefined ? 'in dieser Arbeitsmappe' : `in ${place.address} auf ${place.sheet}`
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

const because: Words['working']['because'] = (why) => {
  switch (why.kind) {
    case 'error':
      return `Sie zeigt ${why.code}${why.sentence === undefined ? '' : `: ${why.sentence}`}`
    case 'function':
      return `${why.id}: ${why.reason ?? unreadArgument}`
    case 'unit':
      return `Sie liest den Text „${why.text}“, den Excel allein nicht als Zahl nimmt.`
    case 'length':
      return 'Ihre reine Formel wäre länger, als Excel sie nimmt.'
  }
}

export const working: Words['working'] = {
  heading: (place) => (place === undefined ? 'Rechenweg' : `Rechenweg von ${place.address} auf ${place.sheet}`),
  selectCell: 'Wählen Sie eine Zelle im Blatt.',
  noFormula: 'Diese Zelle enthält keine Formel. Wählen Sie eine, die eine STICK-Funktion benutzt.',
  noneOfOurs: 'Diese Formel benutzt keine STICK-Funktion.',
  unseen:
    'Ihre Funktionen wurden nicht berechnet, seit die Arbeitsmappe geöffnet wurde oder Zeilen sich verschoben haben.',
  calculate: 'Die Arbeitsmappe berechnen',
  notReached: 'Diese Formel hat ihre STICK-Funktion für die jetzigen Werte nicht gebraucht.',
  ofFunction: (id) => `Rechenweg von STICK.${id}`,
  whatWentIn: 'Was eingegeben wurde',
  leftOut: (text) => `${text} (weggelassen, deshalb so angenommen)`,
  stepByStep: 'Schritt für Schritt',
  rounded: 'Lange Zahlen sind hier gerundet. Die Zelle behält alle Stellen, und der Rechenweg auf einem Blatt auch.',
  allDigits: 'Alle Stellen zeigen',
  fewerDigits: 'Weniger Stellen zeigen',
  howCounted: 'Wie gerechnet wird',
  checkFollows: 'Diese Formel prüft die Antwort:',
  unreadArgument,
  withoutTheAddIn: 'Ohne das Add-in',
  cellsItReads: 'Gelesene Zellen',
  readsNone: 'Diese Formel nennt keine Zellen der Arbeitsmappe.',
  rangeSize: (rows, columns) =>
    rows === Infinity || columns === Infinity ? 'eine ganze Spalte oder Zeile' : `${rows} × ${columns} Zellen`,
  goTo: ({ address, sheet }) => `Zu ${address} auf ${sheet}`,
  backTo: ({ address, sheet }) => `Zurück zu ${address} auf ${sheet}`,
  holdsValue: (value) => `Sie enthält ${value}.`,
  write: 'Diesen Rechenweg auf ein Blatt schreiben',
  writing: 'Der Rechenweg wird geschrieben',
  written: (sheet) => `Auf das Blatt „${sheet}“ geschrieben.`,
  toFormulas: 'In reine Formeln umwandeln',
  toValues: 'In Werte umwandeln',
  aboutTurning: 'Wandelt die gewählten Zellen in Formeln oder Werte um, die Excel ohne das Add-in zeigt.',
  reading: 'Die Arbeitsmappe wird gelesen',
  changing: 'Die Zellen werden geändert',
  noneSelected: (place) => `Keine Zelle ${inside(place)} benutzt eine STICK-Funktion, also gibt es nichts umzuwandeln.`,
  becomeFormulas: (count, place) =>
    `${capital(inside(place))} ${count === 1 ? 'bekommt 1 Zelle eine reine Formel' : `bekommen ${count} Zellen je eine reine Formel`}.`,
  becomeValues: (count, place) =>
    `${capital(inside(place))} ${count === 1 ? 'wird 1 Zelle zum Wert, der' : `werden ${count} Zellen zu Werten, die`} sich mit einer Angabe nicht mehr ${count === 1 ? 'ändert' : 'ändern'}.`,
  spilledToo: (count) => `Mit dem, was daneben und darunter gefüllt wird, sind es ${cells(count)}.`,
  stay: (count) => (count === 1 ? '1 Zelle bleibt, wie sie ist.' : `${count} Zellen bleiben, wie sie sind.`),
  because,
  change: (count) => (count === 1 ? 'Diese Zelle ändern' : `Diese ${count} Zellen ändern`),
  doNotChange: 'Nicht ändern',
  changedMeanwhile: 'Die Arbeitsmappe hat sich inzwischen geändert. Das würde jetzt geschehen:',
  changed: (count) =>
    `${count === 1 ? '1 Zelle ist' : `${count} Zellen sind`} geändert. Jede Zelle der Arbeitsmappe zeigt, was sie vorher zeigte.`,
  changedOthers: (count, places) =>
    `${count === 1 ? '1 Zelle ist' : `${count} Zellen sind`} geändert, aber nicht jede Zelle zeigt, was sie vorher zeigte: sehen Sie in ${places} nach. Rückgängig nimmt die Änderung zurück.`,
  undo: 'Strg+Z im Blatt nimmt es zurück.',
  aboutWorkbook:
    'Für eine Arbeitsmappe ohne das Add-in: eine Kopie unter anderem Namen speichern, diese öffnen und hier alle Blätter umwandeln. Ein letztes Blatt nennt, was zum Wert wurde.',
  turnWorkbook: 'Alle Blätter in reine Formeln umwandeln',
  listedOn: (sheet) => `Was zum Wert wurde, steht auf dem Blatt „${sheet}“.`,
  makeCopy: 'Eine Kopie der Arbeitsmappe, als Datei',
  aboutCopy:
    'Die Kopie enthält nur reine Formeln und Werte und ein letztes Blatt, das die Werte nennt. Die offene Arbeitsmappe bleibt, wie sie ist.',
  making: 'Die Kopie wird gemacht',
  copied: (formulas, values, sheet) =>
    `Die Kopie ist fertig: ${cells(formulas)} mit reinen Formeln, ${values} als Werte, genannt auf ihrem Blatt „${sheet}“.`,
}
