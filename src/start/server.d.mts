import type { ServerOptions } from 'node:https'

export interface Served {
  /** Without a slash at its end. */
  readonly address: string
  close(): Promise<void>
}

export const workbenchPolicy: string

export function serve(options: {
  readonly folder: string
  readonly port: number
  readonly policy?: string
  readonly certificate?: ServerOptions
}): Promise<Served>
