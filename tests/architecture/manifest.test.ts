import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { JSDOM } from 'jsdom'
import { OfficeAddinManifest } from 'office-addin-manifest'
import { expect, test } from 'vitest'
import { dist } from '../bundle/loadBundle'
import { root } from './sourceTree'

const path = join(root, 'manifest.xml')
const { document } = new JSDOM(readFileSync(path, 'utf8'), { contentType: 'text/xml' }).window

const elements = (name: string) => [...document.getElementsByTagName(name)]
const attribute = (element: Element, name: string) => element.getAttribute(name) ?? ''

const resources = ['bt:Image', 'bt:Url', 'bt:String'].flatMap(elements).filter((element) => element.hasAttribute('id'))
const uses = [...document.querySelectorAll('[resid]')]
const residOf = (selector: string) =>
  [...document.querySelectorAll(selector)].map((element) => attribute(element, 'resid'))
const values = ['DefaultValue', 'Value'].flatMap((name) =>
  [...document.querySelectorAll(`[${name}]`)].map((element) => attribute(element, name)),
)
const addresses = values.filter((value) => /^https?:/.test(value))
const fileAt = (address: string) => join(dist, ...new URL(address).pathname.split('/'))

test("Microsoft's reader finds a task pane add-in for workbooks in the manifest.", async () => {
  const info = await OfficeAddinManifest.readManifestFile(path)
  expect(info).toMatchObject({
    displayName: 'Sticksheet',
    providerName: 'Sticksheet contributors',
    officeAppType: 'TaskPaneApp',
    hosts: ['Workbook'],
    permissions: 'ReadWriteDocument',
  })
  expect(info.id).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/)
})

test('The manifest has the version of the package, in four parts.', () => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  expect(elements('Version')[0]?.textContent).toBe(`${version}.0`)
})

test('Every resid of the manifest leads to one resource, and every resource is used.', () => {
  const ids = resources.map((resource) => attribute(resource, 'id'))
  const used = uses.map((use) => attribute(use, 'resid'))
  expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([])
  expect(used.filter((id) => !ids.includes(id))).toEqual([])
  expect(ids.filter((id) => !used.includes(id))).toEqual([])
  expect(used.length).toBeGreaterThan(10)
})

test('Resids and strings of the manifest keep to the lengths that Excel allows.', () => {
  expect(resources.map((resource) => attribute(resource, 'id')).filter((id) => id.length > 32)).toEqual([])
  const tooLong = (selector: string, most: number) =>
    [...document.querySelectorAll(`${selector}, ${selector} > *`)]
      .map((element) => attribute(element, 'DefaultValue') || attribute(element, 'Value'))
      .filter((text) => text.length > most)
  expect(tooLong('ShortStrings > *', 125)).toEqual([])
  expect(tooLong('LongStrings > *', 250)).toEqual([])
  expect(tooLong('OfficeApp > Description', 250)).toEqual([])
})

/** Microsoft, "Localization for Office Add-ins" and "Localize custom functions": a value for each language of Office. */
test('Excel in German gets German for every text of the manifest, and for the functions and the help.', () => {
  const inBoth = new Set(['Functions.Namespace', 'Tab.Label'])
  const said = [
    ...resources.filter(({ tagName, id }) => tagName === 'bt:String' && !inBoth.has(id)),
    ...document.querySelectorAll('OfficeApp > Description, [id="Functions.Metadata"], [id="Help.Url"], SupportUrl'),
  ]
  expect(said.length).toBeGreaterThan(8)
  for (const element of said) {
    const [override, ...more] = element.children
    expect(more).toEqual([])
    expect(override && attribute(override, 'Locale'), element.outerHTML).toBe('de-DE')
    expect(attribute(override!, 'Value')).not.toBe(attribute(element, 'DefaultValue'))
  }
  const [english, german] = ['functions.json', 'functions.de.json'].map(
    (file) => JSON.parse(readFileSync(join(dist, file), 'utf8')) as { functions: Entry[] },
  )
  // Names and arguments are the same, so that a workbook is; the texts are not.
  const shape = ({ functions }: { functions: Entry[] }) =>
    functions.map(({ id, name, parameters }) => [id, name, ...parameters.map((parameter) => parameter.name)])
  expect(shape(german!)).toEqual(shape(english!))
  expect(
    german!.functions.filter(({ description }, at) => description === english!.functions[at]!.description),
  ).toEqual([])
  for (const { helpUrl, id } of german!.functions) {
    const page = readFileSync(fileAt(helpUrl), 'utf8')
    expect(page, id).toContain('<html lang="de">')
    expect(page, id).toContain('<h2>Was sie nimmt</h2>')
  }
})

interface Entry {
  readonly id: string
  readonly name: string
  readonly description: string
  readonly helpUrl: string
  readonly parameters: readonly { readonly name: string }[]
}

test('The runtime, the page of the functions, the function file and the pane share one page, as a shared runtime requires.', () => {
  const pages = [
    residOf('Runtime'),
    residOf('Page > SourceLocation'),
    residOf('FunctionFile'),
    residOf('Action > SourceLocation'),
  ].flat()
  expect(pages).toHaveLength(4)
  expect(new Set(pages)).toEqual(new Set(['Page.Url']))
  expect(elements('Runtime')[0]?.getAttribute('lifetime')).toBe('long')
  expect(document.querySelector('VersionOverrides > Hosts > Host')?.firstElementChild?.tagName).toBe('Runtimes')
  const page = document.querySelector('[id="Page.Url"]')
  expect(page && attribute(page, 'DefaultValue')).toBe(
    document.querySelector('DefaultSettings > SourceLocation')?.getAttribute('DefaultValue'),
  )
})

test('Every address of the manifest is https, on one domain, and a file that the build writes.', () => {
  expect(addresses.length).toBeGreaterThan(8)
  expect(addresses.filter((address) => !address.startsWith('https://'))).toEqual([])
  expect(new Set(addresses.map((address) => new URL(address).origin)).size).toBe(1)
  expect(addresses.filter((address) => !existsSync(fileAt(address)))).toEqual([])
  expect(elements('SupportUrl')).toHaveLength(1)
})

test('Every icon has the size in pixels that the manifest says.', () => {
  const sized = [
    ...elements('bt:Image')
      .filter((image) => image.hasAttribute('size'))
      .map((image) => {
        const resource = document.querySelector(`[id="${attribute(image, 'resid')}"]`)!
        return { address: attribute(resource, 'DefaultValue'), size: Number(attribute(image, 'size')) }
      }),
    ...elements('IconUrl').map((icon) => ({ address: attribute(icon, 'DefaultValue'), size: 32 })),
    ...elements('HighResolutionIconUrl').map((icon) => ({ address: attribute(icon, 'DefaultValue'), size: 64 })),
  ]
  expect(sized).toHaveLength(8)
  expect(new Set(sized.map(({ size }) => size))).toEqual(new Set([16, 32, 64, 80]))
  for (const { address, size } of sized) expect(pngSize(fileAt(address)), address).toEqual([size, size])
})

test('The manifest asks for the requirement sets that a shared runtime needs, and for no higher Excel than the code does.', () => {
  const sets = Object.fromEntries(elements('Set').map((set) => [attribute(set, 'Name'), attribute(set, 'MinVersion')]))
  expect(sets).toEqual({ SharedRuntime: '1.1', CustomFunctionsRuntime: '1.3', ExcelApi: '1.9' })
})

test('Cells call the functions in the namespace STICK.', () => {
  expect(residOf('Namespace')).toEqual(['Functions.Namespace'])
  expect(document.querySelector('[id="Functions.Namespace"]')?.getAttribute('DefaultValue')).toBe('STICK')
})

test('Every function has a help page on the domain of the add-in, and the build writes it.', () => {
  const { functions } = JSON.parse(readFileSync(join(dist, 'functions.json'), 'utf8')) as {
    functions: { id: string; helpUrl: string }[]
  }
  expect(functions.length).toBeGreaterThan(0)
  for (const { id, helpUrl } of functions) {
    expect(new URL(helpUrl).origin, id).toBe('https://localhost:3000')
    expect(existsSync(fileAt(helpUrl)), `${id}: ${helpUrl}`).toBe(true)
  }
})

/** Width and height stand at fixed places in the first chunk of a PNG file. */
function pngSize(file: string): [width: number, height: number] {
  const bytes = readFileSync(file)
  expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG')
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)]
}
