/** What a file says about itself: who made it, and what it is about. */
import type { FileProperties } from '../../workbook/book'
import { elementsOf, localName, packageParts, rootOf, textOf } from './parts'
import type { Parts } from './unpack'

/** By the element that holds each. */
const carried: Readonly<Record<string, keyof FileProperties>> = {
  creator: 'author',
  title: 'title',
  subject: 'subject',
  keywords: 'keywords',
  description: 'description',
  category: 'category',
  Manager: 'manager',
  Company: 'company',
}

/** Written anew with each file, or of no use without the program that wrote it. */
const madeAnew =
  /^(created|modified|lastModifiedBy|lastPrinted|revision|Application|AppVersion|DocSecurity|ScaleCrop|HeadingPairs|TitlesOfParts|LinksUpToDate|SharedDoc|HyperlinksChanged|TotalTime|Template)$/

/** Who made a file that says nothing of it. */
export const ourselves = 'Sticksheet'

export interface ReadProperties {
  readonly carried: FileProperties | undefined
  /** The others, by their names. */
  readonly others: readonly string[]
}

export function propertiesOf(parts: Parts): ReadProperties {
  const all = packageParts(parts, /\/(core-properties|extended-properties)$/)
    .flatMap((path) => rootOf(parts, path).children.filter((child) => child.type === 'element'))
    .map((element) => ({ name: localName(element), text: textOf(element).trim(), element }))
    .filter(({ name, text, element }) => !madeAnew.test(name) && (text !== '' || element.children.length > 1))
  const known = all.flatMap(({ name, text }) => (carried[name] && text !== ourselves ? [[carried[name], text]] : []))
  const own = packageParts(parts, /\/custom-properties$/)
    .flatMap((path) => elementsOf(rootOf(parts, path), 'property'))
    .map(({ attributes }) => attributes.name ?? '')
  return {
    carried: known.length > 0 ? Object.fromEntries(known) : undefined,
    others: [...all.flatMap(({ name }) => (carried[name] ? [] : [name])), ...own],
  }
}
