/** @param address Without a slash at its end. */
export function buildAddIn(address: string, folder: string): Promise<void>
