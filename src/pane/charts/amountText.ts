const fewDigits = 4
const largeAmount = 100

/** Short enough for a label; the table beside a chart has all digits. */
export function amountText(value: number): string {
  return value.toLocaleString('en-US', Math.abs(value) >= largeAmount ? { maximumFractionDigits: 2 } : { maximumSignificantDigits: fewDigits })
}

/** An amount of money. The functions know no currency; one that the user chose would be named here, for all charts. */
export function moneyText(value: number): string {
  return amountText(value)
}

/** How an amount reads in the unit of a function's result: "money per saleable liner", "liners". */
export function textIn(unit: string): (value: number) => string {
  return unit.startsWith('money') ? moneyText : amountText
}
