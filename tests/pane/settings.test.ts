// @vitest-environment jsdom
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, it, test } from 'vitest'
import { mountPane, type MountedPane } from '../../src/pane/mountPane'
import { numberText } from '../../src/pane/settings/numberText'
import { settingsFrom, usableChoice, type Chosen } from '../../src/pane/settings/settings'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { english } from '../../src/wording/en/words'
import { emptySeason } from '../../src/workbook/season/emptySeason'
import { MemoryPort } from './MemoryPort'
import { untilFetched } from './untilFetched'

;(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true

const shown = (chosen: Chosen) => numberText(settingsFrom(chosen, 'en-US'), english)

describe('numbers as the settings want them', () => {
  test.each([
    ['5.1675 L loose', {}, 5.1675, 'L loose'],
    ['5,1675 L loose', { decimalMark: ',' }, 5.1675, 'L loose'],
    ['12,000 liners', {}, 12_000, 'liners'],
    ['46391 (2027-01-04)', { decimalMark: ',' }, 46_391, 'day'],
    ['12.000 liners', { decimalMark: ',' }, 12_000, 'liners'],
    ['28.31684659 L loose (1 ft3 loose)', { units: 'us' }, 28.316846592, 'L loose'],
    ['100 mm (3.937 in)', { units: 'us' }, 100, 'mm'],
    ['2 kg (4.409 lb)', { units: 'us' }, 2, 'kg'],
    ['100 kg/m3 (6.243 lb/ft3)', { units: 'us' }, 100, 'kg/m3'],
    ['0.1 money per L (2.832 money per ft3)', { units: 'us' }, 0.1, 'money per L'],
    ['5 bags', { units: 'us' }, 5, 'bags'],
    ['2.5 money per liner', {}, 2.5, 'money per liner'],
    ['EUR\u00a02.50 per liner', { currency: 'EUR' }, 2.5, 'money per liner'],
    ['EUR\u00a00.12345 per liner', { currency: 'EUR' }, 0.12345, 'money per liner'],
    ['$1,234.57', { currency: '$' }, 1234.5678, 'money'],
    ['$0.0034', { currency: '$' }, 0.0034, 'money'],
    ['1.234,57\u00a0€', { currency: '€', decimalMark: ',' }, 1234.5678, 'money'],
    ['JPY\u00a01,235', { currency: 'JPY', decimals: 0 }, 1234.5678, 'money'],
  ] as const)('are %s', (expected, chosen, value, unit) => {
    expect(shown(chosen).measured(value, unit, 'short')).toBe(expected)
  })
})

describe('numbers of a working', () => {
  test.each([
    ['0.105882', {}, 0.105882352941176, 'money per liner'],
    ['0.0000123457', {}, 0.0000123456789, 'share'],
    ['5.166667', {}, 5.16666666666667, 'L loose'],
    ['1,234,567.891235', {}, 1234567.8912345, 'L loose'],
    ['12,345,678.99', { currency: 'EUR' }, 12_345_678.99, 'money'],
    ['2.50', { currency: 'EUR' }, 2.5, 'money'],
    ['12.345679', { currency: 'EUR' }, 12.3456789, 'money'],
    ['(blank)', {}, '', 'text'],
  ] as const)(
    'are %s: their whole part and the cents of money stay, and six digits of what is less',
    (expected, chosen, value, unit) => {
      expect(shown(chosen).inColumn(value, unit, 'step')).toBe(expected)
    },
  )
})

describe('settings that nobody chose', () => {
  test.each([
    ['en', '.', 'en-GB'],
    ['de', ',', 'de-AT'],
    ['en', ',', 'fr-FR'],
    ['en', '.', 'no language'],
  ] as const)('are %s with "%s" where the host speaks %s', (language, decimalMark, locale) => {
    expect(settingsFrom({}, locale)).toMatchObject({ language, decimalMark })
  })

  it('leave out what was kept and cannot be used', () => {
    expect(usableChoice({ language: 'tlh', decimalMark: ';', units: 'us', decimals: 2.5, currency: 'EUR' })).toEqual({
      units: 'us',
      currency: 'EUR',
    })
    expect(usableChoice('nonsense')).toEqual({})
  })
})

it('an empty season names the currency that was chosen in every unit of money, and no other', async () => {
  const { sheets } = await calculateBook(emptySeason('CHF'))
  const texts = sheets.flatMap(({ cells }) =>
    [...cells.values()].flatMap(({ value, formula }) => [formula, ...(typeof value === 'string' ? [value] : [])]),
  )
  expect(texts).toContain('CHF per cutting')
  expect(texts.filter((text) => /\bEUR\b/.test(text))).toEqual(['As it is to stand beside figures: EUR, GBP, USD'])
})

describe('the pane of somebody who chose a decimal comma', () => {
  let port: MemoryPort
  let element: HTMLElement
  let pane: MountedPane

  beforeEach(async () => {
    localStorage.setItem('sticksheet settings', JSON.stringify({ decimalMark: ',' }))
    port = new MemoryPort()
    element = document.body.appendChild(document.createElement('main'))
    await act(async () => {
      pane = mountPane(element, port)
    })
    await untilFetched(element)
    await act(async () => element.querySelector<HTMLElement>('[data-function="PACKPRICE"] h4 button')!.click())
    await untilFetched(element)
  })

  afterEach(() => {
    act(() => pane.unmount())
    element.remove()
    localStorage.clear()
  })

  async function type(place: number, typed: string): Promise<void> {
    const input = element.querySelectorAll<HTMLInputElement>('form input')[place]!
    await act(async () => {
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, typed)
      input.dispatchEvent(new Event('input', { bubbles: true }))
    })
  }

  it('reads the comma, shows the result with one, and writes the formula with a point', async () => {
    await type(0, '1,500')
    await type(1, '1.000')
    expect(element.querySelector('[aria-label="Result"]')?.textContent).toBe('gives 0,0015 money per loose L')
    expect(element.textContent).toContain('=STICK.PACKPRICE(1.5,1000)')
  })

  it('shows a call of the selected cell with commas', async () => {
    await act(async () => port.select({ formula: '=STICK.PACKPRICE(1.5,"2.5 ft3")', value: 1 }))
    const inputs = [...element.querySelectorAll<HTMLInputElement>('form input')].slice(0, 2).map(({ value }) => value)
    expect(inputs).toEqual(['1,5', '2,5 ft3'])
  })

  it('says with a comma what to type', async () => {
    await type(0, '1,5')
    await type(1, '-2,5')
    expect(element.textContent).toContain('packVolumeL must be above 0 L; it is -2,5 L.')
  })
})
