/** @param address Without a slash at its end. */
export function buildHosted(address: string, folder: string): Promise<void>
