/** `npm start`: the workbench in a browser. */
import { parseArgs } from 'node:util'
import { buildWhereStale, command, dist, endWithNpm, Failure, installMissing } from './prepare.mjs'

const usualPort = 3000
const portsTried = 20

await command(async () => {
  const wanted = readPort()
  installMissing()
  await buildWhereStale()
  const { address } = await listen(wanted)
  endWithNpm()
  console.log(`The workbench is at ${address}/workbench.html`)
  console.log('It answers this computer alone. Press Ctrl+C to stop it.')
})

function readPort() {
  let text
  try {
    text = parseArgs({ options: { port: { type: 'string' } } }).values.port
  } catch {
    throw new Failure('npm start takes one option: npm start -- --port 3100')
  }
  if (text === undefined) return undefined
  const port = Number(text)
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Failure(`--port takes a whole number from 0 to 65535; it is "${text}".`)
  }
  return port
}

/** A port that was asked for is taken or refused; without one the next free port is as good. */
async function listen(wanted) {
  const { serve, workbenchHeaders } = await import('./server.mjs')
  const first = wanted ?? usualPort
  const last = wanted ?? usualPort + portsTried - 1
  for (let port = first; port <= last; port += 1) {
    try {
      return await serve({ folder: dist, port, headers: workbenchHeaders })
    } catch (error) {
      if (error.code === 'EACCES')
        throw new Failure(`This computer does not allow port ${port}. Choose one with: npm start -- --port 3100`)
      if (error.code !== 'EADDRINUSE') throw error
    }
  }
  throw new Failure(
    first === last
      ? `Port ${first} is in use by another program. Choose another with: npm start -- --port ${first + 1}`
      : `Ports ${first} to ${last} are all in use. Choose one with: npm start -- --port 3100`,
  )
}
