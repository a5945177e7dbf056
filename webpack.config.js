import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { EsbuildPlugin } from 'esbuild-loader'
import HtmlWebpackPlugin from 'html-webpack-plugin'
import MiniCssExtractPlugin from 'mini-css-extract-plugin'
import { tsImport } from 'tsx/esm/api'
import webpack from 'webpack'

const root = import.meta.dirname
const target = 'es2022'

/** Writes what is derived from the catalogue, functions.json and the help pages, and copies the assets. */
class ArtefactsPlugin {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap(ArtefactsPlugin.name, (compilation) => {
      const { RawSource } = compiler.webpack.sources
      compilation.hooks.processAssets.tapPromise(ArtefactsPlugin.name, async () => {
        const { artefacts } = await tsImport('./src/start/artefacts.ts', import.meta.url)
        for (const { file, text } of artefacts()) compilation.emitAsset(file, new RawSource(text))
        for (const { file, bytes } of assets()) compilation.emitAsset(file, new RawSource(bytes))
      })
    })
  }
}

function assets() {
  const folder = join(root, 'assets')
  const icons = readdirSync(join(folder, 'icons')).map((icon) => `icons/${icon}`)
  return [...icons, 'demo-season.xlsx'].map((file) => ({ file, bytes: readFileSync(join(folder, file)) }))
}

/** The last of its scripts is the one that the page is made for. */
function page(filename, chunks) {
  return new HtmlWebpackPlugin({ filename, chunks, chunksSortMode: 'manual', template: `src/start/${chunks.at(-1)}.html` })
}

const globals = 'Math, String, Number, Object, Array'

export default {
  mode: 'production',
  context: root,
  target: ['web', target],
  entry: {
    functions: './src/start/functions.ts',
    taskpane: './src/start/taskpane.tsx',
    workbench: './src/start/workbench.tsx',
  },
  output: { path: join(root, 'dist'), filename: '[name].js', chunkFilename: 'chunks/[id].js', publicPath: '', clean: true },
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
    // A host that evaluates the functions in a sandbox looks every global up anew; as parameters they are three times as fast.
    new webpack.BannerPlugin({ banner: `(function(${globals}){`, raw: true, entryOnly: true, test: /^functions\.js$/ }),
    new webpack.BannerPlugin({ banner: `})(${globals})`, raw: true, footer: true, entryOnly: true, test: /^functions\.js$/ }),
    // The functions are registered before the pane loads, so that cells need not wait for it.
    page('taskpane.html', ['functions', 'taskpane']),
    page('workbench.html', ['workbench']),
    page('index.html', ['workbench']),
    new ArtefactsPlugin(),
  ],
}
