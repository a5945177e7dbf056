import { it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { season } from '../../../src/workbook/season/season'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
it('x', async () => {
  const made = season(vellimoor)
  const fake = made
  const t = Date.now()
  const out = await calculateBook(fake)
  console.log('ms', Date.now() - t, 'names', made.names.length)
  for (const s of out.sheets) {
    console.log('##', s.name)
    const rows = new Map<number, string[]>()
    for (const c of s.cells.values()) (rows.get(c.row) ?? rows.set(c.row, []).get(c.row)!)[c.column] = typeof c.value === 'number' ? String(Math.round(c.value * 1e4) / 1e4) : String(c.value ?? '')
    for (const [r, cs] of [...rows].sort((a, b) => a[0] - b[0]).slice(0, 40)) console.log('@', r + 1, Array.from(cs, (x) => x ?? '').join(' | '))
  }
})
