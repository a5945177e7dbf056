import type { Words } from '../words'

export const settings: Words['settings'] = {
  about: 'Wie dieser Bereich spricht und Zahlen zeigt, auf diesem Rechner. Zellen und Formeln bleiben, wie sie sind.',
  language: 'Sprache',
  languageHint: 'Was in Blätter geschrieben wird, und was eine Zelle zu einem Fehler sagt, ist auf Englisch.',
  numbers: 'Zahlen',
  numbersHint: 'Für das, was hier angezeigt wird, und für das, was Sie in die Formulare eingeben.',
  decimalPoint: (sample) => `Dezimalpunkt: ${sample}`,
  decimalComma: (sample) => `Dezimalkomma: ${sample}`,
  units: 'Einheiten',
  unitsHint: 'Die Zellen selbst bleiben metrisch. Eingeben lässt sich jede Einheit: "3,8 ft3", "4 in", "50 lb".',
  metric: 'Metrisch',
  us: 'Metrisch, daneben das Maß in US-Einheiten',
  currency: 'Währung',
  currencyHint: 'Ein Kürzel oder ein Zeichen, etwa EUR, CHF oder £. Bleibt es leer, heißen Beträge einfach Geld.',
  currencyPlace: 'Sie steht',
  before: 'vor der Zahl',
  after: 'hinter der Zahl',
  decimals: 'Nachkommastellen eines Betrags',
  takeFromWorkbook: 'Aus der Arbeitsmappe holen',
  taken: (currency) => `Diese Arbeitsmappe rechnet in ${currency}.`,
  noneInWorkbook: 'Kein Blatt dieser Arbeitsmappe nennt eine Währung als Einheit einer Zahl.',
  sample: 'So sieht es aus',
  try: { excel: 'Dieses Excel erproben', workbench: 'Diese Werkbank erproben' },
  tryAbout:
    'Schreibt jedes Beispiel jeder Funktion, und Zellen, die Programme bekanntlich auf ihre eigene Art übergeben, auf ein eigenes Blatt, vergleicht die Ergebnisse und nimmt das Blatt wieder weg. Ihre Zellen bleiben, wie sie sind.',
  trying: 'Die Beispiele werden erprobt',
  allHold: (cases) => `Alle ${cases} Fälle stimmen.`,
  someWrong: (wrong, cases) =>
    `${wrong} von ${cases} Fällen ${wrong === 1 ? 'stimmt' : 'stimmen'} nicht. Kopieren Sie den Bericht, und schicken Sie ihn mit einer Meldung.`,
  report: 'Bericht',
  copyReport: 'Den Bericht kopieren',
  copied: 'Der Bericht ist kopiert.',
  notCopied: 'Der Bericht ließ sich nicht kopieren: wählen Sie seinen Text aus, und drücken Sie Strg+C.',
  notKept: 'Dieser Browser lässt keine Einstellungen speichern: sie gelten, bis der Bereich geschlossen wird.',
  languageMissing:
    'Die Texte dieser Sprache konnten nicht geladen werden, und der Bereich bleibt, wie er ist: wählen Sie die Sprache noch einmal, wenn eine Verbindung besteht.',
}
