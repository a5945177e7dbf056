/** What was forgotten or looks wrong in what the cell functions were given. */
import { placeOf, type Definition } from '../../core/definition/definition'
import { evaluate, rowsOf } from '../../core/definition/evaluate'
import { isFact } from '../../core/definition/fact'
import { isBlank, isLeftOut, readArguments, type ReadValues } from '../../core/definition/readArguments'
import { Decimal } from '../../core/quantity/decimal'
import { quote } from '../../functions/cost/quote'
import { callArguments } from '../../formula/callArguments'
import { addressOf } from '../../formula/address'
import type { Words } from '../../wording/words'
import { labelsOf } from '../labels'
import type { OpenSheet } from '../openBook'
import type { Finding } from './finding'

export function checkCalls(
  sheet: OpenSheet,
  definitions: readonly Definition[],
  found: Words['found'],
): readonly Finding[] {
  const labels = labelsOf(sheet.cells)
  return [...sheet.cells].flatMap(([address, cell]) =>
    (cell.calls ?? []).flatMap(({ id, args }): Finding[] => {
      const definition = definitions.find((one) => one.id === id)
      const read = definition && readArguments(definition.parameters, args)
      if (definition === undefined || read === undefined || !('args' in read)) return []
      const isGiven = (name: string) => !isLeftOut(definition.parameters[name]!, args[placeOf(definition, name)])
      const given: GivenCall = { definition, args, values: read.args, isGiven, labels: labels.textsIn(cell.row), found }
      const showsTable = cell.spill !== undefined && callArguments(cell.formula, id) !== undefined
      return [
        ...rules
          .flatMap((rule) => rule(given))
          .map((sentence): Finding => ({ sheet: sheet.name, address, kind: 'warning', sentence })),
        ...overlaps(given).map(({ row, sentence }): Finding => ({
          sheet: sheet.name,
          address: showsTable ? addressOf(cell.row + row, cell.column) : address,
          kind: 'warning',
          sentence,
        })),
      ]
    }),
  )
}

interface GivenCall {
  readonly definition: Definition
  readonly args: readonly unknown[]
  readonly values: ReadValues
  /** False where the argument was left out or its cell is blank. */
  readonly isGiven: (name: string) => boolean
  /** The texts in the row of the cell. */
  readonly labels: readonly string[]
  readonly found: Words['found']
}

/** Gives the sentences of what it found. */
type Rule = (given: GivenCall) => readonly string[]

const has = (given: GivenCall, name: string) => name in given.definition.parameters

const numberIn = (given: GivenCall, name: string): Decimal | undefined => {
  const value = given.values[name]
  return value instanceof Decimal ? value : undefined
}

const linesIn = (given: GivenCall, name: string): readonly Decimal[] => {
  const value = given.values[name]
  return Array.isArray(value) ? value.filter((one) => one instanceof Decimal) : []
}

const noLosses: Rule = (given) => {
  const rates = linesIn(given, 'stageRates')
  return rates.length > 0 && rates.every((rate) => rate.eq(1)) ? [given.found.noLosses()] : []
}

const neverWashed: Rule = (given) => {
  const rounds = numberIn(given, 'rounds')
  const wash = ['washCost', 'washCostPerCutting'].find((name) => has(given, name))
  return rounds?.gt(1) === true && wash !== undefined && !given.isGiven(wash)
    ? [given.found.neverWashed(rounds.toString())]
    : []
}

const benchFull: Rule = (given) =>
  has(given, 'benchUseShare') && numberIn(given, 'benchUseShare')?.eq(1) === true ? [given.found.benchFull()] : []

const noDelivery: Rule = (given) =>
  has(given, 'deliveryPerPack') && !given.isGiven('deliveryPerPack') ? [given.found.noDelivery()] : []

const pressedAsLoose: Rule = (given) => {
  const expansion = numberIn(given, 'expansion')
  const word = given.labels.flatMap((label) => /\b(bale|compressed)\w*\b/i.exec(label)?.[0] ?? [])[0]
  return expansion?.eq(1) === true && word !== undefined ? [given.found.pressedAsLoose(word)] : []
}

/** Deeper, and a person would stand in it. */
const mostBedDepth = 0.8
const deepBed: Rule = (given) => {
  const depth = numberIn(given, 'depthM')
  return depth?.gt(mostBedDepth) === true ? [given.found.deepBed(depth.toString())] : []
}

/** In mm. Smaller is a pinhole, larger a barrel: common practice, no source. */
const [leastCell, mostCell] = [4, 700]
const wideCell: Rule = (given) =>
  Object.keys(given.definition.parameters)
    .filter((name) => name.endsWith('Mm'))
    .flatMap((name) => {
      const side = numberIn(given, name)
      return side !== undefined && (side.lt(leastCell) || side.gt(mostCell))
        ? [given.found.wideCell(name, side.toString())]
        : []
    })

/** A pot as deep as it is wide holds most if it does not taper; a tenth more is taken for a rim. */
const largePot: Rule = (given) => {
  const millilitres = numberIn(given, 'vesselVolumeMl') ?? numberIn(given, 'cuttingVolumeMl')
  if (millilitres === undefined) return []
  return given.labels
    .flatMap((label) => {
      const [shown, size, unit] = /(\d+(?:[.,]\d+)?)[ -]?(inch|in|cm)\b/i.exec(label) ?? []
      if (shown === undefined || size === undefined) return []
      const centimetres = new Decimal(size.replace(',', '.')).mul(unit?.toLowerCase() === 'cm' ? 1 : '2.54')
      const most = centimetres.pow(3).mul(Math.PI / 4)
      return millilitres.gt(most.mul('1.1')) ? [given.found.largePot(litres(millilitres), shown, litres(most))] : []
    })
    .slice(0, 1)
}

/** From here on a margin is more than half of the price: common practice, no source. */
const suspiciousMargin = 0.5
const markupAsMargin: Rule = (given) =>
  [...linesIn(given, 'margins'), ...[numberIn(given, 'margin')].filter((one) => one !== undefined)]
    .filter((margin) => margin.gte(suspiciousMargin))
    .slice(0, 1)
    .map((margin) =>
      given.found.markupAsMargin(
        percent(margin),
        percent(margin.div(new Decimal(1).sub(margin))),
        percent(margin.div(margin.add(1))),
      ),
    )

const unroundedQuote: Rule = (given) =>
  has(given, 'margins') && numberIn(given, 'priceStep')?.isZero() === true ? [given.found.unroundedQuote()] : []

/** Some versions of Excel hand a blank cell over as 0, so a typed 0 cannot be told from one. */
const zeroLeftOut: Rule = (given) =>
  Object.keys(given.definition.parameters)
    .filter((name) => !isBlank(given.args[placeOf(given.definition, name)]) && !given.isGiven(name))
    .map((name) => given.found.zeroLeftOut(name))

const rules: readonly Rule[] = [
  noLosses,
  neverWashed,
  benchFull,
  noDelivery,
  pressedAsLoose,
  deepBed,
  wideCell,
  largePot,
  markupAsMargin,
  unroundedQuote,
  zeroLeftOut,
]

/** Each with its row in the table, where the headings are row 0. */
function overlaps({
  definition,
  args,
  found,
}: GivenCall): readonly { readonly row: number; readonly sentence: string }[] {
  const evaluation = definition.id === quote.id ? evaluate(quote, args) : undefined
  if (evaluation === undefined || !('result' in evaluation)) return []
  return rowsOf(evaluation.result).flatMap(({ quantity, warning }, index) =>
    isFact(warning) && warning.fact === 'quoteWarning'
      ? [{ row: index + 1, sentence: found.overlap(String(quantity), warning) }]
      : [],
  )
}

function litres(millilitres: Decimal): string {
  return millilitres.div(1000).toSignificantDigits(2).toString()
}

function percent(share: Decimal): string {
  return `${share.mul(100).toSignificantDigits(3).toString()} %`
}
