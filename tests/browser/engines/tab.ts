/** One window of a browser, as far as the smoke test needs it. Each engine is driven by another library. */

/** A key as keyboards call it, "Enter", or held together with others: "Control+z". */
export type Key = string

export interface Tab {
  /** The value of a JavaScript expression in the page; what JSON cannot hold is lost. */
  evaluate<Result>(expression: string): Promise<Result>
  /** With the mouse, in CSS pixels from the window's corner. */
  click(x: number, y: number): Promise<void>
  type(text: string): Promise<void>
  press(key: Key): Promise<void>
  /** Of the page, in CSS pixels; the window may be a few pixels narrower. */
  resize(width: number, height: number): Promise<void>
  /** Does what makes the browser save a file, and gives the file. */
  download(act: () => Promise<void>): Promise<Uint8Array>
}

export interface Engine {
  readonly name: 'Chromium' | 'Firefox' | 'WebKit'
  /** Undefined where the machine has none. */
  readonly version: string | undefined
  /** What to install where it has none. */
  readonly missing: string
  /** Opens the page in a browser that was started for it alone, and ends both afterwards. */
  visit(address: string, act: (tab: Tab) => Promise<void>): Promise<void>
}
