import type { Words } from '../words'
import { factText } from './facts'

/** Numbers come as they are written with a point. */
const n = (number: string) => number.replace('.', ',')

export const found: Words['found'] = {
  typedOver: () =>
    'Über die Formel dieser Spalte wurde eine Zahl getippt. Füllen Sie die Formel wieder nach unten aus, oder behalten Sie die Zahl mit Absicht.',
  valueForFormula: () =>
    'Ein Wert steht, wo diese Spalte eine Formel hat, und gilt als ihr Ergebnis. Füllen Sie die Formel wieder nach unten aus, oder behalten Sie den Wert mit Absicht.',
  emptyForFormula: () =>
    'Nichts steht, wo diese Spalte eine Formel hat, und Summen lassen die Zeile aus. Füllen Sie die Formel wieder nach unten aus.',
  broken: () =>
    'Diese Formel weicht von denen darüber und darunter ab. Füllen Sie die Spalte wieder nach unten aus, oder behalten Sie die Formel mit Absicht.',
  shows: (error) => `Die Formel ${errorMeaning[error] ?? `zeigt ${error}`}.`,
  waits: () =>
    'Diese Zelle wartet noch auf ihr Ergebnis, deshalb wurde weder sie geprüft noch, was sie liest. Prüfen Sie noch einmal, sobald sie eines zeigt.',
  follows: (error, count, source) =>
    `${error} kommt von ${source}${count > 1 ? ` und ${count - 1} ${count === 2 ? 'anderen Zelle' : 'anderen Zellen'}` : ''}.`,
  noLosses: () =>
    'Zwischen Steckling und Jungpflanze geht nichts verloren: alle stageRates sind 100 %. Geben Sie die Anteile ein, die überleben, etwa 90%.',
  neverWashed: (rounds) =>
    `Es wird in ${n(rounds)} Durchgängen verwendet, und das Waschen fehlt. Geben Sie ein, was das Waschen kostet, oder 0, wo nichts gewaschen wird.`,
  benchFull: () => 'Der Tisch gilt als immer voll. Geben Sie den Anteil ein, der genutzt ist, etwa 80%.',
  noDelivery: () => 'Die Lieferung fehlt. Geben Sie ein, was sie je Gebinde kostet, oder 0, wo sie im Preis steckt.',
  pressedAsLoose: (word) =>
    `In dieser Zeile steht „${word}“, und expansion ist 1, wie für lose Liter. Ein gepresstes Gebinde geht auf: geben Sie ein, wie viele lose Liter ein angegebener Liter ergibt.`,
  deepBed: (metres) =>
    `Ein Beet, ${n(metres)} m tief. Die Tiefe ist in Metern: für ${n(metres)} Zentimeter geben Sie "${n(metres)} cm" ein.`,
  wideCell: (name, millimetres) =>
    `${name} ist ${n(millimetres)} mm; so ist keine Zelle und kein Topf. Es ist in Millimetern; ein Text kann seine Einheit mitbringen, etwa "${n(millimetres)} cm".`,
  largePot: (litres, label, most) =>
    `${n(litres)} L in einem Gefäß von ${label}: eines, das so tief ist wie breit, fasst höchstens ${n(most)} L. Prüfen Sie das Volumen.`,
  markupAsMargin: (margin, markup, meant) =>
    `Eine Marge von ${n(margin)} des Preises ist ein Aufschlag von ${n(markup)} auf die Kosten. Waren ${n(margin)} auf die Kosten gemeint, geben Sie eine Marge von ${n(meant)} ein.`,
  unroundedQuote: () =>
    'Die Preise dieses Angebots sind nicht gerundet, deshalb ist ein gezeigter Preis mal Menge nicht die gezeigte Summe. Geben Sie einen priceStep ein, etwa 0,01.',
  zeroLeftOut: (name) =>
    `${name} ist 0, oder eine leere Zelle, die als 0 kam. Eine 0 gilt hier nicht, deshalb zählt sie als weggelassen. Leeren Sie die Zelle, oder geben Sie ein, was Sie meinen.`,
  oldPrice: (day, days, start, most) =>
    `Dieser Preis ist vom ${day}, ${days} Tage vor Beginn der Saison (${start}); gemeldet werden Preise, die älter sind als ${most} Tage. Fragen Sie nach einem neuen Preis, oder behalten Sie ihn mit Absicht.`,
  dayAsText: (text, hasTwoReadings) =>
    `„${text}“ ist ein Text und kein Tag, deshalb ist das Alter des Preises nicht bekannt${hasTwoReadings ? '; manche lesen zuerst den Tag, andere den Monat' : ''}. Geben Sie ihn als Jahr-Monat-Tag ein, etwa 2026-02-09.`,
  noSeasonStart: () =>
    'Der erste Tag der Saison fehlt, deshalb wurde das Alter ihrer Preise nicht geprüft. Geben Sie ihn als Jahr-Monat-Tag ein, etwa 2026-02-09.',
  overlap: (quantity, warning) =>
    `Jungpflanzen zum Preis für ${n(quantity)}: ${factText(warning)}. ` +
    'Ändern Sie einen Preis oder eine Menge des Angebots, oder bieten Sie die größere Bestellung an.',
}

const errorMeaning: Readonly<Record<string, string>> = {
  '#DIV/0!': 'teilt durch 0 oder durch eine leere Zelle',
  '#N/A': 'findet nichts',
  '#NAME?': 'hat eine Funktion oder einen Namen, den es hier nicht gibt',
  '#NULL!': 'nennt zwei Bereiche, die sich nicht treffen',
  '#NUM!': 'hat keine Zahl als Antwort',
  '#REF!': 'liest eine Zelle, die es nicht gibt',
  '#SPILL!': 'hat keinen Platz: etwas steht im Weg',
  '#VALUE!': 'hat einen Text, wo eine Zahl gebraucht wird',
}
