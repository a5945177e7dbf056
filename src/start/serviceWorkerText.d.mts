/** @param folder That of the hosted files, already written. */
export function serviceWorkerText(folder: string): string
export function emptyServiceWorkerText(): string
