/** The headers that the add-in's files need, as files that common servers read. */
import { always, officeHeaders } from './server.mjs'

/** Asked for anew each time, so that an update is there with the next start of Excel. */
const fresh = 'no-cache'
/** Scripts with the hash of their content in their name never change. */
const forEver = 'public, max-age=31536000, immutable'
/** Office shows no icons that it may not keep. */
const oneDay = 'public, max-age=86400'

const namedFiles = [
  'taskpane.html',
  'functions.js',
  'functions.json',
  'functions.de.json',
  'notStarted.js',
  'manifest.xml',
]
const kept = { chunks: forEver, icons: oneDay }

const everywhere = { ...always, ...officeHeaders }

/** @param path Of the add-in below the root of its site, without a slash at its end. */
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
    ...namedFiles.map((file) => rule(file, { 'Cache-Control': fresh })),
    rule('help/*', { 'Cache-Control': fresh }),
    ...Object.entries(kept).map(([folder, value]) => rule(`${folder}/*`, { 'Cache-Control': value })),
    '',
  ].join('\n')
}

/** Apache with mod_headers. */
function ofApache() {
  const set = ([name, value]) => `Header always set ${name} "${value}"`
  return [
    ...Object.entries(everywhere).map(set),
    set(['Cache-Control', fresh]),
    ...Object.entries(kept).flatMap(([folder, value]) => [
      `<If "%{REQUEST_URI} =~ m#/${folder}/#">`,
      `  ${set(['Cache-Control', value])}`,
      '</If>',
    ]),
    '',
  ].join('\n')
}

/** Microsoft's IIS and the Windows kind of Azure's App Service. */
function ofIis() {
  const add = ([name, value]) => `<add name="${name}" value="${value}" />`
  const cached = (value) =>
    `<system.webServer><httpProtocol><customHeaders>${add(['Cache-Control', value])}</customHeaders></httpProtocol></system.webServer>`
  return `<?xml version="1.0" encoding="utf-8"?>
<configuration>
  <system.webServer>
    <httpProtocol>
      <customHeaders>
        ${Object.entries(everywhere).map(add).join('\n        ')}
      </customHeaders>
    </httpProtocol>
  </system.webServer>
  ${[...namedFiles, 'help'].map((place) => `<location path="${place}">${cached(fresh)}</location>`).join('\n  ')}
  ${Object.entries(kept)
    .map(([folder, value]) => `<location path="${folder}">${cached(value)}</location>`)
    .join('\n  ')}
</configuration>
`
}

/** For the inside of a server block; nginx reads no file of the folder by itself. A block forgets the headers around it. */
function ofNginx(path) {
  const add = ([name, value]) => `  add_header ${name} "${value}" always;`
  const block = (place, value) =>
    [`location ${path}/${place} {`, ...Object.entries({ ...everywhere, 'Cache-Control': value }).map(add), '}'].join(
      '\n',
    )
  return [block('', fresh), ...Object.entries(kept).map(([folder, value]) => block(`${folder}/`, value)), ''].join('\n')
}
