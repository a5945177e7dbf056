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
  readonly ArgumentInfo?: { readonly Arguments?: readonly unknown[] }
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
  readonly names = new Map<string, { readonly sheet: string; readonly address: string }>()
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
    switch (action.ActionType) {
      case ActionType.Instantiate: {
        const target = this.resolve(action.ObjectPathId, paths)
        return target === missing ? null : {}
      }
      // A mark in the batch: its answer tells the client that the actions before it went through.
      case ActionType.Trace: return null
      case ActionType.Query: return this.read(this.resolve(action.ObjectPathId, paths), action.QueryInfo?.Select ?? [])
      case ActionType.SetProperty: return this.write(this.resolve(action.ObjectPathId, paths), action.Name, action.ArgumentInfo?.Arguments?.[0])
      case ActionType.Method: return this.invoke(this.resolve(action.ObjectPathId, paths), action.Name)
      default: throw new Error(`The host knows no action ${action.ActionType}`)
    }
  }

  private resolve(id: number, paths: Batch['ObjectPaths']): HostObject {
    const path = paths[id]!
    if (path.ParentObjectPathId === undefined) return { is: 'workbook' }
    const parent = this.resolve(path.ParentObjectPathId, paths)
    const [argument = ''] = (path.ArgumentInfo?.Arguments ?? []) as readonly string[]
    switch (`${parent.is}.${path.Name}`) {
      case 'workbook.Worksheets': return { is: 'worksheets' }
      case 'workbook.Names': return { is: 'names' }
      case 'workbook.Application': return { is: 'application' }
      case 'workbook.GetActiveCell': return { is: 'range', sheet: this.active, ...blockOf(this.address), rows: 1, columns: 1 }
      case 'workbook.GetSelectedRange': return { is: 'range', sheet: this.active, ...blockOf(this.address) }
      case 'worksheets.GetActiveWorksheet': return { is: 'sheet', sheet: this.active }
      // An indexer has no name of its own.
      case 'worksheets.': {
        const sheet = this.sheets.find(({ name }) => name === argument)
        if (sheet === undefined) throw new Refusal('ItemNotFound')
        return { is: 'sheet', sheet }
      }
      case 'names.GetItemOrNullObject': return this.names.has(argument) ? { is: 'name', name: argument } : missing
      case 'name.GetRangeOrNullObject': {
        const { sheet, address } = this.names.get((parent as { readonly name: string }).name)!
        return { is: 'range', sheet: this.sheets.find(({ name }) => name === sheet)!, ...blockOf(address) }
      }
      case 'missing.GetRangeOrNullObject': return missing
      case 'sheet.GetUsedRangeOrNullObject': return usedRange((parent as { readonly sheet: Sheet }).sheet)
      case 'sheet.GetRange': {
        if (!/^\$?[A-Z]+\$?\d+(:\$?[A-Z]+\$?\d+)?$/i.test(argument)) throw new Refusal('InvalidArgument')
        return { is: 'range', sheet: (parent as { readonly sheet: Sheet }).sheet, ...blockOf(argument) }
      }
      default: throw new Error(`The host knows no ${path.Name} of ${parent.is}`)
    }
  }

  private read(target: HostObject, properties: readonly string[]): unknown {
    if (target === missing) return null
    if (target.is === 'worksheets') return { _Items: this.sheets.map(({ name }) => ({ _Id: name, Name: name })) }
    if (target.is === 'names') {
      return { _Items: [...this.names].map(([name, { sheet, address }]) => ({ Name: name, Type: 'Range', Formula: `=${quoted(sheet)}!${address}` })) }
    }
    return Object.fromEntries(properties.map((property) => {
      // The client asks for a property in small letters and reads it with a capital one.
      return [property.charAt(0).toUpperCase() + property.slice(1), this.property(target, property)]
    }))
  }

  private property(target: HostObject, property: string): unknown {
    if (target.is === 'sheet' && property === 'name') return target.sheet.name
    if (target.is === 'range') {
      switch (property) {
        case 'address': return `${quoted(target.sheet.name)}!${addressOf(target)}`
        case 'rowIndex': return target.top
        case 'columnIndex': return target.left
        case 'formulas': return cellsOf(target, ({ formula }) => formula)
        case 'values': return cellsOf(target, ({ value }) => value)
        case 'valueTypes': return cellsOf(target, ({ value }) => typeOf(value))
      }
    }
    throw new Error(`The host does not know ${property} of ${target.is}`)
  }

  private write(target: HostObject, property: string, value: unknown): void {
    if (target.is !== 'range' || property !== 'Formulas') throw new Error(`The host cannot set ${property} of ${target.is}`)
    if (target.sheet.protected) throw new Refusal('AccessDenied')
    for (const [row, formulas] of (value as readonly (readonly CellValue[])[]).entries()) {
      for (const [column, formula] of formulas.entries()) {
        // It calculates nothing: a formula's own text stands for its value.
        target.sheet.cells.set(addressOf({ top: target.top + row, left: target.left + column, rows: 1, columns: 1 }), { formula, value: formula })
      }
    }
    this.raise('DataChanged', { changeType: 'RangeEdited' })
  }

  private invoke(target: HostObject, name: string): unknown {
    // The client asks to hold on to what it may use again. This host forgets nothing.
    if (name === '_KeepReference') return null
    if (target.is === 'sheet' && name === 'Activate') {
      this.select('A1', target.sheet.name)
      return null
    }
    if (target.is === 'range' && name === 'Select') {
      this.select(addressOf(target), target.sheet.name)
      return null
    }
    if (target.is === 'application' && name === 'Calculate') {
      this.calculations += 1
      return null
    }
    const [, step, event = ''] = /^_(Unregister|Register)(\w+)Event$/.exec(name) ?? []
    if (target.is !== 'worksheets' || events[event] === undefined) throw new Error(`The host knows no ${name} of ${target.is}`)
    this.registered.set(event, (this.registered.get(event) ?? 0) + (step === 'Register' ? 1 : -1))
    return null
  }
}

/** Rows and columns from 0. */
interface Block {
  readonly top: number
  readonly left: number
  readonly rows: number
  readonly columns: number
}

type HostObject =
  | { readonly is: 'workbook' | 'worksheets' | 'names' | 'application' | 'missing' }
  | { readonly is: 'sheet'; readonly sheet: Sheet }
  | { readonly is: 'name'; readonly name: string }
  | ({ readonly is: 'range'; readonly sheet: Sheet } & Block)

const missing: HostObject = { is: 'missing' }

function usedRange(sheet: Sheet): HostObject {
  const places = [...sheet.cells.keys()].map(placeOf)
  if (places.length === 0) return missing
  const [rows, columns] = [places.map(({ row }) => row), places.map(({ column }) => column)]
  const [top, left] = [Math.min(...rows), Math.min(...columns)]
  return { is: 'range', sheet, top, left, rows: Math.max(...rows) - top + 1, columns: Math.max(...columns) - left + 1 }
}

function blockOf(address: string): Block {
  const [from = '', to = from] = address.replaceAll('$', '').toUpperCase().split(':')
  const [first, last] = [placeOf(from), placeOf(to)]
  return { top: first.row, left: first.column, rows: last.row - first.row + 1, columns: last.column - first.column + 1 }
}

function placeOf(address: string): { readonly row: number; readonly column: number } {
  const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? []
  return { row: Number(digits) - 1, column: [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0) - 1 }
}

function addressOf({ top, left, rows, columns }: Block): string {
  const letters = (column: number): string => (column < 0 ? '' : letters(Math.floor(column / 26) - 1) + String.fromCharCode(65 + column % 26))
  const cell = (row: number, column: number) => `${letters(column)}${row + 1}`
  const first = cell(top, left)
  return rows === 1 && columns === 1 ? first : `${first}:${cell(top + rows - 1, left + columns - 1)}`
}

function cellsOf<T>(range: Block & { readonly sheet: Sheet }, of: (cell: { readonly formula: CellValue; readonly value: CellValue }) => T): T[][] {
  return Array.from({ length: range.rows }, (_row, row) => Array.from({ length: range.columns }, (_cell, column) => (
    of(range.sheet.cells.get(addressOf({ top: range.top + row, left: range.left + column, rows: 1, columns: 1 })) ?? { formula: '', value: '' })
  )))
}

function typeOf(value: CellValue): string {
  if (value === '') return 'Empty'
  if (typeof value === 'number') return 'Double'
  if (typeof value === 'boolean') return 'Boolean'
  return /^#[A-Z/0!?]+$/.test(value) ? 'Error' : 'String'
}

function quoted(sheet: string): string {
  return /^\w+$/.test(sheet) ? sheet : `'${sheet.replaceAll('\'', '\'\'')}'`
}
