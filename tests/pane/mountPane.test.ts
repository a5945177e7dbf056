// @vitest-environment jsdom
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import type { OpenCell } from '../../src/workbook/openBook'
import { PortProblem } from '../../src/workbook/port'
import { MemoryPort } from './MemoryPort'
import { untilFetched } from './untilFetched'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

let port: MemoryPort
let element: HTMLElement
let pane: MountedPane

beforeEach(async () => {
  port = new MemoryPort()
  element = document.body.appendChild(document.createElement('main'))
  await act(async () => {
    pane = mountPane(element, port)
  })
  await untilFetched(element)
})

afterEach(() => {
  act(() => pane.unmount())
  element.remove()
})

function text(): string {
  return element.textContent ?? ''
}

function buttons(label: string): readonly HTMLButtonElement[] {
  return [...element.querySelectorAll('button')].filter((button) => button.textContent?.startsWith(label))
}

function entry(id: string): HTMLButtonElement {
  const found = element.querySelector<HTMLButtonElement>(`[data-function="${id}"] h4 button`)
  if (found === null) throw new Error(`${id} is not listed`)
  return found
}

function listedIds(): readonly string[] {
  return [...element.querySelectorAll<HTMLElement>('[data-function]')].map((item) => item.dataset.function ?? '')
}

async function click(button: HTMLElement | undefined): Promise<void> {
  if (button === undefined) throw new Error('nothing to click')
  await act(async () => button.click())
  await untilFetched(element)
}

async function searchFor(query: string): Promise<void> {
  const input = element.querySelector('input')
  if (input === null) throw new Error('no search box')
  const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
  await act(async () => {
    setValue?.call(input, query)
    input.dispatchEvent(new Event('input', { bubbles: true }))
  })
}

describe('the pane', () => {
  it('lists every function of the catalogue and says how many there are', () => {
    expect(new Set(listedIds())).toEqual(new Set(catalogue.map(({ id }) => id)))
    expect(element.querySelector('[role="status"]')?.textContent).toBe(`${catalogue.length} functions`)
  })

  it('shows of an opened function all that its definition says, with range and default', async () => {
    await click(entry('FILL'))
    const definition = catalogue.find(({ id }) => id === 'FILL')
    expect(text()).toContain('STICK.FILL(vessels, vesselVolumeMl, [settle], [spill])')
    for (const parameter of Object.values(definition?.parameters ?? {})) expect(text()).toContain(parameter.text)
    expect(text()).toContain('mL or text with its unit, above 0')
    expect(text()).toContain('share (0.15 or 15%), 0 to below 1; left out, it is 0')
    expect(text()).toContain(definition?.convention)
    expect(text()).toContain('Source: North Creek Nurseries')
    expect(entry('FILL').getAttribute('aria-expanded')).toBe('true')
  })

  it('opens one function at a time and closes it again', async () => {
    await click(entry('FILL'))
    await click(entry('BAGS'))
    expect(entry('FILL').getAttribute('aria-expanded')).toBe('false')
    await click(entry('BAGS'))
    expect(element.querySelectorAll('[aria-expanded="true"]')).toHaveLength(0)
  })

  it('puts the example into the selected cell and says where', async () => {
    await click(entry('FILL'))
    await click(buttons('Put into the selected cell')[0])
    expect(port.formula).toBe('=STICK.FILL(72,"4.38 in3")')
    expect(text()).toContain('Put into B4 on Order book.')
  })

  it('says before that what a cell holds will be replaced', async () => {
    await click(entry('FILL'))
    expect(text()).toContain('B4 on Order book is empty.')
    await act(async () => port.select({ address: 'C7', value: 12 }))
    expect(text()).toContain('This replaces what C7 on Order book holds now.')
  })

  it('says what to do where the workbook refuses, and leaves the cell as it is', async () => {
    port.refuse(new PortProblem('cellEditMode'))
    await click(entry('FILL'))
    await click(buttons('Put into the selected cell')[0])
    expect(text()).toContain('Press Enter or Esc in the cell first, then try again.')
    expect(port.formula).toBe('')
  })

  it('opens the function that the selected cell uses', async () => {
    await act(async () => port.select({ formula: '=STICK.BAGS(A1,60)' }))
    expect(text()).toContain('B4 on Order book, uses STICK.BAGS')
    expect(entry('BAGS').getAttribute('aria-expanded')).toBe('true')
    expect(entry('BAGS').textContent).toContain('the selected cell uses it')
  })

  it('opens none by itself where a formula uses several, and offers each', async () => {
    await act(async () => port.select({ formula: '=STICK.BAGS(STICK.FILL(A1,65),60)' }))
    expect(element.querySelectorAll('[aria-expanded="true"]')).toHaveLength(0)
    await click(buttons('STICK.FILL')[0])
    expect(entry('FILL').getAttribute('aria-expanded')).toBe('true')
  })

  it('narrows the list while typing and announces the count', async () => {
    await searchFor('coir')
    expect(listedIds()).toContain('PACKPRICE')
    expect(listedIds().length).toBeLessThan(catalogue.length)
    expect(element.querySelector('[role="status"]')?.textContent).toBe(`${listedIds().length} functions found`)
  })

  it('says what to try where a search finds nothing', async () => {
    await searchFor('zebra')
    expect(listedIds()).toEqual([])
    expect(element.querySelector('[role="status"]')?.textContent).toContain('No function found for “zebra”.')
  })

  it('leaves nothing behind when it is unmounted', () => {
    act(() => pane.unmount())
    expect(element.childElementCount).toBe(0)
    expect(port.listenerCount).toBe(0)
  })
})

function tab(name: string): HTMLElement | undefined {
  return [...element.querySelectorAll<HTMLElement>('[role="tab"]')].find(({ textContent }) =>
    textContent?.startsWith(name),
  )
}

describe('the working of the selected cell', () => {
  async function selectCell(
    formula: string,
    ...calls: readonly { readonly id: string; readonly args: readonly unknown[] }[]
  ): Promise<void> {
    port.calls = calls
    await act(async () => port.select({ formula, value: 5 }))
  }

  beforeEach(() => click(tab('Calculation')))

  it('shows what went in, what was left out, each step with its rule, and the convention', async () => {
    await selectCell('=STICK.BAGS(A1,60)', { id: 'BAGS', args: ['0.3 m3', 60] })
    expect(text()).toContain('Calculation of B4 on Order book')
    expect(text()).toMatch(/neededL300 Lloose litres that are needed/)
    expect(text()).toMatch(/onHandL0 L.*left out, so this is assumed/)
    expect(text()).toMatch(/perBag = bagVolumeL \* expansion60 L loose per bag/)
    expect(text()).toMatch(/bags = ROUNDUP\(ordered \/ orderMultiple, 0\) \* orderMultiple5 bags/)
    expect(text()).toContain('Whole bags, in whole multiples of the order unit')
  })

  it('rounds long numbers to what a reader follows, and shows all their digits at the press of a button', async () => {
    await selectCell('=STICK.PERLINER(A1,B1:C1)', { id: 'PERLINER', args: [1, [[0.7]]] })
    expect(text()).toContain('1.428571 money')
    expect(text()).not.toContain('1.42857142857143')
    await click(buttons('Show all digits')[0])
    expect(text()).toContain('1.42857142857143 money')
    await click(buttons('Show fewer digits')[0])
    expect(text()).not.toContain('1.42857142857143')
    await selectCell('=STICK.BAGS(A1,60)', { id: 'BAGS', args: [300, 60] })
    expect(buttons('Show all digits')).toHaveLength(0)
  })

  it('gives the formula of the cell without the add-in', async () => {
    await selectCell('=2*STICK.PERLINER(A1,B1:C1)', { id: 'PERLINER', args: [1, [[0.5, 0.5]]] })
    // This part of the section is loaded when it is opened.
    await expect
      .poll(
        async () => {
          await act(async () => undefined)
          return text()
        },
        { timeout: 5_000 },
      )
      .toContain('Without the add-in=2*(A1/PRODUCT(B1:C1))')
  })

  it('says why a function refused, in the words of the cell', async () => {
    await selectCell('=STICK.BAGS(A1,60)', { id: 'BAGS', args: [-3, 60] })
    expect(text()).toContain('neededL must be 0 L or more; it is -3 L.')
  })

  it('offers to calculate where the host has not seen the calls, and shows them afterwards', async () => {
    port.calls = undefined
    port.callsAfterCalculation = [{ id: 'BAGS', args: [300, 60] }]
    await act(async () => port.select({ formula: '=STICK.BAGS(A1,60)', value: 5 }))
    expect(text()).toContain('have not been calculated since')
    await click(buttons('Calculate the workbook')[0])
    expect(text()).toContain('Step by step')
  })

  it('says why the workbook could not be calculated', async () => {
    port.calls = undefined
    await act(async () => port.select({ formula: '=STICK.BAGS(A1,60)', value: 5 }))
    port.refuse(new PortProblem('cellEditMode'))
    await click(buttons('Calculate the workbook')[0])
    expect(text()).toContain('Press Enter or Esc in the cell first, then try again.')
  })

  it('says what to select where the cell uses no function of ours', async () => {
    expect(text()).toContain('This cell holds no formula. Select one that uses a STICK function.')
    await selectCell('=1+1')
    expect(text()).toContain('This formula uses no STICK function.')
  })

  it('keeps what was searched while the working is looked at', async () => {
    await click(tab('Functions'))
    await searchFor('perlite')
    await click(tab('Calculation'))
    await click(tab('Functions'))
    expect(element.querySelector('input')?.value).toBe('perlite')
  })
})

describe('the form of a function', () => {
  function field(name: string): HTMLInputElement {
    const label = [...element.querySelectorAll('label')].find(({ textContent }) => textContent?.startsWith(name))
    return document.getElementById(label?.htmlFor ?? '') as HTMLInputElement
  }

  async function type(name: string, typed: string): Promise<void> {
    const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
    await act(async () => {
      setValue?.call(field(name), typed)
      field(name).dispatchEvent(new Event('input', { bubbles: true }))
    })
  }

  const result = () => element.querySelector('[aria-label="Result"]')?.textContent
  const put = () => buttons('Put into the sheet')[0]

  beforeEach(() => click(entry('BAGS')))

  it('says what is still needed, then shows the result while one types, and puts the formula into the cell', async () => {
    expect(result()).toBe('Still needed: neededL, bagVolumeL')
    expect(put()?.disabled).toBe(true)
    await type('neededL', '0,3 m3')
    expect(result()).toBe('Still needed: bagVolumeL')
    await type('bagVolumeL', '60')
    expect(result()).toBe('gives 5 bags')
    await click(put())
    expect(port.formula).toBe('=STICK.BAGS("0,3 m3",60)')
    expect(text()).toContain('Put into B4 on Order book.')
  })

  it('says at the field what is wrong with it, and keeps what was typed', async () => {
    await type('neededL', '300')
    await type('bagVolumeL', '2 gal')
    expect(text()).toContain('bagVolumeL has "gal", which means two different units. Type "US gal" or "imp gal".')
    expect(field('bagVolumeL').getAttribute('aria-invalid')).toBe('true')
    expect(field('bagVolumeL').value).toBe('2 gal')
    expect(put()?.disabled).toBe(true)
  })

  it('takes the selection for an argument while the result still goes into the cell that was selected first', async () => {
    port.range = { sheet: 'Prices', address: 'C3' }
    port.values = { 'Prices!C3': [[300]] }
    await act(async () => port.select({ sheet: 'Prices', address: 'C3', formula: '', value: 300 }))
    await click(element.querySelector<HTMLElement>('[aria-label="Take the selection for neededL"]') ?? undefined)
    await type('bagVolumeL', '60')
    expect(field('neededL').value).toBe('Prices!C3')
    expect(result()).toBe('gives 5 bags')
    expect(text()).toContain('It goes into B4 on Order book.')
    expect(buttons('Put into C3 on Prices instead')).toHaveLength(1)
    await click(put())
    expect(await port.selectedCell()).toMatchObject({
      sheet: 'Order book',
      address: 'B4',
      formula: '=STICK.BAGS(Prices!C3,60)',
    })
  })

  it('says why there is no result where the cells cannot be read, and keeps what was typed', async () => {
    port.valuesOf = () => Promise.reject(new PortProblem('cellEditMode'))
    await type('neededL', 'C3')
    await type('bagVolumeL', '60')
    expect(text()).toContain('Press Enter or Esc in the cell first, then try again.')
    expect([field('neededL').value, field('bagVolumeL').value]).toEqual(['C3', '60'])
    await type('neededL', '300')
    expect(text()).not.toContain('Press Enter or Esc')
    expect(result()).toBe('gives 5 bags')
  })

  it('opens the call of the selected cell for change', async () => {
    port.values = { A1: [[300]] }
    await act(async () => port.select({ formula: '=STICK.BAGS(A1,"60 L",,A2*2)', value: 5 }))
    expect(['neededL', 'bagVolumeL', 'expansion', 'onHandL'].map((name) => field(name).value)).toEqual([
      'A1',
      '60 L',
      '',
      '=A2*2',
    ])
    expect(text()).toContain('A formula stands among the arguments: the sheet shows the result.')
    await type('onHandL', '')
    expect(result()).toBe('gives 5 bags')
    await click(buttons('Change the formula')[0])
    expect(port.formula).toBe('=STICK.BAGS(A1,"60 L")')
  })

  it('refuses a name that the workbook does not have, at its field', async () => {
    await type('neededL', 'plenty')
    expect(text()).toContain('neededL takes a volume in L; it is "plenty".')
  })

  it('gives a list of shares as one argument', async () => {
    await click(entry('PERLINER'))
    await type('costPerCutting', '1')
    await type('stageRates', '0.8; 50%')
    expect(result()).toBe('gives 2.5 money per saleable liner')
    await click(put())
    expect(port.formula).toBe('=STICK.PERLINER(1,{0.8;"50%"})')
  })

  it('shows what the cell refused to take, and keeps the form as it is', async () => {
    await type('neededL', '300')
    await type('bagVolumeL', '60')
    port.refuse(new PortProblem('cellEditMode'))
    await click(put())
    expect(text()).toContain('Press Enter or Esc in the cell first, then try again.')
    expect(field('neededL').value).toBe('300')
  })
})

describe('the check of the workbook', () => {
  const inError = {
    row: 0,
    column: 1,
    formula: '=1/0',
    value: { kind: 'cellError', code: '#DIV/0!' },
    calls: [],
  } as const
  const forgotten = {
    row: 1,
    column: 1,
    formula: '=STICK.LINERPRICE(A2,0.5)',
    value: 2,
    calls: [{ id: 'LINERPRICE', args: [1, 0.5] }],
  } as const

  it('counts what it found, errors first, and leads to each cell', async () => {
    port.book = {
      names: [],
      sheets: [
        {
          name: 'Prices',
          cells: new Map<string, OpenCell>([
            ['B2', forgotten],
            ['B1', inError],
          ]),
        },
      ],
    }
    await click(tab('Check'))
    expect(text()).toContain('1 error, 1 warning.')
    expect(text()).toMatch(/B1 on Prices.*Error.*divides by 0.*B2 on Prices.*Warning.*markup of 100 %/)
    await click(buttons('B2 on Prices')[0])
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Prices', address: 'B2' })
  })

  it('lists fifty errors of a sheet full of them, says how many more there are, and finds those of other sheets', async () => {
    const full = Array.from({ length: 300 }, (_, row): [string, OpenCell] => [`B${row + 1}`, { ...inError, row }])
    port.book = {
      names: [],
      sheets: [
        { name: 'Foreign', cells: new Map(full) },
        { name: 'Prices', cells: new Map<string, OpenCell>([['B1', inError]]) },
      ],
    }
    await click(tab('Check'))
    expect(text()).toContain('301 errors, 0 warnings.')
    expect(buttons('B').filter(({ textContent }) => textContent?.endsWith('on Foreign'))).toHaveLength(50)
    expect(text()).toContain('B1 on Prices')
    expect(text()).toContain('250 more errors on Foreign are not listed here: mend these first, then check again.')
  })

  it('says that nothing found is no proof, and checks again on demand', async () => {
    await click(tab('Check'))
    expect(text()).toContain('Nothing was found. That is no proof')
    port.book = { names: [], sheets: [{ name: 'Prices', cells: new Map<string, OpenCell>([['B1', inError]]) }] }
    await click(buttons('Check again')[0])
    expect(text()).toContain('1 error, 0 warnings.')
  })

  it('says after a change that cells may differ from what was checked, and no longer once it is checked again', async () => {
    const mayBeOld = 'Cells may have changed since this was read.'
    await click(tab('Check'))
    expect(text()).not.toContain(mayBeOld)
    await act(() => port.select({ sheet: 'Prices', address: 'B1' }))
    expect(text()).toContain(mayBeOld)
    await click(buttons('Check again')[0])
    expect(text()).not.toContain(mayBeOld)
    const read = port.read.bind(port)
    port.read = async () => {
      const book = await read()
      await port.select({ sheet: 'Prices', address: 'B2' })
      return book
    }
    await click(buttons('Check again')[0])
    expect(text()).toContain(mayBeOld)
  })

  it('says why the workbook could not be calculated, and goes on from there', async () => {
    port.book = {
      names: [],
      sheets: [{ name: 'Prices', cells: new Map<string, OpenCell>([['B2', { ...forgotten, calls: undefined }]]) }],
    }
    await click(tab('Check'))
    port.refuse(new PortProblem('cellEditMode'))
    await click(buttons('Calculate and check')[0])
    expect(text()).toContain('Press Enter or Esc in the cell first, then try again.')
    await click(buttons('Check again')[0])
    expect(text()).toContain('have not been calculated since the workbook was opened')
  })

  it('offers to calculate where calls are not known yet', async () => {
    port.book = {
      names: [],
      sheets: [{ name: 'Prices', cells: new Map<string, OpenCell>([['B2', { ...forgotten, calls: undefined }]]) }],
    }
    await click(tab('Check'))
    expect(text()).toContain('have not been calculated since the workbook was opened')
    port.book = { names: [], sheets: [{ name: 'Prices', cells: new Map<string, OpenCell>([['B2', forgotten]]) }] }
    await click(buttons('Calculate and check')[0])
    expect(text()).toContain('0 errors, 1 warning.')
  })
})

describe('the library', () => {
  async function openLibrary(): Promise<void> {
    await click(tab('Library'))
    // It is loaded when it is asked for.
    await act(async () => {
      await import('../../src/pane/LibrarySection')
    })
  }

  it('says of every band where it comes from, ends every caution with the label and the local codes, and shows no price', async () => {
    await openLibrary()
    const bands = [...element.querySelectorAll('article li')].map(({ textContent }) => textContent ?? '')
    expect(bands.length).toBeGreaterThan(5)
    for (const band of bands) expect(band).toMatch(/Common practice, no source|RootMaker/)
    const cautions = [...element.querySelectorAll('article')].map(
      (article) => article.lastElementChild?.textContent ?? '',
    )
    expect(cautions.length).toBe(12)
    for (const caution of cautions)
      expect(caution).toMatch(/^Caution\. .*follow the label, .* local codes, .* licensed people\.$/)
    expect(text()).not.toMatch(/EUR|[$€£]\s?\d/)
  })

  function putButton(name: string): HTMLElement {
    return element.querySelector<HTMLElement>(`[aria-label="Put into a sheet: ${name}"]`)!
  }

  it('puts an entry into a sheet of its own for each press, says which, and goes there', async () => {
    await openLibrary()
    port.book = { names: [], sheets: [{ name: 'sand BED', cells: new Map() }] }
    await click(putButton('Sand bed'))
    expect(port.added.map(({ sheets }) => sheets.map(({ name }) => name))).toEqual([['Sand bed (2)']])
    expect(text()).toContain('Added the sheet Sand bed (2). Type your own figures into the boxed cells')
    await click(buttons('Go to Sand bed (2)')[0])
    expect(await port.selectedCell()).toMatchObject({ sheet: 'Sand bed (2)', address: 'A1' })
  })

  it('says what to do where the workbook does not take the sheet', async () => {
    await openLibrary()
    port.refuse(new PortProblem('protectedWorkbook'))
    await click(putButton('Water'))
    expect(port.added).toEqual([])
    expect(text()).toContain('The structure of this workbook is protected')
    port.refuse(undefined)
    await click(putButton('Water'))
    expect(port.added).toHaveLength(1)
    expect(text()).not.toContain('is protected')
  })

  it('opens a function that costs the entry', async () => {
    await openLibrary()
    await click(
      [...element.querySelectorAll<HTMLElement>('article button')].find(
        ({ textContent }) => textContent === 'WEIGHTTOLITRES',
      ),
    )
    expect(tab('Functions')?.getAttribute('aria-selected')).toBe('true')
    expect(entry('WEIGHTTOLITRES').getAttribute('aria-expanded')).toBe('true')
  })
})

it('names the unit in every heading of a table of numbers', async () => {
  await click(entry('QUOTE'))
  const headings = [...element.querySelectorAll('[data-function="QUOTE"] table')[0]!.querySelectorAll('th')].map(
    ({ textContent }) => textContent,
  )
  expect(headings.slice(0, 3)).toEqual(['quantityliners', 'price eachmoney per liner', 'totalmoney'])
})

describe('a section with a fault', () => {
  it('says so and can be shown again, while the other sections go on.', async () => {
    const complained: unknown[] = []
    const complain = console.error
    console.error = (...words) => {
      complained.push(words)
    }
    try {
      // No host gives such a cell: its formula is no text, and reading it throws.
      await act(async () => port.select({ formula: 5 as never }))
      expect(element.querySelector('[role="alert"]')?.textContent).toContain(
        'This part of the pane could not be fetched or shown.',
      )
      await click(
        [...element.querySelectorAll<HTMLElement>('[role="tab"]')].find((tab) =>
          tab.textContent?.startsWith('Settings'),
        ),
      )
      expect([...element.querySelectorAll('h2')].map((heading) => heading.textContent)).toEqual(['Settings'])

      await act(async () => port.select({ formula: '' }))
      await click(
        [...element.querySelectorAll<HTMLElement>('[role="tab"]')].find((tab) =>
          tab.textContent?.startsWith('Functions'),
        ),
      )
      await click(buttons('Show it again')[0])
      expect(listedIds()).toEqual(catalogue.map(({ id }) => id))
    } finally {
      console.error = complain
    }
    expect(complained.length).toBeGreaterThan(0)
  })

  it('is none where scrolling gives a promise, as in browsers of today: one function is opened after another.', async () => {
    Element.prototype.scrollIntoView = (() => Promise.resolve()) as never
    try {
      for (const id of ['CUTTINGS', 'BATCHSPREAD', 'TRAYS']) {
        await click(entry(id))
        expect(element.querySelector(`[data-function="${id}"] h5`)?.textContent).toBe('Example')
      }
    } finally {
      delete (Element.prototype as { scrollIntoView?: unknown }).scrollIntoView
    }
  })
})
