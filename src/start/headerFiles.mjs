/** The headers that the hosted files need, as files that common servers read. */
import { always, officeHeaders, witnessHeaders, witnessScript, workbenchHeaders } from './server.mjs'

/** Asked for anew each time, so that an update is there with the next start. */
const fresh = 'no-cache'
/** Scripts with the hash of their content in their name never change. */
const forEver = 'public, max-age=31536000, immutable'
/** Office shows no icons that it may not keep. */
const oneDay = 'public, max-age=86400'

/** Nothing of Excel's: its pane loads a script of Microsoft's and is shown within pages of Microsoft's. */
const policies = {
  'workbench.html': workbenchHeaders,
  'workbench.xlsxWorker.js': workbenchHeaders,
  'serviceWorker.js': workbenchHeaders,
  [witnessScript]: witnessHeaders,
}

const namedFiles = [
  'index.html',
  'taskpane.html',
  'functions.js',
  'functions.json',
  'functions.de.json',
  'demo-results.json',
  'notStarted.js',
  'manifest.xml',
  'manifest.webmanifest',
  ...Object.keys(policies),
]
const kept = { chunks: forEver, icons: oneDay }

const everywhere = { ...always, ...officeHeaders }

/** @param path Of the files below the root of their site, without a slash at its end. */
export function headerFiles(path) {
  return {
    _headers: ofPages(path),
    '.htaccess': ofApache(),
    'web.config': ofIis(),
    'nginx.conf': ofNginx(path),
  }
}

/** Netlify and Cloudflare Pages; it belongs into the root of the site. Rules of one path must not overlap in a header. */
function ofPages(path) {
  const rule = (files, headers) =>
    [`${path}/${files}`, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join('\n')
  return [
    rule('*', everywhere),
    ...namedFiles.map((file) => rule(file, { 'Cache-Control': fresh, ...policies[file] })),
    // These servers may leave endings of pages out.
    rule('workbench', { 'Cache-Control': fresh, ...workbenchHeaders }),
    rule('help/*', { 'Cache-Control': fresh }),
    ...Object.entries(kept).map(([folder, value]) => rule(`${folder}/*`, { 'Cache-Control': value })),
    '',
  ].join('\n')
}

/** Apache with mod_headers. */
function ofApache() {
  const set = ([name, value]) => `Header always set ${name} "${value}"`
  const within = (block, place, headers) => [
    `<${block} "${place}">`,
    ...Object.entries(headers).map((header) => `  ${set(header)}`),
    `</${block}>`,
  ]
  return [
    ...Object.entries({ ...everywhere, 'Cache-Control': fresh }).map(set),
    ...Object.entries(policies).flatMap(([file, headers]) => within('Files', file, headers)),
    ...Object.entries(kept).flatMap(([folder, value]) =>
      within('If', `%{REQUEST_URI} =~ m#/${folder}/#`, { 'Cache-Control': value }),
    ),
    '',
  ].join('\n')
}

/** Microsoft's IIS and the Windows kind of Azure's App Service, which serve no files of unknown endings. */
function ofIis() {
  const sent = (headers) =>
    `<httpProtocol><customHeaders>${Object.entries(headers)
      .map(([name, value]) => `<add name="${name}" value="${value}" />`)
      .join('')}</customHeaders></httpProtocol>`
  const at = (place, headers) =>
    `<location path="${place}"><system.webServer>${sent(headers)}</system.webServer></location>`
  const type = (ending, name) =>
    `<remove fileExtension="${ending}" /><mimeMap fileExtension="${ending}" mimeType="${name}" />`
  return `<?xml version="1.0" encoding="utf-8"?>
<configuration>
  <system.webServer>
    ${sent(everywhere)}
    <staticContent>
      ${type('.wasm', 'application/wasm')}
      ${type('.webmanifest', 'application/manifest+json')}
    </staticContent>
  </system.webServer>
  ${[...namedFiles, 'help'].map((place) => at(place, { 'Cache-Control': fresh, ...policies[place] })).join('\n  ')}
  ${Object.entries(kept)
    .map(([folder, value]) => at(folder, { 'Cache-Control': value }))
    .join('\n  ')}
</configuration>
`
}

/** For the inside of a server block; nginx reads no file of the folder by itself. A block forgets the headers around it. */
function ofNginx(path) {
  const add = ([name, value]) => `  add_header ${name} "${value}" always;`
  const block = (place, headers) =>
    [`location ${place} {`, ...Object.entries({ ...everywhere, ...headers }).map(add), '}'].join('\n')
  return [
    block(`${path}/`, { 'Cache-Control': fresh }),
    ...Object.entries(policies).map(([file, headers]) =>
      block(`= ${path}/${file}`, { 'Cache-Control': fresh, ...headers }),
    ),
    ...Object.entries(kept).map(([folder, value]) => block(`${path}/${folder}/`, { 'Cache-Control': value })),
    '',
  ].join('\n')
}
