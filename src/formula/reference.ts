/** Texts that name cells: what a user types or picks for an argument. */
import { tokenize, tokenTypes } from '@borgar/fx'
import { isAddress } from './address'

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

/** The name of a sheet as a formula writes it before an address. What looks like an address itself needs quotes too. */
export function quotedSheet(sheet: string): string {
  const isPlain = /^[A-Za-z_]\w*$/.test(sheet) && !isAddress(sheet) && !/^r?\d*c?\d*$/i.test(sheet)
  return isPlain ? sheet : `'${sheet.replaceAll("'", "''")}'`
}
