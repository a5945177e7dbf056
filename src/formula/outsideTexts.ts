/** Changes what of a formula stands outside of the texts in it; quoted sheet names are no texts. */
export function outsideTexts(formula: string, change: (part: string) => string): string {
  return formula.replace(/"(?:[^"]|"")*"|(?:'(?:[^']|'')*'|[^"'])+/g, (part) =>
    part.startsWith('"') ? part : change(part),
  )
}
