/**
 * A small Excel behind Microsoft's own client. The client of @microsoft/office-js runs unmodified; each sync of
 * it is one batch of actions on object paths, which this host answers for a workbook of plain cells. It knows
 * what excelPort uses and throws at anything else, so a new call of ours cannot pass unseen.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { JSDOM } from 'jsdom'
import { fillsOneCell } from '../../src/core/definition/definition'
import { filledInto, formulaAt, relativeFormula } from '../../src/formula/relativeFormula'
import { catalogue } from '../../src/functions/catalogue'

type CellValue = string | number | boolean

/** The looks, widths and rules that were set, by the cells and then by the property: "A1" has "font.bold". */
type Appearance = Map<string, Map<string, unknown>>

interface Table extends Block {
  name: string
  readonly hasTotals: boolean
  /** The formula of each calculated column, by its place in the table, as it is the same in all rows. */
  readonly calculated: Map<number, string>
  /** What was set of it, apart from its name. */
  readonly settings: Map<string, unknown>
}

/** What was set of it and called of it, by the path from the chart: "Title.Text". A range stands for itself as its address. */
interface Chart {
  readonly name: string
  readonly settings: Map<string, unknown>
  series: number
}

interface Sheet {
  readonly name: string
  protected: boolean
  readonly appearance: Appearance
  frozen: Pick<Block, 'rows' | 'columns'>
  readonly charts: Chart[]
  readonly tables: Table[]
  /** Those that it has for itself, each with what it stands for: "=Plan!$A$1" or "=0.05". */
  readonly names: Map<string, string>
  /** By address without dollar signs. What is no formula is its own value. */
  readonly cells: Map<string, { readonly formula: CellValue; readonly value: CellValue }>
}

interface Action {
  readonly Id: number
  readonly ActionType: ActionType
  readonly Name: string
  readonly ObjectPathId: number
  readonly ArgumentInfo?: ArgumentInfo
  readonly QueryInfo?: { readonly Select?: readonly string[] }
}

interface ObjectPath {
  readonly ObjectPathType: number
  readonly Name: string
  readonly ParentObjectPathId?: number
  readonly ArgumentInfo?: ArgumentInfo
}

interface ArgumentInfo {
  readonly Arguments?: readonly unknown[]
  /** Of the arguments that are objects: the paths that lead to them, in the same places. */
  readonly ReferencedObjectPathIds?: readonly (number | null)[]
}

interface Batch {
  readonly Actions: readonly Action[]
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>
}

const enum ActionType {
  Instantiate = 1,
  Query = 2,
  Method = 3,
  SetProperty = 4,
  Trace = 5,
}

/** The client's numbers of the events that it registers by these methods. */
const events: Readonly<Record<string, number>> = {
  SelectionChanged: 14,
  Activated: 11,
  DataChanged: 10,
  RowSorted: 19,
  ColumnSorted: 20,
}
const eventCategory = 65536

class Refusal extends Error {
  constructor(readonly code: string) {
    super(code)
  }
}

/** The client in the package knows ExcelApi 1.17 and none of what came later, such as notes. */
const newestOfClient = 17

/** The client's mark of a message that was sent with delayForCellEdit. */
const delaysForCellEdit = 64

/** In bytes: Excel on the web takes no message above it, and gives no answer above it. */
const longestMessage = 5 * 1024 * 1024

export class ExcelHost {
  private readonly sheets: Sheet[]
  private active: Sheet
  private address = 'A1'
  /** Set by the client once its script is evaluated. */
  private readonly bridge: { sendMessageToHost(text: string): void; onMessageFromHost?(text: string): void }
  /** What the batch at hand has added, by its object path: asking again must not add it again. */
  private readonly made = new Map<number, HostObject>()
  /** How many listeners each event has: every context of the client registers its own. */
  private readonly registered = new Map<string, number>()
  /** True while a user types in a cell: Excel then refuses every batch. */
  editing = false
  /** A failure that Excel gives no code of its own for a port to know. */
  failing = false
  /** So many actions still go through, then one fails, once. */
  failingAfter = Infinity
  /** Nothing goes through any more after that failure. */
  failsForGood = false
  /** So many actions still go through, then the user begins to type in a cell, until Excel is asked to wait for the end of it. */
  typingAfter = Infinity
  /** Fills a column of a table, but for what was typed there, with a formula also where Excel is not known to. */
  fillsAlways = false
  /** Refuses to delete anything. */
  keeps = false
  /** What was written into cells, as it came. */
  readonly rawContents: unknown[] = []
  /** Whether the structure of the workbook is protected: it then takes no new sheets. */
  structureProtected = false
  /** The length of each message so far, in bytes. */
  readonly messages: number[] = []
  readonly names = new Map<string, { readonly sheet: string; readonly address: string }>()
  /** What formulas fill, by the sheet and address of their cell: "Trial!A2" fills "A2:B2". */
  readonly spills = new Map<string, string>()
  /** So many times the values are still asked for before cells that call a function of ours show results. */
  busyFor = 0
  /** What cells show once everything was calculated, by sheet and address. */
  readonly results = new Map<string, ReadonlyMap<string, CellValue>>()
  /** What was asked to be calculated: "Full". */
  readonly calculations: string[] = []
  /** How many cells had been written when calculation was suspended. */
  readonly suspended: number[] = []
  /** What stands in notes, in the order in which they came. */
  readonly notes: string[] = []
  /** How many actions were one undo each. */
  joined = 0
  /** Names that stand for no cells: "0.05". */
  readonly constants = new Map<string, string>()
  /** Names that stand for a column of a table: "OrderBook[Cuttings]". */
  readonly columnNames = new Map<string, string>()
  /** Names that Excel makes for itself, such as that of a filter, and shows nobody. */
  readonly hidden = new Set<string>()

  constructor(...names: readonly [string, ...string[]]) {
    this.sheets = names.map(emptySheet)
    this.active = this.sheets[0]!
    this.bridge = { sendMessageToHost: (text) => this.receive(text) }
  }

  /**
   * Evaluates the client in a page of its own and gives the global names that an add-in reads.
   *
   * @param newest Of ExcelApi 1: what comes after the client's own is played by this host.
   */
  start(newest = newestOfClient): { readonly Excel: typeof Excel; readonly Office: object } {
    const { window } = new JSDOM('', { url: 'https://localhost/', runScripts: 'outside-only' })
    Object.assign(window, { _richApiNativeBridge: this.bridge })
    const script = createRequire(import.meta.url).resolve('@microsoft/office-js/dist/excel-web-16.00.js')
    window.eval(readFileSync(script, 'utf8'))
    const isSetSupported = (_set: string, version: string) => Number(version.split('.')[1]) <= newest
    const client = (window as unknown as { Excel: typeof Excel }).Excel
    this.joinUndoSteps(client, newest)
    if (newest >= 18) this.takeNotes(client)
    return {
      Excel: client,
      Office: {
        context: {
          requirements: { isSetSupported },
          diagnostics: { version: '16.0.1', platform: 'OfficeOnline' },
          contentLanguage: 'de-DE',
          displayLanguage: 'en-US',
        },
      },
    }
  }

  /** An Excel before 1.20 joins no undo steps, and this one refuses to be asked. */
  private joinUndoSteps(client: typeof Excel, newest: number): void {
    const run = client.run.bind(client) as (...given: unknown[]) => Promise<unknown>
    Object.assign(client, {
      run: (options: Excel.RunOptions, action: unknown) => {
        if (typeof options === 'object' && 'mergeUndoGroup' in options) {
          if (newest < 20) throw new Error('This Excel cannot join undo steps.')
          this.joined += 1
        }
        return typeof options === 'function' ? run(options) : run(options, action)
      },
    })
  }

  private takeNotes(client: typeof Excel): void {
    const { notes } = this
    Object.defineProperty(client.Worksheet.prototype, 'notes', {
      get: () => ({
        add(cell: unknown, content: unknown) {
          if (!(cell instanceof client.Range) || typeof content !== 'string')
            throw new Error('A note is added to a cell, and is a text.')
          notes.push(content)
        },
      }),
    })
  }

  select(address: string, sheet = this.active.name): void {
    const target = this.sheets.find(({ name }) => name === sheet)!
    const event = target === this.active ? 'SelectionChanged' : 'Activated'
    this.active = target
    this.address = address
    this.raise(event)
  }

  /** As a user types: a line typed below a table becomes one of its rows. */
  type(address: string, formula: CellValue, value = formula): void {
    if (formula !== '') this.growTable(this.active, address)
    this.active.cells.set(address, { formula, value })
    this.fillColumns(this.active, [address])
    this.raise('DataChanged', { changeType: 'RangeEdited', source: 'Local' })
  }

  protect(): void {
    this.active.protected = true
  }

  formulaAt(address: string): CellValue {
    return this.active.cells.get(address)?.formula ?? ''
  }

  /** Of the whole workbook. */
  tableNames(): readonly string[] {
    return this.sheets.flatMap(({ tables }) => tables.map(({ name }) => name))
  }

  /** As a user makes one. */
  addTable(sheet: string, name: string, address: string, hasTotals = false): void {
    this.keepTable(this.sheet(sheet), { ...blockOf(address), name, hasTotals })
  }

  sheetNames(): readonly string[] {
    return this.sheets.map(({ name }) => name)
  }

  sheet(called: string): Sheet {
    return this.sheets.find(({ name }) => name === called)!
  }

  /** Rows, columns or cells come or go; this host has no formulas that would move with them. */
  move(
    changeType: `${'Row' | 'Column' | 'Cell'}${'Inserted' | 'Deleted'}`,
    source: 'Local' | 'Remote' = 'Local',
  ): void {
    this.raise('DataChanged', { changeType, source })
  }

  /** Somebody else who has the workbook open types into a cell: the selection of this one stays where it is. */
  typeElsewhere(sheet: string, address: string, formula: CellValue, value = formula): void {
    this.sheet(sheet).cells.set(address, { formula, value })
    this.raise('DataChanged', { changeType: 'RangeEdited', source: 'Remote', worksheetId: sheet, address })
  }

  /** Excel tells of a sort by an event of its own. */
  sort(what: 'Row' | 'Column', source: 'Local' | 'Remote' = 'Local'): void {
    this.raise(`${what}Sorted`, { source })
  }

  /** Of all events together. */
  listeners(): number {
    return [...this.registered.values()].reduce((sum, count) => sum + count, 0)
  }

  private raise(event: string, more: object = {}): void {
    if (!this.registered.get(event)) return
    const message = JSON.stringify({ worksheetId: this.active.name, address: this.address, ...more })
    this.send({
      type: 3,
      message: {
        entries: [{ messageCategory: eventCategory, messageType: events[event], targetId: 'Workbook', message }],
      },
    })
  }

  private receive(text: string): void {
    const { id, message, flags } = JSON.parse(text) as { id: number; message: { body: Batch }; flags: number }
    // Such a message waits until the user has left the cell.
    if (flags & delaysForCellEdit) this.editing = false
    const length = Buffer.byteLength(text)
    this.messages.push(length)
    const refused = (code: string) => refusalOf(code, 0, [])
    const body = length > longestMessage ? refused('RequestPayloadSizeLimitExceeded') : this.answer(message.body)
    const answered = Buffer.byteLength(JSON.stringify(body))
    const sent = answered > longestMessage ? refused('ResponsePayloadSizeLimitExceeded') : body
    this.send({ id, message: { statusCode: 200, headers: {}, body: sent } })
  }

  private send(message: unknown): void {
    this.bridge.onMessageFromHost!(JSON.stringify(message))
  }

  private answer({ Actions, ObjectPaths }: Batch): unknown {
    const Results: unknown[] = []
    this.made.clear()
    for (const [ActionIndex, action] of Actions.entries()) {
      try {
        if (this.typingAfter === 0) {
          this.typingAfter = Infinity
          this.editing = true
        }
        this.typingAfter -= 1
        if (this.editing) throw new Refusal('InvalidOperationInCellEditMode')
        if (this.failing) throw new Refusal('GeneralException')
        if (this.failingAfter === 0) {
          this.failingAfter = Infinity
          this.failing = this.failsForGood
          throw new Refusal('GeneralException')
        }
        this.failingAfter -= 1
        Results.push({ ActionId: action.Id, Value: this.act(action, ObjectPaths) })
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        return refusalOf(error.code, ActionIndex, Results)
      }
    }
    return { Results }
  }

  private act(action: Action, paths: Batch['ObjectPaths']): unknown {
    switch (action.ActionType) {
      case ActionType.Instantiate: {
        const target = this.resolve(action.ObjectPathId, paths)
        if (target === missing) return null
        // The client finds what it has added again by its id.
        return target.is === 'sheet' ? { _Id: target.sheet.name } : {}
      }
      // A mark in the batch: its answer tells the client that the actions before it went through.
      case ActionType.Trace:
        return null
      case ActionType.Query:
        return this.read(this.resolve(action.ObjectPathId, paths), action.QueryInfo?.Select ?? [])
      case ActionType.SetProperty:
        return this.write(this.resolve(action.ObjectPathId, paths), action.Name, action.ArgumentInfo?.Arguments?.[0])
      case ActionType.Method:
        return this.invoke(this.resolve(action.ObjectPathId, paths), action.Name, this.argumentsOf(action, paths))
      default:
        throw new Error(`The host knows no action ${action.ActionType}`)
    }
  }

  private argumentsOf(
    { ArgumentInfo = {} }: Pick<Action, 'ArgumentInfo'>,
    paths: Batch['ObjectPaths'],
  ): readonly unknown[] {
    const { Arguments = [], ReferencedObjectPathIds = [] } = ArgumentInfo
    return Arguments.map((argument, index) => {
      const path = ReferencedObjectPathIds[index]
      return path ? this.resolve(path, paths) : argument
    })
  }

  private resolve(id: number, paths: Batch['ObjectPaths']): HostObject {
    const known = this.made.get(id)
    if (known !== undefined) return known
    const path = paths[id]!
    if (path.ParentObjectPathId === undefined) return { is: 'workbook' }
    const parent = this.resolve(path.ParentObjectPathId, paths)
    const given = this.argumentsOf(path, paths)
    const [argument = ''] = given as readonly string[]
    const made = this.make(parent, path.Name, given)
    if (made !== undefined) {
      this.made.set(id, made)
      return made
    }
    if (parent.is === 'chart')
      return { ...parent, part: `${parent.part}${path.Name}${path.Name === 'GetItemAt' ? String(given[0]) : ''}.` }
    switch (`${parent.is}.${path.Name}`) {
      case 'workbook.Worksheets':
        return { is: 'worksheets' }
      case 'workbook.Names':
        return { is: 'names' }
      case 'workbook.Application':
        return { is: 'application' }
      case 'workbook.GetActiveCell':
        return { is: 'range', sheet: this.active, ...blockOf(this.address), rows: 1, columns: 1 }
      case 'workbook.GetSelectedRange':
        return { is: 'range', sheet: this.active, ...blockOf(this.address) }
      case 'worksheets.GetActiveWorksheet':
        return { is: 'sheet', sheet: this.active }
      // An indexer has no name of its own.
      case 'worksheets.': {
        const sheet = this.sheets.find(({ name }) => name.toLowerCase() === argument.toLowerCase())
        if (sheet === undefined) throw new Refusal('ItemNotFound')
        return { is: 'sheet', sheet }
      }
      case 'names.GetItemOrNullObject':
        if (this.constants.has(argument)) return { is: 'constant' }
        return this.names.has(argument) ? { is: 'name', name: argument } : missing
      case 'name.GetRangeOrNullObject': {
        const { sheet, address } = this.names.get((parent as { readonly name: string }).name)!
        return { is: 'range', sheet: this.sheets.find(({ name }) => name === sheet)!, ...blockOf(address) }
      }
      case 'constant.GetRangeOrNullObject':
      case 'missing.GetRangeOrNullObject':
      case 'missing.Names':
      case 'missing.GetRange':
      case 'missing.GetUsedRangeOrNullObject':
      case 'missing.GetItemOrNullObject':
        return missing
      case 'namesOfSheet.GetItemOrNullObject': {
        const { sheet } = parent as { readonly sheet: Sheet }
        return sheet.names.has(argument) ? { is: 'nameOfSheet', sheet, name: argument } : missing
      }
      case 'nameOfSheet.GetRangeOrNullObject': {
        const { sheet, name } = parent as Extract<HostObject, { is: 'nameOfSheet' }>
        const [, address] = /^=.+!(.+)$/.exec(sheet.names.get(name)!) ?? []
        return address === undefined ? missing : { is: 'range', sheet, ...blockOf(address) }
      }
      case 'worksheets.GetItemOrNullObject': {
        const sheet = this.sheets.find(({ name }) => name.toLowerCase() === argument.toLowerCase())
        return sheet === undefined ? missing : { is: 'sheet', sheet }
      }
      case 'workbook.Protection':
        return { is: 'protection' }
      case 'workbook.Tables':
        return { is: 'tables' }
      case 'names.': {
        if (!this.names.has(argument)) throw new Refusal('ItemNotFound')
        return { is: 'name', name: argument }
      }
      case 'tables.GetItem':
      case 'tables.': {
        const sheet = this.sheets.find(({ tables }) => tables.some(({ name }) => name === argument))
        if (sheet === undefined) throw new Refusal('ItemNotFound')
        return { is: 'table', table: sheet.tables.find(({ name }) => name === argument)!, sheet }
      }
      case 'table.GetRange': {
        const { table, sheet } = parent as Extract<HostObject, { is: 'table' }>
        const { top, left, rows, columns } = table
        return { is: 'range', sheet, top, left, rows, columns }
      }
      case 'table.Worksheet':
        return { is: 'sheet', sheet: (parent as Extract<HostObject, { is: 'table' }>).sheet }
      case 'table.Columns':
        return { ...(parent as Extract<HostObject, { is: 'table' }>), is: 'columns' }
      case 'sheet.Names':
        return { is: 'namesOfSheet', sheet: (parent as { readonly sheet: Sheet }).sheet }
      case 'sheet.Tables':
        return { is: 'tablesOfSheet', sheet: (parent as { readonly sheet: Sheet }).sheet }
      case 'sheet.Charts':
        return { is: 'charts', sheet: (parent as { readonly sheet: Sheet }).sheet }
      case 'charts.GetItem':
      case 'charts.': {
        const { sheet } = parent as { readonly sheet: Sheet }
        const chart = sheet.charts.find(({ name }) => name === argument)
        if (chart === undefined) throw new Refusal('ItemNotFound')
        return { is: 'chart', sheet, chart, part: '' }
      }
      case 'range.GetOffsetRange': {
        const [down, right] = given as readonly [number, number]
        const range = parent as Extract<HostObject, { is: 'range' }>
        return { ...range, top: range.top + down, left: range.left + right }
      }
      case 'range.GetRow': {
        const range = parent as Extract<HostObject, { is: 'range' }>
        return { ...range, top: range.top + Number(given[0]), rows: 1 }
      }
      case 'range.GetBoundingRect': {
        const range = parent as Extract<HostObject, { is: 'range' }>
        const last = given[0] as Extract<HostObject, { is: 'range' }>
        return { ...range, rows: last.top + last.rows - range.top }
      }
      case 'sheet.FreezePanes':
        return { is: 'freezePanes', sheet: (parent as { readonly sheet: Sheet }).sheet }
      case 'sheet.GetRangeByIndexes': {
        const [top, left, rows, columns] = given as readonly [number, number, number, number]
        return { is: 'range', sheet: (parent as { readonly sheet: Sheet }).sheet, top, left, rows, columns }
      }
      case 'range.GetSpillingToRangeOrNullObject': {
        const range = parent as Extract<HostObject, { is: 'range' }>
        const spill = this.spills.get(`${range.sheet.name}!${addressOf(range)}`)
        return spill === undefined ? missing : { is: 'range', sheet: range.sheet, ...blockOf(spill) }
      }
      case 'range.GetUsedRange':
      case 'range.GetUsedRangeOrNullObject': {
        const range = parent as Extract<HostObject, { is: 'range' }>
        const within = <T>(all: ReadonlyMap<string, T>) =>
          new Map([...all].filter(([address]) => isWithin(range, address)))
        const { cells, appearance } = range.sheet
        return usedRange(range.sheet, within(cells), given[0] === true ? new Map() : within(appearance))
      }
      case 'sheet.GetRanges': {
        if (argument.length > 8192) throw new Refusal('InvalidArgument')
        return {
          is: 'areas',
          sheet: (parent as { readonly sheet: Sheet }).sheet,
          areas: argument.split(',').map(blockOf),
        }
      }
      case 'range.Format':
      case 'areas.Format':
        return { is: 'appearance', of: parent as Areas, part: 'format' }
      case 'areas.DataValidation':
        return { is: 'appearance', of: parent as Areas, part: 'validation' }
      case 'appearance.Font':
      case 'appearance.Fill':
      case 'appearance.Borders':
        return { is: 'appearance', of: (parent as Look).of, part: path.Name }
      case 'appearance.':
      case 'appearance.GetItem':
        return { is: 'appearance', of: (parent as Look).of, part: argument }
      case 'sheet.GetUsedRangeOrNullObject':
        return usedRange(
          (parent as { readonly sheet: Sheet }).sheet,
          (parent as { readonly sheet: Sheet }).sheet.cells,
          given[0] === true ? new Map() : (parent as { readonly sheet: Sheet }).sheet.appearance,
        )
      case 'sheet.GetRange': {
        if (!/^(\$?[A-Z]+\$?\d+(:\$?[A-Z]+\$?\d+)?|\d+:\d+)$/i.test(argument)) throw new Refusal('InvalidArgument')
        return { is: 'range', sheet: (parent as { readonly sheet: Sheet }).sheet, ...blockOf(argument) }
      }
      default:
        throw new Error(`The host knows no ${path.Name} of ${parent.is}`)
    }
  }

  /** What adds something; undefined where the path only leads to what is there. */
  private make(parent: HostObject, method: string, given: readonly unknown[]): HostObject | undefined {
    if (parent.is === 'worksheets' && method === 'Add') {
      const [name] = given as readonly [string]
      if (this.structureProtected) throw new Refusal('AccessDenied')
      if (name.length > 31 || /[[\]:*?/\\]/.test(name)) throw new Refusal('InvalidArgument')
      if (this.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase()))
        throw new Refusal('ItemAlreadyExists')
      const sheet = emptySheet(name)
      this.sheets.push(sheet)
      return { is: 'sheet', sheet }
    }
    if (parent.is === 'tablesOfSheet' && method === 'Add' && given[1] !== true)
      throw new Error('Excel would push the cells down for headings of its own.')
    if (parent.is === 'tablesOfSheet' && method === 'Add')
      return {
        is: 'table',
        table: this.makeTable(parent.sheet, blockOf(String(given[0]))),
        sheet: parent.sheet,
      }
    if (parent.is === 'charts' && method === 'Add') {
      if (parent.sheet.protected) throw new Refusal('AccessDenied')
      const [type, source, seriesBy] = given as readonly [string, Extract<HostObject, { is: 'range' }>, string]
      if (seriesBy !== 'Columns' && seriesBy !== 'Rows') throw new Refusal('InvalidArgument')
      const chart: Chart = {
        name: `Chart ${parent.sheet.charts.length + 1}`,
        settings: new Map([
          ['type', type],
          ['source', addressOf(source)],
        ]),
        series: seriesBy === 'Columns' ? source.columns : source.rows,
      }
      parent.sheet.charts.push(chart)
      return { is: 'chart', sheet: parent.sheet, chart, part: '' }
    }
    if (parent.is === 'chart' && parent.part === 'Series.' && method === 'Add') {
      const index = parent.chart.series
      parent.chart.series += 1
      return { ...parent, part: `Series.GetItemAt${index}.` }
    }
    if (parent.is === 'range' && method === 'Insert') {
      if (given[0] !== 'Down') throw new Error(`The host inserts rows downwards only, not ${String(given[0])}.`)
      if (parent.sheet.protected) throw new Refusal('AccessDenied')
      this.moveRows(parent.sheet, parent.top, parent.rows)
      return parent
    }
    if (parent.is === 'names' && method === 'Add') {
      const [name, refersTo] = given as readonly [string, string]
      const [, sheet = '', address = ''] = /^='?(.+?)'?!(.+)$/.exec(refersTo) ?? []
      if (!this.sheets.some((one) => one.name === sheet) || /^[A-Z]{1,3}\d+$/i.test(name))
        throw new Refusal('InvalidArgument')
      if ([...this.names.keys(), ...this.tableNames()].some((one) => one.toLowerCase() === name.toLowerCase()))
        throw new Refusal('ItemAlreadyExists')
      this.names.set(name, { sheet, address })
      return { is: 'name', name }
    }
    return undefined
  }

  private read(target: HostObject, properties: readonly string[]): unknown {
    if (target === missing) return null
    if (target.is === 'worksheets') return { _Items: this.sheets.map(({ name }) => ({ _Id: name, Name: name })) }
    if (target.is === 'names') {
      return {
        _Items: [
          ...[...this.names].map(([name, { sheet, address }]) => ({
            Name: name,
            Type: 'Range',
            Formula: `=${quoted(sheet)}!${address}`,
            Visible: !this.hidden.has(name),
          })),
          ...[...this.columnNames].map(([name, column]) => ({
            Name: name,
            Type: 'Range',
            Formula: `=${column}`,
            Visible: !this.hidden.has(name),
          })),
          ...[...this.constants].map(([name, value]) => ({
            Name: name,
            Type: 'Double',
            Formula: `=${value}`,
            Visible: true,
          })),
        ],
      }
    }
    if (target.is === 'namesOfSheet')
      return {
        _Items: [...target.sheet.names].map(([name, formula]) => ({
          Name: name,
          Type: formula.includes('!') ? 'Range' : 'Double',
          Formula: formula,
          Visible: true,
        })),
      }
    if (target.is === 'charts') return { _Items: target.sheet.charts.map(({ name }) => ({ _Id: name, Name: name })) }
    if (target.is === 'tables')
      return {
        _Items: this.sheets.flatMap(({ tables }) =>
          tables.map(({ name, hasTotals }) => ({
            _Id: name,
            Name: name,
            ShowHeaders: true,
            ShowTotals: hasTotals,
          })),
        ),
      }
    if (target.is === 'columns')
      return {
        _Items: cellsOf({ ...target.table, sheet: target.sheet, rows: 1 }, ({ value }) => value)[0]!.map((name) => ({
          _Id: name,
          Name: name,
        })),
      }
    return Object.fromEntries(
      properties.map((property) => {
        // The client asks for a property in small letters and reads it with a capital one.
        return [property.charAt(0).toUpperCase() + property.slice(1), this.property(target, property)]
      }),
    )
  }

  private property(target: HostObject, property: string): unknown {
    if (target.is === 'sheet' && property === 'name') return target.sheet.name
    if (target.is === 'nameOfSheet' && property === 'name') return target.name
    if (target.is === 'protection' && property === 'protected') return this.structureProtected
    if (target.is === 'range') {
      // No cell takes less than two bytes of an answer.
      if (['formulas', 'values', 'valueTypes'].includes(property) && 2 * target.rows * target.columns > longestMessage)
        throw new Refusal('ResponsePayloadSizeLimitExceeded')
      switch (property) {
        case 'address':
          return `${quoted(target.sheet.name)}!${addressOf(target)}`
        case 'rowIndex':
          return target.top
        case 'columnIndex':
          return target.left
        case 'rowCount':
          return target.rows
        case 'columnCount':
          return target.columns
        case 'cellCount':
          return target.rows * target.columns
        case 'formulas':
          return cellsOf(target, ({ formula }) => formula)
        case 'values':
          this.busyFor = Math.max(0, this.busyFor - 1)
          return cellsOf(target, this.shown)
        case 'valueTypes':
          return cellsOf(target, (cell) => typeOf(this.shown(cell)))
      }
    }
    throw new Error(`The host does not know ${property} of ${target.is}`)
  }

  private readonly shown = ({ formula, value }: { readonly formula: CellValue; readonly value: CellValue }) =>
    this.busyFor > 0 && String(formula).includes('STICK.') ? '#BUSY!' : value

  private write(target: HostObject, property: string, value: unknown): void {
    if (target.is === 'appearance') {
      for (const address of addressesOf(target.of))
        setAppearance(target.of.sheet, address, `${target.part}.${property}`, value)
      return
    }
    if (target.is === 'table') {
      if (property === 'Name') this.nameTable(target.table, String(value))
      else target.table.settings.set(property, value)
      return
    }
    if (target.is === 'chart') {
      target.chart.settings.set(`${target.part}${property}`, value)
      return
    }
    if (target.is !== 'range') throw new Error(`The host cannot set ${property} of ${target.is}`)
    if (target.sheet.protected) throw new Refusal('AccessDenied')
    const typedInto: string[] = []
    for (const [row, contents] of (value as readonly (readonly (CellValue | null)[])[]).entries()) {
      for (const [column, content] of contents.entries()) {
        // Null leaves a cell as it is.
        if (content === null) continue
        const address = addressOf({ top: target.top + row, left: target.left + column, rows: 1, columns: 1 })
        if (property === 'NumberFormat') setAppearance(target.sheet, address, property, content)
        else if (property === 'Formulas' && content === '') {
          target.sheet.cells.delete(address)
          typedInto.push(address)
        } else if (property === 'Formulas') {
          this.rawContents.push(content)
          target.sheet.cells.set(address, this.typed(content))
          typedInto.push(address)
        } else throw new Error(`The host cannot set ${property} of a range`)
      }
    }
    this.fillColumns(target.sheet, typedInto)
    this.raise('DataChanged', { changeType: 'RangeEdited', source: 'Local' })
  }

  /** A column whose formulas are alike becomes a calculated one. */
  private keepTable(sheet: Sheet, { name, hasTotals, ...block }: Block & Pick<Table, 'name' | 'hasTotals'>): Table {
    const table: Table = { ...block, name, hasTotals, calculated: new Map(), settings: new Map() }
    sheet.tables.push(table)
    for (let column = 0; column < table.columns; column++) this.noteCalculated(sheet, table, column)
    return table
  }

  private noteCalculated(sheet: Sheet, table: Table, column: number): void {
    const relative = dataCells(table, column).map((address) => relativeOf(sheet, address))
    if (relative.every((one) => one === undefined)) table.calculated.delete(column)
    else if (new Set(relative).size === 1) table.calculated.set(column, relative[0]!)
  }

  /**
   * A formula that is put into cells of a column fills all of it, where it is a calculated one or else empty, whoever
   * puts it there: of several the last (office-js issues 2093, 5909 and 6745). What else stands in the column is lost.
   */
  private fillColumns(sheet: Sheet, written: readonly string[]): void {
    for (const table of sheet.tables) {
      for (let column = 0; column < table.columns; column++) {
        const cells = dataCells(table, column)
        const here = written.filter((address) => cells.includes(address))
        const last = here.flatMap((address) => relativeOf(sheet, address) ?? []).at(-1)
        const others = cells.filter((address) => !here.includes(address))
        const isEmpty = others.length > 0 && others.every((address) => !sheet.cells.has(address))
        const changes = here.some((address) => relativeOf(sheet, address) !== table.calculated.get(column))
        if (last !== undefined && changes && (isEmpty || table.calculated.has(column) || this.fillsAlways))
          for (const address of cells) {
            const isTyped = relativeOf(sheet, address) === undefined && sheet.cells.has(address)
            if (this.fillsAlways && isTyped) continue
            sheet.cells.set(address, this.typed(formulaAt(last, address)))
          }
        if (here.length > 0) this.noteCalculated(sheet, table, column)
      }
    }
  }

  /**
   * What reads the whole of the table, or of a column, reads the new row too (Tushar Mehta, "Create a dynamic range"),
   * the calculated columns have their formulas in it, and it looks and takes what the row above does.
   */
  private growTable(sheet: Sheet, address: string): void {
    const { row, column } = placeOf(address)
    const at = sheet.tables.findIndex(
      ({ top, left, rows, columns, hasTotals }) =>
        row === top + rows && column >= left && column < left + columns && !hasTotals,
    )
    if (at < 0) return
    const table = sheet.tables[at]!
    const longer = (read: string): string => {
      const block = blockOf(read)
      const isWhole = block.top + block.rows === row && block.top >= table.top && block.top <= table.top + 1
      const isWithin = block.left >= table.left && block.left + block.columns <= table.left + table.columns
      return isWhole && isWithin ? read.replace(/\d+$/, String(row + 1)) : read
    }
    for (const [name, named] of this.names)
      if (named.sheet === sheet.name) this.names.set(name, { ...named, address: longer(named.address) })
    for (const { name, cells } of this.sheets) {
      for (const [home, cell] of cells) {
        if (typeof cell.formula !== 'string' || !cell.formula.startsWith('=')) continue
        const formula = cell.formula.replace(
          /(?:('[^']+'|\w+)!)?(\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+)/g,
          (whole, of: string | undefined, read: string) =>
            (of?.replace(/^'|'$/g, '') ?? name) === sheet.name ? whole.replace(read, longer(read)) : whole,
        )
        if (formula !== cell.formula) cells.set(home, { ...cell, formula })
      }
    }
    sheet.tables[at] = { ...table, rows: table.rows + 1 }
    for (let index = 0; index < table.columns; index++) {
      const [above, added] = dataCells(sheet.tables[at], index).slice(-2)
      const formula = table.calculated.get(index)
      if (formula !== undefined) sheet.cells.set(added!, this.typed(formulaAt(formula, added!)))
      sheet.appearance.set(added!, new Map(sheet.appearance.get(above!)))
    }
  }

  /**
   * Excel refuses a table over another one, and a spill within one. Headings that are missing or alike it changes
   * without a word, and then they are no longer those of the book: this host refuses them.
   */
  private makeTable(sheet: Sheet, block: Block): Table {
    if (sheet.protected) throw new Refusal('AccessDenied')
    const contents = cellsOf({ ...block, sheet }, ({ formula }) => formula)
    const headings = contents[0]!.map((heading) => String(heading).trim().toLowerCase())
    const isAnyFormula = (content: CellValue): content is string =>
      typeof content === 'string' && content.startsWith('=')
    const isSound =
      block.rows > 1 &&
      !headings.includes('') &&
      new Set(headings).size === headings.length &&
      !contents[0]!.some(isAnyFormula)
    const spills = contents.flat().some((content) => isAnyFormula(content) && spillingCall.test(content))
    if (!isSound || spills || sheet.tables.some((other) => overlap(other, block))) throw new Refusal('InvalidArgument')
    return this.keepTable(sheet, { ...block, name: `Table${this.tableNames().length + 1}`, hasTotals: false })
  }

  private nameTable(table: Table, name: string): void {
    if (!/^[\p{L}_][\p{L}\d_.]*$/u.test(name) || /^[A-Z]{1,3}\d+$/i.test(name)) throw new Refusal('InvalidArgument')
    const others = [...this.names.keys(), ...this.tableNames().filter((one) => one !== table.name)]
    if (others.some((one) => one.toLowerCase() === name.toLowerCase())) throw new Refusal('ItemAlreadyExists')
    table.name = name
  }

  /** It calculates nothing: a formula's own text stands for its value. */
  private typed(content: CellValue): { readonly formula: CellValue; readonly value: CellValue } {
    if (typeof content !== 'string') return { formula: content, value: content }
    if (content.startsWith("'")) return { formula: content.slice(1), value: content.slice(1) }
    if (!content.startsWith('=')) {
      const number = Number(content.replace('%', ''))
      return content === '' || Number.isNaN(number)
        ? { formula: content, value: content }
        : { formula: number, value: number }
    }
    for (const [, quotedName, bareName] of content
      .replace(/"[^"]*"/g, '')
      .matchAll(/(?:'((?:[^']|'')+)'|(\b[\w.]+))!/g)) {
      const name = quotedName?.replaceAll("''", "'") ?? bareName
      if (!this.sheets.some((sheet) => sheet.name === name)) throw new Refusal('InvalidArgument')
    }
    return { formula: content, value: content }
  }

  /** Moves what stands from a row on; formulas that read it follow within their own row only, names as a whole. */
  private moveRows(sheet: Sheet, from: number, by: number): void {
    const moved = [...sheet.cells].flatMap(([address, cell]) => {
      const { row, column } = placeOf(address)
      if (row < from) return [[address, cell] as const]
      if (row < from - by) return []
      const next = addressOf({ top: row + by, left: column, rows: 1, columns: 1 })
      const { formula } = cell
      const follows =
        typeof formula === 'string' && formula.startsWith('=') ? filledInto(formula, address, next) : formula
      return [[next, { formula: follows, value: formula === cell.value ? follows : cell.value }] as const]
    })
    sheet.cells.clear()
    for (const [address, cell] of moved) sheet.cells.set(address, cell)
    for (const [index, table] of sheet.tables.entries()) {
      const isAbove = table.top >= from
      const isWithin = !isAbove && table.top + table.rows > from
      sheet.tables[index] = { ...table, top: table.top + (isAbove ? by : 0), rows: table.rows + (isWithin ? by : 0) }
    }
    for (const [name, { sheet: of, address }] of this.names) {
      if (of !== sheet.name) continue
      const shifted = address.replace(/\d+/g, (digits) =>
        String(Number(digits) - 1 >= from ? Number(digits) + by : digits),
      )
      this.names.set(name, { sheet: of, address: shifted })
    }
    this.raise('DataChanged', { changeType: 'RowInserted', source: 'Local' })
  }

  private copyRow(sheet: Sheet, from: number, into: number): void {
    for (const [address, { formula }] of [...sheet.cells]) {
      const { row, column } = placeOf(address)
      if (row !== from) continue
      const next = addressOf({ top: into, left: column, rows: 1, columns: 1 })
      sheet.cells.set(
        next,
        this.typed(
          typeof formula === 'string' && formula.startsWith('=') ? filledInto(formula, address, next) : formula,
        ),
      )
    }
  }

  private invoke(target: HostObject, name: string, given: readonly unknown[]): unknown {
    // The client asks to hold on to what it may use again. This host forgets nothing.
    if (name === '_KeepReference' || name === '_ReleaseReference') return null
    if (target.is === 'sheet' && name === 'Activate') {
      this.select('A1', target.sheet.name)
      return null
    }
    // The client sends a long array in parts, and asks first whether the whole has the shape of the range.
    if (target.is === 'range' && name === '_ValidateArraySize') {
      if (given[0] !== target.rows || given[1] !== target.columns) throw new Refusal('InvalidArgument')
      return null
    }
    if (target.is === 'range' && name === 'Select') {
      this.select(addressOf(target), target.sheet.name)
      return null
    }
    if (target.is === 'range' && name === 'CopyFrom') {
      if (this.keeps) throw new Refusal('GeneralException')
      for (let row = 0; row < target.rows; row++)
        this.copyRow(target.sheet, blockOf(String(given[0])).top, target.top + row)
      return null
    }
    if (target.is === 'range' && name === 'GetCellProperties') {
      if (JSON.stringify(given) !== '[{"format":{"font":{"bold":true}}}]')
        throw new Error(`The host does not know ${JSON.stringify(given)} of cells`)
      return placesOf(target).map((row) =>
        row.map((address) => ({
          format: { font: { bold: target.sheet.appearance.get(address)?.get('Font.Bold') === true } },
        })),
      )
    }
    if (target.is === 'range' && name === 'Delete') {
      if (given[0] !== 'Up') throw new Error(`The host deletes rows upwards only, not ${String(given[0])}.`)
      this.moveRows(target.sheet, target.top, -target.rows)
      return null
    }
    if (target.is === 'sheet' && name === 'Delete') {
      if (this.structureProtected || this.keeps) throw new Refusal('AccessDenied')
      this.sheets.splice(this.sheets.indexOf(target.sheet), 1)
      return null
    }
    if (target.is === 'chart' && name === 'Delete') {
      target.sheet.charts.splice(target.sheet.charts.indexOf(target.chart), 1)
      return null
    }
    if (target.is === 'chart') {
      const shown = given.map((argument) =>
        typeof argument === 'object' && argument !== null ? addressOf(argument as Block) : argument,
      )
      target.chart.settings.set(`${target.part}${name}`, shown.length === 1 ? shown[0] : shown)
      return null
    }
    if (target.is === 'name' && name === 'Delete') {
      this.names.delete(target.name)
      return null
    }
    if (target.is === 'freezePanes') {
      const [first] = given
      if (name === 'FreezeRows') target.sheet.frozen = { rows: first as number, columns: 0 }
      else if (name === 'FreezeColumns') target.sheet.frozen = { rows: 0, columns: first as number }
      else if (name === 'FreezeAt')
        target.sheet.frozen = { rows: (first as Block).rows, columns: (first as Block).columns }
      else throw new Error(`The host knows no ${name} of ${target.is}`)
      return null
    }
    if (target.is === 'application' && name === 'SuspendApiCalculationUntilNextSync') {
      this.suspended.push(this.rawContents.length)
      return null
    }
    if (target.is === 'application' && name === 'Calculate') {
      this.calculations.push(String(given[0]))
      for (const { name, cells } of this.sheets) {
        for (const [address, value] of this.results.get(name) ?? [])
          cells.set(address, { formula: cells.get(address)?.formula ?? '', value })
      }
      return null
    }
    const [, step, event = ''] = /^_(Unregister|Register)(\w+)Event$/.exec(name) ?? []
    if (target.is !== 'worksheets' || events[event] === undefined)
      throw new Error(`The host knows no ${name} of ${target.is}`)
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

/** One block of cells, or several. */
type Areas = { readonly sheet: Sheet } & (Block | { readonly areas: readonly Block[] })

interface Look {
  readonly is: 'appearance'
  readonly of: Areas
  readonly part: string
}

type HostObject =
  | {
      readonly is:
        'workbook' | 'worksheets' | 'names' | 'tables' | 'application' | 'protection' | 'missing' | 'constant'
    }
  | { readonly is: 'sheet' | 'freezePanes'; readonly sheet: Sheet }
  | { readonly is: 'charts' | 'tablesOfSheet' | 'namesOfSheet'; readonly sheet: Sheet }
  | { readonly is: 'table'; readonly table: Table; readonly sheet: Sheet }
  | { readonly is: 'columns'; readonly table: Table; readonly sheet: Sheet }
  /** The chart itself, or a part of it by its path. */
  | { readonly is: 'chart'; readonly sheet: Sheet; readonly chart: Chart; readonly part: string }
  | { readonly is: 'areas'; readonly sheet: Sheet; readonly areas: readonly Block[] }
  | Look
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: 'nameOfSheet'; readonly sheet: Sheet; readonly name: string }
  | ({ readonly is: 'range'; readonly sheet: Sheet } & Block)

/** Functions of ours whose result is a table or a column, but where INDEX takes one cell of it. */
const spillingCall = new RegExp(
  `(?<!\\bINDEX\\()\\bSTICK\\.(${catalogue
    .filter(({ result }) => !fillsOneCell(result))
    .map(({ id }) => id)
    .join('|')})\\(`,
)

/** Of one of its columns, from the top. */
function dataCells({ top, left, rows, hasTotals }: Table, column: number): readonly string[] {
  return Array.from({ length: rows - 1 - (hasTotals ? 1 : 0) }, (_, index) =>
    addressOf({ top: top + 1 + index, left: left + column, rows: 1, columns: 1 }),
  )
}

/** The formula of a cell by how far away the cells are that it reads; undefined where it has none. */
function relativeOf(sheet: Sheet, address: string): string | undefined {
  const formula = sheet.cells.get(address)?.formula
  return typeof formula === 'string' && formula.startsWith('=') ? relativeFormula(formula, address) : undefined
}

function overlap(one: Block, other: Block): boolean {
  return (
    one.top < other.top + other.rows &&
    other.top < one.top + one.rows &&
    one.left < other.left + other.columns &&
    other.left < one.left + one.columns
  )
}

const missing: HostObject = { is: 'missing' }

function emptySheet(name: string): Sheet {
  return {
    name,
    protected: false,
    cells: new Map(),
    appearance: new Map(),
    frozen: { rows: 0, columns: 0 },
    charts: [],
    tables: [],
    names: new Map(),
  }
}

function refusalOf(Code: string, ActionIndex: number, Results: readonly unknown[]): object {
  return { Results, Error: { Code, Message: 'Excel says no.', ActionIndex, HttpStatusCode: 400 } }
}

function addressesOf(of: Areas): readonly string[] {
  const blocks = 'areas' in of ? of.areas : [of]
  return blocks.flatMap(({ top, left, rows, columns }) =>
    Array.from({ length: rows * columns }, (_, index) =>
      addressOf({ top: top + Math.floor(index / columns), left: left + (index % columns), rows: 1, columns: 1 }),
    ),
  )
}

function setAppearance(sheet: Sheet, address: string, property: string, value: unknown): void {
  const ofCell = sheet.appearance.get(address) ?? new Map<string, unknown>()
  sheet.appearance.set(address, ofCell.set(property, value))
}

/** What is only formatted counts too, unless values alone are asked for. */
function usedRange(
  sheet: Sheet,
  cells: ReadonlyMap<string, unknown>,
  formatted: ReadonlyMap<string, unknown>,
): HostObject {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1]
  for (const addresses of [cells, formatted]) {
    for (const address of addresses.keys()) {
      const { row, column } = placeOf(address)
      top = Math.min(top, row)
      left = Math.min(left, column)
      bottom = Math.max(bottom, row)
      right = Math.max(right, column)
    }
  }
  if (bottom < 0) return missing
  return { is: 'range', sheet, top, left, rows: bottom - top + 1, columns: right - left + 1 }
}

/** Of Excel on the web and on the desktop. */
const columnsOfSheet = 16_384

function isWithin({ top, left, rows, columns }: Block, address: string): boolean {
  const { row, column } = placeOf(address)
  return row >= top && row < top + rows && column >= left && column < left + columns
}

function blockOf(address: string): Block {
  const [, firstRow, lastRow] = /^(\d+):(\d+)$/.exec(address) ?? []
  if (firstRow !== undefined)
    return { top: Number(firstRow) - 1, left: 0, rows: Number(lastRow) - Number(firstRow) + 1, columns: columnsOfSheet }
  const [from = '', to = from] = address.replaceAll('$', '').toUpperCase().split(':')
  const [first, last] = [placeOf(from), placeOf(to)]
  return { top: first.row, left: first.column, rows: last.row - first.row + 1, columns: last.column - first.column + 1 }
}

function placeOf(address: string): { readonly row: number; readonly column: number } {
  const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? []
  return {
    row: Number(digits) - 1,
    column: [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0) - 1,
  }
}

function addressOf({ top, left, rows, columns }: Block): string {
  const letters = (column: number): string =>
    column < 0 ? '' : letters(Math.floor(column / 26) - 1) + String.fromCharCode(65 + (column % 26))
  const cell = (row: number, column: number) => `${letters(column)}${row + 1}`
  const first = cell(top, left)
  return rows === 1 && columns === 1 ? first : `${first}:${cell(top + rows - 1, left + columns - 1)}`
}

/** Row by row. */
function placesOf({ top, left, rows, columns }: Block): string[][] {
  return Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: columns }, (_cell, column) =>
      addressOf({ top: top + row, left: left + column, rows: 1, columns: 1 }),
    ),
  )
}

function cellsOf<T>(
  range: Block & { readonly sheet: Sheet },
  of: (cell: { readonly formula: CellValue; readonly value: CellValue }) => T,
): T[][] {
  return placesOf(range).map((row) =>
    row.map((address) => of(range.sheet.cells.get(address) ?? { formula: '', value: '' })),
  )
}

function typeOf(value: CellValue): string {
  if (value === '') return 'Empty'
  if (typeof value === 'number') return 'Double'
  if (typeof value === 'boolean') return 'Boolean'
  return /^#[A-Z/0!?]+$/.test(value) ? 'Error' : 'String'
}

function quoted(sheet: string): string {
  return /^\w+$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`
}
