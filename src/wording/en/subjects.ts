import type { Subject } from '../../core/definition/definition'

/** The subjects of the catalogue, in the order in which they are listed. */
export const subjectNames: Readonly<Record<Subject, string>> = {
  counting: 'Counting',
  weeks: 'Weeks and days',
  volume: 'Volume',
  blend: 'Blends',
  buying: 'Buying',
  reuse: 'Reuse',
  cost: 'Cost and price',
  review: 'Comparing and reviewing',
}
