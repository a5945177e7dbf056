/**
 * Days as a cell holds them: a number that counts from the last day of 1899, as Excel and the grid do. From March
 * 1900 on that is right; before it Excel counts a day that never was.
 */
const millisecondsOfDay = 86_400_000
const daysTo1970 = 25_569

const finerThanMillisecond = 1e9

/** Of a moment, or of a day that is written as year-month-day: "2026-02-09". */
export function serialOf(moment: Date | string): number {
  const date = typeof moment === 'string' ? new Date(`${moment}T00:00:00Z`) : moment
  const days = daysTo1970 + date.getTime() / millisecondsOfDay
  return Math.round(days * finerThanMillisecond) / finerThanMillisecond
}

/** Of a day that is typed as 2026-02-09; of no other text, since 3/2 is one day here and another there. */
export function daySerial(text: string): number | undefined {
  const serial = serialOf(text)
  return dayText(serial) === text ? serial : undefined
}

/** The other way round, to the millisecond. */
export function dateOf(serial: number): Date {
  return new Date(Math.round((serial - daysTo1970) * millisecondsOfDay))
}

/** As year-month-day; undefined where the number is no day of a calendar. */
export function dayText(serial: number): string | undefined {
  const date = dateOf(Math.floor(serial))
  return Number.isNaN(date.getTime()) || serial < 1 || date.getUTCFullYear() > 9999
    ? undefined
    : date.toISOString().slice(0, 10)
}
