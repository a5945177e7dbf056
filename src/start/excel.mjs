/** `npm run excel`: the files of the add-in at the address that manifest.xml names, for Excel to load. */
import { certificateFrom } from './certificate.mjs'
import { buildWhereStale, command, dist, endWithNpm, Failure, installMissing } from './prepare.mjs'

const manifestPort = 3000

await command(async () => {
  installMissing()
  await buildWhereStale()
  const { getHttpsServerOptions } = await import('office-addin-dev-certs')
  const { officeHeaders, serve } = await import('./server.mjs')
  console.log(
    'Excel loads add-ins over https alone. The first time, this computer asks whether to trust a certificate for localhost.',
  )
  const certificate = await certificateFrom(getHttpsServerOptions)
  try {
    const { address } = await serve({ folder: dist, port: manifestPort, headers: officeHeaders, certificate })
    endWithNpm()
    console.log(
      `The add-in is at ${address}. Load manifest.xml into Excel as assets/guide/excel.md says. Press Ctrl+C to stop.`,
    )
  } catch (error) {
    if (error.code !== 'EADDRINUSE') throw error
    throw new Failure(
      `Port ${manifestPort} is in use by another program, and manifest.xml names it. Stop that program first.`,
    )
  }
})
