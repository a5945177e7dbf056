/** What a file holds in the eyes of excelize (BSD-3), a reader in Go that shares nothing with the library we write with. */
import { createRequire } from 'node:module'
import { type DataValidation, init } from 'excelize-wasm'
import { addressOf } from '../../../src/formula/address'

export interface SecondReading {
  /** As stored, with days as numbers; by sheet, then by address. */
  readonly values: Readonly<Record<string, Readonly<Record<string, string>>>>
  readonly names: Readonly<Record<string, string>>
  /** Their ranges by their names. */
  readonly tables: Readonly<Record<string, string>>
  /** The rules for what may be typed: sheet, range, kind, limits and sentence in one line. */
  readonly rules: readonly string[]
  /** By sheet and address. */
  readonly notes: Readonly<Record<string, string>>
  /** In characters, from column A on; by sheet. */
  readonly widths: Readonly<Record<string, readonly number[]>>
}

/** Its types call the list by another name than it does. */
function rulesOf(found: object): readonly DataValidation[] {
  return (found as { readonly dataValidations: readonly DataValidation[] | null }).dataValidations ?? []
}

const library = createRequire(import.meta.url)
  .resolve('excelize-wasm')
  .replace(/[^\\/]*$/, 'excelize.wasm.gz')

/** `columns` says of how many columns of each sheet the widths are asked. */
export async function readBySecond(
  bytes: Uint8Array,
  columns: Readonly<Record<string, number>>,
): Promise<SecondReading> {
  const { OpenReader } = await init(library)
  const file = OpenReader(new Uint8Array(bytes))
  if (file.error !== null) throw new Error(file.error)
  const sheets = file.GetSheetList().list
  const ofEach = <Value>(read: (sheet: string) => Value): Record<string, Value> =>
    Object.fromEntries(sheets.map((sheet) => [sheet, read(sheet)]))
  return {
    values: ofEach((sheet) => {
      const rows = file.GetRows(sheet, { RawCellValue: true }).result
      const cells = rows.flatMap((row, y) => row.map((value, x) => [addressOf(y, x), value] as const))
      return Object.fromEntries(cells.filter(([, value]) => value !== ''))
    }),
    names: Object.fromEntries(
      file.GetDefinedName().definedNames.map(({ Name = '', RefersTo = '' }) => [Name, RefersTo]),
    ),
    tables: Object.fromEntries(
      sheets.flatMap((sheet) => (file.GetTables(sheet).tables ?? []).map(({ Name = '', Range = '' }) => [Name, Range])),
    ),
    rules: sheets.flatMap((sheet) =>
      rulesOf(file.GetDataValidations(sheet)).map(
        ({ Sqref = '', Type = '', Formula1 = '', Formula2 = '', Error: sentence = '' }) =>
          [sheet, Sqref, Type, Formula1, Formula2, sentence].join(' | '),
      ),
    ),
    notes: Object.fromEntries(
      sheets.flatMap((sheet) =>
        (file.GetComments(sheet).comments ?? []).map(({ Cell, Text = '', Paragraph }) => [
          `${sheet}!${Cell}`,
          Text + (Paragraph ?? []).map((part) => part.Text ?? '').join(''),
        ]),
      ),
    ),
    widths: ofEach((sheet) =>
      Array.from({ length: columns[sheet] ?? 0 }, (_, column) => {
        const [name = 'A'] = /^[A-Z]+/.exec(addressOf(0, column)) ?? []
        return file.GetColWidth(sheet, name).width
      }),
    ),
  }
}
