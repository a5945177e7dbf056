/** Which browsers this machine has, and their versions. */
import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

export interface Installed {
  readonly program: string
  readonly version: string
}

export function firstInstalled(places: readonly string[]): Installed | undefined {
  const program = whereIs(places)
  return program === undefined ? undefined : { program, version: versionOf(program) }
}

/** The first of these programs that is there; a bare name is looked for where the shell looks. */
export function whereIs(places: readonly string[]): string | undefined {
  return places.flatMap(inPath).find((place) => existsSync(place))
}

function inPath(place: string): string[] {
  if (/[\\/]/.test(place)) return [place]
  return (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, place))
}

/** On Windows a browser asked for its version opens a window instead, so the file itself is asked. */
export function versionOf(program: string, env = process.env): string {
  const [command, words] =
    process.platform === 'win32'
      ? ([
          'powershell',
          ['-NoProfile', '-Command', `(Get-Item '${program.replaceAll("'", "''")}').VersionInfo.ProductVersion`],
        ] as const)
      : ([program, ['--version']] as const)
  try {
    const said = execFileSync(command, words, {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      timeout: 60_000,
      env,
    })
    return /\d+(\.\d+)+/.exec(said)?.[0] ?? said.trim()
  } catch {
    return 'of unknown version'
  }
}

/** A program in the folders in which Windows keeps programs. */
export function inWindows(...path: readonly string[]): string[] {
  return [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].flatMap((folder) =>
    folder === undefined ? [] : [join(folder, ...path)],
  )
}
