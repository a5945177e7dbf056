import type { Finding } from './finding'

/** So many of one kind on one sheet are listed: nobody goes through more, and a list of thousands holds the pane up. */
const mostListed = 50

export interface LeftOut {
  readonly sheet: string
  readonly kind: Finding['kind']
  readonly count: number
}

/** The first findings of each sheet, so that a sheet full of errors hides those of no other, and how many more there are. */
export function shownFindings(findings: readonly Finding[]): {
  readonly shown: readonly Finding[]
  readonly left: readonly LeftOut[]
} {
  const seen = new Map<string, LeftOut>()
  const shown = findings.filter(({ sheet, kind }) => {
    const key = `${kind} ${sheet}`
    const { count } = seen.get(key) ?? { count: 0 }
    seen.set(key, { sheet, kind, count: count + 1 })
    return count < mostListed
  })
  const left = [...seen.values()].map((one) => ({ ...one, count: one.count - mostListed }))
  return { shown, left: left.filter(({ count }) => count > 0) }
}
