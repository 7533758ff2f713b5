/**
 * Two builds: the browser workbook (grid and pane), and what Excel loads (worksheet functions and pane). The grid's
 * engine is large and stays out of Excel's pages.
 */
const path = require('node:path');
const { readFileSync } = require('node:fs');
const CopyWebpackPlugin = require('copy-webpack-plugin');
const CustomFunctionsMetadataPlugin = require('custom-functions-metadata-plugin');
const HtmlWebpackPlugin = require('html-webpack-plugin');
const MiniCssExtractPlugin = require('mini-css-extract-plugin');
const TerserPlugin = require('terser-webpack-plugin');
const FunctionPagesPlugin = require('./src/entries/functionPagesPlugin.cjs');
const { version } = require('./package.json');

const source = (...parts) => path.resolve(__dirname, 'src', ...parts);

/** The files of worksheet functions, as entries/functions.ts lists them. */
const functionFiles = [
  ...readFileSync(source('entries', 'functions.ts'), 'utf8').matchAll(/^import '\.\.\/functions\/(\w+)'/gm),
].map(([, name]) => source('functions', `${name}.ts`));

/** Where what is said of the functions stands: their comments, which become functions.json, and README. */
const saidOfFunctions = { files: functionFiles, readme: path.resolve(__dirname, 'README.md') };

/** The same for the formula bar of the browser workbook and the pane. */
const functionHelp = {
  resourceQuery: /^\?help$/,
  loader: source('entries', 'functionHelp.cjs'),
  options: saidOfFunctions,
};

/** Of the index of the function reference. */
const functionSearch = {
  import: source('entries', 'functionSearch.ts'),
  filename: 'functions/search.js',
};

const typeScript = {
  test: /\.ts$/,
  resourceQuery: { not: functionHelp.resourceQuery },
  exclude: /node_modules/,
  loader: 'ts-loader',
  // Types are checked by `npm run types`; the grid's own types need skipLibCheck there.
  options: { transpileOnly: true, compilerOptions: { noEmit: false } },
};

const styles = { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] };

/** The grid's engine takes the usual minimizer more than a minute. */
const fastMinimizer = new TerserPlugin({
  minify: TerserPlugin.esbuildMinify,
  // A package repeats its licence in each of its hundred files: once at the end will do.
  terserOptions: { legalComments: 'eof' },
});

/** From here on the first port that is free. */
process.env.WEBPACK_DEV_SERVER_BASE_PORT ??= '8137';

const sayAddress = ({ server }) => {
  const { port } = server.address();
  console.log(`The workbook is being built: http://localhost:${port}/ shows it in a minute. Ctrl+C ends it.`);
};

const browser = ({ WEBPACK_SERVE: isServed }, { mode }) => ({
  name: 'browser',
  entry: { browser: source('entries', 'browser.ts'), functionSearch },
  output: {
    path: path.resolve(__dirname, 'dist'),
    filename: 'browser/[name].js',
    assetModuleFilename: 'browser/[name][ext]',
  },
  resolve: { extensions: ['.ts', '.js'] },
  module: {
    rules: [typeScript, functionHelp, styles, { test: /\.(png|svg|wasm|woff2)$/, type: 'asset/resource' }],
  },
  optimization: { minimizer: [fastMinimizer] },
  plugins: [
    new MiniCssExtractPlugin({ filename: 'browser/[name].css' }),
    new HtmlWebpackPlugin({
      template: source('entries', 'browser.html'),
      filename: 'index.html',
      chunks: ['browser'],
      favicon: source('taskpane', 'assets', 'icon.svg'),
    }),
    new FunctionPagesPlugin(saidOfFunctions),
  ],
  devtool: mode === 'production' ? false : 'cheap-module-source-map',
  performance: { hints: false },
  // Served, it is for people who want the page: the address and errors, nothing else.
  ...(isServed ? { stats: 'errors-warnings', infrastructureLogging: { level: 'error' } } : {}),
  devServer: {
    host: 'localhost',
    port: 'auto',
    hot: false,
    liveReload: false,
    client: false,
    open: true,
    static: false,
    onListening: sayAddress,
  },
});

/** The address that manifest.xml is written for, and the one where what is built will stand. */
const localUrl = 'https://localhost:3000';
const addinUrl = (process.env.ADDIN_URL || localUrl).replace(/\/+$/, '');
if (!/^https:\/\/[^\s/?#<>&"]+(\/[^\s?#<>&"]*)?$/.test(addinUrl)) {
  throw new Error(
    `ADDIN_URL is "${addinUrl}". Give the https address of the folder, such as https://example.com/cucurbits`,
  );
}

/** The manifest for that address, in the version of package.json: Excel reads it anew only in a higher version. */
const manifestFor = (manifest) =>
  manifest
    .toString()
    .replaceAll(localUrl, addinUrl)
    .replace(/<Version>.*<\/Version>/, `<Version>${version}.0</Version>`);

const excel = async (env, { mode, configName = [] }) => ({
  name: 'excel',
  entry: {
    functions: {
      import: source('entries', 'functions.ts'),
      library: { name: 'cucurbitFunctions', type: 'global' },
    },
    taskpane: source('entries', 'excel.ts'),
    functionSearch,
  },
  output: {
    path: path.resolve(__dirname, 'dist/excel'),
    filename: '[name].js',
    globalObject: 'globalThis',
    assetModuleFilename: '[name][ext]',
    clean: true,
  },
  resolve: { extensions: ['.ts', '.js'] },
  module: { rules: [typeScript, functionHelp, styles] },
  optimization: {
    minimizer: [fastMinimizer],
    // What is said, once for both scripts of the page.
    splitChunks: {
      cacheGroups: {
        default: false,
        defaultVendors: false,
        texts: {
          test: source('texts'),
          name: 'texts',
          chunks: ({ name }) => name === 'functions' || name === 'taskpane',
          enforce: true,
        },
      },
    },
  },
  plugins: [
    new MiniCssExtractPlugin({ filename: '[name].css' }),
    new CustomFunctionsMetadataPlugin({ output: 'functions.json', input: functionFiles }),
    new FunctionPagesPlugin({ ...saidOfFunctions, address: `${addinUrl}/functions` }),
    new HtmlWebpackPlugin({
      template: source('entries', 'excel.html'),
      filename: 'taskpane.html',
      inject: false,
    }),
    new CopyWebpackPlugin({
      patterns: [
        { from: source('taskpane', 'assets', '*.png'), to: 'assets/[name][ext]' },
        { from: path.resolve(__dirname, 'manifest.xml'), transform: manifestFor },
      ],
    }),
  ],
  devtool: mode === 'production' ? false : 'cheap-module-source-map',
  performance: { hints: false },
  devServer: {
    host: 'localhost',
    port: 3000,
    server: env.WEBPACK_SERVE && configName.includes('excel') ? await localCertificate() : 'https',
    headers: { 'Access-Control-Allow-Origin': '*' },
    hot: false,
    liveReload: false,
    client: false,
    static: false,
  },
});

/** A certificate that this machine trusts; where that cannot be had, one that the browser asks about. */
async function localCertificate() {
  const { getHttpsServerOptions } = require('office-addin-dev-certs');
  try {
    return { type: 'https', options: await getHttpsServerOptions() };
  } catch (error) {
    console.warn(
      `No trusted certificate: open ${localUrl}/taskpane.html once and accept its own. ${error.message}`,
    );
    return 'https';
  }
}

module.exports = [browser, excel];
