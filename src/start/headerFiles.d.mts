/** By the name of the file. */
export function headerFiles(path: string): Readonly<Record<string, string>>
