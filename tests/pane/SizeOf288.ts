/** As wide as a pane of 320 pixels leaves it: jsdom lays nothing out, and so has no observer of sizes. */
export class SizeOf288 {
  constructor(
    private readonly tell: (entries: readonly { readonly contentRect: { readonly width: number } }[]) => void,
  ) {}
  observe() {
    this.tell([{ contentRect: { width: 288 } }])
  }
  unobserve() {
    /* Nothing to stop. */
  }
  disconnect() {
    /* Nothing to stop. */
  }
}
