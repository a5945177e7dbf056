/** Takes an .xlsx file apart into its parts, or says what else the file is. */
import { BufferReader, RemoteZipReader } from '@cj-tech-master/excelts/archive'
import { XlsxProblem, type XlsxProblemCode } from './xlsxProblem'

/** The parts by their path in the package, "xl/workbook.xml". */
export type Parts = Readonly<Record<string, Uint8Array>>

/** A few hundred bytes can unpack into gigabytes, so what an archive says of itself is read first. */
const mostUnpackedBytes = 200 * 1024 * 1024

export async function unpack(bytes: Uint8Array): Promise<Parts> {
  const other = whatElse(bytes)
  if (other !== undefined) throw new XlsxProblem(other)
  try {
    const archive = await RemoteZipReader.fromReader(new BufferReader(bytes), { checkCrc32: true })
    const files = archive.getEntries().filter(({ type }) => type === 'file')
    if (archive.hasEncryptedEntries()) throw new XlsxProblem('protected')
    if (files.reduce((sum, { uncompressedSize }) => sum + uncompressedSize, 0) > mostUnpackedBytes)
      throw new XlsxProblem('tooLarge')
    if (archive.hasEntry('xl/workbook.bin')) throw new XlsxProblem('binaryExcel')
    if (archive.hasEntry('mimetype')) throw new XlsxProblem('openDocument')
    if (!archive.hasEntry('xl/workbook.xml')) throw new XlsxProblem('notWorkbook')
    const parts = new Map<string, Uint8Array>()
    for (const file of files) parts.set(file.path, await archive.extractEntry(file))
    return Object.fromEntries(parts)
  } catch (problem) {
    throw problem instanceof XlsxProblem ? problem : new XlsxProblem('damaged', { cause: problem })
  }
}

function whatElse(bytes: Uint8Array): XlsxProblemCode | undefined {
  if (bytes.length === 0) return 'empty'
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    // The old container holds an old workbook, or a new one under a password.
    return holdsUtf16(bytes, 'EncryptedPackage') ? 'protected' : 'oldExcel'
  }
  return startsWith(bytes, [0x50, 0x4b]) ? undefined : 'notWorkbook'
}

function startsWith(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, index) => bytes[index] === byte)
}

function holdsUtf16(bytes: Uint8Array, text: string): boolean {
  const wanted = [...text].flatMap((letter) => [letter.charCodeAt(0), 0])
  for (let start = 0; start + wanted.length <= bytes.length; start += 1) {
    if (wanted.every((byte, index) => bytes[start + index] === byte)) return true
  }
  return false
}
