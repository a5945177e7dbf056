import type { Page } from 'playwright-core'

/** The file that the page hands out by an act. Read as a stream, because the browser may hold it on another computer. */
export async function downloaded(
  page: Page,
  act: () => Promise<unknown>,
): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()])
  const parts: Buffer[] = []
  for await (const part of await download.createReadStream()) parts.push(part as Buffer)
  return { name: download.suggestedFilename(), bytes: Buffer.concat(parts) }
}
