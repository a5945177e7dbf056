/**
 * Microsoft's own generator as an oracle for functions.json. It reads typed declarations with JSDoc, so the
 * signatures of three functions of different shapes are written here by hand, as an author without our
 * definitions would. Its limits are why it is no more than an oracle: it sees top-level function declarations
 * alone, passes over arrow functions in silence, and reads `number | null` as any.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseTree } from 'custom-functions-metadata'
import { expect, test } from 'vitest'
import { dist } from './loadBundle'

interface Entry {
  readonly id: string
  readonly description: string
  readonly helpUrl: string
  readonly parameters: readonly {
    readonly name: string
    readonly description: string
    readonly dimensionality: string
  }[]
  readonly result: { readonly dimensionality: string }
}

const { functions } = JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as { functions: Entry[] }

const signatures: Readonly<Record<string, string>> = {
  FILL: '(vessels: any, vesselVolumeMl: any, settle?: any, spill?: any, invocation: CustomFunctions.Invocation): number',
  BLENDPARTS:
    '(finishedLitres: any, parts: any[][], mixShrink?: any, invocation: CustomFunctions.Invocation): number[][]',
  CUTTINGS:
    '(liners: any, stageRates: any[][], confidence?: any, batchSpread?: any, invocation: CustomFunctions.Invocation): number',
}

test.each(Object.entries(signatures))(
  "Microsoft's generator writes for %s what functions.json says.",
  (id, signature) => {
    const ours = functions.find((entry) => entry.id === id)!
    const {
      functions: [theirs],
      extras,
    } = parseTree(typed(ours, signature), `${id}.ts`)
    expect(extras.flatMap((extra) => extra.errors)).toEqual([])
    expect(withDefaults(theirs as unknown as Entry)).toEqual(ours)
  },
)

test('Names and texts of functions.json keep to what Excel takes: letters, digits and dots, and no empty text.', () => {
  for (const { id, description, parameters } of functions) {
    expect(id).toMatch(/^[A-Z][A-Z0-9.]*$/)
    expect(description, id).not.toBe('')
    for (const parameter of parameters) {
      expect(parameter.name, id).toMatch(/^[a-z][A-Za-z0-9]*$/)
      expect(parameter.description, `${id} ${parameter.name}`).not.toBe('')
    }
  }
})

function typed({ id, description, helpUrl, parameters }: Entry, signature: string): string {
  return [
    '/**',
    ` * ${description}`,
    ` * @customfunction ${id} ${id}`,
    ` * @helpurl ${helpUrl}`,
    ...parameters.map(({ name, description: text }) => ` * @param ${name} ${text}`),
    ' * @param {CustomFunctions.Invocation} invocation',
    ' * @requiresAddress',
    ' */',
    `function ${id.toLowerCase()}${signature} { return undefined as never }`,
  ].join('\n')
}

/** The generator leaves out what Excel assumes: that a value is one cell. */
function withDefaults({ parameters, result, ...rest }: Entry): unknown {
  return {
    ...rest,
    parameters: parameters.map((parameter) => ({ ...parameter, dimensionality: parameter.dimensionality ?? 'scalar' })),
    result: { ...result, dimensionality: result.dimensionality ?? 'scalar' },
  }
}
