/**
 * The part of Excel that calls cell functions. Microsoft's own client runs unmodified in a page, and dist/functions.js
 * after it as in our task pane; this host sends calls to it and takes the results.
 *
 * The messages are those that the client reads and writes, found in excel-web-16.00.debug.js of @microsoft/office-js
 * 1.1.110: HostBridge takes apart what arrives, CustomFunctionProxy._batchInvocationEntries reads the calls of it, and
 * _convertCustomFunctionInvocationResultToArray writes the results. What Excel itself sends no test has seen.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { JSDOM, VirtualConsole } from 'jsdom'
import { bundleText, metadata } from './loadBundle'

export interface CallFromCell {
  readonly id: string
  /** By position: null where an argument was left out, rows of cells for a range. */
  readonly args: readonly unknown[]
  readonly address?: string
}

export type AnswerToCell = { readonly value: unknown } | { readonly error: string; readonly sentence: string }

type Result = readonly [id: number, succeeded: boolean, value: unknown, errorOrTimes: unknown]

interface Action {
  readonly Id: number
  readonly ActionType: number
  readonly Name: string
  readonly ArgumentInfo?: { readonly Arguments: readonly [readonly Result[]] }
}

/** The client's numbers of a message that concerns cell functions, and of one that calls them. */
const customFunctions = 1
const invocation = 1000

/** The client's mark of a call of a function that takes error values; Excel sets it where functions.json says so. */
const takesErrors = 4

const enum ActionType {
  Instantiate = 1,
  Method = 3,
}

/** By the client's _getCustomFunctionResultErrorCodeFromErrorCode; what is thrown and no CustomFunctions.Error has 2. */
const errorValues: Readonly<Record<number, string>> = {
  1: '#N/A',
  2: 'a mistake',
  5: '#DIV/0!',
  6: '#NUM!',
  7: '#VALUE!',
  8: '#NULL!',
}

export class CallingHost {
  private calls = 0
  /** Set by the client once its script is evaluated. */
  private readonly bridge: { sendMessageToHost(text: string): void; onMessageFromHost?(text: string): void }
  private readonly window: JSDOM['window']
  /** In the order in which they came. */
  private results: Result[] = []
  private arrived = () => {}
  /** The length of the last message that called, in bytes. */
  messageLength = 0

  constructor(bundle = bundleText()) {
    this.bridge = { sendMessageToHost: (text) => this.receive(text) }
    // The client looks for its own address in the page. Nothing listens to the console of the page, where the client
    // complains that no Excel has opened it.
    const html = '<script src="https://localhost/office.debug.js"></script>'
    this.window = new JSDOM(html, {
      url: 'https://localhost/',
      runScripts: 'outside-only',
      virtualConsole: new VirtualConsole(),
    }).window
    Object.assign(this.window, { _richApiNativeBridge: this.bridge })
    const require = createRequire(import.meta.url)
    for (const script of ['office.debug.js', 'excel-web-16.00.js']) {
      this.window.eval(readFileSync(require.resolve(`@microsoft/office-js/dist/${script}`), 'utf8'))
    }
    this.window.eval(bundle)
  }

  /** The page's own global names. */
  get page(): typeof globalThis {
    return this.window as unknown as typeof globalThis
  }

  /** Sends all calls in one message and gives their answers in the order in which the client sends them. */
  async ask(calls: readonly CallFromCell[]): Promise<readonly AnswerToCell[]> {
    // Excel itself answers for a function that is not said to take error values.
    if (metadata().allowErrorForDataTypeAny !== true && JSON.stringify(calls).includes('"CustomFunctionError"'))
      return calls.map(() => ({ error: '#VALUE!', sentence: '' }))
    this.results = []
    const first = this.calls + 1
    this.calls += calls.length
    const entries = calls.map(({ id, args, address = 'Sheet1!A1' }, index) => [
      customFunctions,
      invocation,
      '',
      [first + index, id, args, address, takesErrors],
    ])
    const text = JSON.stringify({ type: 3, message: { entries } })
    this.messageLength = Buffer.byteLength(text)
    const all = new Promise<void>((resolve) => {
      this.arrived = () => {
        if (this.results.length >= calls.length) resolve()
      }
    })
    this.bridge.onMessageFromHost!(text)
    await all
    return this.results.map(([id, succeeded, value, error], index) => {
      if (id !== first + index)
        throw new Error(`The answer to call ${id} came in place of that to call ${first + index}.`)
      return succeeded
        ? { value }
        : { error: errorValues[error as number] ?? `error ${String(error)}`, sentence: String(value) }
    })
  }

  private receive(text: string): void {
    const { id, message } = JSON.parse(text) as { id: number; message: { body: { Actions: readonly Action[] } } }
    const Results = message.body.Actions.map((action) => {
      if (action.ActionType === ActionType.Method && action.Name === 'SetInvocationArrayResults')
        this.results.push(...action.ArgumentInfo!.Arguments[0])
      else if (action.ActionType !== ActionType.Instantiate) throw new Error(`The host knows no ${action.Name}`)
      return { ActionId: action.Id, Value: null }
    })
    this.bridge.onMessageFromHost!(JSON.stringify({ id, message: { statusCode: 200, headers: {}, body: { Results } } }))
    this.arrived()
  }
}
