/* global self, caches, fetch, Response, kept */
/**
 * Keeps the workbench in the browser, so that it opens without a network. The build writes a line above this, `kept`: the
 * version, and of each file its name and its digest. It is in charge of addresses that begin with the workbench's alone,
 * and so never of Excel's pane, which lies beside it.
 *
 * A page keeps the version that it began with: a newer one is fetched beside, and waits until no page is open, or until
 * the only one asks for it.
 */
const { scope } = self.registration
/** Of this folder: another one of the same site has its own. */
const ours = `sticksheet ${scope} `
const cacheOfVersion = ours + kept.version

self.addEventListener('install', (event) => event.waitUntil(keepAll()))
self.addEventListener('activate', (event) => event.waitUntil(forgetOlder()))
self.addEventListener('message', (event) => event.waitUntil(takeOver(event.ports[0])))
self.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET') event.respondWith(answer(event.request))
})

/** All or nothing: where a file is missing, or is one of another version, the browser tries again another time. */
async function keepAll() {
  const cache = await caches.open(cacheOfVersion)
  try {
    await Promise.all(kept.files.map(([name, integrity]) => keep(cache, name, integrity)))
  } catch (error) {
    await caches.delete(cacheOfVersion)
    throw error
  }
}

async function keep(cache, name, integrity) {
  const response = await fetch(name, { integrity, cache: name.startsWith('chunks/') ? 'default' : 'no-cache' })
  if (!response.ok) throw new Error(`${name}: ${response.status}`)
  // Some servers lead to an address without ending, and browsers open no page that a worker has from another address.
  await cache.put(name, response.redirected ? new Response(response.body, response) : response)
}

async function forgetOlder() {
  const names = await caches.keys()
  await Promise.all(
    names.filter((name) => name.startsWith(ours) && name !== cacheOfVersion).map((name) => caches.delete(name)),
  )
}

async function answer(request) {
  const cache = await caches.open(cacheOfVersion)
  // With or without ending.
  const file = request.mode === 'navigate' ? 'workbench.html' : request
  return (await cache.match(file, { ignoreSearch: true, ignoreVary: true })) ?? fetch(request)
}

/** Answers the page whether it does: not as long as another page needs the version of before. */
async function takeOver(page) {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true })
  const isAlone = windows.filter(({ url }) => url.startsWith(scope)).length === 1
  page.postMessage(isAlone)
  if (isAlone) await self.skipWaiting()
}
