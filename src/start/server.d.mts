import type { ServerOptions } from 'node:https'

export interface Served {
  /** Without a slash at its end. */
  readonly address: string
  close(): Promise<void>
}

export type Headers = Readonly<Record<string, string>>

export const workbenchHeaders: Headers
export const witnessScript: string
export const witnessHeaders: Headers
export const officeHeaders: Headers

export function serve(options: {
  readonly folder: string
  readonly port: number
  readonly headers?: Headers
  readonly certificate?: ServerOptions
}): Promise<Served>
