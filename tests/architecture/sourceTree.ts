/** The files of src and what each of them imports and names, read with the compiler's own parser. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative, sep } from 'node:path'
import ts from 'typescript'

export const root = join(import.meta.dirname, '..', '..')

export interface SourceFile {
  /** Below src, with forward slashes: "core/quantity/decimal.ts". */
  readonly path: string
  /** "core". */
  readonly folder: string
  /** The files of src that it imports, types too. */
  readonly files: readonly string[]
  /** What it imports from packages: "react-dom/client". */
  readonly packages: readonly string[]
  /** Relative imports that lead to no file or end in .ts or .tsx. */
  readonly misspelt: readonly string[]
  /** The global names that it reads a member of: "document", "Office". */
  readonly owners: ReadonlySet<string>
}

export function readSourceTree(): readonly SourceFile[] {
  const src = join(root, 'src')
  return readdirSync(src, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => read(src, path))
}

function read(src: string, path: string): SourceFile {
  const file = join(src, path)
  const text = readFileSync(file, 'utf8')
  const specifiers = ts.preProcessFile(text, true, true).importedFiles.map((imported) => imported.fileName)
  const relatives = specifiers.filter((specifier) => specifier.startsWith('.'))
  const resolved = relatives.map((specifier) => resolve(join(dirname(file), specifier)))
  return {
    path: slashes(path),
    folder: slashes(path).split('/')[0]!,
    files: resolved.filter((target) => target !== undefined).map((target) => slashes(relative(src, target))),
    packages: specifiers.filter((specifier) => !specifier.startsWith('.')),
    misspelt: relatives.filter((specifier, place) => resolved[place] === undefined || /\.tsx?$/.test(specifier)),
    owners: memberOwners(ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true)),
  }
}

function resolve(target: string): string | undefined {
  return [target, `${target}.ts`, `${target}.tsx`].find((file) => existsSync(file) && statSync(file).isFile())
}

function memberOwners(file: ts.SourceFile): ReadonlySet<string> {
  const owners = new Set<string>()
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) owners.add(node.expression.text)
    if (ts.isQualifiedName(node) && ts.isIdentifier(node.left)) owners.add(node.left.text)
    ts.forEachChild(node, visit)
  }
  visit(file)
  return owners
}

function slashes(path: string): string {
  return path.split(sep).join('/')
}
