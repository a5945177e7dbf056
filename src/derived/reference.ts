/** Texts that name cells: what a user types or picks for an argument. */
import { parseA1Ref, stringifyA1Ref, tokenize, tokenTypes } from '@borgar/fx'

/** "B4", "$B$4:$C$9", "B:B"; no sheet, and no defined name. */
export function isAddress(text: string): boolean {
  const parsed = parseA1Ref(text)
  return parsed !== undefined && 'range' in parsed && (parsed.context ?? []).length === 0
}

/** An address, with its sheet or without: "'Order book'!B4". */
export function isReference(text: string): boolean {
  const type = typeOfOnlyToken(text)
  return type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM
}

/** What may be a defined name; whether there is one, only the workbook knows. */
export function isName(text: string): boolean {
  return typeOfOnlyToken(text) === tokenTypes.REF_NAMED
}

function typeOfOnlyToken(text: string): string | undefined {
  const [only, ...more] = tokenize(text, { mergeRefs: true })
  return more.length === 0 ? only?.type : undefined
}

/** "B4" for row 3, column 1, both from 0. */
export function addressOf(row: number, column: number): string {
  return stringifyA1Ref({ range: { top: row, left: column, bottom: row, right: column } })
}

/** "B4", "B4:C9"; "B:B" and "4:4" for whole columns and rows. */
export function blockAddress({ top, left, bottom, right }: Block): string {
  return stringifyA1Ref({
    range: {
      ...(Number.isFinite(bottom) ? { top, bottom } : { top: null, bottom: null }),
      ...(Number.isFinite(right) ? { left, right } : { left: null, right: null }),
    },
  })
}

/** "$B$4", "$B$4:$C$9": what stays where it is when its formula is copied. */
export function absoluteAddress({ top, left, bottom, right }: Block): string {
  return stringifyA1Ref({ range: { top, left, bottom, right, $top: true, $left: true, $bottom: true, $right: true } })
}

/** Rows and columns from 0 on, both ends included; a whole row or column has no end. */
export interface Block {
  readonly top: number
  readonly left: number
  readonly bottom: number
  readonly right: number
}

/** The name of a sheet as a formula writes it before an address. What looks like an address itself needs quotes too. */
export function quotedSheet(sheet: string): string {
  const isPlain = /^[A-Za-z_]\w*$/.test(sheet) && !isAddress(sheet) && !/^r?\d*c?\d*$/i.test(sheet)
  return isPlain ? sheet : `'${sheet.replaceAll("'", "''")}'`
}
