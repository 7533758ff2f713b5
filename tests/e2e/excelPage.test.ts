/**
 * The built page of the add-in in a real browser, at the address of the manifest; nothing goes over the network.
 * The vendor's library is that of its package, whose licence allows it for tests (see functionsRuntime/openRuntime).
 */
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Page, Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { english } from '../../src/texts/english';
import { openBrowser, type OpenBrowser } from './chromium';

const { opening } = english.pane;
const folder = inject('builtAddin');
const library = dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/dist/office.js'));

let opened: OpenBrowser;
beforeAll(async () => {
  opened = await openBrowser();
}, 120_000);
afterAll(() => opened.close());

/** @param answer what comes of a request to the vendor's network */
async function openPane(
  answer: (route: Route) => Promise<void>,
): Promise<{ page: Page; troubles: string[] }> {
  // The smallest pane that Excel shows.
  const page = await opened.browser.newPage({ viewport: { width: 350, height: 378 } });
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(String(error)));
  await page.route('https://localhost:3000/**', (route) =>
    route.fulfill({ path: join(folder, new URL(route.request().url()).pathname) }),
  );
  await page.route('https://appsforoffice.microsoft.com/**', answer);
  await page.goto('https://localhost:3000/taskpane.html', { waitUntil: 'commit' });
  return { page, troubles };
}

/** The same file from the package. */
const fromPackage = (route: Route): Promise<void> =>
  route.fulfill({ path: join(library, new URL(route.request().url()).pathname.split('/hosted/')[1] ?? '') });

const says = (page: Page, text: string): Promise<void> =>
  page.getByText(text, { exact: true }).waitFor({ timeout: 30_000 });

describe('the pane of the add-in', () => {
  test('outside Excel says that it works inside Excel only', async () => {
    const { page, troubles } = await openPane(fromPackage);
    await says(page, opening.reasons.outside);
    expect(await page.evaluate('Object.keys(CustomFunctions._association.mappings).length')).toBeGreaterThan(
      20,
    );
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(350);
    expect(troubles).toEqual([]);
    await page.close();
  });

  test('says so when the vendor’s library is blocked', async () => {
    const { page } = await openPane((route) => route.abort());
    await says(page, opening.reasons.blocked);
    await page.close();
  });

  test('is never blank while the library is slow, and opens after all when it comes', async () => {
    let come = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      come = resolve;
    });
    const { page } = await openPane(async (route) => {
      await held;
      await fromPackage(route);
    });
    await says(page, opening.waiting);
    await says(page, opening.slow);
    expect(await page.getByRole('button', { name: opening.again }).isVisible()).toBe(true);
    come();
    await says(page, opening.reasons.outside);
    await page.close();
  });
});
