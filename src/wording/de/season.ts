import type { Words } from '../words'

export const season: Words['season'] = {
  about:
    'Baut eine Saison in die offene Arbeitsmappe: Auftragsbuch, Bewurzelungsverfahren, Kalender, Einkauf, Kosten je Jungpflanze, Angebote und Nachprüfung; jedes Blatt liest die anderen.',
  undo: {
    workbench: 'Ihre eigenen Blätter bleiben, wie sie sind, und einmal Rückgängig nimmt die Saison wieder weg.',
    excel:
      'Ihre eigenen Blätter bleiben, wie sie sind, und Rückgängig oder das Löschen der neuen Blätter nimmt die Saison wieder weg.',
  },
  build: { demo: 'Die Vorführsaison bauen', empty: 'Eine leere Saison bauen' },
  aboutSeason: {
    demo: 'Alle Zahlen darin sind erfunden und zeigen, wie die Blätter zusammenwirken. Die Blätter sind auf Englisch.',
    empty:
      'Die umrandeten Zellen warten auf Ihre Zahlen. Was daraus gelesen wird, füllt sich beim Eingeben. Die Blätter sind auf Englisch.',
  },
  currency: (currency) => `Ihre Währung ist ${currency}; auf Setup geben Sie eine andere ein.`,
  announcement: (sheets, names, firstName) =>
    `Das fügt hinter Ihren eigenen ${sheets.length} Blätter an: ${sheets.slice(0, -1).join(', ')} und ${sheets.at(-1)}. Sie bringen ${names} Namen für Zellen mit, etwa ${firstName}.`,
  addThese: (sheets) => `Diese ${sheets} Blätter anfügen`,
  doNotAdd: 'Nicht anfügen',
  adding: 'Die Blätter werden angefügt',
  added: (sheets) => `${sheets} Blätter angefügt. Füllen Sie die umrandeten Zellen aus; alles andere folgt.`,
  another: 'Noch eine Saison bauen',
  today: 'Diese Saison jetzt',
  complete: 'vollständig',
  noRows: 'noch nichts eingegeben',
  rowsComplete: (rows) => (rows === 1 ? '1 Zeile, vollständig' : `${rows} Zeilen, vollständig`),
  rowsLack: (rows, first) =>
    `${rows === 1 ? '1 Zeile ist' : `${rows} Zeilen sind`} nicht vollständig. Zuerst: ${first}`,
  answer: {
    liners: 'Bestellte Jungpflanzen',
    expected: 'Zu erwartende verkäufliche Jungpflanzen',
    buying: 'Einkauf, alles',
    rooting: 'Bewurzelungskosten der Saison',
    perLiner: 'Für jede bestellte Jungpflanze',
  },
  readAgain: 'Die Saison neu lesen',
  work: {
    heading: (week) => `Die Woche ${week}`,
    noWork: 'Die Arbeit der Woche',
    lacks: (sentence) => `Das Blatt Monday kann nicht sagen, was zu tun ist: ${sentence}.`,
    sticking: 'Zu stecken',
    cuttings: 'Stecklinge',
    into: (pieces, container) => `in ${pieces} × ${container}`,
    filledWith: (medium) => `gefüllt mit ${medium}`,
    nothing: 'nichts',
    standing: 'Steht schon länger',
    until: (day) => `bis ${day}`,
    summary: (litres, hours, deliver) =>
      `Zu mischen: ${litres} L lose. Aufstellen und Stecken: ${hours} Stunden. Auszuliefern: ${deliver} Jungpflanzen.`,
    mayGoOn: 'Eine Liste füllt alle Zeilen, die für sie gezeichnet sind, und kann weitergehen: siehe das Blatt Monday.',
    cautions: 'Warnhinweise zu dieser Arbeit',
    another: 'Nach einer anderen Woche fragen',
  },
  weeks: {
    titles: {
      bench: 'Stellfläche auf Tischen, Woche für Woche',
      ground: 'Bodenfläche für Beete, Woche für Woche',
      hours: 'Arbeit beim Aufstellen und Stecken, Woche für Woche',
    },
    units: { bench: 'm2', ground: 'm2', hours: 'Stunden' },
    week: 'Woche',
    taken: 'belegt',
    left: 'übrig',
    tooMuch: 'mehr als vorhanden',
    thereIs: (amount, unit) => `vorhanden: ${amount} ${unit}`,
    limit: 'vorhanden',
    putChartOf: (title) => `Dieses Diagramm ins Blatt setzen: ${title}`,
    most: (taken, unit, week, thereIs) => `Die vollste Woche ist ${week} mit ${taken} ${unit} von ${thereIs}.`,
    fits: 'Jede Woche passt.',
    doesNotFit: (weeks, first) =>
      weeks === 1 ? `Eine Woche passt nicht: ${first}.` : `${weeks} Wochen passen nicht, zuerst ${first}.`,
  },
  rows: 'Mehr Zeilen',
  aboutRows:
    'Weitere Zeilen kommen über die letzte einer Tabelle, damit Summen, Namen und alle anderen Blätter sie mitzählen.',
  sheet: 'Blatt',
  howMany: 'Zeilen',
  rowsTaken: (most) => `Geben Sie eine ganze Zahl von 1 bis ${most} ein.`,
  addRows: 'Zeilen einfügen',
  noTable: (sheet) => `Diese Arbeitsmappe hat noch kein Blatt ${sheet} einer Saison: bauen Sie zuerst eine Saison.`,
  rowsReady: (place) => `Die Zeilen sind bereit, die erste bei ${place}: füllen Sie die Kästchen aus.`,
}
