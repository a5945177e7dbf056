import type { Injector } from '@univerjs/core'

/**
 * Repairs one fault of the grid's library, once the first workbook is there: the services that a mend needs exist only
 * from then on. The header of its file tells the fault and the version it was seen with.
 */
export type Mend = (injector: Injector, container: HTMLElement) => void

/** Repairs the formula engine, with or without a screen. */
export type EngineMend = (injector: Injector) => void
