/**
 * A script for pages that do not start. It comes first and is written for browsers of ten years ago, because one that does
 * not know the language of our scripts reads none of them: it then says what is wrong in place of an empty page. Once
 * something of ours is drawn it says nothing any more.
 */
import { english } from '../wording/en/words'
import { german } from '../wording/de/words'
import type { Words } from '../wording/words'

/** So long a page waits for Microsoft's script before it says so, in milliseconds; the browser waits for minutes. */
const longestWait = 10_000

const sentencesOf = ({ notStarted, noOffice }: Words['frame']) => ({ notStarted, noOffice })

export const notStarted = `(function () {
  var sentences = ${JSON.stringify({ en: sentencesOf(english.frame), de: sentencesOf(german.frame) })}
  var language = /^de/i.test(navigator.language || '') ? 'de' : 'en'
  var ofOffice = /\\/office\\.js$/
  function waitsForOffice() {
    return !window.Office && [].some.call(document.scripts, function (script) { return ofOffice.test(script.src) })
  }
  function say() {
    var place = document.getElementById('pane') || document.getElementById('workbench')
    if (place && place.firstElementChild && place.firstElementChild.className !== 'opening') return
    var line = document.createElement('p')
    line.className = 'opening'
    line.lang = language
    line.setAttribute('role', 'alert')
    line.appendChild(document.createTextNode(sentences[language][waitsForOffice() ? 'noOffice' : 'notStarted']))
    if (place) {
      place.innerHTML = ''
      place.appendChild(line)
      return
    }
    // The script stands in the head, and there is no body while it is waited for.
    document.documentElement.appendChild(line)
    document.addEventListener('DOMContentLoaded', function () {
      document.documentElement.removeChild(line)
      if (waitsForOffice()) say()
    })
  }
  window.addEventListener('error', function () {
    if (document.getElementById('pane') || document.getElementById('workbench') || waitsForOffice()) say()
  }, true)
  setTimeout(function () { if (waitsForOffice()) say() }, ${longestWait})
}())
`
