/** Serves the built pages as `npm start` does, on whatever port is free. */
import { serve, workbenchPolicy, type Served } from '../../src/start/server.mjs'
import { dist } from '../bundle/loadBundle'

export function serveDist(): Promise<Served> {
  return serve({ folder: dist, port: 0, policy: workbenchPolicy })
}
