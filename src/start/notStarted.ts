/**
 * A script for pages that do not start. It comes first and is written for browsers of ten years ago, because one that does
 * not know the language of our scripts reads none of them: it then says what is wrong in place of an empty page. Once
 * something of ours is drawn it says nothing any more.
 */
import { english } from '../wording/en/words'
import { german } from '../wording/de/words'

export const notStarted = `(function () {
  var sentences = ${JSON.stringify({ en: english.frame.notStarted, de: german.frame.notStarted })}
  var language = /^de/i.test(navigator.language || '') ? 'de' : 'en'
  window.addEventListener('error', function () {
    var place = document.getElementById('pane') || document.getElementById('workbench')
    if (!place || (place.firstElementChild && place.firstElementChild.className !== 'opening')) return
    place.innerHTML = ''
    var line = document.createElement('p')
    line.className = 'opening'
    line.lang = language
    line.setAttribute('role', 'alert')
    line.appendChild(document.createTextNode(sentences[language]))
    place.appendChild(line)
  }, true)
}())
`
