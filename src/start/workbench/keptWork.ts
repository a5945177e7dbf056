/**
 * Work that no file holds yet, kept in this browser: one record for each tab. A tab holds a lock of its record's name
 * as long as it lives, which tells the others that the record is not left behind.
 */
import { createStore, del, entries, get, set, type UseStore } from 'idb-keyval'
import type { OpenFile } from './files'

export interface KeptWork {
  /** What is kept may be older than the page: where this changes it takes the next number, and 1 is still read. */
  readonly version: 1
  readonly file: OpenFile
  /** What the workbook calls itself; empty where it does not. */
  readonly title: string
  /** In milliseconds since 1970. */
  readonly keptAt: number
  /** Of an .xlsx file, without results: whatever opens it calculates. */
  readonly bytes: Uint8Array
}

/** A record whose tab is gone, held until it is let go. */
export interface LeftWork {
  readonly name: string
  readonly work: KeptWork
  readonly letGo: () => void
}

let store: UseStore | undefined
const records = (): UseStore => (store ??= createStore('sticksheet', 'unsaved work'))

/** Whether this browser tells which tabs live; else any record may be another tab's. */
export const knowsTabs = (): boolean => 'locks' in navigator

/** As a whole or not at all. Rejects where the browser keeps nothing, or has no room. */
export function keep(name: string, work: KeptWork): Promise<void> {
  return set(name, work, records())
}

export function forget(name: string): Promise<void> {
  return del(name, records())
}

/** For a tab that has just begun. */
export function newName(): string {
  return `${Date.now()} ${Math.random().toString(36).slice(2)}`
}

/** For as long as the tab lives, or until the result is called. Undefined where another tab holds the name. */
export async function hold(name: string): Promise<(() => void) | undefined> {
  if (!knowsTabs()) return () => undefined
  return new Promise((resolve, reject) => {
    const untilLetGo = (lock: Lock | null) =>
      new Promise<void>((letGo) => {
        resolve(lock === null ? undefined : letGo)
        if (lock === null) letGo()
      })
    navigator.locks.request(`sticksheet ${name}`, { ifAvailable: true }, untilLetGo).catch(reject)
  })
}

/** What tabs have left behind, the newest first. Throws where the browser keeps nothing. */
export async function* leftWork(): AsyncGenerator<LeftWork> {
  const kept = await entries<string, KeptWork>(records())
  // One that a newer page has kept is left for that.
  const known = kept.filter(([, { version }]) => version === 1)
  for (const [name] of known.sort(([, one], [, other]) => other.keptAt - one.keptAt)) {
    const letGo = await hold(name)
    if (letGo === undefined) continue
    // Another tab may have opened it or thrown it away meanwhile.
    const work = await get<KeptWork>(name, records())
    if (work === undefined) letGo()
    else yield { name, work, letGo }
  }
}
