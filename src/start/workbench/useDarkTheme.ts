import { useEffect, useState } from 'react'

const remembered = 'sticksheet theme'

/** Follows the system until the user chooses; the choice is remembered in this browser. */
export function useDarkTheme(): [dark: boolean, choose: (dark: boolean) => void] {
  const [chosen, setChosen] = useState(() => localStorage.getItem(remembered))
  const [system, setSystem] = useState(() => systemIsDark().matches)

  useEffect(() => {
    const media = systemIsDark()
    const follow = () => setSystem(media.matches)
    media.addEventListener('change', follow)
    return () => media.removeEventListener('change', follow)
  }, [])

  const dark = chosen === null ? system : chosen === 'dark'
  useEffect(() => {
    document.documentElement.dataset['theme'] = dark ? 'dark' : 'light'
  }, [dark])

  return [
    dark,
    (choice) => {
      localStorage.setItem(remembered, choice ? 'dark' : 'light')
      setChosen(choice ? 'dark' : 'light')
    },
  ]
}

function systemIsDark(): MediaQueryList {
  return matchMedia('(prefers-color-scheme: dark)')
}
