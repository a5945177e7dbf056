import { createRequire } from 'node:module'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { EsbuildPlugin } from 'esbuild-loader'
import HtmlWebpackPlugin from 'html-webpack-plugin'
import MiniCssExtractPlugin from 'mini-css-extract-plugin'
import { tsImport } from 'tsx/esm/api'

const { name } = createRequire(import.meta.url)('./package.json')
const root = import.meta.dirname
const target = 'es2022'

/** Writes what is derived from the catalogue: functions.json and the help pages. And copies icons and the demo season. */
class ArtefactsPlugin {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap(ArtefactsPlugin.name, (compilation) => {
      const { RawSource } = compiler.webpack.sources
      compilation.hooks.processAssets.tapPromise(ArtefactsPlugin.name, async () => {
        const { artefacts } = await tsImport('./src/start/artefacts.ts', import.meta.url)
        for (const { file, text } of artefacts()) compilation.emitAsset(file, new RawSource(text))
        for (const { file, bytes } of copies()) compilation.emitAsset(file, new RawSource(bytes))
      })
    })
  }
}

function copies() {
  const assets = join(root, 'assets')
  const icons = readdirSync(join(assets, 'icons')).map((icon) => `icons/${icon}`)
  const seasons = existsSync(join(assets, 'demo-season.xlsx')) ? ['demo-season.xlsx'] : []
  return [...icons, ...seasons].map((file) => ({ file, bytes: readFileSync(join(assets, file)) }))
}

function page(filename, chunks) {
  const [own] = chunks.slice(-1)
  return new HtmlWebpackPlugin({ filename, chunks, chunksSortMode: 'manual', template: `src/start/${own}.html` })
}

export default {
  mode: 'production',
  context: root,
  target: ['web', target],
  entry: {
    functions: './src/start/functions.ts',
    taskpane: './src/start/taskpane.tsx',
    workbench: './src/start/workbench.tsx',
  },
  output: { path: join(root, 'dist'), filename: '[name].js', chunkFilename: 'chunks/[id].js', publicPath: '', uniqueName: name, clean: true },
  resolve: { extensions: ['.ts', '.tsx', '.mjs', '.js'] },
  module: {
    rules: [
      { test: /\.tsx?$/, loader: 'esbuild-loader', options: { target, jsx: 'automatic' } },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
      // Packages of the grid leave out file extensions in their modules.
      { test: /\.m?js$/, resolve: { fullySpecified: false } },
    ],
  },
  optimization: { minimizer: [new EsbuildPlugin({ target, css: true })] },
  performance: { hints: false },
  plugins: [
    new MiniCssExtractPlugin(),
    // The functions are registered before the pane loads, so that cells need not wait for it.
    page('taskpane.html', ['functions', 'taskpane']),
    page('workbench.html', ['workbench']),
    page('index.html', ['workbench']),
    new ArtefactsPlugin(),
  ],
}
