/** Builds the grid page with the project's own webpack settings, serves it and opens it in a browser. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Page } from 'playwright-core';
import webpack, { type Configuration } from 'webpack';
import { openBrowser } from '../chromium';

export interface GridPage {
  readonly page: Page;
  readonly address: string;
  /** Errors that the page threw or wrote to its console. */
  readonly troubles: readonly string[];
  close(): Promise<void>;
}

const require = createRequire(import.meta.url);
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** The page's script and its frame. */
export interface PageSource {
  readonly script: string;
  readonly frame: string;
}

const icon = join(import.meta.dirname, '../../../src/taskpane/assets/icon.svg');

const bareGrid: PageSource = {
  script: join(import.meta.dirname, 'page.ts'),
  frame: join(import.meta.dirname, 'page.html'),
};

/** @param locale of the browser */
export async function openGridPage(source = bareGrid, locale = 'en-US'): Promise<GridPage> {
  const folder = await mkdtemp(join(tmpdir(), 'grid-page-'));
  await build(folder, source);
  const server = await serve(folder);
  const opened = await openBrowser();
  const context = await opened.browser.newContext({
    locale,
    viewport: { width: 1200, height: 700 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  // For a machine under load.
  context.setDefaultTimeout(60_000);
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  const pageAddress = `http://127.0.0.1:${address.port}/page.html`;
  await page.goto(pageAddress);
  await page.waitForSelector('canvas');
  return {
    page,
    address: pageAddress,
    troubles,
    async close() {
      await opened.close();
      await new Promise((resolve) => server.close(resolve));
      await rm(folder, { recursive: true });
    },
  };
}

/** The browser part of the project's webpack settings, with the page that is asked for. */
function build(folder: string, source: PageSource): Promise<void> {
  const settings: unknown[] = require('../../../webpack.config.js');
  const make = settings.find((each) => typeof each === 'function' && each.name === 'browser') as
    ((env: object, argv: { mode: string }) => Configuration) | undefined;
  if (make === undefined) throw new Error('webpack.config.js has no browser part');
  const { plugins: _, ...browser } = make({}, { mode: 'development' });
  const HtmlPlugin = require('html-webpack-plugin');
  const CssPlugin = require('mini-css-extract-plugin');
  const compiler = webpack({
    ...browser,
    mode: 'development',
    devtool: false,
    entry: source.script,
    output: { path: folder, filename: 'page.js' },
    plugins: [
      new CssPlugin({ filename: 'page.css' }),
      new HtmlPlugin({ template: source.frame, favicon: icon, filename: 'page.html' }),
    ],
  });
  return new Promise((resolve, reject) => {
    compiler.run((error, stats) => {
      if (error !== null) reject(error);
      else if (stats?.hasErrors()) reject(new Error(stats.toString('errors-only')));
      else compiler.close(() => resolve());
    });
  });
}

function serve(folder: string): Promise<Server> {
  const server = createServer((request, response) => {
    const name = (request.url ?? '/').replace(/[?#].*$/, '');
    readFile(join(folder, name)).then(
      (body) => response.writeHead(200, { 'Content-Type': types[extname(name)] ?? 'image/x-icon' }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}
