/** The most characters that Excel gives the name of a sheet. */
const longestName = 31

/** A name for a sheet that no sheet has yet: with a number behind it where one has. */
export function freeName(wanted: string, taken: readonly string[]): string {
  const given = new Set(taken.map((name) => name.toLowerCase()))
  let name = wanted.slice(0, longestName)
  for (let number = 2; given.has(name.toLowerCase()); number += 1) {
    const ending = ` (${number})`
    name = wanted.slice(0, longestName - ending.length) + ending
  }
  return name
}
