import { readdirSync, readFileSync } from 'node:fs'
import { extname, join } from 'node:path'
import { EsbuildPlugin } from 'esbuild-loader'
import HtmlWebpackPlugin from 'html-webpack-plugin'
import MiniCssExtractPlugin from 'mini-css-extract-plugin'
import { tsImport } from 'tsx/esm/api'
import webpack from 'webpack'

const root = import.meta.dirname
const target = 'es2022'

/** Writes what is derived from the catalogue, functions.json and the help pages, and copies the assets. */
class ArtefactsPlugin {
  /** @param address Where the files will be; without one on this computer. */
  constructor(address) {
    this.address = address
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap(ArtefactsPlugin.name, (compilation) => {
      const { RawSource } = compiler.webpack.sources
      compilation.hooks.processAssets.tapPromise(ArtefactsPlugin.name, async () => {
        const { artefacts, demoResults } = await tsImport('./src/start/artefacts.ts', import.meta.url)
        for (const { file, text } of [...artefacts(this.address), await demoResults()])
          compilation.emitAsset(file, new RawSource(text))
        for (const { file, bytes } of assets()) compilation.emitAsset(file, new RawSource(bytes))
      })
    })
  }
}

function assets() {
  const folder = join(root, 'assets')
  const icons = readdirSync(join(folder, 'icons')).map((icon) => `icons/${icon}`)
  return [...icons, 'demo-season.xlsx', 'licences/ironcalc.txt'].map((file) => ({
    file,
    bytes: readFileSync(join(folder, file)),
  }))
}

function page(filename, script, options) {
  return new HtmlWebpackPlugin({ ...options, filename, chunks: [script], template: `src/start/${script}.html` })
}

/** Has the workbench fetch its grid at once, which it only begins once the rest of it is drawn. */
class GridAheadPlugin {
  apply(compiler) {
    compiler.hooks.compilation.tap(GridAheadPlugin.name, (compilation) => {
      HtmlWebpackPlugin.getHooks(compilation).alterAssetTags.tap(GridAheadPlugin.name, (page) => {
        if (page.plugin.options.chunks.includes('workbench')) page.assetTags.meta.push(...linksTo('grid', compilation))
        return page
      })
    })
  }
}

function linksTo(chunk, compilation) {
  const kinds = { '.js': 'script', '.css': 'style' }
  return compilation.namedChunkGroups
    .get(chunk)
    .getFiles()
    .map((href) => ({
      tagName: 'link',
      voidTag: true,
      attributes: { rel: 'preload', as: kinds[extname(href)], href },
      meta: { plugin: GridAheadPlugin.name },
    }))
}

const typescript = { test: /\.tsx?$/, loader: 'esbuild-loader', options: { target, jsx: 'automatic' } }

const decimals = { test: /decimal\.js[\\/]decimal\.mjs$/, loader: './src/start/ballast/fewerDigits.mjs' }

const shared = {
  mode: 'production',
  context: root,
  target: ['web', target],
  resolve: { extensions: ['.ts', '.tsx', '.mjs', '.js'] },
  optimization: { minimizer: [new EsbuildPlugin({ target, css: true })] },
  performance: { hints: false },
}

const output = { path: join(root, 'dist'), filename: '[name].js', chunkFilename: 'chunks/[name].js', publicPath: '' }

const afterMinimizing = webpack.Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_TRANSFER

const globals = 'Math, String, Number, Object, Array'

/** Built apart from the pages: modules that no other script shares become one scope, which is smaller. */
const functions = {
  ...shared,
  name: 'functions',
  entry: { functions: './src/start/functions.ts' },
  // Without a function around it the minimizer sees what nobody uses; the banners put one there afterwards.
  output: { ...output, iife: false },
  optimization: { minimizer: [new EsbuildPlugin({ target, treeShaking: true })] },
  module: { rules: [typescript, decimals] },
  plugins: [
    // A host that evaluates the functions in a sandbox looks every global up anew; as parameters they are three times as fast.
    new webpack.BannerPlugin({ banner: `(function(${globals}){`, raw: true, entryOnly: true, stage: afterMinimizing }),
    new webpack.BannerPlugin({
      banner: `})(${globals})`,
      raw: true,
      footer: true,
      entryOnly: true,
      stage: afterMinimizing,
    }),
  ],
}

/**
 * Chromium then compiles the pane's scripts whole, beside the page's thread, while they load, which takes half the work
 * off it. Not the grid's: most of those are never called, and to compile them all takes the processor longer than it
 * spares the page.
 */
class WholeScriptsPlugin {
  apply(compiler) {
    const { ConcatSource } = compiler.webpack.sources
    const stage = { name: WholeScriptsPlugin.name, stage: afterMinimizing }
    compiler.hooks.thisCompilation.tap(WholeScriptsPlugin.name, (compilation) => {
      compilation.hooks.processAssets.tap(stage, () => {
        for (const file of scriptsOf(compilation.entrypoints.get('taskpane')))
          compilation.updateAsset(file, (script) => new ConcatSource('//# allFunctionsCalledOnLoad\n', script))
      })
    })
  }
}

/** With those that it fetches later. */
function scriptsOf(group) {
  const later = group.getChildren().flatMap((child) => [...scriptsOf(child)])
  return new Set([...group.getFiles().filter((file) => extname(file) === '.js'), ...later])
}

/** What the grid's packages bring along and the workbench has no use for. */
const notUsed = {
  'franc-min$': join(root, 'src/start/ballast/noLanguages.mjs'),
  'opentype.js$': join(root, 'src/start/ballast/noFonts.mjs'),
}

const withoutHyphens = () =>
  new webpack.NormalModuleReplacementPlugin(/^\.\/[\w-]+\.js$/, (asked) => {
    if (!/@univerjs[\\/]engine-render[\\/]lib[\\/]es$/.test(asked.context)) return
    asked.request = join(root, 'src/start/ballast/noHyphens.mjs')
  })

const pages = {
  ...shared,
  name: 'pages',
  entry: {
    taskpane: './src/start/taskpane.tsx',
    workbench: './src/start/workbench.tsx',
  },
  output: { ...output, clean: { keep: /^functions\.js$/ } },
  resolve: { ...shared.resolve, alias: notUsed },
  module: {
    rules: [
      typescript,
      decimals,
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
      {
        test: /@univerjs\/[^/]+\/lib\/es\/.*\.js$/,
        use: ['./src/start/ballast/plainFields.mjs', './src/start/ballast/withoutPictures.mjs'],
      },
      { test: /cjk-regex\/lib\/index\.js$/, loader: './src/start/ballast/readyRegexes.mjs' },
      // Packages of the grid leave out file extensions in their modules.
      { test: /\.m?js$/, resolve: { fullySpecified: false } },
    ],
  },
  plugins: [
    withoutHyphens(),
    new WholeScriptsPlugin(),
    new MiniCssExtractPlugin({ chunkFilename: 'chunks/[name].css' }),
    page('taskpane.html', 'taskpane'),
    page('workbench.html', 'workbench'),
    page('index.html', 'workbench'),
    new GridAheadPlugin(),
    new ArtefactsPlugin(),
  ],
}

export default [functions, pages]

/** For a server: what changes with a version has the hash of its content in its name, but for what is asked for by name. */
export function hostedAt(address, path) {
  const [filename, chunkFilename] = ['chunks/[name].[contenthash]', 'chunks/[contenthash]']
  return [
    { ...functions, output: { ...functions.output, path } },
    {
      ...pages,
      output: {
        ...pages.output,
        path,
        filename: `${filename}.js`,
        chunkFilename: `${chunkFilename}.js`,
        assetModuleFilename: `${chunkFilename}[ext]`,
      },
      plugins: [
        withoutHyphens(),
        new WholeScriptsPlugin(),
        new MiniCssExtractPlugin({ filename: `${filename}.css`, chunkFilename: `${chunkFilename}.css` }),
        page('taskpane.html', 'taskpane'),
        page('workbench.html', 'workbench', { isHosted: true }),
        new GridAheadPlugin(),
        new ArtefactsPlugin(address),
      ],
    },
  ]
}
