import type { Words } from '../words'

export const check: Words['check'] = {
  unseen:
    'Einige Funktionen wurden seit dem Öffnen der Arbeitsmappe nicht aufgerufen, deshalb sind ihre Angaben noch nicht geprüft.',
  calculateAndCheck: 'Berechnen und prüfen',
  kinds: { error: 'Fehler', doubt: 'Zweifel' },
  nothing: 'Nichts gefunden. Das ist kein Beweis: Anteile, Preise und Maße müssen Sie weiterhin selbst prüfen.',
  count: (errors, doubts) =>
    `${errors} Fehler, ${doubts} Zweifel. Ein Zweifel kann richtig sein: sehen Sie sich die Zelle an.`,
  again: 'Noch einmal prüfen',
}
