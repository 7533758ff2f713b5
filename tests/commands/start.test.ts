/** What `npm start` serves and says, with a small script in place of the workbook's. */
import { createServer } from 'node:net';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import webpack, { type Configuration } from 'webpack';
import WebpackDevServer, { type Configuration as Serving } from 'webpack-dev-server';

const require = createRequire(import.meta.url);
const settings: readonly unknown[] = require('../../webpack.config.js');
const browser = settings[0] as (env: object, argv: object) => Configuration & { devServer: Serving };

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  vi.restoreAllMocks();
  for (const close of closing.splice(0)) await close();
});

/** Somebody else has the port, or had it already. */
async function takePort(port: number): Promise<void> {
  const other = createServer();
  await new Promise((resolve) => other.once('error', resolve).listen(port, 'localhost', () => resolve(null)));
  closing.push(() => new Promise((resolve) => other.close(resolve)));
}

test('the usual port taken, the page is at another, which is said', async () => {
  await takePort(8137);
  const said = vi.spyOn(console, 'log').mockImplementation(() => undefined);
  const { devServer, ...build } = browser({ WEBPACK_SERVE: true }, { mode: 'development' });
  const compiler = webpack({
    ...build,
    mode: 'development',
    entry: join(import.meta.dirname, '../../src/texts/fill.ts'),
  });
  if (compiler === null) throw new Error('no compiler');
  const server = new WebpackDevServer({ ...devServer, open: false }, compiler);
  closing.push(() => server.stop());
  await server.start();
  const address = /http:\/\/localhost:\d+\//.exec(String(said.mock.calls[0]?.[0]))?.[0] ?? '';
  expect(address).not.toBe('');
  expect(address).not.toBe('http://localhost:8137/');
  const page = await fetch(address);
  expect(page.status).toBe(200);
  expect(await page.text()).toContain('<title>Cucurbit planning workbook</title>');
});
