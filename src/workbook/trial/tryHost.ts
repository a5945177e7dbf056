/** Tries the host that the pane stands beside: whether it calculates every example as written, on a sheet that goes again. */
import { freeName } from '../freeName'
import type { WorkbookPort } from '../port'
import { addressOf } from '../../formula/address'
import { casesFor, columnOfFormulas, sheetFor, triedTable, wrongIn } from './cases'

export interface TriedHost {
  readonly cases: number
  readonly wrong: readonly { readonly what: string; readonly formula: string; readonly shows: string }[]
  /** In English, to be copied into an issue. */
  readonly report: string
}

export async function tryHost(port: WorkbookPort): Promise<TriedHost> {
  const [open, place] = [await port.read(), await port.selectedCell()]
  const sheet = freeName(
    'Sticksheet try',
    open.sheets.map(({ name }) => name),
  )
  const cases = casesFor(port.host)
  await port.add({ names: [], sheets: [sheetFor(sheet, cases)] })
  try {
    for (const { formula, row } of cases) {
      if (formula.includes(triedTable.name))
        await port.putFormula(formula, { sheet, address: addressOf(row, columnOfFormulas) })
    }
    await port.calculate()
    const cells = (await port.read()).sheets.find(({ name }) => name === sheet)!.cells
    const wrong = cases.flatMap((one) => {
      const shows = wrongIn(one, cells)
      return shows === undefined ? [] : [{ what: one.what, formula: one.formula, shows }]
    })
    return { cases: cases.length, wrong, report: reportOf(port, cases.length, wrong) }
  } finally {
    await port.removeSheet(sheet)
    await port.select(place)
  }
}

function reportOf(port: WorkbookPort, cases: number, wrong: TriedHost['wrong']): string {
  return [
    `Sticksheet tried in ${port.host === 'excel' ? 'Excel' : 'the workbench'}`,
    ...port.describeHost(),
    `${cases - wrong.length} of ${cases} cases hold.`,
    ...wrong.map(({ what, formula, shows }) => `- ${what}\n  ${formula}\n  ${shows}`),
  ].join('\n')
}
