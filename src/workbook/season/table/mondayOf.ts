/** The Monday of the week in which a day lies, as a formula: weeks start on Monday (ISO 8601). */
export const mondayOf = (day: string): string => `INT(${day})-WEEKDAY(${day},3)`
