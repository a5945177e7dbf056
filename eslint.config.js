import js from '@eslint/js'
import officeAddins from 'eslint-plugin-office-addins'
import { defineConfig } from 'eslint/config'
import tseslint from 'typescript-eslint'

/** From the top down. A folder may import what stands below it, and the leaves. */
const layers = [
  ['start'],
  ['pane', 'excel', 'workbench'],
  ['workbook'],
  ['derived'],
  ['functions', 'formula'],
  ['core'],
]

/**
 * What some folders alone may import, so that it can be exchanged there. tests/architecture holds the same rules
 * more finely, to folders within folders; here they show while one types.
 */
const owners = [
  { packages: ['react', 'react-dom', 'react-dom/*', '@fluentui/*'], folders: ['pane', 'start'] },
  { packages: ['@univerjs/*', '@cj-tech-master/excelts', '@ironcalc/*'], folders: ['workbench'] },
  { packages: ['decimal.js'], folders: ['core'] },
  { packages: ['@borgar/fx'], folders: ['core', 'formula', 'derived', 'workbench', 'pane'] },
]

function mayNotImport(folder) {
  const place = layers.findIndex((layer) => layer.includes(folder))
  return layers
    .slice(0, place + 1)
    .flat()
    .filter((other) => other !== folder)
}

export default defineConfig(
  { ignores: ['dist/', 'hosted/', 'node_modules/'] },
  js.configs.recommended,
  tseslint.configs.recommended,
  {
    files: ['**/*.{ts,tsx}'],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      eqeqeq: 'error',
      'no-restricted-syntax': [
        'error',
        {
          // React takes what an effect returns for its clean-up; what a call returns may change with the browser.
          selector:
            'CallExpression:matches([callee.name=/^use(Layout|Insertion)?Effect$/], [callee.property.name=/^use(Layout|Insertion)?Effect$/]) > ArrowFunctionExpression.arguments:first-child[body.type!="BlockStatement"]',
          message: 'An effect returns nothing but its own clean-up: write { … } around the call.',
        },
      ],
    },
  },
  {
    files: ['src/**/*.{ts,tsx,mjs}'],
    // What is longer is parted where a reader would part it, or says why not.
    rules: { 'max-lines-per-function': ['error', { max: 60 }] },
  },
  {
    files: ['**/*.{js,mjs}'],
    languageOptions: {
      globals: Object.fromEntries(
        ['process', 'console', 'URL', 'setTimeout', 'clearTimeout'].map((name) => [name, 'readonly']),
      ),
    },
  },
  ...layers.flat().map((folder) => ({
    files: [`src/${folder}/**/*.{ts,tsx}`],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            ...mayNotImport(folder).map((other) => ({
              regex: `^(\\.\\./)+${other}/`,
              message: `${folder}/ may not import from ${other}/: imports point down only.`,
            })),
            ...owners
              .filter(({ folders }) => !folders.includes(folder))
              .map(({ packages, folders }) => ({
                group: packages,
                message: `Only ${folders.join(' and ')} may import this.`,
              })),
          ],
        },
      ],
    },
  })),
  {
    files: ['src/excel/**/*.ts', 'src/start/**/*.{ts,tsx}'],
    plugins: { 'office-addins': officeAddins },
    rules: {
      'office-addins/call-sync-after-load': 'error',
      'office-addins/call-sync-before-read': 'error',
      'office-addins/load-object-before-read': 'error',
      'office-addins/no-context-sync-in-loop': 'error',
      'office-addins/no-empty-load': 'error',
      'office-addins/no-navigational-load': 'error',
      'office-addins/no-office-initialize': 'error',
      'office-addins/test-for-null-using-isNullObject': 'error',
    },
  },
)
