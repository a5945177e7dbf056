/** Serves the built pages as `npm start` does, on whatever port is free. */
import { join } from 'node:path'
import { serve, workbenchPolicy, type Served } from '../../src/start/server.mjs'

export function serveDist(): Promise<Served> {
  const folder = join(import.meta.dirname, '..', '..', 'dist')
  return serve({ folder, port: 0, policy: workbenchPolicy })
}
