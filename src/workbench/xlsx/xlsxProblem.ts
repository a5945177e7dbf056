import { files } from '../../wording/en/files'
import type { Words } from '../../wording/words'

export type XlsxProblemCode = keyof Words['files']['problems']

/** Why a file cannot be read: as data, and with a sentence in English for whoever chose the file. */
export class XlsxProblem extends Error {
  constructor(
    readonly code: XlsxProblemCode,
    options?: ErrorOptions,
  ) {
    super(files.problems[code], options)
    this.name = 'XlsxProblem'
  }
}
