/**
 * Two builds: the browser workbook (grid and pane), and the worksheet functions for Excel. The grid's engine is
 * large and stays out of Excel's pages.
 */
const path = require('node:path');
const HtmlWebpackPlugin = require('html-webpack-plugin');
const MiniCssExtractPlugin = require('mini-css-extract-plugin');

const source = (...parts) => path.resolve(__dirname, 'src', ...parts);

const typeScript = {
  test: /\.ts$/,
  exclude: /node_modules/,
  loader: 'ts-loader',
  // Types are checked by `npm run types`; the grid's own types need skipLibCheck there.
  options: { transpileOnly: true, compilerOptions: { noEmit: false } },
};

const browser = (_env, { mode }) => ({
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
  devServer: { port: 8137, hot: false, liveReload: false, client: false, open: false, static: false },
});

module.exports = [browser];
