import { knows } from './run'

/** See WorkbookPort. */
export function describeHost(): readonly string[] {
  const { diagnostics, contentLanguage, displayLanguage } = Office.context
  return [
    `Version: ${diagnostics.version}, platform: ${diagnostics.platform}`,
    `ExcelApi: 1.${newest((version) => knows(`1.${version}`))}`,
    `CustomFunctionsRuntime: 1.${newest((version) =>
      Office.context.requirements.isSetSupported('CustomFunctionsRuntime', `1.${version}`),
    )}`,
    `Language of Excel: ${displayLanguage}, of the workbook: ${contentLanguage}`,
    `Browser: ${navigator.userAgent}`,
  ]
}

/** Versions go up one by one; there is no way to ask for the last. */
function newest(isThere: (version: number) => boolean): number {
  let version = 0
  while (version < 99 && isThere(version + 1)) version += 1
  return version
}
