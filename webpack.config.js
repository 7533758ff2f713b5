/**
 * Two builds: the browser workbook (grid and pane), and the worksheet functions for Excel. The grid's engine is
 * large and stays out of Excel's pages.
 */
const path = require('node:path');
const { readFileSync } = require('node:fs');
const CopyWebpackPlugin = require('copy-webpack-plugin');
const CustomFunctionsMetadataPlugin = require('custom-functions-metadata-plugin');
const HtmlWebpackPlugin = require('html-webpack-plugin');
const MiniCssExtractPlugin = require('mini-css-extract-plugin');
const TerserPlugin = require('terser-webpack-plugin');

const source = (...parts) => path.resolve(__dirname, 'src', ...parts);

const typeScript = {
  test: /\.ts$/,
  exclude: /node_modules/,
  loader: 'ts-loader',
  // Types are checked by `npm run types`; the grid's own types need skipLibCheck there.
  options: { transpileOnly: true, compilerOptions: { noEmit: false } },
};

/** The grid's engine takes the usual minimizer more than a minute. */
const fastMinimizer = new TerserPlugin({ minify: TerserPlugin.esbuildMinify });

/** From here on the first port that is free. */
process.env.WEBPACK_DEV_SERVER_BASE_PORT ??= '8137';

const sayAddress = ({ server }) => {
  const { port } = server.address();
  console.log(`The workbook is being built: http://localhost:${port}/ shows it in a minute. Ctrl+C ends it.`);
};

const browser = ({ WEBPACK_SERVE: isServed }, { mode }) => ({
  name: 'browser',
  entry: { browser: source('entries', 'browser.ts') },
  output: {
    path: path.resolve(__dirname, 'dist'),
    filename: 'browser/[name].js',
    assetModuleFilename: 'browser/[name][ext]',
  },
  resolve: { extensions: ['.ts', '.js'] },
  module: {
    rules: [
      typeScript,
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
      { test: /\.(png|svg)$/, type: 'asset/resource' },
    ],
  },
  optimization: { minimizer: [fastMinimizer] },
  plugins: [
    new MiniCssExtractPlugin({ filename: 'browser/[name].css' }),
    new HtmlWebpackPlugin({
      template: source('entries', 'browser.html'),
      filename: 'index.html',
      favicon: source('taskpane', 'assets', 'icon.svg'),
    }),
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

/** The files of worksheet functions, as entries/functions.ts lists them. */
const functionFiles = [
  ...readFileSync(source('entries', 'functions.ts'), 'utf8').matchAll(/^import '\.\.\/functions\/(\w+)'/gm),
].map(([, name]) => source('functions', `${name}.ts`));

const excel = (_env, { mode }) => ({
  name: 'excel',
  entry: { functions: source('entries', 'functions.ts') },
  output: { path: path.resolve(__dirname, 'dist/excel'), filename: '[name].js' },
  resolve: { extensions: ['.ts', '.js'] },
  module: { rules: [typeScript] },
  optimization: { minimizer: [fastMinimizer] },
  plugins: [
    new CustomFunctionsMetadataPlugin({ output: 'functions.json', input: functionFiles }),
    new HtmlWebpackPlugin({ template: source('entries', 'functions.html'), filename: 'functions.html' }),
    new CopyWebpackPlugin({ patterns: [{ from: source('taskpane', 'assets'), to: 'assets' }] }),
  ],
  devtool: mode === 'production' ? false : 'cheap-module-source-map',
});

module.exports = [browser, excel];
