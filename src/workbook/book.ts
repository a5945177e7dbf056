/**
 * A workbook as plain data: what the season builder writes, what both hosts and the .xlsx exporter read.
 * It knows nothing of any host. Formulas are kept in en-US form with a leading "=", and custom functions
 * by their sheet name, `=STICK.BAGS(A1,60)`; how a file or a host spells them is the adapter's business.
 */
export interface Book {
  readonly sheets: readonly Sheet[]
  readonly names: readonly DefinedName[]
  /** The sheet that is seen where the workbook is opened; the first one where this is absent. */
  readonly shown?: string
  readonly properties?: FileProperties
}

/** What a file says about itself; nobody types it here, and it is carried from file to file. */
export interface FileProperties {
  readonly author?: string
  readonly title?: string
  readonly subject?: string
  readonly keywords?: string
  readonly description?: string
  readonly category?: string
  readonly manager?: string
  readonly company?: string
}

export interface DefinedName {
  readonly name: string
  /** A reference with its sheet, absolute and without "=": `Prices!$B$4:$B$12`. */
  readonly refersTo: string
}

export interface Sheet {
  readonly name: string
  /** Column widths in characters, from column A on. */
  readonly widths: readonly number[]
  readonly frozenRows: number
  readonly frozenColumns: number
  /** Rows from row 1 on; a hole is an empty cell. */
  readonly rows: readonly (readonly (Cell | undefined)[])[]
  readonly tables?: readonly SheetTable[]
  readonly layout?: SheetLayout
}

/** How a sheet of a file is looked at and printed, where that is not as usual; it is carried from file to file. */
export interface SheetLayout {
  readonly rightToLeft?: true
  readonly hidesGridlines?: true
  /** In percent. */
  readonly zoom?: number
  /** Alpha, red, green, blue: "FF00B050". */
  readonly tabColour?: string
  readonly margins?: SheetMargins
}

/** In inches. */
export interface SheetMargins {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly header: number
  readonly footer: number
}

/** Cells that Excel takes for one table: lines below a row of headings, each a text of its own. Formulas go on reading addresses and names. */
export interface SheetTable {
  /** The workbook has no other table and no cell named so. */
  readonly name: string
  /** With the row of headings: "A7:T24". */
  readonly range: string
}

export type CellContent = string | number | boolean

export interface Cell {
  /** What was typed. Absent where the cell holds a formula. */
  readonly value?: CellContent
  /** With a leading "=". */
  readonly formula?: string
  /** True where the formula may spill over more than one cell. */
  readonly spills?: boolean
  /** The cells that an array formula of fixed size fills, its own the first of them: it was entered into all at once. */
  readonly fills?: { readonly rows: number; readonly columns: number }
  /** An Excel number format in en-US form. */
  readonly format?: string
  readonly look?: Look
  readonly note?: string
  /** What may be typed here; a blank cell always may stay blank. */
  readonly allowed?: Allowed
}

/** Numbers or days within limits, or the entries of a list. */
export type Allowed = AllowedNumber | AllowedEntry

interface AllowedNumber {
  readonly from: number
  readonly to?: number
  readonly whole?: true
  /** The number is a day, as a cell holds it. */
  readonly day?: true
  /** What a user reads who typed something else: what to type. At most 255 characters, the most that Excel shows. */
  readonly sentence: string
}

interface AllowedEntry {
  /** A name or reference of the cells that hold the entries, without "=". */
  readonly list: string
  readonly sentence: string
}

/**
 * What a cell is for; each host draws it in its own way.
 * `input` is the only look a user is meant to type into.
 */
export type Look = 'title' | 'text' | 'heading' | 'input' | 'result' | 'total' | 'caution'
