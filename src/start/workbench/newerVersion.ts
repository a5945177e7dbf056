/** The workbench without a network, and newer versions of it: the page's side of serviceWorker.mjs. */

/** What begins so: Excel's pane, which may lie in the same folder, does not. */
const scope = './workbench'

/** Whether the newer version is in charge now; it is not as long as another tab needs the one of before. */
export type TakeOver = () => Promise<boolean>

/** Has the browser keep the workbench, and tells of a newer version once that is there as a whole. */
export async function keepOffline(onNewer: (takeOver: TakeOver) => void): Promise<void> {
  if (!isHosted() || !('serviceWorker' in navigator)) return
  const registration = await navigator.serviceWorker.register('serviceWorker.js', { scope })
  const follow = () => {
    const next = registration.installing ?? registration.waiting
    // The first one is no newer one.
    if (next === null || registration.active === null) return
    const tell = () => {
      if (next.state === 'installed') onNewer(() => takeOver(registration))
    }
    tell()
    next.addEventListener('statechange', tell)
  }
  follow()
  registration.addEventListener('updatefound', follow)
  document.addEventListener('visibilitychange', () => {
    // A page may stay open for days. Without a network it asks the next time.
    if (document.visibilityState === 'visible') registration.update().catch(() => undefined)
  })
}

/** Only a hosted page can be installed. One that is built on this computer may be another one any minute. */
function isHosted(): boolean {
  return document.querySelector('link[rel="manifest"]') !== null
}

async function takeOver({ waiting }: ServiceWorkerRegistration): Promise<boolean> {
  // No page was in its way.
  if (waiting === null) return true
  const goesOn = new Promise((resolve) => waiting.addEventListener('statechange', resolve, { once: true }))
  const { port1, port2 } = new MessageChannel()
  const agrees = new Promise<boolean>((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<boolean>) => resolve(data)
  })
  waiting.postMessage('takeOver', [port2])
  if (!(await agrees)) return false
  await goesOn
  return true
}
