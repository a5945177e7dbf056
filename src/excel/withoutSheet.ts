/** Excel names the sheet too, and a sheet's name may itself hold an exclamation mark. */
export function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf('!') + 1)
}
