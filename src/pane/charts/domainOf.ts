/** From the least to the largest value, wide enough to be drawn where all are the same. */
export function domainOf(values: readonly number[]): [number, number] {
  const [least, largest] = [Math.min(...values), Math.max(...values)]
  if (least < largest) return [least, largest]
  const margin = Math.abs(least) || 1
  return [least - margin, least + margin]
}
