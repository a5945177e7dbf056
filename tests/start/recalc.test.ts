import { spawn, spawnSync } from 'node:child_process'
import { type FileHandle, mkdir, mkdtemp, open, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Workbook } from '@cj-tech-master/excelts'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { recalc as recalcHere } from '../../src/start/recalcCommand'
import { writeXlsx } from '../../src/workbench/xlsx/writeXlsx'
import { partsFile } from '../workbench/xlsx/partsFile'
import { sampleBook, sheet } from '../workbench/xlsx/sampleBook'

const script = fileURLToPath(new URL('../../src/start/recalc.ts', import.meta.url))

interface Run {
  readonly exit: number | null
  readonly out: string
  readonly err: string
}

let folder: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sticksheet-recalc-'))
})
afterEach(async () => {
  await rm(folder, { recursive: true, force: true })
})

/** The command without a process of its own, in the folder of the test. */
async function recalc(...words: string[]): Promise<Run> {
  let [out, err] = ['', '']
  const exit = await recalcHere(words, {
    folder,
    print: (text) => {
      out += text
    },
    complain: (text) => {
      err += text
    },
  })
  return { exit, out, err }
}

/** As `npm run recalc` runs it, in the folder of the test. */
function recalcByItself(...words: string[]): Promise<Run> {
  return new Promise((resolve, reject) => {
    const tsx = import.meta.resolve('tsx')
    const child = spawn(process.execPath, ['--import', tsx, script, ...words], { cwd: folder })
    let out = ''
    let err = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text
    })
    child.on('error', reject)
    child.on('close', (exit) => resolve({ exit, out, err }))
  })
}

const inFolder = (name: string) => join(folder, name)
const goodBook = { ...sampleBook, sheets: [sampleBook.sheets[0] ?? sheet('', [])] }

describe('the recalc command', () => {
  it('prints the results by sheet with their labels and formats, and ends with 0', async () => {
    await writeFile(inFolder('good.xlsx'), await writeXlsx(goodBook))
    expect(await recalcByItself('good.xlsx')).toEqual({
      exit: 0,
      err: '',
      out: [
        'Mix & match',
        '  B5  Parts, Litres',
        '      39.2 L',
        '      78.43137255',
        '  B7  Bags, Litres   2 bags',
        '',
      ].join('\n'),
    })
  })

  it('ends with 1 and names the cell and the sentence where a function refuses, then the errors of the spreadsheet itself', async () => {
    await writeFile(
      inFolder('bad.xlsx'),
      await writeXlsx({
        names: [],
        sheets: [sheet('Pots', [[{ formula: '=1/A9' }, { formula: '=STICK.BAGS(-300,60)' }, { formula: '=B1+1' }]])],
      }),
    )
    const { exit, out, err } = await recalcByItself('bad.xlsx')
    expect(exit).toBe(1)
    expect(out).toBe('Pots\n  A1    #DIV/0!\n  B1    #VALUE!\n  C1    #VALUE!\n')
    const lines = err.trim().split('\n')
    expect(lines).toHaveLength(3)
    expect(lines[0]).toMatch(/^Pots!B1 {2}#VALUE! {2}neededL must be .*-300.*\.$/)
    expect(lines[1]).toBe('Pots!A1  #DIV/0!  The formula divides by 0 or by an empty cell.')
    expect(lines[2]).toBe('1 cell reads one of these and shows its error: Pots!C1.')
  })

  it('names the source of an error and counts the cells that only pass it on, on other sheets and through names too', async () => {
    await writeFile(
      inFolder('chain.xlsx'),
      await writeXlsx({
        names: [{ name: 'Rates', refersTo: 'Pots!$A$1:$A$2' }],
        sheets: [
          sheet('Pots', [
            [{ formula: '=1/C9' }],
            [{ value: 2 }],
            ...Array.from({ length: 6 }, (_, index) => [{ formula: `=A1+${index}` }]),
          ]),
          sheet('Sum', [[{ formula: '=SUM(Rates)' }]]),
        ],
      }),
    )
    const { exit, err } = await recalc('chain.xlsx')
    expect(exit).toBe(1)
    expect(err.trim().split('\n')).toEqual([
      'Pots!A1  #DIV/0!  The formula divides by 0 or by an empty cell.',
      '7 cells read one of these and show its error: Pots!A3, Pots!A4, Pots!A5, Pots!A6, Pots!A7 and 2 more.',
    ])
  })

  it('prints JSON on demand, and nothing else', async () => {
    await writeFile(inFolder('good.xlsx'), await writeXlsx(goodBook))
    const { exit, out } = await recalc('--json', 'good.xlsx')
    expect(exit).toBe(0)
    expect(JSON.parse(out)).toMatchObject({
      file: 'good.xlsx',
      refusals: [],
      sheets: [
        {
          name: 'Mix & match',
          results: [
            { address: 'B5', formula: '=STICK.BLENDPARTS(100,A5:A6,mixShrink)', rows: [['39.2 L'], ['78.43137255']] },
            {
              address: 'B7',
              label: 'Bags, Litres',
              formula: '=STICK.BAGS(SUM(B5:B6),"60 L")',
              value: 2,
              shown: '2 bags',
            },
          ],
        },
      ],
    })
  })

  it('writes a workbook with the results that keeps all else, and leaves the original as it was', async () => {
    const workbook = new Workbook()
    const season = workbook.addWorksheet('Season', { views: [{ state: 'frozen', xSplit: 0, ySplit: 1 }] })
    season.getCell('A1').value = 1000
    season.getCell('A1').font = { bold: true, color: { argb: 'FFFF0000' } }
    season.getCell('A1').dataValidation = { type: 'decimal', operator: 'greaterThan', formulae: [0] }
    season.getCell('A2').value = { formula: '_xldudf_STICK_BAGS(need,60)', result: 1 }
    season.mergeCells('C1:D1')
    workbook.definedNames.addFormula('need', 'Season!$A$1')
    const original = await workbook.xlsx.writeBuffer({ validate: false })
    await writeFile(inFolder('in.xlsx'), original)

    const { exit, err } = await recalc('in.xlsx', '--out', 'out.xlsx')
    expect(exit).toBe(0)
    expect(err).toBe('out.xlsx is written: the workbook with new results and all else as it was.\n')
    expect((await readFile(inFolder('in.xlsx'))).equals(original)).toBe(true)
    expect((await readdir(folder)).sort()).toEqual(['in.xlsx', 'out.xlsx'])

    const written = new Workbook()
    await written.xlsx.load(await readFile(inFolder('out.xlsx')))
    const again = written.getWorksheet('Season')
    expect(again?.getCell('A2').value).toEqual({ formula: '_xldudf_STICK_BAGS(need,60)', result: 17 })
    expect(again?.getCell('A1').font).toMatchObject({ bold: true, color: { argb: 'FFFF0000' } })
    expect(again?.getCell('A1').dataValidation).toMatchObject({
      type: 'decimal',
      operator: 'greaterThan',
      formulae: [0],
    })
    expect(again?.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 })
    expect(again?.mergedRegions).toHaveLength(1)
    expect(written.definedNames.getRanges('need').ranges).toEqual(['Season!$A$1'])
  })

  it('asks a second engine on demand, says what it was not given and why, and ends with 0 where both agree', async () => {
    await writeFile(inFolder('good.xlsx'), await writeXlsx(goodBook))
    const { exit, err } = await recalcByItself('good.xlsx', '--witness')
    expect(err.split('\n')).toEqual([
      'A second engine calculated 1 formula once more: no result differs.',
      'It was not given 1 formula:',
      '  1  nothing but a function of Sticksheet, which has proofs of its own',
      '',
    ])
    expect(exit).toBe(0)
  })

  it('lists where two engines differ, also as JSON, and then ends with 1', async () => {
    // The second engine is wrong here: to Excel a text in a cell is none of the numbers that SUM adds up.
    const cells = [[{ value: '12' }, { formula: '=SUM(INDEX(A1:A2,1),1)' }, { formula: '=B1*2' }]]
    await writeFile(inFolder('two.xlsx'), await writeXlsx({ names: [], sheets: [sheet('Pots', cells)] }))
    const { exit, out, err } = await recalc('two.xlsx', '--witness', '--json')
    expect(exit).toBe(1)
    expect(err).toBe(
      'Pots!B1  Two engines give different results: 1, which the cell shows, and 13. Check it by hand.\n' +
        'A second engine calculated 2 formulas once more: 1 result differs.\n',
    )
    expect(JSON.parse(out)).toMatchObject({
      witness: { disagreements: [{ sheet: 'Pots', address: 'B1', first: 1, second: 13 }], judged: 2, notJudged: {} },
    })
  })

  it('keeps and names what it cannot calculate, with what reads it, and ends with 1', async () => {
    const cells = {
      A1: { v: 2 },
      B1: { f: 'FOO(A1)', v: 41 },
      B2: { f: 'IFERROR(B1,0)', v: 42 },
      B3: { f: 'A1*2', v: 43 },
      B4: { f: '[1]Other!A1', v: 44 },
    }
    await writeFile(inFolder('other.xlsx'), await partsFile({ sheets: [{ name: 'S', cells }] }))
    const { exit, err } = await recalc('other.xlsx', '--out', 'out.xlsx')
    expect(exit).toBe(1)
    expect(err.trim().split('\n')).toEqual([
      'Stored results stay, because they call a function that is not known here: S!B1.',
      'Stored results stay, because they read another workbook or program: S!B4.',
      'Stored results stay, because they read one of these: S!B2.',
      'out.xlsx is written: the workbook with new results and all else as it was.',
    ])
    const written = new Workbook()
    await written.xlsx.load(await readFile(inFolder('out.xlsx')))
    const results = ['B1', 'B2', 'B3', 'B4'].map((address) => written.getWorksheet('S')!.getCell(address).result)
    expect(results).toEqual([41, 42, 4, 44])
    const { out } = await recalc('other.xlsx', '--json')
    expect(JSON.parse(out)).toMatchObject({ kept: [{ sheet: 'S', address: 'B1', why: 'unknownFunction' }, {}, {}] })
  })

  it('overwrites the workbook itself only where --out names it', async () => {
    const before = await writeXlsx(goodBook)
    await writeFile(inFolder('mine.xlsx'), before)
    expect((await recalc('mine.xlsx', '--out', 'mine.xlsx')).exit).toBe(0)
    expect((await readFile(inFolder('mine.xlsx'))).equals(before)).toBe(false)
    expect(await readdir(folder)).toEqual(['mine.xlsx'])
  })

  it('leaves no half a workbook behind where it cannot write', async () => {
    await writeFile(inFolder('good.xlsx'), await writeXlsx(goodBook))
    await mkdir(inFolder('folder.xlsx'))
    await writeFile(inFolder('folder.xlsx/inside.txt'), '')
    const { exit, err } = await recalcByItself('good.xlsx', '--out', 'folder.xlsx')
    expect(exit).toBe(2)
    expect(err).toMatch(/^folder\.xlsx cannot be written: .+\.\n$/)
    expect((await readdir(folder)).sort()).toEqual(['folder.xlsx', 'good.xlsx'])
  })

  it('has the whole new workbook on the disk while the old one still has its name, so that a crash takes neither', async () => {
    const before = await writeXlsx(goodBook)
    await writeFile(inFolder('mine.xlsx'), before)
    const anyHandle = await open(inFolder('mine.xlsx'))
    const handles = Object.getPrototypeOf(anyHandle) as FileHandle
    await anyHandle.close()
    const flush = handles.sync
    const atFlush: (readonly [old: boolean, beside: Buffer])[] = []
    const flushed = vi.spyOn(handles, 'sync').mockImplementation(async function (this: FileHandle) {
      const beside = (await readdir(folder)).find((name) => name !== 'mine.xlsx')!
      atFlush.push([(await readFile(inFolder('mine.xlsx'))).equals(before), await readFile(inFolder(beside))])
      await flush.call(this)
    })
    try {
      expect((await recalc('mine.xlsx', '--out', 'mine.xlsx')).exit).toBe(0)
    } finally {
      flushed.mockRestore()
    }
    expect(atFlush).toEqual([[true, await readFile(inFolder('mine.xlsx'))]])
  })

  // The shell lets no file grow over one block, as a full disk would; Windows has no such shell.
  const unlessWindows = process.platform === 'win32' ? () => undefined : it
  unlessWindows('leaves the old workbook whole, and nothing beside it, where the disk takes only a part', async () => {
    const before = await writeXlsx(goodBook)
    await writeFile(inFolder('mine.xlsx'), before)
    const words = [process.execPath, '--import', import.meta.resolve('tsx'), script, 'mine.xlsx', '--out', 'mine.xlsx']
    const full = spawnSync('sh', ['-c', `trap '' XFSZ; ulimit -f 1; exec "$@"`, 'sh', ...words], {
      cwd: folder,
      encoding: 'utf8',
      // What it compiles it would keep in files too.
      env: { ...process.env, TSX_DISABLE_CACHE: '1' },
    })
    expect(full.stderr).toMatch(/^mine\.xlsx cannot be written: .+\.\n$/)
    expect(full.status).toBe(2)
    expect((await readFile(inFolder('mine.xlsx'))).equals(before)).toBe(true)
    expect(await readdir(folder)).toEqual(['mine.xlsx'])
  })

  it.each<[string, string[], string]>([
    ['no file', [], 'Name one workbook: npm run recalc -- FILE.xlsx\n'],
    ['a file that is not there', ['nothing.xlsx'], 'nothing.xlsx cannot be read: there is no such file or folder.\n'],
    [
      'a file that is no workbook',
      ['prices.csv'],
      'This is not an Excel workbook. Text files (.csv) must be opened in Excel and saved as .xlsx first.\n',
    ],
    [
      'another ending for the result',
      ['nothing.xlsx', '--out', 'out.xlsm'],
      '--out must end in .xlsx, as the workbook does: Excel opens no file whose ending does not fit.\n',
    ],
  ])('ends with 2 and one sentence for %s', async (_what, words, sentence) => {
    await writeFile(inFolder('prices.csv'), 'pack,price\n')
    expect(await recalc(...words)).toEqual({ exit: 2, out: '', err: sentence })
  })

  it('says what there is on --help, and for a word that it does not know', async () => {
    expect(await recalc('--help')).toMatchObject({
      exit: 0,
      err: '',
      out: expect.stringContaining('--out OUT.xlsx') as string,
    })
    expect(await recalc('--nothing', 'x.xlsx')).toMatchObject({
      exit: 2,
      out: '',
      err: expect.stringContaining('--help') as string,
    })
  })
})
