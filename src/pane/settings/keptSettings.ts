import { usableChoice, type Chosen } from './settings'

const key = 'sticksheet settings'

/** What this person chose in this browser; nothing where the browser keeps nothing. */
export function keptSettings(): Chosen {
  try {
    return usableChoice(JSON.parse(localStorage.getItem(key) ?? '{}'))
  } catch {
    return {}
  }
}

/** Whether it could be kept: a browser may forbid it, and then it holds until the pane is closed. */
export function keepSettings(chosen: Chosen): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(chosen))
    return true
  } catch {
    return false
  }
}
