/**
 * Units by their definitions. The grid's engine rounded temperatures to two digits, 100 F to 37.78 C, and spoons,
 * bushels, barrels and some weights to seven. Definitions: NIST Handbook 44, appendix C. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { IFunctionService, NumberValueObject } from '@univerjs/engine-formula'
import { firstOf } from './cellByCell'
import { replaceFunctions } from './replaced'

const cubicInch = 0.0254 ** 3
const gallon = 231 * cubicInch
const pound = 0.45359237
const surveyFoot = 1200 / 3937

/** By the symbols of CONVERT, in cubic metres, kilograms, metres and square metres. */
const definitions: Readonly<Record<string, number>> = {
  tsp: gallon / 768,
  tbs: gallon / 256,
  bushel: 2150.42 * cubicInch,
  barrel: 42 * gallon,
  grain: pound / 7000,
  lcwt: 112 * pound,
  brton: 2240 * pound,
  survey_mi: 5280 * surveyFoot,
  us_acre: 43_560 * surveyFoot ** 2,
}

/** The private parts of the engine that are repaired here. */
interface Convert {
  readonly _units: readonly (readonly [name: string, symbol: string, ...rest: unknown[]])[]
  _getTemperatureConversion(number: number, from: string, to: string): number
}

/** Of a unit of the engine, after its name, symbol, other names and kind. */
const factorPlace = 6

export function convertByDefinition(injector: Injector): void {
  const convert = injector.get(IFunctionService).getExecutor('CONVERT') as unknown as Convert
  for (const unit of convert._units) {
    const defined = definitions[unit[1]]
    if (defined !== undefined) (unit as unknown as unknown[])[factorPlace] = defined
  }
  let unrounded: number | undefined
  const temperatureOf = convert._getTemperatureConversion.bind(convert)
  convert._getTemperatureConversion = (...given) => (unrounded = temperatureOf(...given))
  replaceFunctions(injector, ['CONVERT'], (calculate) => (...given) => {
    unrounded = undefined
    const converted = calculate(...given)
    return unrounded === undefined || !firstOf(converted).isNumber() ? converted : NumberValueObject.create(unrounded)
  })
}
