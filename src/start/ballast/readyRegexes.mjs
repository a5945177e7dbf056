/**
 * A webpack loader for cjk-regex: it makes three regular expressions out of all tables of Unicode whenever a page
 * starts. They are made here instead, once, and the tables stay behind.
 */
import * as made from 'cjk-regex'

export default function readyRegexes() {
  return ['all', 'letters', 'punctuations']
    .map((name) => `export const ${name} = () => ({ toRegExp: () => ${made[name]().toRegExp()} })`)
    .join('\n')
}
