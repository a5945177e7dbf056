import { act } from 'react'
import { german } from '../../src/wording/de/words'
import { english } from '../../src/wording/en/words'

const gettingReady = [english, german].flatMap(({ frame }) => Object.values(frame.gettingReady))

/** A section is fetched when it is first shown, and the text of a function when it is first opened. */
export async function untilFetched(element: HTMLElement): Promise<void> {
  do
    await act(
      () =>
        new Promise<void>((resolve) => {
          setTimeout(resolve, 5)
        }),
    )
  while (gettingReady.some((label) => element.textContent?.includes(label)))
}
