/** The certificate without which Excel loads nothing from this computer. */
import { Failure } from './prepare.mjs'

/** @param ask Makes one where there is none, and asks the user to trust it. */
export function certificateFrom(ask) {
  return ask().catch((problem) => {
    // What the computer's own programs say of a refusal goes on for many lines.
    const [reason = ''] = String(problem?.message ?? problem)
      .trim()
      .split('\n')
    throw new Failure(
      `There is no trusted certificate for localhost, and Excel loads nothing without one: run npm run excel again and agree to it. (${reason})`,
    )
  })
}
