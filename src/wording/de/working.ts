import type { Words } from '../words'

const cells = (count: number) => (count === 1 ? '1 Zelle' : `${count} Zellen`)

const because: Words['working']['because'] = (why) => {
  switch (why.kind) {
    case 'error': return `Sie zeigt ${why.code}${why.sentence === undefined ? '' : `: ${why.sentence}`}`
    case 'function': return `${why.id}: ${why.reason}`
    case 'unit': return `Sie liest den Text „${why.text}“, den Excel allein nicht als Zahl nimmt.`
    case 'length': return 'Ihre reine Formel wäre länger, als Excel sie nimmt.'
  }
}

export const working: Words['working'] = {
  withoutTheAddIn: 'Ohne das Add-in',
  cellsItReads: 'Gelesene Zellen',
  readsNone: 'Diese Formel nennt keine Zellen der Arbeitsmappe.',
  rangeSize: (rows, columns) => (rows === Infinity || columns === Infinity ? 'eine ganze Spalte oder Zeile' : `${rows} × ${columns} Zellen`),
  goTo: ({ address, sheet }) => `Zu ${address} auf ${sheet}`,
  backTo: ({ address, sheet }) => `Zurück zu ${address} auf ${sheet}`,
  holdsValue: (value) => `Sie enthält ${value}.`,
  write: 'Diesen Rechenweg auf ein Blatt schreiben',
  writing: 'Der Rechenweg wird geschrieben',
  written: (sheet) => `Auf das Blatt „${sheet}“ geschrieben.`,
  toFormulas: 'In reine Formeln',
  toValues: 'In Werte',
  aboutTurning: 'Macht aus den gewählten Zellen, einer oder einem Block, was Excel ohne das Add-in zeigt.',
  reading: 'Die Arbeitsmappe wird gelesen',
  changing: 'Die Zellen werden geändert',
  noneSelected: ({ address, sheet }) => `Keine Zelle in ${address} auf ${sheet} benutzt eine STICK-Funktion, also gibt es nichts umzuwandeln.`,
  becomeFormulas: (count, { address, sheet }) => `In ${address} auf ${sheet} ${count === 1 ? 'bekommt 1 Zelle eine reine Formel' : `bekommen ${count} Zellen je eine reine Formel`}.`,
  becomeValues: (count, { address, sheet }) => `In ${address} auf ${sheet} ${count === 1 ? 'wird 1 Zelle zum Wert, der' : `werden ${count} Zellen zu Werten, die`} sich mit einer Angabe nicht mehr ${count === 1 ? 'ändert' : 'ändern'}.`,
  spilledToo: (count) => `Mit dem, was daneben und darunter gefüllt wird, sind es ${cells(count)}.`,
  stay: (count) => (count === 1 ? '1 Zelle bleibt, wie sie ist.' : `${count} Zellen bleiben, wie sie sind.`),
  because,
  change: (count) => (count === 1 ? 'Diese Zelle ändern' : `Diese ${count} Zellen ändern`),
  doNotChange: 'Nicht ändern',
  changedMeanwhile: 'Die Arbeitsmappe hat sich inzwischen geändert. Das würde jetzt geschehen:',
  changed: (count) => `${count === 1 ? '1 Zelle ist' : `${count} Zellen sind`} geändert. Jede Zelle der Arbeitsmappe zeigt, was sie vorher zeigte.`,
  changedOthers: (count, places) => `${count === 1 ? '1 Zelle ist' : `${count} Zellen sind`} geändert, aber nicht jede Zelle zeigt, was sie vorher zeigte: sehen Sie in ${places} nach. Rückgängig nimmt die Änderung zurück.`,
  undo: 'Strg+Z im Blatt nimmt es zurück.',
  makeCopy: 'Eine Kopie der Arbeitsmappe, als Datei',
  aboutCopy: 'Die Kopie enthält nur reine Formeln und Werte und ein letztes Blatt, das die Werte nennt. Die offene Arbeitsmappe bleibt, wie sie ist.',
  making: 'Die Kopie wird gemacht',
  copied: (formulas, values, sheet) => `Die Kopie ist fertig: ${cells(formulas)} mit reinen Formeln, ${values} als Werte, genannt auf ihrem Blatt „${sheet}“.`,
  sheet: {
    called: (address) => `Rechenweg von ${address}`,
    title: ({ address, sheet }) => `Rechenweg von ${address} auf ${sheet}`,
    formula: 'Formel',
    result: 'Ergebnis, als dies geschrieben wurde',
    argument: 'Was hineinging',
    readAs: 'Gelesen als',
    given: 'Wie angegeben',
    leftOut: 'weggelassen, deshalb so angenommen',
    step: 'Schritt für Schritt',
    quantity: 'Wert',
    unit: 'Einheit',
    expression: 'Wie',
    meaning: 'Was es ist',
    convention: 'Wie gezählt wird',
    cellError: (code) => `Eine der Zellen, die hineingehen, zeigt ${code}.`,
    cellRead: 'Gelesene Zellen',
    place: 'Wo',
    name: 'Name',
    more: (count) => (count === Infinity ? 'und alle Zellen danach' : `und ${count} weitere`),
    recalculated: 'Jetzt nachgerechnet, ohne das Add-in',
    plainFormula: 'Reine Formel',
    plainGives: 'Die reine Formel ergibt',
    cellShows: 'Die Zelle zeigt',
    difference: 'Unterschied',
    cellsThatDiffer: 'Zellen mit Unterschied',
    noPlainFormula: (id) => `${id} hat keine reine Formel`,
    check: 'Probe der Antwort',
    answerHolds: 'Die Antwort besteht die Probe',
  },
  copy: {
    sheet: 'Ohne das Add-in',
    formulas: (count) => `Diese Kopie braucht kein Add-in. ${count === 1 ? '1 Zelle enthält' : `${count} Zellen enthalten`} eine reine Formel an Stelle einer Funktion des Add-ins.`,
    values: (count) => (count === 0 ? 'Keine Zelle musste zum Wert werden.' : `${count === 1 ? '1 Zelle enthält stattdessen einen Wert, der' : `${count} Zellen enthalten stattdessen Werte, die`} sich mit einer Angabe nicht mehr ${count === 1 ? 'ändert' : 'ändern'}:`),
    headings: ['Blatt', 'Zelle', 'Wert', 'Warum es keine Formel ist'],
    because,
  },
}
