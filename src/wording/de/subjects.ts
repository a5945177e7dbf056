import type { Words } from '../words'

export const subjectNames: Words['subjectNames'] = {
  counting: 'Zählen',
  weeks: 'Wochen und Tage',
  volume: 'Volumen',
  blend: 'Mischungen',
  buying: 'Einkauf',
  reuse: 'Wiederverwendung',
  cost: 'Kosten und Preis',
  review: 'Vergleichen und nachprüfen',
}
