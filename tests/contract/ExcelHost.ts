/**
 * A small Excel behind Microsoft's own client. The client of @microsoft/office-js runs unmodified; each sync of
 * it is one batch of actions on object paths, which this host answers for a workbook of plain cells. It knows
 * what excelPort uses and throws at anything else, so a new call of ours cannot pass unseen.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { JSDOM } from 'jsdom'

type CellValue = string | number | boolean

interface Sheet {
  readonly name: string
  protected: boolean
  /** By address without dollar signs. What is no formula is its own value. */
  readonly cells: Map<string, { readonly formula: CellValue; readonly value: CellValue }>
}

interface Action {
  readonly Id: number
  readonly ActionType: ActionType
  readonly Name: string
  readonly ObjectPathId: number
  readonly ArgumentInfo?: { readonly Arguments?: readonly unknown[] }
  readonly QueryInfo?: { readonly Select?: readonly string[] }
}

interface ObjectPath {
  readonly ObjectPathType: number
  readonly Name: string
  readonly ParentObjectPathId?: number
}

interface Batch {
  readonly Actions: readonly Action[]
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>
}

const enum ActionType { Instantiate = 1, Query = 2, Method = 3, SetProperty = 4, Trace = 5 }

/** The client's numbers of the events that it registers by these methods. */
const events: Readonly<Record<string, number>> = { SelectionChanged: 14, Activated: 11, DataChanged: 10 }
const eventCategory = 65536

class Refusal extends Error {
  constructor(readonly code: string) {
    super(code)
  }
}

export class ExcelHost {
  private readonly sheets: Sheet[]
  private active: Sheet
  private address = 'A1'
  /** Set by the client once its script is evaluated. */
  private readonly bridge: { sendMessageToHost(text: string): void; onMessageFromHost?(text: string): void }
  /** How many listeners each event has: every context of the client registers its own. */
  private readonly registered = new Map<string, number>()
  /** True while a user types in a cell: Excel then refuses every batch. */
  editing = false
  /** A failure that Excel gives no code of its own for a port to know. */
  failing = false
  /** How often everything was calculated. */
  calculations = 0

  constructor(...names: readonly [string, ...string[]]) {
    this.sheets = names.map((name) => ({ name, protected: false, cells: new Map() }))
    this.active = this.sheets[0]!
    this.bridge = { sendMessageToHost: (text) => this.receive(text) }
  }

  /** Evaluates the client in a page of its own and gives the global names that an add-in reads. */
  start(): { readonly Excel: typeof Excel } {
    const { window } = new JSDOM('', { url: 'https://localhost/', runScripts: 'outside-only' })
    Object.assign(window, { _richApiNativeBridge: this.bridge })
    const script = createRequire(import.meta.url).resolve('@microsoft/office-js/dist/excel-web-16.00.js')
    window.eval(readFileSync(script, 'utf8'))
    return window as unknown as { Excel: typeof Excel }
  }

  select(address: string, sheet = this.active.name): void {
    const target = this.sheets.find(({ name }) => name === sheet)!
    const event = target === this.active ? 'SelectionChanged' : 'Activated'
    this.active = target
    this.address = address
    this.raise(event)
  }

  type(address: string, formula: CellValue, value = formula): void {
    this.active.cells.set(address, { formula, value })
    this.raise('DataChanged', { changeType: 'RangeEdited' })
  }

  protect(): void {
    this.active.protected = true
  }

  formulaAt(address: string): CellValue {
    return this.active.cells.get(address)?.formula ?? ''
  }

  /** A row above the active cell; this host has no formulas that would move with it. */
  insertRow(): void {
    this.raise('DataChanged', { changeType: 'RowInserted' })
  }

  private raise(event: string, more: object = {}): void {
    if (!this.registered.get(event)) return
    const message = JSON.stringify({ worksheetId: this.active.name, address: this.address, ...more })
    this.send({ type: 3, message: { entries: [{ messageCategory: eventCategory, messageType: events[event], targetId: 'Workbook', message }] } })
  }

  private receive(text: string): void {
    const { id, message } = JSON.parse(text) as { id: number; message: { body: Batch } }
    this.send({ id, message: { statusCode: 200, headers: {}, body: this.answer(message.body) } })
  }

  private send(message: unknown): void {
    this.bridge.onMessageFromHost!(JSON.stringify(message))
  }

  private answer({ Actions, ObjectPaths }: Batch): unknown {
    const Results: unknown[] = []
    for (const [ActionIndex, action] of Actions.entries()) {
      try {
        if (this.editing) throw new Refusal('InvalidOperationInCellEditMode')
        if (this.failing) throw new Refusal('GeneralException')
        Results.push({ ActionId: action.Id, Value: this.act(action, ObjectPaths) })
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        return { Results, Error: { Code: error.code, Message: 'Excel says no.', ActionIndex, HttpStatusCode: 400 } }
      }
    }
    return { Results }
  }

  private act(action: Action, paths: Batch['ObjectPaths']): unknown {
    const target = pathOf(action.ObjectPathId, paths)
    switch (action.ActionType) {
      case ActionType.Instantiate: return {}
      // A mark in the batch: its answer tells the client that the actions before it went through.
      case ActionType.Trace: return null
      case ActionType.Query: return this.read(target, action.QueryInfo?.Select ?? [])
      case ActionType.SetProperty: return this.write(target, action.Name, action.ArgumentInfo?.Arguments?.[0])
      case ActionType.Method: return this.invoke(target, action.Name)
      default: throw new Error(`The host knows no action ${action.ActionType}`)
    }
  }

  private read(target: string, properties: readonly string[]): unknown {
    const cell = this.active.cells.get(this.address) ?? { formula: '', value: '' }
    const known: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
      'Workbook.GetActiveCell': { address: `${quoted(this.active.name)}!${this.address}`, formulas: [[cell.formula]], values: [[cell.value]] },
      'Workbook.Worksheets.GetActiveWorksheet': { name: this.active.name },
    }
    return Object.fromEntries(properties.map((property) => {
      const value = known[target]?.[property]
      if (value === undefined) throw new Error(`The host does not know ${property} of ${target}`)
      // The client asks for a property in small letters and reads it with a capital one.
      return [property.charAt(0).toUpperCase() + property.slice(1), value]
    }))
  }

  private write(target: string, property: string, value: unknown): void {
    if (target !== 'Workbook.GetActiveCell' || property !== 'Formulas') throw new Error(`The host cannot set ${property} of ${target}`)
    if (this.active.protected) throw new Refusal('AccessDenied')
    const [[formula]] = value as [[string]]
    // It calculates nothing: a formula's own text stands for its value.
    this.type(this.address, formula)
  }

  private invoke(target: string, name: string): unknown {
    // The client asks to hold on to what it may use again. This host forgets nothing.
    if (name === '_KeepReference') return null
    if (target === 'Workbook.Application' && name === 'Calculate') {
      this.calculations += 1
      return null
    }
    const [, step, event = ''] = /^_(Unregister|Register)(\w+)Event$/.exec(name) ?? []
    if (target !== 'Workbook.Worksheets' || events[event] === undefined) throw new Error(`The host knows no ${name} of ${target}`)
    this.registered.set(event, (this.registered.get(event) ?? 0) + (step === 'Register' ? 1 : -1))
    return null
  }
}

/** "Workbook.Worksheets.GetActiveWorksheet" */
function pathOf(id: number, paths: Batch['ObjectPaths']): string {
  const path = paths[id]
  if (path === undefined) return 'nothing'
  return path.ParentObjectPathId === undefined ? 'Workbook' : `${pathOf(path.ParentObjectPathId, paths)}.${path.Name}`
}

function quoted(sheet: string): string {
  return /^\w+$/.test(sheet) ? sheet : `'${sheet.replaceAll('\'', '\'\'')}'`
}
