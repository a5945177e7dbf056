import { expect, test } from 'vitest'
import { workingOf } from '../../src/derived/working'
import { catalogue } from '../../src/functions/catalogue'

const working = (id: string, ...args: readonly unknown[]) =>
  workingOf(
    catalogue.find((one) => one.id === id)!,
    args,
  )

test('A count of nothing is 0 in the working, and never minus 0.', () => {
  const steps = working('BAGS', 0, 60)
  expect('steps' in steps && steps.steps.map(({ name, value }) => [name, Object.is(value, -0) ? '-0' : value])).toEqual(
    [
      ['short', 0],
      ['perBag', 60],
      ['opened', 0],
      ['ordered', 0],
      ['bags', 0],
    ],
  )
})

test('An argument that was left out is marked, with the value that is assumed.', () => {
  const { inputs } = working('BAGS', '0.3 m3', 60, '') as Extract<ReturnType<typeof working>, { inputs: unknown }>
  expect(inputs.map(({ name, value, unit, given }) => [name, value, unit, given]).slice(0, 4)).toEqual([
    ['neededL', 300, 'L', true],
    ['bagVolumeL', 60, 'L', true],
    ['expansion', 1, 'loose L per declared L', false],
    ['onHandL', 0, 'L', false],
  ])
})

test('Instead of steps there is the refusal, or the error that an input cell shows.', () => {
  expect(working('BAGS', -1, 60)).toEqual({ refused: [expect.stringMatching(/^neededL must be 0 L or more/)] })
  expect(working('BAGS', { kind: 'cellError', code: '#DIV/0!' }, 60)).toEqual({ cellError: '#DIV/0!' })
})
