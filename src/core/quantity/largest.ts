/** The largest of any number of numbers, or `least` if none is above. Math.max(...) takes some 100,000 and then throws. */
export function largest(numbers: Iterable<number>, least: number): number {
  let found = least
  for (const number of numbers) if (number > found) found = number
  return found
}
