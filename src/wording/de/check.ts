import type { Words } from '../words'

const formulas = (count: number) => (count === 1 ? '1 Formel' : `${count} Formeln`)

export const check: Words['check'] = {
  unseen:
    'Einige Funktionen wurden seit dem Öffnen der Arbeitsmappe nicht berechnet, deshalb sind ihre Angaben noch nicht geprüft.',
  calculateAndCheck: 'Berechnen und prüfen',
  kinds: { error: 'Fehler', warning: 'Warnung' },
  nothing: 'Nichts gefunden. Das ist kein Beweis: Anteile, Preise und Maße müssen Sie weiterhin selbst prüfen.',
  count: (errors, warnings) =>
    `${errors} Fehler, ${warnings} ${warnings === 1 ? 'Warnung' : 'Warnungen'}. Eine Warnung kann harmlos sein: prüfen Sie die Zelle.`,
  left: (count, kind, sheet) => {
    const more = count === 1 ? 'Ein weiterer' : `${count} weitere`
    const warnings = count === 1 ? 'Eine weitere Warnung' : `${count} weitere Warnungen`
    const counted = kind === 'error' ? `${more} Fehler` : warnings
    return `${counted} auf ${sheet} ${count === 1 ? 'steht' : 'stehen'} hier nicht: beheben Sie erst diese, dann noch einmal prüfen.`
  },
  again: 'Noch einmal prüfen',
  witness: {
    heading: 'Ein zweites Rechenwerk',
    asking: 'Ein zweites Rechenwerk berechnet jede Formel noch einmal',
    differ: (shown, second) =>
      `Zwei Rechenwerke geben verschiedene Ergebnisse: ${shown}, was die Zelle zeigt, und ${second}. Rechnen Sie nach.`,
    blank: 'nichts',
    said: (differing, judged) => {
      const results =
        differing === 0
          ? 'kein Ergebnis weicht ab'
          : differing === 1
            ? '1 Ergebnis weicht ab'
            : `${differing} Ergebnisse weichen ab`
      return `Ein zweites Rechenwerk hat ${formulas(judged)} noch einmal berechnet: ${results}.`
    },
    notJudged: (count) => `Es bekam ${formulas(count)} nicht:`,
    reasons: {
      ownFunction: 'nichts als eine Funktion von Sticksheet, für die es eigene Nachweise gibt',
      unseenCall: 'mit einer Funktion von Sticksheet, deren Ergebnis nicht bekannt ist',
      otherwise: 'mit etwas, was das zweite Rechenwerk anders macht als Excel',
      unknown: 'mit etwas, was das zweite Rechenwerk nicht kennt',
      error: 'mit einem gelesenen Fehler oder ohne Platz für die Ergebnisse',
      changing: 'von selbst veränderlich, wie das heutige Datum',
    },
    crashed: 'Das zweite Rechenwerk ist ausgefallen, diese Ergebnisse haben also keinen zweiten Zeugen.',
    tookTooLong:
      'Das zweite Rechenwerk brauchte zu lange und wurde beendet, diese Ergebnisse haben also keinen zweiten Zeugen.',
  },
}
