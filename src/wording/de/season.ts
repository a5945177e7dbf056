import type { Words } from '../words'

export const season: Words['season'] = {
  about:
    'Baut eine Saison in die offene Arbeitsmappe: Auftragsbuch, Bewurzelungsverfahren, Preise, Einkaufsliste, Kosten je Jungpflanze, Angebote und Nachprüfung; jedes Blatt liest die anderen.',
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
  currency: (currency) =>
    `Ihre Einheiten nennen ${currency}; eine andere Währung wählen Sie vor dem Bauen in den Einstellungen.`,
  announcement: (sheets, names, firstName) =>
    `Das fügt hinter Ihren eigenen ${sheets.length} Blätter an: ${sheets.slice(0, -1).join(', ')} und ${sheets.at(-1)}. Sie bringen ${names} Namen für Zellen mit, etwa ${firstName}.`,
  addThese: (sheets) => `Diese ${sheets} Blätter anfügen`,
  doNotAdd: 'Nicht anfügen',
  adding: 'Die Blätter werden angefügt',
  added: (sheets) => `${sheets} Blätter angefügt. Füllen Sie die umrandeten Zellen aus; alles andere folgt.`,
  another: 'Noch eine Saison bauen',
  orderBook: 'Auftragsbuch',
  aboutLine: 'Eine weitere Zeile kommt über die letzte, damit Summen, Namen und alle anderen Blätter sie mitzählen.',
  addLine: 'Eine Auftragszeile einfügen',
  noOrderBook: 'Diese Arbeitsmappe hat noch kein Auftragsbuch: bauen Sie zuerst eine Saison.',
  lineReady: (place) =>
    `Die Zeile ist bereit, bei ${place}: geben Sie Art, Jungpflanzen, Bewurzelungsverfahren, Wochen und Anteile ein.`,
}
