/** What the workbench is open in, for a report. */
export const describeBrowser = (): readonly string[] => [`Browser: ${navigator.userAgent}`]
