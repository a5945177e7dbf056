/** Every cell function, in the order in which the pane and the README list them. */
import type { Definition } from '../core/definition/definition'

export const catalogue: readonly Definition[] = [
]
