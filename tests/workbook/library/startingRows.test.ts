import { describe, expect, it } from 'vitest'
import { calculateBook } from '../../../src/workbench/engine/calculate'
import { refusalsIn } from '../../../src/workbook/check/refusalsIn'
import { errorOf } from '../errorOf'
import type { Book, Cell } from '../../../src/workbook/book'
import { materials, waysOfRooting } from '../../../src/workbook/library/library'
import { cautions } from '../../../src/wording/en/cautions'
import { startingRows } from '../../../src/workbook/library/startingRows'

const entries = [...waysOfRooting, ...materials].map((entry) => [entry.name, entry] as const)
const timeToCalculate = 60_000

function rowsOf(book: Book) {
  return book.sheets[0]!.rows.map((row) => Array.from(row) as readonly (Cell | undefined)[])
}

/** The row whose first cell says so. */
function rowOf(book: Book, label: string): readonly (Cell | undefined)[] {
  const row = rowsOf(book).find(([first]) => first?.value === label)
  if (row === undefined) throw new Error(`There is no row "${label}"`)
  return row
}

function filled(book: Book, figures: Readonly<Record<string, number>>): Book {
  const [sheet] = book.sheets
  return {
    ...book,
    sheets: [
      {
        ...sheet!,
        rows: rowsOf(book).map((row) =>
          row.map((cell) => {
            const figure = figures[String(row[0]?.value)]
            return cell?.look === 'input' && figure !== undefined ? { ...cell, value: figure } : cell
          }),
        ),
      },
    ],
  }
}

async function figureOf(book: Book, label: string): Promise<unknown> {
  const row = rowsOf(book).findIndex(([first]) => first?.value === label) + 1
  return (await calculateBook(book)).sheets[0]!.cells.get(`C${row}`)?.value
}

describe('the rows to begin with', () => {
  it.each(entries)(
    'of %s show nothing and no error while nothing is typed',
    async (name, entry) => {
      const book = await calculateBook(startingRows(entry, name))
      expect(refusalsIn(book)).toEqual([])
      const cells = [...book.sheets[0]!.cells].filter(([address]) => /^C\d/.test(address))
      expect(cells.filter(([, cell]) => errorOf(cell) !== undefined)).toEqual([])
      expect(cells.some(([, { value }]) => value === '')).toBe(true)
    },
    timeToCalculate,
  )

  it.each(entries)('of %s hold no price, and no figure where a band says what is usual', (name, entry) => {
    for (const [, unit, figure, , band] of rowsOf(startingRows(entry, name))) {
      if (figure?.look !== 'input') continue
      if (String(unit?.value).startsWith('money')) expect(figure.value ?? 0).toBe(0)
      if (band !== undefined) expect(figure.value).toBeUndefined()
    }
  })

  it.each(entries)(
    'of %s say of each box what to type, of each band where it is from, and end with the cautions',
    (name, entry) => {
      const rows = rowsOf(startingRows(entry, name))
      const boxes = rows.filter(([, , figure]) => figure?.look === 'input')
      expect(boxes.length).toBeGreaterThan(0)
      for (const [, , , wanted] of boxes) expect(wanted?.value).toMatch(/number|share/)
      const bands = rows.slice(5).filter(([, , , , band]) => typeof band?.value === 'string' && band.value !== '')
      expect(bands.map(([, , , , band]) => band!.value).sort()).toEqual(entry.bands.map(({ range }) => range).sort())
      for (const [, , , , , from] of bands) expect(from?.value).toMatch(/^Common practice, no source$|RootMaker/)
      expect(rows.at(-1)![0]).toEqual({ value: cautions.deferring, look: 'caution' })
    },
  )

  it('take a figure outside the band, and refuse what the function would refuse', () => {
    const [, , expansion, , band] = rowOf(
      startingRows(materials[0]!, 'Peat'),
      'Loose litres from one declared litre; 1 for loose bags',
    )
    expect(band?.value).toBe('1.67 to 2.0')
    expect(expansion?.allowed).toEqual({
      from: 0,
      sentence: 'Type a number above 0; its unit is loose L per declared L.',
    })
    const [, , shrink] = rowOf(
      startingRows(waysOfRooting[1]!, 'Mix'),
      'Share of the summed volumes that vanishes in mixing',
    )
    expect(shrink?.allowed).toEqual({ from: 0, to: 1, sentence: 'Type a share 0 to below 1: 0.15 or 15%.' })
  })

  it(
    'compute as the functions do once the boxes are filled',
    async () => {
      // 100 L that open to 150, a twentieth of them lost, leave 142.5: by arithmetic.
      const peat = filled(startingRows(materials[0]!, 'Peat'), {
        'Price of one pack': 28.5,
        'Volume that the pack declares': 100,
        'Loose litres from one declared litre; 1 for loose bags': 1.5,
        'Share of the loose medium that is lost in store and handling': 0.05,
      })
      expect(await figureOf(peat, 'Price of a usable loose litre')).toBeCloseTo(28.5 / 142.5, 12)
      expect(await figureOf(peat, 'Bags to buy')).toBe('')
    },
    timeToCalculate,
  )

  it(
    'hand the price of an own mix on to what the medium of a cutting costs',
    async () => {
      const mix = filled(startingRows(waysOfRooting[1]!, 'Mix'), {
        'Parts by volume, one cell a component: component 1': 1,
        'Parts by volume, one cell a component: component 2': 1,
        'Price of a loose litre of each component: component 1': 0.1,
        'Price of a loose litre of each component: component 2': 0.2,
        'Share of the summed volumes that vanishes in mixing': 0.25,
        'Share of its height that loose mix drops when it is firmed and watered': 0,
        'Share of the loose mix that is lost at the filling line': 0,
        'Volume of medium for one cutting, settled': 50,
      })
      // 0.15 a litre of the parts is 0.20 of what remains; 50 mL of it are 0.01.
      expect(await figureOf(mix, 'Cost of a litre of finished mix')).toBeCloseTo(0.2, 12)
      expect(await figureOf(mix, 'Medium cost per cutting stuck')).toBeCloseTo(0.01, 12)
    },
    timeToCalculate,
  )
})
