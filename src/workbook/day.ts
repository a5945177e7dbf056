/**
 * Days as a cell holds them: a number that counts from the last day of 1899, as Excel and the grid do. From March
 * 1900 on that is right; before it Excel counts a day that never was.
 */
const millisecondsOfDay = 86_400_000
const daysTo1970 = 25_569

/** Of a day that is written as year-month-day: "2026-02-09". */
export function serialOf(day: string): number {
  return Date.parse(`${day}T00:00:00Z`) / millisecondsOfDay + daysTo1970
}

/** As year-month-day; undefined where the number is no day of a calendar. */
export function dayText(serial: number): string | undefined {
  const date = new Date((Math.floor(serial) - daysTo1970) * millisecondsOfDay)
  return Number.isNaN(date.getTime()) || serial < 1 || date.getUTCFullYear() > 9999 ? undefined : date.toISOString().slice(0, 10)
}
