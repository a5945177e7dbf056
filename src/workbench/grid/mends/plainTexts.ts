/**
 * Remembers which texts are no numbers. On each text that a formula gives to a function the grid's engine tries all
 * ways of writing a date, an amount or a percentage, and remembers only those that fit. The words in the formulas of a
 * season are met some thousand times in a calculation. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, ValueObjectFactory } from '@univerjs/engine-formula'
import { replaceShared } from './replaced'

type Create = (value: string | number | boolean, asNoNumber?: boolean) => BaseValueObject

export function rememberPlainTexts(injector: Injector): void {
  replaceShared(injector, ValueObjectFactory as unknown as { create: Create }, 'create', remembering)
}

const mostTexts = 10_000

function remembering(create: Create): Create {
  const plain = new Set<string>()
  return (value, asNoNumber) => {
    if (typeof value !== 'string' || asNoNumber === true) return create(value, asNoNumber)
    if (plain.has(value)) return create(value, true)
    const made = create(value)
    if (made.isString()) {
      if (plain.size === mostTexts) plain.clear()
      plain.add(value)
    }
    return made
  }
}
