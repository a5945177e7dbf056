import { readFile } from 'node:fs/promises'
import { editZip, zip } from '@cj-tech-master/excelts/archive'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readXlsx } from '../../../src/workbench/xlsx/readXlsx'
import { writeXlsx } from '../../../src/workbench/xlsx/writeXlsx'
import { XlsxProblem } from '../../../src/workbench/xlsx/xlsxProblem'
import { partsOf, sampleBook } from './sampleBook'

async function problemOf(bytes: Uint8Array): Promise<XlsxProblem | undefined> {
  try {
    await readXlsx(bytes)
    return undefined
  } catch (problem) {
    if (problem instanceof XlsxProblem) return problem
    throw problem
  }
}

const text = (content: string) => new TextEncoder().encode(content)
const oldContainer = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]
const utf16 = (content: string) => [...content].flatMap((letter) => [letter.charCodeAt(0), 0])

/** Sets the first flag of every entry in the archive's own list, which says that the entry is under a password. */
function markedAsEncrypted(archive: Uint8Array): Uint8Array {
  const marked = archive.slice()
  for (let place = 0; place + 8 < marked.length; place += 1) {
    const isListEntry = [0x50, 0x4b, 0x01, 0x02].every((byte, index) => marked[place + index] === byte)
    if (isListEntry) marked[place + 8] = (marked[place + 8] ?? 0) | 1
  }
  return marked
}

describe('a file that cannot be read', () => {
  it.each<[string, () => Promise<Uint8Array> | Uint8Array, string]>([
    ['an empty file', () => new Uint8Array(), 'empty'],
    ['a text file', () => text('pack;price\nbag;12,50\n'), 'notWorkbook'],
    ['a workbook of Excel 2003', () => new Uint8Array([...oldContainer, ...utf16('Workbook')]), 'oldExcel'],
    [
      'a workbook under a password',
      () => new Uint8Array([...oldContainer, 0, 0, ...utf16('EncryptedPackage')]),
      'protected',
    ],
    ['an archive under a password', async () => markedAsEncrypted(await writeXlsx(sampleBook)), 'protected'],
    ['a binary workbook', () => zip().add('xl/workbook.bin', 'x').bytes(), 'binaryExcel'],
    [
      'an OpenDocument spreadsheet',
      () => zip().add('mimetype', 'application/vnd.oasis.opendocument.spreadsheet').bytes(),
      'openDocument',
    ],
    ['another archive', () => zip().add('word/document.xml', '<x/>').bytes(), 'notWorkbook'],
    ['a workbook without sheets', () => zip().add('xl/workbook.xml', '<workbook/>').bytes(), 'damaged'],
    ['a workbook whose archive ends early', async () => (await writeXlsx(sampleBook)).slice(0, -200), 'damaged'],
  ])('is told what it is: %s', async (_what, bytes, code) => {
    const problem = await problemOf(await bytes())
    expect(problem?.code).toBe(code)
    expect(problem?.message).toMatch(/^[A-Z][^\n]+\.$/)
  })

  it('is refused before it is unpacked, where it would unpack to more than the memory holds', async () => {
    const archive = await editZip(await writeXlsx(sampleBook))
    archive.set('xl/media/huge.bin', new Uint8Array(201 * 1024 * 1024))
    const bytes = await archive.bytes()
    expect(bytes.length).toBeLessThan(1024 * 1024)
    expect((await problemOf(bytes))?.code).toBe('tooLarge')
  })

  it('never brings a stack to light, whichever byte of a workbook is damaged', async () => {
    const whole = await writeXlsx(sampleBook)
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), async (place, change) => {
        const damaged = whole.slice()
        damaged[place] = (damaged[place] ?? 0) ^ change
        await problemOf(damaged)
      }),
      { numRuns: 200 },
    )
  })

  it('is refused wherever the season of the demo is cut off or emptied', async () => {
    const whole = new Uint8Array(await readFile('assets/demo-season.xlsx'))
    const places = Array.from({ length: 120 }, (_, index) => Math.floor((index * whole.length) / 120))
    for (const place of places) {
      expect((await problemOf(whole.slice(0, place)))?.code, `cut at ${place}`).toBeDefined()
      await problemOf(whole.slice().fill(0, place, place + 64))
    }
  })

  it('never brings a stack to light, whichever part of a workbook is cut short', async () => {
    const whole = await writeXlsx(sampleBook)
    const parts = Object.entries(await partsOf(whole))
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...parts),
        fc.double({ min: 0, max: 1, noNaN: true }),
        async ([path, content], share) => {
          const archive = await editZip(whole)
          archive.set(path, content.slice(0, Math.floor(content.length * share)))
          await problemOf(await archive.bytes())
        },
      ),
      { numRuns: 100 },
    )
  })
})
