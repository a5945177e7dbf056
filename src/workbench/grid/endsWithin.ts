/** Whether it comes to its end in so many milliseconds; one that fails does not. */
export function endsWithin(milliseconds: number, act: Promise<unknown>): Promise<boolean> {
  return new Promise((resolve) => {
    const giveUp = setTimeout(() => resolve(false), milliseconds)
    const tell = (isEnded: boolean) => () => {
      clearTimeout(giveUp)
      resolve(isEnded)
    }
    act.then(tell(true), tell(false))
  })
}
