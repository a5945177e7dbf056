import type { Words } from '../words'

export const check: Words['check'] = {
  unseen:
    'Einige Funktionen wurden seit dem Öffnen der Arbeitsmappe nicht berechnet, deshalb sind ihre Angaben noch nicht geprüft.',
  calculateAndCheck: 'Berechnen und prüfen',
  kinds: { error: 'Fehler', warning: 'Warnung' },
  nothing: 'Nichts gefunden. Das ist kein Beweis: Anteile, Preise und Maße müssen Sie weiterhin selbst prüfen.',
  count: (errors, warnings) =>
    `${errors} Fehler, ${warnings} ${warnings === 1 ? 'Warnung' : 'Warnungen'}. Eine Warnung kann harmlos sein: prüfen Sie die Zelle.`,
  again: 'Noch einmal prüfen',
}
